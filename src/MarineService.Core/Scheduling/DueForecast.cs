using MarineService.Core.Engines;
using MarineService.Core.Internal;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Core.Scheduling;

/// <summary>When a task is expected to fall due: by the calendar, by the hours as past seasons ran them, and which of both comes first.</summary>
/// <remarks>
/// The calendar limb is certain; the hours limb is a forecast with the range of repeating each past season. The earlier limb makes the
/// task due, in the expected course as in each season. What is due at once, at the lay-up or at commissioning needs no forecast.
/// </remarks>
public sealed class DueForecast
{
    private readonly SeasonalUse _use;

    internal DueForecast(TaskDue task, SeasonalUse use)
    {
        (Task, _use) = (task, use);
        DuePoint due = task.IntervalDue;
        Calendar = IsByInterval ? due.Date : null;
        Hours = !IsByInterval ? Answer.NotKnown<DateForecast>("Hours do not decide when it is due.")
            : due.Hours is EngineHours hours ? use.DateReaching(hours)
            : Answer.NotKnown<DateForecast>(UsesHours ? [.. task.Missing] : ["The task has no hours limb."]);
        LocalDate? atOnce = IsByInterval ? null : task.Due.Date ?? task.PlanDate;
        Expected = atOnce ?? First(Calendar, Hours.IsKnown ? Hours.Value.Expected : null);
        Earliest = atOnce ?? (AreHoursMissing ? null : First(Calendar, SafeEarliest(due)));
        Latest = atOnce ?? First(Calendar, Hours.IsKnown ? Hours.Value.Latest : null);
        Governs = !IsByInterval ? task.Governs : AreHoursMissing ? GoverningLimb.None : Earlier(Hours.IsKnown ? Hours.Value.Expected : null);
    }

    /// <summary>The task as it stands.</summary>
    public TaskDue Task { get; }

    /// <summary>The date by the calendar limb, or null when it has none or is due for another reason.</summary>
    public LocalDate? Calendar { get; }

    /// <summary>When the hours limb is reached; not known without an hours limb, without two readings, or without a reading at the last completion.</summary>
    public Answer<DateForecast> Hours { get; }

    /// <summary>The limb that is expected to come first; None when that is not known, or when there is no due date.</summary>
    public GoverningLimb Governs { get; }

    /// <summary>The expected date: the earlier of both limbs; null when no date is known.</summary>
    public LocalDate? Expected { get; }

    /// <summary>The earliest date if a past season or the expected course comes again; null when the hours limb is not known.</summary>
    public LocalDate? Earliest { get; }

    /// <summary>The latest date if a past season or the expected course comes again; null when nothing sets one within ten years.</summary>
    public LocalDate? Latest { get; }

    /// <summary>How many past seasons, come again, would let the hours decide before the calendar does.</summary>
    public int SeasonsByHours => Hours.IsKnown ? Hours.Value.BySeason.Count(season => season.Date is LocalDate date && (Calendar is null || date < Calendar)) : 0;

    /// <summary>How often the truth falls from <see cref="Earliest"/> to <see cref="Latest"/>, from 0 to 1; null when no range can be stated.</summary>
    public double? CoverageFraction => AreHoursMissing ? null : Hours.IsKnown ? Hours.Value.CoverageFraction : 1;

    /// <summary>What would settle what is not known; empty when all is known.</summary>
    public IReadOnlyList<string> Missing => AreHoursMissing ? Hours.Missing : Expected is null ? Task.Missing : [];

    private bool IsByInterval => Task.Basis is DueBasis.LastDone or DueBasis.FirstService or DueBasis.NewEngine or DueBasis.Opening or DueBasis.Grid;

    private bool UsesHours => Task.HoursLimb != LimbState.NotUsed;

    private bool AreHoursMissing => IsByInterval && UsesHours && !Hours.IsKnown;

