using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Oils;

/// <summary>One temperature limit of a grade, and how far the expected temperature is inside it.</summary>
public sealed class TemperatureLimit
{
    private readonly double _celsius;
    private readonly double? _judgedCelsius;
    private readonly double _addedKelvins;

    internal TemperatureLimit(TemperatureLimitKind kind, double celsius, double? judgedCelsius, bool takesPart, Citation citation, double addedKelvins = 0) =>
        (Kind, _celsius, _judgedCelsius, TakesPart, Citation, _addedKelvins) = (kind, celsius, judgedCelsius, takesPart, citation, addedKelvins);

    /// <summary>What kind of limit it is.</summary>
    public TemperatureLimitKind Kind { get; }

    /// <summary>The limit.</summary>
    public Temperature Temperature => Temperature.FromDegreesCelsius(_celsius);

    /// <summary>How far the expected temperature is inside the limit; negative when outside; not known without that temperature.</summary>
    public Answer<TemperatureDelta> Margin => MarginKelvins is double kelvins
        ? Answer.Known(TemperatureDelta.FromKelvins(kelvins))
        : Answer.NotKnown<TemperatureDelta>("The hottest ambient that is expected.");

    /// <summary>False when the limit is only shown beside the ones that decide.</summary>
    public bool TakesPart { get; }

    /// <summary>Where the limit comes from.</summary>
    public Citation Citation { get; }

    internal double Celsius => _celsius;

    internal double? MarginKelvins => _judgedCelsius is not double judged ? null
        : OilGuard.Round(Kind == TemperatureLimitKind.MakersHottest ? _celsius - judged : judged - _celsius);

    /// <summary>The limit in words, metric and invariant: "floor -20 °C = SAE J300 cranking -25 °C + 5 K".</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() => ToString(DisplayUnits.Metric);

    /// <summary>The limit in words.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Invariant text.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public string ToString(DisplayUnits units)
    {
        Guard.Defined(units);
        string at = FigureUnit.DegreeCelsius.Write(_celsius, units);
        return Kind switch
        {
            TemperatureLimitKind.CrankingWithMargin =>
                $"floor {at} = SAE J300 cranking {FigureUnit.DegreeCelsius.Write(_celsius - _addedKelvins, units)} + {FigureUnit.Kelvin.Write(_addedKelvins, units)}",
            TemperatureLimitKind.Cranking => $"SAE J300 cranking {at}, no unheated start below it",
            TemperatureLimitKind.Pumping => $"SAE J300 pumping {at}, oil flow not assured below it",
            TemperatureLimitKind.CustomaryChart => $"customary chart {at}",
            TemperatureLimitKind.WarmestPublished => $"warmest published figure {at}",
            TemperatureLimitKind.WithoutWinterGrade => $"customary {at} (no W grade, so SAE J300 sets no cold limit)",
            TemperatureLimitKind.MakersColdest => $"maker's coldest {at}",
            _ => $"maker's hottest {at}",
        };
    }
}
