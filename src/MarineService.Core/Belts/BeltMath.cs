namespace MarineService.Core.Belts;

/// <summary>The closed forms of a belt round oriented circles. Plain doubles, no allocation.</summary>
/// <remarks>
/// A counter-clockwise pulley lies to the left of the moving belt, a clockwise one to the right, so that each ordered pair of pulleys
/// has exactly one span and nobody chooses among four tangents. Source: geometry of common tangents, worked out and checked against polygons.
/// </remarks>
internal static class BeltMath
{
    /// <summary>Two lengths nearer than this are the same for every verdict: far below any tape measure, far above rounding.</summary>
    internal const double GrainMm = 1e-6;

    /// <summary>A wrap at or below this is no contact; a wrap this near to a full turn is the same contact missed from the other side.</summary>
    internal const double GrainRad = 1e-6;

    /// <summary>The effective line is this many differentials shorter than the pitch line: one turn, whatever the mix of faces.</summary>
    internal const double LinePerDifferential = 2 * Math.PI;

    /// <summary>The span from one pulley to the next: its length and the unit direction of travel.</summary>
    /// <returns>False when there is no common tangent.</returns>
    internal static bool TrySpan(
        in OrientedCircle from, in OrientedCircle to, out double lengthMm, out double ux, out double uy)
    {
        double dx = to.XMm - from.XMm;
        double dy = to.YMm - from.YMm;
        double delta = to.SignedRadiusMm - from.SignedRadiusMm;
        double squared = (dx * dx) + (dy * dy);
        double distance = Math.Sqrt(squared);
        double absolute = Math.Abs(delta);
        if (!(distance > absolute))
        {
            (lengthMm, ux, uy) = (double.NaN, double.NaN, double.NaN);
            return false;
        }

        // The product form keeps its digits when the distance is near the difference of the radii.
        lengthMm = Math.Sqrt((distance - absolute) * (distance + absolute));
        ux = ((lengthMm * dx) + (delta * dy)) / squared;
        uy = ((lengthMm * dy) - (delta * dx)) / squared;
        return true;
    }

    /// <summary>The wrap between an arriving and a leaving direction, from about zero to just under a full turn.</summary>
    internal static double WrapRad(int sign, double inUx, double inUy, double outUx, double outUy)
    {
        double wrap = sign * Math.Atan2((inUx * outUy) - (inUy * outUx), (inUx * outUx) + (inUy * outUy));

        // A hair below zero stays there, so that length is continuous where a pulley just touches a straight span.
        return wrap < -GrainRad ? wrap + (2 * Math.PI) : wrap;
    }

    /// <summary>The length of the closed pitch line.</summary>
    /// <returns>False when a span has no tangent.</returns>
    internal static bool TryPitchLengthMm(ReadOnlySpan<OrientedCircle> circles, out double lengthMm)
    {
        int last = circles.Length - 1;
        lengthMm = double.NaN;
        if (!TrySpan(in circles[last], in circles[0], out double total, out double lastUx, out double lastUy))
        {
            return false;
        }

        double inUx = lastUx;
        double inUy = lastUy;
        for (int i = 0; i < last; i++)
        {
            if (!TrySpan(in circles[i], in circles[i + 1], out double span, out double outUx, out double outUy))
            {
                return false;
            }

            total += span + (circles[i].RadiusMm * WrapRad(circles[i].Sign, inUx, inUy, outUx, outUy));
            (inUx, inUy) = (outUx, outUy);
        }

        lengthMm = total + (circles[last].RadiusMm * WrapRad(circles[last].Sign, inUx, inUy, lastUx, lastUy));
        return true;
    }

