using MarineService.Core.Internal;

namespace MarineService.Core.Scheduling;

/// <summary>One rule of how intervals are kept: its code, its sentence and its source. A closed list.</summary>
/// <remarks>Each rule is explained with a worked line in <c>docs/intervals.md</c>. A source "project choice" means that nobody publishes it.</remarks>
public sealed class IntervalRule
{
    private IntervalRule(int number, string title, Citation citation) =>
        (Code, Title, Citation) = (FormattableString.Invariant($"INTERVAL-{number:00}"), Guard.NotBlank(title), citation);

    /// <summary>Due at anchor plus interval, by hours or by date, whichever is reached first; both ends count.</summary>
    public static IntervalRule WhicheverFirst { get; } =
        new(1, "Due at anchor plus interval, by hours or by date, whichever is reached first; both ends count", Citation.Secondary("TM 9-2350-287-20-1", clause: "paragraph 2-13"));

    /// <summary>Whole months are added; the last day of a short month stands for a day it does not have.</summary>
    public static IntervalRule MonthEnd { get; } =
        new(2, "Whole months are added; the last day of a short month stands for a day it does not have", Citation.ProjectChoice);

    /// <summary>A series of dates is counted from its origin, never from the date before.</summary>
    public static IntervalRule NoDrift { get; } =
        new(3, "A series of dates is counted from its origin, never from the date before", Citation.ProjectChoice);

    /// <summary>Within the tolerance a task is due, beyond it overdue; ten percent unless stated, 30 days to the month.</summary>
    public static IntervalRule Tolerance { get; } =
        new(4, "Within the tolerance a task is due, beyond it overdue; ten percent unless stated, 30 days to the month", Citation.Secondary("DA PAM 750-8", clause: "service windows of 10 %, as explained in PS Magazine TB 43-PS-569, -580 and -636"));

    /// <summary>Due soon within a tenth of the hours, or within 30 days, three days a month for short intervals.</summary>
    public static IntervalRule DueSoon { get; } =
        new(5, "Due soon within a tenth of the hours, or within 30 days, three days a month for short intervals", Citation.ProjectChoice);

    /// <summary>The next interval is counted from the date and hours at which the task was done.</summary>
    public static IntervalRule DonePoint { get; } =
        new(6, "The next interval is counted from the date and hours at which the task was done", Citation.CommonPractice);

    /// <summary>What was late is charged to the next interval; early work earns nothing.</summary>
    public static IntervalRule ChargeLateExcess { get; } =
        new(7, "What was late is charged to the next interval; early work earns nothing", Citation.Published("14 CFR 91.409(b)"));

    /// <summary>Inside the tolerance the task counts as done at its due point, outside it where it was done.</summary>
    public static IntervalRule SnapWithinWindow { get; } =
        new(8, "Inside the tolerance the task counts as done at its due point, outside it where it was done", Citation.Secondary("DA PAM 750-8", clause: "as explained in PS Magazine TB 43-PS-569, -580 and -636"));

    /// <summary>Dates fall on origin plus whole intervals; a late completion closes every open date once, an early one outside the window closes none.</summary>
    public static IntervalRule FixedGrid { get; } =
        new(9, "Dates fall on origin plus whole intervals; a late completion closes every open date once, an early one outside the window closes none", Citation.ProjectChoice);

    /// <summary>Each limb is anchored for itself.</summary>
    public static IntervalRule LimbsApart { get; } =
        new(10, "Each limb is anchored for itself", Citation.ProjectChoice);

    /// <summary>Replacing resets replacement and inspection; a passed inspection resets the inspection alone; a failed one makes the replacement due at once, without tolerance.</summary>
    public static IntervalRule ReplaceIncludesInspect { get; } =
        new(11, "Replacing resets replacement and inspection; a passed inspection resets the inspection alone; a failed one makes the replacement due at once, without tolerance", Citation.CommonPractice);

    /// <summary>A top-up or another task's completion resets nothing.</summary>
    public static IntervalRule OwnTaskOnly { get; } =
        new(12, "A top-up or another task's completion resets nothing", Citation.CommonPractice);

    /// <summary>Part of a fluid exchanged counts in full from the threshold, else not at all; or the old part keeps its age.</summary>
    public static IntervalRule PartialExchange { get; } =
        new(13, "Part of a fluid exchanged counts in full from the threshold, else not at all; or the old part keeps its age", Citation.ProjectChoice);

    /// <summary>A new or rebuilt engine has a shorter first interval, counted from its zero; the recurring one starts when it is done.</summary>
    public static IntervalRule FirstService { get; } =
        new(14, "A new or rebuilt engine has a shorter first interval, counted from its zero; the recurring one starts when it is done", Citation.CommonPractice);

    /// <summary>Severe duty multiplies the interval; months are rounded down, one at least.</summary>
    public static IntervalRule SevereDuty { get; } =
        new(15, "Severe duty multiplies the interval; months are rounded down, one at least", Citation.CommonPractice);

    /// <summary>Of several conditions the smallest factor counts, never the product.</summary>
    public static IntervalRule SmallestFactor { get; } =
        new(16, "Of several conditions the smallest factor counts, never the product", Citation.ProjectChoice);

