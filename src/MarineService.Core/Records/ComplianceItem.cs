using MarineService.Core.Internal;
using MarineService.Core.Scheduling;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Core.Records;

/// <summary>One time that a task was due: whether it was done on time, as far as the record shows.</summary>
public sealed class ComplianceItem
{
    internal ComplianceItem(ServiceOccurrence occurrence, decimal tolerancePercent, EvidenceGrade? grade)
    {
        Occurrence = occurrence;
        TolerancePercent = tolerancePercent;
        Grade = grade;
        Verdict = Judge(occurrence, tolerancePercent, occurrence.LeastHoursLate, occurrence.MostHoursLate);
        EstimateVerdict = Judge(occurrence, tolerancePercent, occurrence.HoursLate, occurrence.HoursLate);
    }

    /// <summary>When it was due and when it was done.</summary>
    public ServiceOccurrence Occurrence { get; }

    /// <summary>The tolerance that counted, from 0 to 50 % of the interval.</summary>
    public decimal TolerancePercent { get; }

    /// <summary>What the record shows.</summary>
    public ComplianceVerdict Verdict { get; }

    /// <summary>What it would be if the estimated hours were exact; no proof.</summary>
    public ComplianceVerdict EstimateVerdict { get; }

    /// <summary>How well the completion is proved, or null when it was not done.</summary>
    public EvidenceGrade? Grade { get; }

    /// <summary>Whether it counts as kept.</summary>
    public bool IsKept => Verdict is ComplianceVerdict.Kept or ComplianceVerdict.KeptWithinTolerance;

    /// <summary>The first and the last day on which it counts as done on time; null when there is no due date.</summary>
    public (LocalDate From, LocalDate To)? Window => Occurrence.Window(TolerancePercent);

    /// <summary>Why the verdict is what it is.</summary>
    /// <param name="units">Which units to write; hours and dates are the same in all.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new($"{Occurrence.Task.Title}: {InWords(Verdict)}.");
        lines.AddIf(!Occurrence.Due.IsNone, "due", () => Occurrence.Due.ToString());
        lines.Add("done", Occurrence.DoneOn is LocalDate done
            ? $"{LocalDatePattern.Iso.Format(done)}{(Occurrence.DoneAt is { } at ? $" at {at}" : ", no reading")}"
            : "no completion");
        lines.AddIf(Occurrence.HoursLate is not null, "by hours", () => InWords(Occurrence.HoursLate!.Value, "h"));
        lines.AddIf(Occurrence.DaysLate is not null, "by calendar", () => InWords(Occurrence.DaysLate!.Value, "days"));
        lines.Add("tolerance", FormattableString.Invariant($"{TolerancePercent:0.##} %"));
        lines.AddIf(Verdict == ComplianceVerdict.CannotBeShown, "estimate", () => $"{InWords(EstimateVerdict)}, if the estimated hours were exact");
        lines.AddIf(Grade is not null, "evidence", () => Grade.ToString()!);
        IntervalRule rule = Verdict == ComplianceVerdict.CannotBeShown ? IntervalRule.CannotBeShown : IntervalRule.Tolerance;
        return lines.Add("rule", rule.ToString()).Build(rule.Citation);
    }

    /// <summary>The task, its due point and the verdict.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => $"{Occurrence.Task.Id}, due {Occurrence.Due}: {InWords(Verdict)}";

    // INTERVAL-21: the verdict is what both ends of the bounds agree on.
    private static ComplianceVerdict Judge(ServiceOccurrence occurrence, decimal percent, decimal? leastHours, decimal? mostHours)
    {
        if (occurrence.DoneOn is null)
        {
            return ComplianceVerdict.Missing;
        }

        if (occurrence.Due.IsNone)
        {
            return ComplianceVerdict.FirstOnRecord;
        }

        int days = occurrence.DaysLate ?? int.MinValue;
        int dayTolerance = occurrence.DueAt.ToleranceDays(percent);
        bool hoursCount = occurrence.Due.Hours is not null;
        decimal least = !hoursCount ? decimal.MinValue : leastHours ?? decimal.MinValue;
        decimal most = !hoursCount ? decimal.MinValue : mostHours ?? decimal.MaxValue;
        decimal tolerance = occurrence.DueAt.ToleranceHours(percent) / 1000m;
        return days > dayTolerance || least > tolerance ? ComplianceVerdict.Exceeded
            : most > tolerance ? ComplianceVerdict.CannotBeShown
            : days > 0 || most > 0 ? ComplianceVerdict.KeptWithinTolerance
            : ComplianceVerdict.Kept;
    }

    private static string InWords(ComplianceVerdict verdict) => verdict switch
    {
        ComplianceVerdict.Kept => "kept",
        ComplianceVerdict.KeptWithinTolerance => "kept within tolerance",
        ComplianceVerdict.Exceeded => "exceeded",
        ComplianceVerdict.CannotBeShown => "cannot be shown",
        ComplianceVerdict.Missing => "missing",
        _ => "first on record",
    };

    private static string InWords(decimal late, string unit) =>
        FormattableString.Invariant($"{Math.Abs(late):0.###} {unit} {(late > 0 ? "late" : late < 0 ? "early" : "off, to the point")}");
}
