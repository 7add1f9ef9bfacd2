namespace MarineService.Core.Fluids;

/// <summary>Small pieces of arithmetic that several parts of this room share.</summary>
/// <remarks>Source: textbook mathematics; where a formula has an author, its member names it.</remarks>
internal static class FluidMath
{
    /// <summary>Standard gravity, m/s² (3rd CGPM, 1901).</summary>
    internal const double Gravity = 9.80665;

    /// <summary>Standard atmosphere, kPa (10th CGPM, 1954).</summary>
    internal const double AtmosphereKpa = 101.325;

    internal static double RootSumSquare(double a, double b) => Math.Sqrt(a * a + b * b);

    internal static double Square(double x) => x * x;

    /// <summary>Linear interpolation in a table with rising x; the caller has checked that x lies inside it.</summary>
    internal static double Interpolate(double[] xs, double[] ys, double x)
    {
        int i = Array.BinarySearch(xs, x);
        if (i >= 0)
        {
            return ys[i];
        }

        int above = Math.Min(Math.Max(~i, 1), xs.Length - 1);
        double share = (x - xs[above - 1]) / (xs[above] - xs[above - 1]);
        return ys[above - 1] + share * (ys[above] - ys[above - 1]);
    }

    /// <summary>Standard normal distribution function, by the series of G. Marsaglia, J. Statistical Software 11(4), 2004.</summary>
    internal static double NormalCdf(double z)
    {
        if (Math.Abs(z) > 7)
        {
            return z > 0 ? 1 : 0;
        }

        double sum = z;
        double term = z;
        for (int n = 3; Math.Abs(term) > 1e-17 * Math.Abs(sum); n += 2)
        {
            term *= z * z / n;
            sum += term;
        }

        return 0.5 + sum * NormalDensity(z);
    }

    /// <summary>How many standard deviations leave the given share above them; share from 1e-6 to 0.5.</summary>
    /// <remarks>
    /// Newton from 0: above 0 the distribution function is concave, so each step falls short of the root and none overshoots.
    /// </remarks>
    internal static double DeviationsLeavingAbove(double share)
    {
        double z = 0;
        for (int i = 0; i < 100; i++)
        {
            double step = (1 - share - NormalCdf(z)) / NormalDensity(z);
            z += step;
            if (Math.Abs(step) < 1e-13)
            {
                break;
            }
        }

        return z;
    }

    private static double NormalDensity(double z) => Math.Exp(-0.5 * z * z) / Math.Sqrt(2 * Math.PI);
}
