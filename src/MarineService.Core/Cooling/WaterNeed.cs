using MarineService.Core.Engines;
using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Cooling;

/// <summary>How much raw water an engine needs at a power, for a rise of temperature.</summary>
public sealed class WaterNeed
{
    private const double LeastFlow = 0.1;
    private const double MostFlow = 10_000;

    private readonly double _rise;

    internal WaterNeed(HeatToWater heat, double riseKelvins, WaterKind water) => (HeatToWater, _rise, Water) = (heat, riseKelvins, water);

    /// <summary>The heat that is carried away.</summary>
    public HeatToWater HeatToWater { get; }

    /// <summary>The water.</summary>
    public WaterKind Water { get; }

    /// <summary>Outlet less intake.</summary>
    public TemperatureDelta Rise => TemperatureDelta.FromKelvins(_rise);

    /// <summary>The flow.</summary>
    public VolumeFlow Flow => VolumeFlow.FromLitersPerMinute(LitersPerMinute);

    /// <summary>The flow for the least share of heat that is likely.</summary>
    public VolumeFlow LeastLikelyFlow => VolumeFlow.FromLitersPerMinute(At(HeatToWater.LeastKilowatts));

    /// <summary>The flow for the highest share of heat that is likely.</summary>
    public VolumeFlow HighestLikelyFlow => VolumeFlow.FromLitersPerMinute(At(HeatToWater.HighestKilowatts));

    internal double LitersPerMinute => At(HeatToWater.Kilowatts);

    /// <summary>Flow, heat, rise and water.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        string Flow(double kilowatts) => FigureUnit.LiterPerMinute.Write(At(kilowatts), units);
        ExplanationBuilder lines = new($"{Flow(HeatToWater.Kilowatts)} of raw water.");
        lines.Add("span", $"{Flow(HeatToWater.LeastKilowatts)} to {Flow(HeatToWater.HighestKilowatts)}");
        lines.Add("heat", $"{FigureUnit.Kilowatt.Write(HeatToWater.Kilowatts, units)}, "
            + FormattableString.Invariant($"{HeatToWater.ShareRatio:0.##} of the shaft power"));
        lines.Add("rise", FigureUnit.Kelvin.Write(_rise, units));
        lines.Add("water", FormattableString.Invariant($"{WaterMath.HeatCapacity(Water):0.00} kJ/(L·K)"));
        return lines.Build(CoolingSources.HeatBalance, HeatToWater.Citation);
    }

    /// <summary>The answer in one line.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Explain(DisplayUnits.Metric).Answer;

    internal static double CheckedFlow(VolumeFlow flow, string argument) =>
        Guard.InRange(Canonical.LitersPerMinute(flow), LeastFlow, MostFlow, "L/min", argument);

    private double At(double kilowatts) => WaterMath.FlowLitersPerMinute(kilowatts, _rise, Water);
}
