using MarineService.Core.Engines;
using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Cooling;

/// <summary>The heat that an engine gives to its raw water: its share of the shaft power, with the span in which such shares lie.</summary>
/// <remarks>
/// Share 0.6 to 0.9 for diesel, 1.0 to 1.3 for petrol (from memory, by the rule of thirds: one text gives 33 % of the heat to the crank and
/// 7 % to the engine room, the rest to water and exhaust). The maker's heat figure goes before it.
/// </remarks>
/// <example><code>
/// HeatToWater.Of(Power.FromKilowatts(100), Fuel.Diesel).Value.FlowFor(TemperatureDelta.FromKelvins(15), WaterKind.Salt);   // 78.2 L/min
/// </code></example>
public sealed class HeatToWater
{
    internal const double MostKilowatts = 5000;

    private readonly double _kilowatts;

    private HeatToWater(double kilowatts, double ratio, double low, double high, Citation citation) =>
        (_kilowatts, ShareRatio, LeastShareRatio, HighestShareRatio, Citation) = (kilowatts, ratio, low, high, citation);

    /// <summary>The power at the shaft.</summary>
    public Power ShaftPower => Power.FromKilowatts(_kilowatts);

    /// <summary>Heat to water over shaft power.</summary>
    public double ShareRatio { get; }

    /// <summary>The least share that is likely.</summary>
    public double LeastShareRatio { get; }

    /// <summary>The highest share that is likely.</summary>
    public double HighestShareRatio { get; }

    /// <summary>Where the share comes from.</summary>
    public Citation Citation { get; }

    /// <summary>The heat to the water.</summary>
    public Power Heat => Power.FromKilowatts(Kilowatts);

    internal double Kilowatts => _kilowatts * ShareRatio;

    internal double LeastKilowatts => _kilowatts * LeastShareRatio;

    internal double HighestKilowatts => _kilowatts * HighestShareRatio;

    /// <summary>The heat of an engine at a power.</summary>
    /// <param name="shaftPower">From 0.5 to 5,000 kW.</param>
    /// <param name="fuel">What it burns.</param>
    /// <returns>The heat; not known when the fuel is not stated.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Answer<HeatToWater> Of(Power shaftPower, Fuel fuel)
    {
        double power = Checked(shaftPower);
        return Guard.Defined(fuel) switch
        {
            Fuel.Diesel => Answer.Known(new HeatToWater(power, 0.8, 0.6, 0.9, Citation.FromMemory)),
            Fuel.Petrol => Answer.Known(new HeatToWater(power, 1.1, 1.0, 1.3, Citation.FromMemory)),
            _ => Answer.NotKnown<HeatToWater>("What the engine burns, or its maker's heat to the water."),
        };
    }

    /// <summary>The heat by a share that the maker states.</summary>
    /// <param name="shaftPower">From 0.5 to 5,000 kW.</param>
    /// <param name="shareRatio">Heat to water over shaft power, from 0.1 to 3 (ratio).</param>
    /// <returns>The heat.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static HeatToWater Given(Power shaftPower, double shareRatio)
    {
        double share = Guard.InRange(shareRatio, 0.1, 3, "(ratio)");
        return new(Checked(shaftPower), share, share, share, Citation.GivenByCaller);
    }

    /// <summary>The flow that carries the heat away at a rise of temperature.</summary>
    /// <param name="rise">Outlet less intake; from 1 to 60 K. 10 to 25 K are usual.</param>
    /// <param name="water">Fresh or salt; what is not stated counts as salt, which takes less heat.</param>
    /// <returns>The flow with its span.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public WaterNeed FlowFor(TemperatureDelta rise, WaterKind water) =>
        new(this, Guard.InRange(Canonical.Kelvins(rise), 1, 60, "K", nameof(rise)), Guard.Defined(water));

    /// <summary>The rise of temperature at a flow.</summary>
    /// <param name="flow">From 0.1 to 10,000 L/min.</param>
    /// <param name="water">Fresh or salt; what is not stated counts as salt.</param>
    /// <returns>The rise.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public TemperatureDelta RiseAt(VolumeFlow flow, WaterKind water) => TemperatureDelta.FromKelvins(
        WaterMath.RiseKelvins(Kilowatts, WaterNeed.CheckedFlow(flow, nameof(flow)), Guard.Defined(water)));

    /// <summary>Heat, power and share.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{Kilowatts:0.#} kW to the water at {_kilowatts:0.#} kW and a share of {ShareRatio:0.##}");

    private static double Checked(Power power) => Guard.InRange(Canonical.Kilowatts(power), 0.5, MostKilowatts, "kW", "shaftPower");
}
