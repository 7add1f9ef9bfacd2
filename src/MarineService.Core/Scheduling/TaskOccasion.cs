namespace MarineService.Core.Scheduling;

/// <summary>What makes a task come round.</summary>
public enum TaskOccasion
{
    /// <summary>Hours, months, or both. The default value.</summary>
    Interval = 0,

    /// <summary>Every use of the boat; no due date.</summary>
    EachUse = 1,

    /// <summary>Each lay-up, before frost.</summary>
    LayUp = 2,

    /// <summary>Each time the boat comes out of lay-up.</summary>
    Commissioning = 3,
}