    /// <summary>The one reading that would sharpen the forecast most, and by when to take it.</summary>
    /// <param name="noticeDays">How many days before the earliest date it must be known, from 0 to 365; 14 is a choice of this project.</param>
    /// <returns>The day to read the meter on, with the reason; not known when no reading would change the date.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="noticeDays"/> is outside its range.</exception>
    public Answer<ReadingAdvice> ReadAgain(int noticeDays = 14)
    {
        Guard.InRange(noticeDays, 0, 365, "days");
        return ReadingAdvice.For(this, _use, noticeDays);
    }

    /// <summary>Why: both limbs, the seasons, what they stand on, how sure, and which reading would help.</summary>
    /// <param name="units">Which units to write; hours and dates are the same in all.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new($"{Task.TaskId}: {this}.");
        lines.AddIf(Calendar is not null, "by calendar", () => Iso(Calendar));
        lines.AddIf(UsesHours && IsByInterval, "by hours", () => Hours.IsKnown ? Hours.Value.ToString() : "not known");
        foreach (string missing in Missing)
        {
            lines.Add("missing", missing);
        }

        Explanation? hours = Hours.IsKnown ? Hours.Value.Explain(units) : null;
        foreach (ExplanationLine line in hours?.Lines ?? [])
        {
            lines.Add(line.Label, line.Text);
        }

        Answer<ReadingAdvice> reading = ReadAgain();
        lines.AddIf(reading.IsKnown, "read again", () => reading.Value.ToString());
        return lines.Build([.. hours?.Citations ?? [Task.Task.Source]]);
    }

    /// <summary>The expected date, the limb that decides, and the range.</summary>
    /// <returns>Invariant text, such as "expected 2024-08-13 by calendar; by hours 2024-08-20 to 2024-08-26".</returns>
    public override string ToString()
    {
        if (Expected is null)
        {
            return Hours.IsKnown && IsByInterval ? "not within ten years" : "no date";
        }

        string text = $"expected {Iso(Expected)}";
        text += Governs switch
        {
            GoverningLimb.Hours => $" by hours{Range()}{(Calendar is null ? "" : $"; by calendar {Iso(Calendar)}")}",
            GoverningLimb.Calendar when Hours.IsKnown => $" by calendar; by hours {HoursRange()}",
            GoverningLimb.Calendar => " by calendar",
            GoverningLimb.Both => " by hours and calendar",
            _ => "",
        };
        return AreHoursMissing ? text + " at the latest; by hours not known" : text;
    }

    internal LocalDate? HoursEarliest => Hours.IsKnown ? SafeEarliest(Task.IntervalDue) : null;

    internal bool MayNeedReading => AreHoursMissing;

    // Where the last completion had no reading, the fewest hours at which it may be due set the earliest date.
    private LocalDate? SafeEarliest(DuePoint due) =>
        !Hours.IsKnown ? null
        : due.SafeHours is EngineHours safe && safe < due.Hours ? _use.DateReaching(safe).Value.Earliest
        : Hours.Value.Earliest;

    private GoverningLimb Earlier(LocalDate? byHours) =>
        (byHours, Calendar) switch
        {
            (null, null) => GoverningLimb.None,
            (null, _) => GoverningLimb.Calendar,
            (_, null) => GoverningLimb.Hours,
            ({ } hours, { } calendar) => hours < calendar ? GoverningLimb.Hours : hours > calendar ? GoverningLimb.Calendar : GoverningLimb.Both,
        };

    private string Range() => Earliest == Latest ? "" : $", {Iso(Earliest)} to {Iso(Latest)}";

    private string HoursRange() =>
        Hours.Value.Earliest is not LocalDate earliest ? "not within ten years"
        : earliest == Hours.Value.Latest ? Iso(earliest)
        : $"{Iso(earliest)} to {Iso(Hours.Value.Latest)}";

    private static LocalDate? First(LocalDate? left, LocalDate? right) =>
        left is LocalDate one && right is LocalDate other ? LocalDate.Min(one, other) : left ?? right;

    private static string Iso(LocalDate? date) => date is LocalDate known ? LocalDatePattern.Iso.Format(known) : "beyond ten years";
}
