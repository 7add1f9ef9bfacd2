namespace MarineService.Core.Fluids;

/// <summary>A measured volume brought to 15 °C: liters and their variance.</summary>
internal readonly struct BaseVolume
{
    private BaseVolume(double liters, double variance, bool isCovered, bool isAssumed) =>
        (Liters, Variance, IsCovered, IsAssumed) = (liters, variance, isCovered, isAssumed);

    internal double Liters { get; }

    internal double Variance { get; }

    /// <summary>False when the temperature lies outside the standard's range; then the rest means nothing.</summary>
    internal bool IsCovered { get; }

    /// <summary>True when nobody took the temperature.</summary>
    internal bool IsAssumed { get; }

    /// <summary>
    /// u² = (VCF·u_V)² + (V15·α·u_t)² + (share·(V - V15))²; the last part is the spread of expansion between oils.
    /// </summary>
    internal static BaseVolume Of(MeasuredVolume measured, OilDensity oil, OilChangeLimits limits, TemperatureAssumption assumption)
    {
        bool assumed = measured.Celsius is null;
        double celsius = measured.Celsius ?? assumption.Celsius;
        if (!OilDensity.CoversCelsius(celsius))
        {
            return new(0, 0, isCovered: false, assumed);
        }

        double factor = oil.FactorTo15C(celsius);
        double liters = measured.Liters * factor;
        double volume = factor * (measured.SigmaLiters ?? limits.VolumeUncertaintyFraction * measured.Liters);
        double heat = liters * oil.AlphaPerCelsius * (assumed ? assumption.SigmaKelvins : limits.TemperatureSigmaKelvins);
        double spread = limits.ExpansionUncertaintyFraction * (measured.Liters - liters);
        return new(liters, volume * volume + heat * heat + spread * spread, isCovered: true, assumed);
    }
}
