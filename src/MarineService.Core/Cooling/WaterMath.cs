using MarineService.Core.Engines;

namespace MarineService.Core.Cooling;

/// <summary>Heat, flow and temperature rise of the raw water.</summary>
/// <remarks>Source: the heat balance of a stream, heat = density x heat capacity x flow x rise.</remarks>
internal static class WaterMath
{
    /// <summary>Density 1.025 kg/L, heat capacity 3.99 kJ/(kg K). Source: sea water, from memory.</summary>
    internal const double SaltKilojoulesPerLiterKelvin = 1.025 * 3.99;

    /// <summary>Density 0.998 kg/L, heat capacity 4.18 kJ/(kg K). Source: fresh water at 20 °C, from memory.</summary>
    internal const double FreshKilojoulesPerLiterKelvin = 0.998 * 4.18;

    /// <summary>Fuel energy, 32.4 MJ/L of petrol. Source: from memory.</summary>
    internal const double PetrolKilowattHoursPerLiter = 9.0;

    /// <summary>Fuel energy, 36 MJ/L of diesel oil. Source: from memory.</summary>
    internal const double DieselKilowattHoursPerLiter = 10.0;

    /// <summary>What a litre takes for each kelvin; water that is not known to be fresh takes least. Source: see the constants.</summary>
    internal static double HeatCapacity(WaterKind water) => water == WaterKind.Fresh ? FreshKilojoulesPerLiterKelvin : SaltKilojoulesPerLiterKelvin;

    /// <summary>Litres a minute that carry a heat away at a rise. Source: heat balance.</summary>
    internal static double FlowLitersPerMinute(double kilowatts, double riseKelvins, WaterKind water) =>
        60 * kilowatts / (HeatCapacity(water) * riseKelvins);

    /// <summary>The rise at a flow. Source: heat balance.</summary>
    internal static double RiseKelvins(double kilowatts, double litersPerMinute, WaterKind water) =>
        60 * kilowatts / (HeatCapacity(water) * litersPerMinute);

    /// <summary>What a pump gives: displacement x speed, less what slips past worn vanes. Source: a pump of positive displacement.</summary>
    internal static double PumpLitersPerMinute(double litersPerRevolution, double pumpRevolutionsPerMinute, double wearFraction) =>
        litersPerRevolution * pumpRevolutionsPerMinute * (1 - wearFraction);
}
