namespace MarineService.Core.Exchange;

/// <summary>What a column of an exercise book is about.</summary>
internal enum ExerciseBookColumn
{
    /// <summary>Nothing that the library knows.</summary>
    Unknown = 0,
    Date,
    Engine,
    Hours,
    What,
    Task,
    Event,
    Fluid,
    AddedLiters,
    AddedUsQuarts,
    By,
    CheckedBy,
    Note,

    /// <summary>Kept in the note because the caller says so.</summary>
    Kept,
}
