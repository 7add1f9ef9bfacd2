namespace MarineService.Core.Scheduling;

/// <summary>How a doing of a task ended.</summary>
public enum CompletionOutcome
{
    /// <summary>It was done; an inspection found nothing wrong. The default value.</summary>
    Done = 0,

    /// <summary>The inspection passed.</summary>
    Passed = 1,

    /// <summary>The inspection failed.</summary>
    Failed = 2,
}
