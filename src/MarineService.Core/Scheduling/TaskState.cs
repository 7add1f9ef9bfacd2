using MarineService.Core.Engines;

namespace MarineService.Core.Scheduling;

/// <summary>What is known of one task after some of the facts: from where its next due point is counted, and what is pending.</summary>
internal struct TaskState
{
    /// <summary>Whether there is anything to count from.</summary>
    internal bool HasRecord;

    internal DueBasis Basis;

    /// <summary>The interval in force: the recurring one, or that of the first service.</summary>
    internal ServiceInterval? Interval;

    internal int? AnchorDay;
    internal bool AnchorHoursKnown;
    internal long AnchorLower;
    internal long AnchorHours;

    /// <summary>A due point that was stated, not counted.</summary>
    internal int? StatedDay;
    internal long? StatedHours;

    internal int? LastDoneDay;
    internal HoursEstimate? LastDoneAt;
    internal bool LastDoneInFull;

    internal int? GridOrigin;
    internal int GridNext;

    /// <summary>A happening or a failed inspection that makes the task due at once; the earliest one.</summary>
    internal DueBasis? Pending;
    internal int PendingDay;
    internal int PendingSince;
    internal long? PendingHours;
    internal string? PendingKind;
}