    /// <summary>Spans, wraps and tangent points of the closed pitch line, and its length.</summary>
    /// <returns>False when a span has no tangent; <paramref name="into"/> then holds nothing of use.</returns>
    internal static bool TryGeometry(ReadOnlySpan<OrientedCircle> circles, Span<StopGeometry> into, out double lengthMm)
    {
        int last = circles.Length - 1;
        lengthMm = double.NaN;
        if (!TrySpan(in circles[last], in circles[0], out double lastSpan, out double lastUx, out double lastUy))
        {
            return false;
        }

        double total = 0;
        double inUx = lastUx;
        double inUy = lastUy;
        for (int i = 0; i <= last; i++)
        {
            double span = lastSpan;
            double outUx = lastUx;
            double outUy = lastUy;
            if (i < last && !TrySpan(in circles[i], in circles[i + 1], out span, out outUx, out outUy))
            {
                return false;
            }

            double wrap = WrapRad(circles[i].Sign, inUx, inUy, outUx, outUy);
            into[i] = new StopGeometry(in circles[i], inUx, inUy, outUx, outUy, wrap, span);
            total += span + (circles[i].RadiusMm * wrap);
            (inUx, inUy) = (outUx, outUy);
        }

        lengthMm = total;
        return true;
    }

    /// <summary>How far the closed length moves for one unit of standard uncertainty in every coordinate of every centre.</summary>
    /// <remarks>By virtual work: a centre moves the length by the difference of its two span directions.</remarks>
    internal static double LengthSensitivity(ReadOnlySpan<StopGeometry> stops)
    {
        double sum = 0;
        StopGeometry arriving = stops[stops.Length - 1];
        foreach (ref readonly StopGeometry leaving in stops)
        {
            double x = arriving.ExitDirectionXRatio - leaving.ExitDirectionXRatio;
            double y = arriving.ExitDirectionYRatio - leaving.ExitDirectionYRatio;
            sum += (x * x) + (y * y);
            arriving = leaving;
        }

        return Math.Sqrt(sum);
    }

    /// <summary>How often the direction of travel goes round: whole turns, counter-clockwise positive.</summary>
    internal static int TurningNumber(ReadOnlySpan<StopGeometry> stops)
    {
        double turned = 0;
        foreach (ref readonly StopGeometry stop in stops)
        {
            turned += stop.TurnsCounterClockwise ? stop.WrapRadians : -stop.WrapRadians;
        }

        return (int)Math.Round(turned / (2 * Math.PI));
    }

    /// <summary>
    /// The distance from a point to a segment given by its start, unit direction and length, and where along the segment the nearest
    /// point lies, from 0 at the start to 1 at the end.
    /// </summary>
    internal static double DistanceMm(
        double startX, double startY, double ux, double uy, double lengthMm, double x, double y, out double at)
    {
        double along = ((x - startX) * ux) + ((y - startY) * uy);
        along = along < 0 ? 0 : along > lengthMm ? lengthMm : along;
        double ex = x - (startX + (along * ux));
        double ey = y - (startY + (along * uy));
        at = lengthMm > 0 ? along / lengthMm : 0;
        return Math.Sqrt((ex * ex) + (ey * ey));
    }

    /// <summary>Whether two segments have a point in common.</summary>
    internal static bool Cross(
        double ax, double ay, double bx, double by, double cx, double cy, double dx, double dy)
    {
        double c = Side(ax, ay, bx, by, cx, cy);
        double d = Side(ax, ay, bx, by, dx, dy);
        if ((c > 0 && d > 0) || (c < 0 && d < 0))
        {
            return false;
        }

        double a = Side(cx, cy, dx, dy, ax, ay);
        double b = Side(cx, cy, dx, dy, bx, by);
        if ((a > 0 && b > 0) || (a < 0 && b < 0))
        {
            return false;
        }

        // All four on one line: they meet only when their shadows do.
        return c != 0 || d != 0 || a != 0 || b != 0
            || (Math.Max(Math.Min(ax, bx), Math.Min(cx, dx)) <= Math.Min(Math.Max(ax, bx), Math.Max(cx, dx))
                && Math.Max(Math.Min(ay, by), Math.Min(cy, dy)) <= Math.Min(Math.Max(ay, by), Math.Max(cy, dy)));
    }

    private static double Side(double ax, double ay, double bx, double by, double x, double y) =>
        ((bx - ax) * (y - ay)) - ((by - ay) * (x - ax));
}
