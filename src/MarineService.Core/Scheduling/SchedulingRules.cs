namespace MarineService.Core.Scheduling;

/// <summary>What can be odd about the facts that a due list is made from.</summary>
public static class SchedulingRules
{
    /// <summary>Entries dated after the day that the list is made for.</summary>
    public static FindingRule AfterToday { get; } = new(
        "DUE-001",
        Severity.Note,
        "Entries dated after today do not count yet",
        "{entries} entries are dated after {today} and are left out",
        Citation.ProjectChoice,
        "Look at their dates; a year typed wrong is a common slip.");

    /// <summary>The same completion entered twice.</summary>
    public static FindingRule EnteredTwice { get; } = new(
        "DUE-002",
        Severity.Note,
        "Two identical completions count once",
        "the completion of {date} was entered twice and counts once",
        IntervalRule.CountedOnce.Citation);

    /// <summary>An entry for a task that the specification does not know.</summary>
    public static FindingRule UnknownTask { get; } = new(
        "DUE-003",
        Severity.Advice,
        "Entries name a task of the specification",
        "the entry of {date} names a task that the specification does not have",
        Citation.ProjectChoice,
        "Correct the task's id in the entry, or add the task.");

    /// <summary>A happening that no task answers.</summary>
    public static FindingRule UnansweredEvent { get; } = new(
        "DUE-004",
        Severity.Advice,
        "Each happening makes some task due",
        "{kind} on {date} makes no task due",
        Citation.ProjectChoice,
        "Look into it all the same, and say in the specification which tasks it makes due.");

    /// <summary>Hours are not known since the last completion.</summary>
    public static FindingRule ReadingWanted { get; } = new(
        "DUE-005",
        Severity.Advice,
        "The hours limb needs a reading since the last completion",
        "no reading since {last done}; whether it is due by hours is not known",
        IntervalRule.ReadingWanted.Citation,
        "Read the hour meter.");

    /// <summary>The last reading is old.</summary>
    public static FindingRule OldReading { get; } = new(
        "DUE-006",
        Severity.Advice,
        "Hours are as fresh as the last reading",
        "last read on {last reading}, {days} ago; what ran since is not counted",
        Citation.ProjectChoice,
        "Read the hour meter.");

    /// <summary>A partial exchange so close to the threshold that the measurement cannot tell.</summary>
    public static FindingRule FractionInsideNoise { get; } = new(
        "DUE-007",
        Severity.Advice,
        "An exchange close to the threshold is decided by noise",
        "{fraction} of the fluid was exchanged on {date}, within two standard uncertainties ({uncertainty} each) of the threshold {threshold}",
        IntervalRule.PartialExchange.Citation,
        "Treat it as not exchanged if in doubt, or change the fluid again.");

    /// <summary>A passed or failed result on a task that is not an inspection.</summary>
    public static FindingRule ResultWithoutInspection { get; } = new(
        "DUE-008",
        Severity.Advice,
        "Only inspections pass or fail",
        "the entry of {date} gives an inspection result, but the task is no inspection; it is not counted",
        Citation.ProjectChoice,
        "Enter the result under the inspection's id, or enter the task as done.");

    /// <summary>The engine ran after it was laid up.</summary>
    public static FindingRule LayUpVoided { get; } = new(
        "DUE-009",
        Severity.Act,
        "Running the engine undoes its lay-up",
        "laid up at {laid up at}, but the engine had run {ran since} more by {read on}; drain, antifreeze and fogging no longer stand",
        IntervalRule.LayUpVoided.Citation,
        "Lay the engine up again before frost; water left in the block freezes and cracks it.");

    /// <summary>An inspection that failed and was not put right yet.</summary>
    public static FindingRule FailedInspection { get; } = new(
        "DUE-010",
        Severity.Act,
        "What failed its inspection is put right before use",
        "failed its inspection on {date} and was not put right since",
        IntervalRule.ReplaceIncludesInspect.Citation,
        "Do it now; there is no tolerance on a failed inspection.");

    /// <summary>A fixed grid without an origin.</summary>
    public static FindingRule GridWithoutOrigin { get; } = new(
        "DUE-011",
        Severity.Advice,
        "A fixed grid needs its origin",
        "the dates of this task are fixed by a third party, but their origin is not in the log",
        IntervalRule.FixedGrid.Citation,
        "Enter the date from which they are counted.");

    // An hour meter read within two months is as fresh as owners keep it in season.
    internal const int OldReadingDays = 60;
}
