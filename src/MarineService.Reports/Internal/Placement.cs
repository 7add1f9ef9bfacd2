namespace MarineService.Reports.Internal;

/// <summary>Finds room for labels and marks beside what is already on the page. The same page gives the same places.</summary>
internal sealed class Placement
{
    private const int Directions = 16;
    private const int Rings = 9;
    private const double RingStep = 9;

    /// <summary>White left between two things.</summary>
    private const double Gap = 3;

    /// <summary>To cover a thing is so much worse than to cross it with a thin stroke.</summary>
    private const int Heavier = 8;

    private readonly Box _page;
    private readonly List<Box> _boxes = [];
    private readonly List<(double X, double Y, double Radius)> _discs = [];
    private readonly List<(double X, double Y, double Radius)> _lines = [];

    internal Placement(Box page) => _page = page;

    internal void KeepClear(Box box) => _boxes.Add(box);

    internal void KeepClearDisc(double x, double y, double radius) => _discs.Add((x, y, radius));

    /// <summary>A thick line, as small discs in a row.</summary>
    internal void KeepClearLine(double x1, double y1, double x2, double y2, double halfWidth)
    {
        double length = Math.Sqrt(((x2 - x1) * (x2 - x1)) + ((y2 - y1) * (y2 - y1)));
        int steps = Math.Max(1, (int)Math.Ceiling(length / Math.Max(2, halfWidth)));
        for (int i = 0; i <= steps; i++)
        {
            double at = (double)i / steps;
            _lines.Add((x1 + (at * (x2 - x1)), y1 + (at * (y2 - y1)), halfWidth));
        }
    }

    /// <summary>Whether a line runs through the box.</summary>
    internal bool IsCrossed(Box box) => _lines.Exists(line => box.MeetsDisc(line.X, line.Y, line.Radius));

    /// <summary>The nearest free place beside a disc, first in the direction given; taken from then on.</summary>
    /// <param name="x">Middle of the disc.</param>
    /// <param name="y">Middle of the disc.</param>
    /// <param name="radius">Its radius; 0 for a point.</param>
    /// <param name="width">Width of what is placed.</param>
    /// <param name="height">Its height.</param>
    /// <param name="direction">The direction to try first, radians, clockwise on the page from the right.</param>
    /// <param name="hasLeader">Whether a stroke leads from it to the disc, which should cross no line.</param>
    internal Box Beside(double x, double y, double radius, double width, double height, double direction, bool hasLeader = false)
    {
        Box best = default;
        int fewest = int.MaxValue;
        for (int k = 0; k < Rings * Directions && fewest > 0; k++)
        {
            // To and fro about the wanted direction, ring by ring.
            int turn = ((k % Directions) + 1) / 2 * (k % 2 == 0 ? 1 : -1);
            double angle = direction + (turn * (2 * Math.PI / Directions));
            double out_ = radius + Gap + 1 + (k / Directions * RingStep);
            double ux = Math.Cos(angle);
            double uy = Math.Sin(angle);
            Box box = Box.Around(x + (ux * (out_ + (width / 2))), y + (uy * (out_ + (height / 2))), width, height);
            int met = (Heavier * Met(box)) + (hasLeader ? Crossed(x, y, box) : 0);
            if (met < fewest)
            {
                (best, fewest) = (box, met);
            }
        }

        KeepClear(best);
        return best;
    }

    // A line through the very middle leads away in any direction: it is no hindrance.
    private int Crossed(double x, double y, Box box) => _lines.Count(line =>
        ((line.X - x) * (line.X - x)) + ((line.Y - y) * (line.Y - y)) > (Gap + line.Radius) * (Gap + line.Radius)
        && Nearest(line.X, line.Y, x, y, box.CenterX, box.CenterY) < line.Radius)
        + _boxes.Count(other => Enumerable.Range(1, Directions).Any(i => other.Grown(Gap).Contains(
            x + ((box.CenterX - x) * i / Directions), y + ((box.CenterY - y) * i / Directions))));

    /// <summary>How near a point is to the stroke from one place to another.</summary>
    private static double Nearest(double x, double y, double x1, double y1, double x2, double y2)
    {
        (double dx, double dy) = (x2 - x1, y2 - y1);
        double at = Math.Max(0, Math.Min(1, (((x - x1) * dx) + ((y - y1) * dy)) / ((dx * dx) + (dy * dy))));
        (double ex, double ey) = (x - x1 - (at * dx), y - y1 - (at * dy));
        return Math.Sqrt((ex * ex) + (ey * ey));
    }

    private int Met(Box box)
    {
        Box grown = box.Grown(Gap);
        return (_page.Contains(box) ? 0 : 1000)
            + _boxes.Count(other => grown.Meets(other))
            + _discs.Count(disc => grown.MeetsDisc(disc.X, disc.Y, disc.Radius))
            + _lines.Count(line => grown.MeetsDisc(line.X, line.Y, line.Radius));
    }
}
