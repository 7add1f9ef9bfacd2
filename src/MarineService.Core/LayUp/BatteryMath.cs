namespace MarineService.Core.LayUp;

/// <summary>Density and freezing point of the acid in a flooded lead battery. Density is relative to water, corrected to 25 °C.</summary>
internal static class BatteryMath
{
    internal const double LeastDensityRatio = 1.050;
    internal const double MostDensityRatio = 1.265;

    private static readonly double[] DensityRatio = [1.050, 1.100, 1.150, 1.200, 1.225, 1.265];
    private static readonly double[] FreezingFahrenheit = [27, 18, 5, -17, -35, -75];

    /// <summary>Freezing point, linear between the rows of the table; the caller has checked that the density lies inside it.</summary>
    /// <remarks>Source: off-season storage table of an owner's manual, in °F by specific gravity, as summarized by others.</remarks>
    internal static double FreezingCelsius(double densityRatio)
    {
        int above = 1;
        while (above < DensityRatio.Length - 1 && DensityRatio[above] < densityRatio)
        {
            above++;
        }

        double share = (densityRatio - DensityRatio[above - 1]) / (DensityRatio[above] - DensityRatio[above - 1]);
        double fahrenheit = FreezingFahrenheit[above - 1] + share * (FreezingFahrenheit[above] - FreezingFahrenheit[above - 1]);
        return (fahrenheit - 32) / 1.8;
    }

    /// <summary>Density from the voltage of one cell at rest: the lower end of d = V - 0.85 to V - 0.84.</summary>
    /// <remarks>Source: rule of thumb, from memory; within the bands that a battery maker's page gives for 0 to 100 % of charge.</remarks>
    internal static double LeastDensityRatioAt(double cellVolts) => cellVolts - 0.85;

    /// <summary>The upper end of the same rule.</summary>
    /// <remarks>Source: the same rule of thumb, from memory.</remarks>
    internal static double MostDensityRatioAt(double cellVolts) => cellVolts - 0.84;
}
