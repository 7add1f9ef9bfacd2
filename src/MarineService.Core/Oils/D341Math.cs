namespace MarineService.Core.Oils;

/// <summary>The double-log equation of ASTM D341 in natural logarithms: ln ln Z = a - B ln T, ν in mm²/s, T in kelvins.</summary>
/// <remarks>Source: ASTM D341 as reproduced publicly; the constants of the long form are from memory. In base 10, log log Z = A - B log T with the same B and A = (a - ln ln 10) / ln 10.</remarks>
internal static class D341Math
{
    internal const double Kelvin0Celsius = 273.15;

    /// <summary>Below this neither form of Z is fitted.</summary>
    internal const double LeastKinematic = 0.21;

    /// <summary>The upper end of the range that D341 names for the plain Z.</summary>
    internal const double MostKinematic = 2e7;

    // From here the long form's terms are below 10⁻¹⁷.
    private const double LongTermsVanish = 15;

    internal static readonly double Ln10 = Math.Log(10);

    private static readonly double LnLn10 = Math.Log(Math.Log(10));

    internal static double ZShort(double kinematic) =>
        kinematic + 0.7 + Math.Exp(-1.47 - (1.84 * kinematic) - (0.51 * kinematic * kinematic));

    /// <summary>
    /// All terms at once, which holds from 0.21 to 2·10⁷ mm²/s. The standard lets the later ones be left out higher up (the plain
    /// ν + 0.7 from 2.00, with C from 1.65, D from 0.90, E from 0.30, F and G from 0.24, H from 0.21); leaving them in avoids a jump.
    /// </summary>
    internal static double ZLong(double kinematic)
    {
        double z = kinematic + 0.7;
        if (kinematic >= LongTermsVanish)
        {
            return z;
        }

        double c = Math.Exp(-1.14883 - (2.65868 * kinematic));
        double d = Math.Exp(-0.0038138 - (12.5645 * kinematic));
        double e = Math.Exp(5.46491 - (37.6289 * kinematic));
        double f = Math.Exp(13.0458 - (74.6851 * kinematic));
        double g = Math.Exp(37.4619 - (192.643 * kinematic));
        double h = Math.Exp(80.4945 - (400.468 * kinematic));
        return z + c - d + e - f + g - h;
    }

    /// <summary>The published inverse of the short Z: a fit, off by less than 2·10⁻⁴ mm²/s from 0.22 to 2.</summary>
    internal static double KinematicFromZShort(double z)
    {
        double w = z - 0.7;

        // From 5 mm²/s the correction is below 10⁻¹⁸ and cannot change a double.
        return w >= 5 ? w : w - Math.Exp(-0.7487 + (w * (-3.295 + (w * (0.6119 - (0.3193 * w))))));
    }

    /// <summary>The inverse of the long Z, by bisection where its terms matter.</summary>
    internal static double KinematicFromZLong(double z)
    {
        if (z >= LongTermsVanish + 0.7)
        {
            return z - 0.7;
        }

        double low = LeastKinematic;
        double high = LongTermsVanish;
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = ZLong(middle) < z ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    internal static double LnLnZ(double kinematic, bool isLong) => Math.Log(Math.Log(isLong ? ZLong(kinematic) : ZShort(kinematic)));

    /// <summary>a and B of the line through two points of ln ln Z.</summary>
    internal static (double A, double B) Line(double lnLnZ1, double kelvin1, double lnLnZ2, double kelvin2)
    {
        double slope = (lnLnZ1 - lnLnZ2) / (Math.Log(kelvin2) - Math.Log(kelvin1));
        return (lnLnZ1 + (slope * Math.Log(kelvin1)), slope);
    }

    internal static double KinematicShort(double a, double b, double kelvin) =>
        KinematicFromZShort(Math.Exp(Math.Exp(a - (b * Math.Log(kelvin)))));

    internal static double Kelvin(double a, double b, double lnLnZ) => Math.Exp((a - lnLnZ) / b);

    internal static double Base10A(double a) => (a - LnLn10) / Ln10;
}
