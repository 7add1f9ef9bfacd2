namespace MarineService.Core.Scheduling;

/// <summary>What decides the due point.</summary>
public enum GoverningLimb
{
    /// <summary>Nothing decides: the task has no due point. The default value.</summary>
    None = 0,

    /// <summary>The hours.</summary>
    Hours = 1,

    /// <summary>The calendar.</summary>
    Calendar = 2,

    /// <summary>Hours and calendar together.</summary>
    Both = 3,

    /// <summary>A failed inspection.</summary>
    Condition = 4,

    /// <summary>Something that happened, such as an overheat.</summary>
    Event = 5,

    /// <summary>There is no record.</summary>
    UnknownHistory = 6,
}
