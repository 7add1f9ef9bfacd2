using MarineService.Core.Engines;
using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Cooling;

/// <summary>How warm the raw water may be where it leaves the engine.</summary>
/// <remarks>
/// 54.4 °C (130 °F) belongs to heat exchangers, whose scale forms faster with heat; raw-water-cooled blocks run to about 60 °C, which is
/// common practice. The engine's own figure goes before both.
/// </remarks>
public sealed class DischargeLimit
{
    private DischargeLimit(double celsius, string name, Citation citation) => (Celsius, Name, Citation) = (celsius, name, citation);

    /// <summary>Behind a heat exchanger: 130 °F.</summary>
    public static DischargeLimit HeatExchanger { get; } = new((130 - 32) / 1.8, "heat exchanger", CoolingSources.Discharge);

    /// <summary>Behind a raw-water-cooled block: about 60 °C.</summary>
    public static DischargeLimit RawWaterBlock { get; } = new(60, "raw-water-cooled block", Citation.CommonPractice);

    /// <summary>The limit.</summary>
    public Temperature Limit => Temperature.FromDegreesCelsius(Celsius);

    /// <summary>What it belongs to.</summary>
    public string Name { get; }

    /// <summary>Where it comes from.</summary>
    public Citation Citation { get; }

    internal double Celsius { get; }

    /// <summary>The limit for a kind of cooling.</summary>
    /// <param name="cooling">How the block is cooled.</param>
    /// <returns>The limit; not known when the kind is not stated.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="cooling"/> is not a defined value.</exception>
    public static Answer<DischargeLimit> For(CoolingKind cooling) => Guard.Defined(cooling) switch
    {
        CoolingKind.FreshWater => Answer.Known(HeatExchanger),
        CoolingKind.RawWater => Answer.Known(RawWaterBlock),
        _ => Answer.NotKnown<DischargeLimit>("Whether the engine is raw-water or fresh-water cooled, or its maker's limit."),
    };

    /// <summary>The limit that the engine's maker states.</summary>
    /// <param name="limit">From 30 to 95 °C.</param>
    /// <returns>The limit.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="limit"/> is outside its range.</exception>
    public static DischargeLimit Given(Temperature limit) =>
        new(Guard.InRange(Canonical.Celsius(limit), 30, 95, "°C", nameof(limit)), "given", Citation.GivenByCaller);

    /// <summary>How far the water may warm up from an intake temperature.</summary>
    /// <param name="intake">From -3 to 45 °C.</param>
    /// <returns>The room; negative when the intake is already warmer than the limit.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="intake"/> is outside its range.</exception>
    public TemperatureDelta RoomForRise(Temperature intake) =>
        TemperatureDelta.FromKelvins(Celsius - CheckedIntake(intake, nameof(intake)));

    /// <summary>Judges temperatures that were measured warm and under load.</summary>
    /// <param name="intake">Of the water alongside, from -3 to 45 °C.</param>
    /// <param name="outlet">Where the raw water leaves the engine, from -3 to 120 °C.</param>
    /// <returns>What was found; empty when the outlet is below the limit.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is outside its range.</exception>
    public IReadOnlyList<Finding> Judge(Temperature intake, Temperature outlet)
    {
        double cold = CheckedIntake(intake, nameof(intake));
        double warm = Guard.InRange(Canonical.Celsius(outlet), -3, 120, "°C", nameof(outlet));
        Figure[] figures =
        [
            Figure.Of("outlet", warm, FigureUnit.DegreeCelsius),
            Figure.Of("intake", cold, FigureUnit.DegreeCelsius),
            Figure.Of("limit", Celsius, FigureUnit.DegreeCelsius),
            Figure.Of("rise", warm - cold, FigureUnit.Kelvin),
            Figure.Of("what", Name),
        ];
        return warm < cold ? [WaterRules.ColderThanIntake.On("raw water", figures)]
            : warm >= Celsius ? [WaterRules.TooWarm.On("raw water", figures)]
            : [];
    }

    /// <summary>Limit and what it belongs to.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{Name}: below {Celsius:0.#} °C");

    private static double CheckedIntake(Temperature intake, string argument) => Guard.InRange(Canonical.Celsius(intake), -3, 45, "°C", argument);
}
