namespace MarineService.Core.Fluids;

/// <summary>Volume of lubricating oil against temperature: API MPMS 11.1 / ASTM D1250, lubricating-oil group.</summary>
/// <remarks>Source: API MPMS chapter 11.1 / ASTM D1250, 1980 tables (54D) and 2004 edition; the inverse is derived.</remarks>
internal static class VolumeCorrectionMath
{
    /// <summary>K1 of the lubricating-oil group, base 15 °C (Table 54D); K0 and K2 are zero.</summary>
    internal const double K1At15C = 0.6278;

    /// <summary>K1 of the lubricating-oil group, base 60 °F (2004 edition), for differences in degrees Fahrenheit.</summary>
    internal const double K1At60F = 0.34878;

    internal const double MinCelsius = -50;
    internal const double MaxCelsius = 150;
    internal const double MinBaseDensity = 800.9;
    internal const double MaxBaseDensity = 1163.5;

    internal const double SixtyFahrenheitInCelsius = 140.0 / 9.0;

    private const double FahrenheitPerCelsius = 1.8;

    /// <summary>Thermal expansion at the base temperature, per °C; density in kg/m³ at 15 °C.</summary>
    internal static double AlphaAt15C(double density) => K1At15C / density;

    /// <summary>Thermal expansion at the base temperature, per °C (not per °F); density in kg/m³ at 60 °F.</summary>
    internal static double AlphaAt60F(double density) => K1At60F * FahrenheitPerCelsius / density;

    /// <summary>Volume at the base temperature over volume at the observed one; alpha and difference in the same degrees.</summary>
    internal static double Factor(double alpha, double difference) => Math.Exp(Exponent(alpha, difference));

    /// <summary>The natural logarithm of <see cref="Factor"/>: ratios of factors are differences of these.</summary>
    internal static double Exponent(double alpha, double difference)
    {
        double x = alpha * difference;
        return -x * (1 + 0.8 * x);
    }

    /// <summary>Density at 15 °C from one observed at another temperature, kg/m³.</summary>
    /// <remarks>
    /// The density at 15 °C times its own factor rises with it, so there is one answer. Each round divides the error by
    /// ten or more (the factor hardly depends on the density), so it settles in a handful of rounds.
    /// </remarks>
    internal static double DensityAt15C(double observed, double celsius)
    {
        double density = observed;
        for (int i = 0; i < 50; i++)
        {
            double next = observed / Factor(AlphaAt15C(density), celsius - 15);
            if (Math.Abs(next - density) <= 1e-12 * next)
            {
                return next;
            }

            density = next;
        }

        return density;
    }
}
