namespace MarineService.Core.Procedures;

/// <summary>What a step does to its item, as far as another step of the visit may make it needless.</summary>
public enum StepWork
{
    /// <summary>Nothing that another step could take over. The default value.</summary>
    Other = 0,

    /// <summary>Looks at the item. Needless when the same visit replaces it.</summary>
    Inspect = 1,

    /// <summary>Fits a new item; includes looking at the place and at the old one.</summary>
    Replace = 2,
}
