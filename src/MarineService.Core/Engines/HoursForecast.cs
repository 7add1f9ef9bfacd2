using MarineService.Core.Internal;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Core.Engines;

/// <summary>The engine's hours on a date: what is expected, and the range from repeating each past season.</summary>
public sealed class HoursForecast
{
    private readonly SeasonalUse _use;

    internal HoursForecast(SeasonalUse use, LocalDate date, double expected, double least, double most, IReadOnlyList<SeasonHours> bySeason)
    {
        _use = use;
        Date = date;
        Expected = UseMath.Kept(expected);
        Least = UseMath.Kept(least);
        Most = UseMath.Kept(most);
        BySeason = bySeason;
        IsAhead = date > use.LastReadingDate;
    }

    /// <summary>The date.</summary>
    public LocalDate Date { get; }

    /// <summary>The expected hours in all.</summary>
    public EngineHours Expected { get; }

    /// <summary>The fewest: of the past seasons and what is expected; before the last reading, what the readings allow.</summary>
    public EngineHours Least { get; }

    /// <summary>The most: of the past seasons and what is expected; before the last reading, what the readings allow.</summary>
    public EngineHours Most { get; }

    /// <summary>The hours if each past season comes again; empty before the last reading and without a complete season.</summary>
    public IReadOnlyList<SeasonHours> BySeason { get; }

    /// <summary>Whether the date lies after the last reading.</summary>
    public bool IsAhead { get; }

    /// <summary>What the answer stands on.</summary>
    public ForecastBasis Basis => IsAhead ? _use.Basis : ForecastBasis.Readings;

    /// <summary>How often the truth falls between <see cref="Least"/> and <see cref="Most"/>, from 0 to 1; null when no range can be stated.</summary>
    public double? CoverageFraction => !IsAhead ? 1 : _use.CoverageFraction;

    /// <summary>Whether a declared plan takes part in the answer.</summary>
    public bool RestsOnPlan => IsAhead && _use.RestsOnPlan(Period.DaysBetween(_use.LastReadingDate!.Value, Date));

    /// <summary>Why: the basis, each season, how sure.</summary>
    /// <param name="units">Which units to write; hours are the same in all.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new($"{this}.");
        return ForecastWords.Basis(lines, _use, Basis, RestsOnPlan, IsAhead && _use.RestsOnAssumedLayUp(Period.DaysBetween(_use.LastReadingDate!.Value, Date)), BySeason.Select(season => season.ToString()));
    }

    /// <summary>The hours and their range.</summary>
    /// <returns>Invariant text, such as "2024-08-13: 458.4 h, 451.0 h to 460.2 h".</returns>
    public override string ToString() =>
        FormattableString.Invariant($"{LocalDatePattern.Iso.Format(Date)}: {Expected:0.0}{(Least == Most ? "" : FormattableString.Invariant($", {Least:0.0} to {Most:0.0}"))}");
}