    /// <summary>When duty changes, the share of life used so far stays used.</summary>
    public static IntervalRule LifeUsed { get; } =
        new(17, "When duty changes, the share of life used so far stays used", Citation.ProjectChoice);

    /// <summary>Engine hours are summed over all meters and what ran without one.</summary>
    public static IntervalRule HoursInAll { get; } =
        new(18, "Engine hours are summed over all meters and what ran without one", Citation.CommonPractice);

    /// <summary>A falling or impossible reading is refused and the last good one stays.</summary>
    public static IntervalRule ReadingsThatFall { get; } =
        new(19, "A falling or impossible reading is refused and the last good one stays", Citation.ProjectChoice);

    /// <summary>A completion without a reading takes its hours from the readings around it, with these as bounds.</summary>
    public static IntervalRule InterpolatedHours { get; } =
        new(20, "A completion without a reading takes its hours from the readings around it, with these as bounds", Citation.ProjectChoice);

    /// <summary>Kept when the upper bound is inside, exceeded when the lower bound is outside, else it cannot be shown.</summary>
    public static IntervalRule CannotBeShown { get; } =
        new(21, "Kept when the upper bound is inside, exceeded when the lower bound is outside, else it cannot be shown", Citation.ProjectChoice);

    /// <summary>Without a reading since the last completion the hours limb is not known; the calendar stands.</summary>
    public static IntervalRule ReadingWanted { get; } =
        new(22, "Without a reading since the last completion the hours limb is not known; the calendar stands", Citation.ProjectChoice);

    /// <summary>Ageing goes on in lay-up; only wear that needs running is suspended.</summary>
    public static IntervalRule AgeingInLayUp { get; } =
        new(23, "Ageing goes on in lay-up; only wear that needs running is suspended", Citation.CommonPractice);

    /// <summary>A due date inside a lay-up is pulled forward, deferred to commissioning, or left as it is.</summary>
    public static IntervalRule DueInLayUp { get; } =
        new(24, "A due date inside a lay-up is pulled forward, deferred to commissioning, or left as it is", Citation.CommonPractice);

    /// <summary>Running the engine undoes its lay-up: drain, antifreeze and fogging are due at once.</summary>
    public static IntervalRule LayUpVoided { get; } =
        new(25, "Running the engine undoes its lay-up: drain, antifreeze and fogging are due at once", Citation.CommonPractice);

    /// <summary>A higher service resets the lower ones, each in its own window; a lower one never resets a higher.</summary>
    public static IntervalRule HigherIncludesLower { get; } =
        new(26, "A higher service resets the lower ones, each in its own window; a lower one never resets a higher", Citation.Secondary("DA PAM 750-8", clause: "as explained in PS Magazine TB 43-PS-569, -580 and -636"));

    /// <summary>When a higher and a lower service fall together the lower is done with the higher.</summary>
    public static IntervalRule TogetherOnce { get; } =
        new(27, "When a higher and a lower service fall together the lower is done with the higher", Citation.CommonPractice);

    /// <summary>A happening makes a task due at once and leaves its interval untouched.</summary>
    public static IntervalRule EventTrigger { get; } =
        new(28, "A happening makes a task due at once and leaves its interval untouched", Citation.CommonPractice);

    /// <summary>Entries count in the order of their dates and hours, in whatever order they were made.</summary>
    public static IntervalRule Recompute { get; } =
        new(29, "Entries count in the order of their dates and hours, in whatever order they were made", Citation.ProjectChoice);

    /// <summary>Before it is due, the limb with the larger used share governs.</summary>
    public static IntervalRule UsedFraction { get; } =
        new(30, "Before it is due, the limb with the larger used share governs", Citation.ProjectChoice);

    /// <summary>Two identical completions count once.</summary>
    public static IntervalRule CountedOnce { get; } =
        new(31, "Two identical completions count once", Citation.ProjectChoice);

    /// <summary>A task without a record is due now, never fresh.</summary>
    public static IntervalRule NoRecord { get; } =
        new(32, "A task without a record is due now, never fresh", Citation.CommonPractice);

    /// <summary>All rules in the order of their codes.</summary>
    public static IReadOnlyList<IntervalRule> All { get; } = Array.AsReadOnly(
        new[]
        {
            WhicheverFirst,
            MonthEnd,
            NoDrift,
            Tolerance,
            DueSoon,
            DonePoint,
            ChargeLateExcess,
            SnapWithinWindow,
            FixedGrid,
            LimbsApart,
            ReplaceIncludesInspect,
            OwnTaskOnly,
            PartialExchange,
            FirstService,
            SevereDuty,
            SmallestFactor,
            LifeUsed,
            HoursInAll,
            ReadingsThatFall,
            InterpolatedHours,
            CannotBeShown,
            ReadingWanted,
            AgeingInLayUp,
            DueInLayUp,
            LayUpVoided,
            HigherIncludesLower,
            TogetherOnce,
            EventTrigger,
            Recompute,
            UsedFraction,
            CountedOnce,
            NoRecord,
        });

    /// <summary>The stable code, such as "INTERVAL-01"; never reused.</summary>
    public string Code { get; }

    /// <summary>The rule in one sentence.</summary>
    public string Title { get; }

    /// <summary>Where it comes from.</summary>
    public Citation Citation { get; }

    /// <summary>Code and sentence.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => $"{Code} {Title}";
}
