using NodaTime;

namespace MarineService.Core.Oils;

/// <summary>One grade over a list of nights: how often it is accepted, and when it first is not.</summary>
public sealed class GradeSeason
{
    private readonly GradeTally _tally;

    internal GradeSeason(SaeGrade grade, GradeTally tally) => (Grade, _tally) = (grade, tally);

    /// <summary>The grade.</summary>
    public SaeGrade Grade { get; }

    /// <summary>How many nights with a possible start there are for which the grade is accepted.</summary>
    public int NightsAccepted => _tally.Accepted;

    /// <summary>How many nights with a possible start there are for which the grade is marginal.</summary>
    public int NightsMarginal => _tally.Marginal;

    /// <summary>How many nights with a possible start there are for which the grade is refused.</summary>
    public int NightsRefused => _tally.Refused;

    /// <summary>The earliest date in the list on which the grade is marginal or refused, or null when it is accepted on all.</summary>
    public LocalDate? FirstNotAccepted => _tally.FirstNotAccepted;

    /// <summary>The earliest date in the list on which the grade is refused, or null when it is on none.</summary>
    public LocalDate? FirstRefused => _tally.FirstRefused;

    /// <summary>The grade and its counts, invariant.</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() => FirstNotAccepted is LocalDate first
        ? FormattableString.Invariant($"{Grade.Designation}: accepted on {NightsAccepted} nights, marginal on {NightsMarginal}, refused on {NightsRefused}; first not accepted {NodaTime.Text.LocalDatePattern.Iso.Format(first)}")
        : FormattableString.Invariant($"{Grade.Designation}: accepted on all {NightsAccepted} nights with a start");
}
