namespace MarineService.Core.Parts;

/// <summary>A cover that may be pushed aside: the least distance of the worst hole over all shifts at a turn, and over all turns.</summary>
/// <remarks>
/// Source: worked out. At one turn the best shift is the middle of the smallest circle round the differences of hole and hole; over small
/// turns that radius is a convex function, so its least is found by golden section. Checked by trying turns and shifts on a grid.
/// </remarks>
internal static class CoverShiftMath
{
    private const double Golden = 0.6180339887498949;
    private const double FinestRad = 1e-10;

    /// <summary>The best turn near a turn, and the distance of the worst hole there. Source: golden section on a convex function.</summary>
    internal static double BestTurnRad(double[] block, double[] cover, int shift, double blockRadiusMm, double coverRadiusMm, double nearRad, double reachRad, out double offMm)
    {
        double from = nearRad - reachRad;
        double to = nearRad + reachRad;
        double Off(double turn) => LeastOffMm(block, cover, shift, blockRadiusMm, coverRadiusMm, turn);
        double left = to - (Golden * (to - from));
        double right = from + (Golden * (to - from));
        double atLeft = Off(left);
        double atRight = Off(right);
        while (to - from > FinestRad)
        {
            if (atLeft <= atRight)
            {
                (to, right, atRight) = (right, left, atLeft);
                left = to - (Golden * (to - from));
                atLeft = Off(left);
            }
            else
            {
                (from, left, atLeft) = (left, right, atRight);
                right = from + (Golden * (to - from));
                atRight = Off(right);
            }
        }

        double turn = (from + to) / 2;
        offMm = Off(turn);
        return turn;
    }

    /// <summary>How far the cover can still be turned one way before the worst hole is off by so much. Source: halving.</summary>
    internal static double PlayRad(double[] block, double[] cover, int shift, double blockRadiusMm, double coverRadiusMm, double turnRad, double playMm, int way)
    {
        double fits = 0;
        double fails = Math.PI / 4;
        while (fails - fits > 1e-9)
        {
            double middle = (fits + fails) / 2;
            if (LeastOffMm(block, cover, shift, blockRadiusMm, coverRadiusMm, turnRad + (way * middle)) <= playMm)
            {
                fits = middle;
            }
            else
            {
                fails = middle;
            }
        }

        return fits;
    }

    /// <summary>The distance of the worst hole at a turn with the best shift. Source: the smallest circle round points.</summary>
    internal static double LeastOffMm(double[] block, double[] cover, int shift, double blockRadiusMm, double coverRadiusMm, double turnRad)
    {
        int count = block.Length;
        double[] x = new double[count];
        double[] y = new double[count];
        for (int i = 0; i < count; i++)
        {
            double at = block[(i + shift) % count];
            double from = cover[i] + turnRad;
            x[i] = (blockRadiusMm * Math.Cos(at)) - (coverRadiusMm * Math.Cos(from));
            y[i] = (blockRadiusMm * Math.Sin(at)) - (coverRadiusMm * Math.Sin(from));
        }

        return SmallestCircleRadiusMm(x, y);
    }

    /// <summary>Radius of the smallest circle that holds all points. Source: the incremental method of computational geometry texts.</summary>
    internal static double SmallestCircleRadiusMm(double[] x, double[] y)
    {
        Circle circle = new(x[0], y[0], 0);
        for (int i = 1; i < x.Length; i++)
        {
            if (circle.Holds(x[i], y[i]))
            {
                continue;
            }

            circle = new(x[i], y[i], 0);
            for (int j = 0; j < i; j++)
            {
                if (circle.Holds(x[j], y[j]))
                {
                    continue;
                }

                circle = Circle.Over(x[i], y[i], x[j], y[j]);
                for (int k = 0; k < j; k++)
                {
                    if (!circle.Holds(x[k], y[k]))
                    {
                        circle = Circle.Through(x[i], y[i], x[j], y[j], x[k], y[k]);
                    }
                }
            }
        }

        return circle.Radius;
    }

    private readonly struct Circle(double x, double y, double radius)
    {
        internal double Radius { get; } = radius;

        internal static Circle Over(double ax, double ay, double bx, double by) =>
            new((ax + bx) / 2, (ay + by) / 2, Math.Sqrt(((ax - bx) * (ax - bx)) + ((ay - by) * (ay - by))) / 2);

        internal static Circle Through(double ax, double ay, double bx, double by, double cx, double cy)
        {
            double ux = bx - ax;
            double uy = by - ay;
            double vx = cx - ax;
            double vy = cy - ay;
            double twice = 2 * ((ux * vy) - (uy * vx));
            if (Math.Abs(twice) < 1e-30)
            {
                // Three points on a line, within rounding: the two that are farthest apart decide.
                Circle ab = Over(ax, ay, bx, by);
                Circle ac = Over(ax, ay, cx, cy);
                Circle bc = Over(bx, by, cx, cy);
                Circle wider = ab.Radius >= ac.Radius ? ab : ac;
                return wider.Radius >= bc.Radius ? wider : bc;
            }

            double u = (ux * ux) + (uy * uy);
            double v = (vx * vx) + (vy * vy);
            double px = ((vy * u) - (uy * v)) / twice;
            double py = ((ux * v) - (vx * u)) / twice;
            return new(ax + px, ay + py, Math.Sqrt((px * px) + (py * py)));
        }

        internal bool Holds(double px, double py) =>
            ((px - x) * (px - x)) + ((py - y) * (py - y)) <= (Radius * Radius * (1 + 1e-12)) + 1e-24;
    }
}
