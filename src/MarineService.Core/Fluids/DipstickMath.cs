namespace MarineService.Core.Fluids;

/// <summary>Oil on a dipstick in a rectangular sump with vertical walls; lengths in mm, volumes in L, angles in rad.</summary>
/// <remarks>
/// Source: derived from the geometry, nothing published. x runs aft and y to starboard from the center of the floor; a positive pitch puts the stern
/// down, a positive roll the starboard side. The depth at the center does not change when the sump tilts.
/// </remarks>
internal static class DipstickMath
{
    private const double CubicMillimetersPerLiter = 1e6;

    internal static double LitersOfDepth(double areaMm2, double depthMm) => areaMm2 * depthMm / CubicMillimetersPerLiter;

    internal static double DepthOfLiters(double areaMm2, double liters) => liters * CubicMillimetersPerLiter / areaMm2;

    /// <summary>How much deeper the oil stands at the stick than at the center.</summary>
    internal static double TiltDepthMm(double xMm, double yMm, double pitchRad, double rollRad) =>
        xMm * Math.Tan(pitchRad) + yMm * Math.Tan(rollRad);

    /// <summary>How far the surface rises above, and falls below, the center's depth at the outermost corners.</summary>
    internal static double CornerDepthMm(double lengthMm, double widthMm, double pitchRad, double rollRad) =>
        0.5 * lengthMm * Math.Abs(Math.Tan(pitchRad)) + 0.5 * widthMm * Math.Abs(Math.Tan(rollRad));

    /// <summary>Oil that stays below a level plane through the drain, L: what a tilted floor keeps back.</summary>
    /// <remarks>
    /// The depth under that plane is max(0, p(x_d - x) + q(y_d - y)) with p, q the slopes. Its integral over a rectangle is a
    /// sum over the four corners of max(0, depth)³/(6pq) with alternating signs; with one slope zero, of max(0, depth)²/2p.
    /// </remarks>
    internal static double LitersKeptByTilt(
        double lengthMm, double widthMm, double drainXMm, double drainYMm, double pitchRad, double rollRad)
    {
        // Only the size of a slope matters once the drain is counted from the low corner.
        double p = Math.Abs(Math.Tan(pitchRad));
        double q = Math.Abs(Math.Tan(rollRad));
        double fromLowEnd = 0.5 * lengthMm - Math.Sign(pitchRad) * drainXMm;
        double fromLowSide = 0.5 * widthMm - Math.Sign(rollRad) * drainYMm;
        if (p == 0 && q == 0)
        {
            return 0;
        }

        if (p == 0 || q == 0)
        {
            (double slope, double run, double across, double whole) =
                q == 0 ? (p, fromLowEnd, widthMm, lengthMm) : (q, fromLowSide, lengthMm, widthMm);
            double deepest = slope * run;
            double shallowest = Math.Max(0, slope * (run - whole));
            return across * (deepest * deepest - shallowest * shallowest) / (2 * slope) / CubicMillimetersPerLiter;
        }

        double depth = p * fromLowEnd + q * fromLowSide;
        double cubes = Cube(depth) - Cube(depth - p * lengthMm) - Cube(depth - q * widthMm) + Cube(depth - p * lengthMm - q * widthMm);
        return cubes / (6 * p * q) / CubicMillimetersPerLiter;
    }

    private static double Cube(double x) => x <= 0 ? 0 : x * x * x;
}
