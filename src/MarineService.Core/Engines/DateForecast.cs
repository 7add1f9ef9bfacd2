using MarineService.Core.Internal;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Core.Engines;

/// <summary>When an engine reaches a number of hours: the expected date, and the range from repeating each past season.</summary>
public sealed class DateForecast
{
    private readonly SeasonalUse _use;
    private readonly int? _days;

    internal DateForecast(SeasonalUse use, EngineHours hours, int? days, IReadOnlyList<SeasonDate> bySeason)
    {
        (_use, _days, Hours, BySeason) = (use, days, hours, bySeason);
        Expected = use.DateAfter(days);
        Earliest = Expected;
        Latest = Expected;
        foreach (SeasonDate season in bySeason)
        {
            Earliest = Earliest is null || season.Date < Earliest ? season.Date ?? Earliest : Earliest;
            Latest = Latest is null || season.Date is null ? null : LocalDate.Max(Latest.Value, season.Date.Value);
        }
    }

    /// <summary>The engine's hours in all that are reached.</summary>
    public EngineHours Hours { get; }

    /// <summary>The expected date; null when the hours are not reached within ten years.</summary>
    public LocalDate? Expected { get; }

    /// <summary>The earliest date, of the past seasons and what is expected; null when none gets there within ten years.</summary>
    public LocalDate? Earliest { get; }

    /// <summary>The latest date, of the past seasons and what is expected; null when one of them does not get there within ten years.</summary>
    public LocalDate? Latest { get; }

    /// <summary>The date if each past season comes again; empty without a complete season.</summary>
    public IReadOnlyList<SeasonDate> BySeason { get; }

    /// <summary>Whether the last reading already shows the hours.</summary>
    public bool IsReached => _days == 0 && Hours.ToHours() <= LastHours;

    /// <summary>What the answer stands on.</summary>
    public ForecastBasis Basis => IsReached ? ForecastBasis.Readings : _use.Basis;

    /// <summary>How often the truth falls from <see cref="Earliest"/> to <see cref="Latest"/>, from 0 to 1; null when no range can be stated.</summary>
    public double? CoverageFraction => IsReached ? 1 : _use.CoverageFraction;

    /// <summary>Whether a declared plan takes part in the answer.</summary>
    public bool RestsOnPlan => !IsReached && _use.RestsOnPlan(_days ?? int.MaxValue);

    /// <summary>The median of the seasons' dates, quantile definition 7 rounded down to a day; null without a complete season, or when it is not reached within ten years.</summary>
    public LocalDate? MedianOfSeasons
    {
        get
        {
            // A season that never gets there is later than any that does.
            double[] days = [.. BySeason.Select(season => season.Date is LocalDate date ? CalendarDay.Of(date) : double.PositiveInfinity).OrderBy(day => day)];
            double median = days.Length == 0 ? double.PositiveInfinity : QuantileMath.Type7(days, 0.5);
            return Guard.IsFinite(median) ? CalendarDay.ToDate((int)Math.Floor(median)) : null;
        }
    }

    private decimal LastHours => _use.HoursOn(_use.LastReadingDate!.Value).Value.Expected.ToHours();

    /// <summary>Why: the basis, each season, how sure, and what straight lines would say.</summary>
    /// <param name="units">Which units to write; hours and dates are the same in all.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new($"{this}.");
        foreach (UseMethod method in IsReached ? [] : new[] { UseMethod.MeanRate, UseMethod.LastInterval })
        {
            Answer<LocalDate> other = _use.DateReaching(Hours, method);
            lines.AddIf(other.IsKnown && _use.Basis != ForecastBasis.MeanRate, "not taken", () => FormattableString.Invariant(
                $"{LocalDatePattern.Iso.Format(other.Value)} by {(method == UseMethod.MeanRate ? "the mean rate" : "the last two readings")}, {_use.SlopePerDay(method):0.####} h a day in summer and winter alike"));
        }

        return ForecastWords.Basis(lines, _use, Basis, RestsOnPlan, !IsReached && _use.RestsOnAssumedLayUp(_days ?? int.MaxValue / 2), BySeason.Select(season => season.ToString()));
    }

    /// <summary>The hours, the expected date and the range.</summary>
    /// <returns>Invariant text, such as "462.5 h about 2024-08-20, 2024-08-20 to 2024-08-26".</returns>
    public override string ToString() =>
        IsReached ? $"{Hours} reached by {Iso(Expected)}"
        : Expected is null && Earliest is null ? $"{Hours} not within ten years"
        : BySeason.Count < 2 ? $"{Hours} about {Iso(Expected)}"
        : $"{Hours} about {Iso(Expected)}, {Iso(Earliest)} to {Iso(Latest)}";

    private static string Iso(LocalDate? date) => date is LocalDate known ? LocalDatePattern.Iso.Format(known) : "beyond ten years";
}
