using System.Runtime.CompilerServices;

namespace MarineService.Core.Fluids;

/// <summary>A measured volume brought to 15 °C: liters and their variance. Two numbers, so that it travels in registers.</summary>
internal readonly struct BaseVolume
{
    private BaseVolume(double liters, double variance) => (Liters, Variance) = (liters, variance);

    internal double Liters { get; }

    internal double Variance { get; }

    /// <summary>False when the temperature lies outside the standard's range; then the numbers mean nothing.</summary>
    internal bool IsCovered => !double.IsNaN(Liters);

    /// <summary>
    /// u² = (VCF·u_V)² + (V15·α·u_t)² + (share·(V - V15))²; the last part is the spread of expansion between oils.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static BaseVolume Of(MeasuredVolume measured, OilDensity oil, OilChangeLimits limits, in TemperatureAssumption assumption)
    {
        double celsius = assumption.Celsius;
        double kelvins = assumption.SigmaKelvins;
        if (measured.Celsius is double taken)
        {
            (celsius, kelvins) = (taken, limits.TemperatureSigmaKelvins);
            if (!OilDensity.CoversCelsius(taken))
            {
                return new(double.NaN, double.NaN);
            }
        }

        double factor = oil.FactorTo15C(celsius);
        double liters = measured.Liters * factor;
        double volume = factor * (measured.SigmaLiters ?? limits.VolumeUncertaintyFraction * measured.Liters);
        double heat = liters * oil.AlphaPerCelsius * kelvins;
        double spread = limits.ExpansionUncertaintyFraction * (measured.Liters - liters);
        return new(liters, volume * volume + heat * heat + spread * spread);
    }
}
