using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Records;

/// <summary>Whether an engine's tasks were done on time, occurrence by occurrence, and what would mend what cannot be shown.</summary>
public sealed class ComplianceReport
{
    internal ComplianceReport(LocalDate asOf, ComplianceBasis basis, IReadOnlyList<ComplianceItem> items, IReadOnlyList<Finding> findings) =>
        (AsOf, Basis, Items, Findings) = (asOf, basis, items, findings);

    /// <summary>The day up to which entries count.</summary>
    public LocalDate AsOf { get; }

    /// <summary>Which tolerance counted.</summary>
    public ComplianceBasis Basis { get; }

    /// <summary>Every occurrence, task by task in the order of the specification, each in the order of time.</summary>
    public IReadOnlyList<ComplianceItem> Items { get; }

    /// <summary>What stands against full compliance, and how to mend it.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>How many occurrences count: all but the first on record.</summary>
    public int Of => Items.Count(item => item.Verdict != ComplianceVerdict.FirstOnRecord);

    /// <summary>How many of them were kept, with or without tolerance.</summary>
    public int Kept => Items.Count(item => item.IsKept);

    /// <summary>The occurrences that cannot be shown.</summary>
    public IReadOnlyList<ComplianceItem> Unproved => [.. Items.Where(item => item.Verdict == ComplianceVerdict.CannotBeShown)];

    /// <summary>The exceeded occurrence that is latest as a share of its interval; null when none was exceeded.</summary>
    public ComplianceItem? WorstExcess => Items
        .Where(item => item.Verdict == ComplianceVerdict.Exceeded)
        .OrderByDescending(Excess)
        .FirstOrDefault();

    /// <summary>How many were kept of how many.</summary>
    /// <returns>Invariant text, such as "3 of 4 kept".</returns>
    public override string ToString() => FormattableString.Invariant($"{Kept} of {Of} kept");

    private static double Excess(ComplianceItem item)
    {
        ServiceOccurrence occurrence = item.Occurrence;
        DueAt due = occurrence.DueAt;
        double hours = occurrence.HoursLate is decimal late && due.Limb > 0 ? (double)late * 1000 / due.Limb : 0;
        double days = occurrence.DaysLate is int daysLate && due.Months > 0 ? daysLate / (30.0 * due.Months) : 0;
        return Math.Max(hours, days);
    }
}
