using MarineService.Core.Internal;

namespace MarineService.Core.Oils;

/// <summary>What SAE J300 makes of a laboratory report: the grades that are met, the label, and what is missing for the rest.</summary>
/// <remarks>
/// <para>The default value is the classification of <see cref="OilTestReport.Empty"/>: nothing is known.</para>
/// <para>
/// Rule: a winter grade needs cranking, pumping without yield stress and the least viscosity at 100 °C, each at its own temperature;
/// a grade without W needs least ≤ ν(100 °C) &lt; below and its high-shear limit. A label carries at most one of each; of several
/// winter grades only the lowest. Speaks of new oil only. Source: SAE J300 table 1.
/// </para>
/// </remarks>
public readonly struct OilClassification : IEquatable<OilClassification>
{
    private readonly OilTestReport? _report;

    internal OilClassification(OilTestReport report)
    {
        _report = report;
        SaeWGrade? winter = J300Math.LowestMet(report);
        SaeNonWGrade? hot = J300Math.ThickestMet(report, winter);
        Label = winter is null && hot is null ? null : SaeGrade.Find(winter, hot);
    }

    /// <summary>The report that was classified.</summary>
    public OilTestReport Report => _report ?? OilTestReport.Empty;

    /// <summary>The grade that the data allow on the label, or null when they allow none; <see cref="Explain"/> says why.</summary>
    /// <remarks>
    /// Of several overlapping thin grades the thickest is named. J300 section 6 has a rule for that whose text was not seen.
    /// </remarks>
    public SaeGrade? Label { get; }

    /// <summary>The revision of SAE J300 that the limits are taken from.</summary>
    public static string Revision => OilSources.J300Revision;

    /// <summary>What would have to be measured to settle every grade that is still open; empty when none is.</summary>
    public IReadOnlyList<string> Missing => J300Words.Missing(Report, Label?.Winter);

    /// <summary>Whether the oil meets a winter grade.</summary>
    /// <param name="grade">The grade.</param>
    /// <returns>Met, not met, or not known.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="grade"/> is null.</exception>
    public GradeResult ResultFor(SaeWGrade grade) => J300Math.Check(Report, Guard.NotNull(grade));

    /// <summary>Whether the oil meets a grade without W, beside the winter grade of the label.</summary>
    /// <param name="grade">The grade.</param>
    /// <returns>Met, not met, or not known.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="grade"/> is null.</exception>
    public GradeResult ResultFor(SaeNonWGrade grade) => J300Math.Check(Report, Guard.NotNull(grade), Label?.Winter);

    /// <summary>The label, every grade with the figure that decided, and what is missing.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        SaeWGrade? winter = Label?.Winter;
        SaeNonWGrade? hot = Label?.Hot;
        OilTestReport report = Report;
        ExplanationBuilder lines = new(Label is SaeGrade label
            ? $"May be labelled {label}."
            : Missing.Count > 0 ? "No grade may be labelled from these data." : "Meets no SAE J300 grade.");
        foreach (SaeWGrade grade in SaeWGrade.All)
        {
            lines.Add(grade.Designation, J300Words.Why(report, grade, winter, units));
        }

        foreach (SaeNonWGrade grade in SaeNonWGrade.All)
        {
            lines.Add(grade.Designation, J300Words.Why(report, grade, winter, hot, units));
        }

        foreach (string missing in Missing)
        {
            lines.Add("missing", missing);
        }

        lines.Add("of", "new oil only; fuel-thinned, oxidized or sooted oil has no grade");
        return SaeNonWGrade.All.Count(grade => J300Math.Check(report, grade, winter) == GradeResult.Met) > 1
            ? lines.Add("overlap", "the thickest of the overlapping grades is named").Build(OilSources.J300, OilSources.J300Label, OilSources.J300Overlap)
            : lines.Build(OilSources.J300, OilSources.J300Label);
    }

    /// <summary>Whether two classifications are of the same report.</summary>
    /// <param name="other">The other one.</param>
    /// <returns>True when both were made from the same report object.</returns>
    public bool Equals(OilClassification other) => ReferenceEquals(Report, other.Report);

    /// <summary>Whether two classifications are of the same report.</summary>
    /// <param name="obj">The other one.</param>
    /// <returns>True when both were made from the same report object.</returns>
    public override bool Equals(object? obj) => obj is OilClassification other && Equals(other);

    /// <summary>A hash code of the report.</summary>
    /// <returns>The hash code.</returns>
    public override int GetHashCode() => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(Report);

    /// <summary>Whether two classifications are of the same report.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>True when equal.</returns>
    public static bool operator ==(OilClassification left, OilClassification right) => left.Equals(right);

    /// <summary>Whether two classifications are of different reports.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>True when not equal.</returns>
    public static bool operator !=(OilClassification left, OilClassification right) => !left.Equals(right);

    /// <summary>The label, or that there is none.</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() => Label?.ToString() ?? "no SAE J300 grade";
}
