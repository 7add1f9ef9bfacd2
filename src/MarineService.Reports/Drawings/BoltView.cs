using System.Globalization;
using System.Xml.Linq;
using MarineService.Core.Parts;
using MarineService.Reports.Internal;

namespace MarineService.Reports.Drawings;

/// <summary>One view from outside: the block's holes, the cover's holes at a turn, and the way to turn it.</summary>
internal sealed class BoltView
{
    private const double RingRadius = 11;
    private const double NumberSize = 12;

    /// <summary>Farther off than this, in plays, a cover's hole is drawn no farther from its hole than it is.</summary>
    private const double MostPlays = 2.5;

    private readonly CoverFit _fit;
    private readonly BoltViewOf _shown;
    private readonly double _x;
    private readonly double _y;
    private readonly double _radius;

    internal BoltView(CoverFit fit, BoltViewOf shown, double x, double y, double radius) => (_fit, _shown, _x, _y, _radius) = (fit, shown, x, y, radius);

    internal XElement Draw()
    {
        XElement view = Svg.Group(
            "pattern",
            Svg.Text(_x, _y - _radius - 36, 14, _shown.Caption, "middle", bold: true),
            Svg.Circle(_x, _y, _radius, Stroke.Of(Palette.Quiet, 0.8).Dashed("6 3 1.5 3")));
        IReadOnlyList<double> block = _fit.Block.AnglesDegrees;
        for (int i = 0; i < block.Count; i++)
        {
            view.Add(Ring(block[i], i + 1));
        }

        IReadOnlyList<double> cover = _fit.Cover.AnglesDegrees;
        for (int i = 0; i < cover.Count; i++)
        {
            view.Add(Cross(cover[i] + _shown.TurnDegrees, i + 1));
        }

        if (_shown.TurnToFitDegrees is double turn && Math.Abs(turn) > 0.005)
        {
            view.Add(Turn(turn));
        }

        view.Add(new XAttribute("data-turn-degrees", _shown.TurnDegrees.ToString("0.###", CultureInfo.InvariantCulture)));
        return view;
    }

    private XElement Ring(double degrees, int number)
    {
        (double x, double y) = At(degrees, _radius);
        (double nx, double ny) = At(degrees, _radius + 24);
        XElement ring = Svg.Group(
            "block-hole",
            Svg.Circle(x, y, RingRadius, Stroke.Of(Palette.Ink, 1.6).Filled(Palette.Tint)),
            Svg.Text(nx, ny + 4.5, NumberSize, Text(number), "middle", Palette.Ink, bold: true));
        ring.Add(new XAttribute("data-hole", number));
        return ring;
    }

    private XElement Cross(double degrees, int number)
    {
        (double x, double y, bool goesIn) = Place(degrees, number);
        Stroke stroke = Stroke.Of(goesIn ? Palette.Blue : Palette.Red, 2);
        double arm = goesIn ? 6 : 8;
        (double nx, double ny) = At(degrees, _radius - 28);
        XElement cross = Svg.Group(
            "cover-hole",
            Svg.Line(x - arm, y - arm, x + arm, y + arm, stroke),
            Svg.Line(x - arm, y + arm, x + arm, y - arm, stroke),
            goesIn ? null : Svg.Circle(x, y, RingRadius, stroke.Dashed("3 2")),
            Svg.Text(nx, ny + 4.5, NumberSize, Text(number), "middle", goesIn ? Palette.Blue : Palette.Red));
        cross.Add(new XAttribute("data-hole", number), new XAttribute("data-goes-in", goesIn ? "true" : "false"));
        return cross;
    }

    /// <summary>Off by its play, a cover's hole touches its ring from within; farther off it stands where it is, but never nearer than it looks.</summary>
    private (double X, double Y, bool GoesIn) Place(double degrees, int number)
    {
        (double trueX, double trueY) = At(degrees, _radius * CoverShare);
        if (_shown.Rotation?.Pairs[number - 1].BlockHole is not int hole)
        {
            return (trueX, trueY, false);
        }

        (double bx, double by) = At(_fit.Block.AnglesDegrees[hole - 1], _radius);
        double scale = _radius / BlockMm;
        double offMm = Math.Sqrt(((trueX - bx) * (trueX - bx)) + ((trueY - by) * (trueY - by))) / scale;
        double plays = offMm / _fit.Clearance.RadialPlayMm;

        // Whether all go in is Core's word; which of them do not, the drawing shows by their places, the worst in any case.
        bool goesIn = _shown.AllGoIn || (number != _shown.WorstHole && plays <= 1);
        double inRing = Math.Min(goesIn ? 1 : MostPlays, plays) * (RingRadius - 3);
        if (offMm < 1e-9 || inRing < offMm * scale)
        {
            return (trueX, trueY, goesIn);
        }

        double enlarged = (goesIn ? inRing : Math.Max(inRing, RingRadius + 2)) / (offMm * scale);
        return (bx + ((trueX - bx) * enlarged), by + ((trueY - by) * enlarged), goesIn);
    }

    private IEnumerable<XElement> Turn(double degrees)
    {
        // Within the ring of numbers; a small turn would hide behind its own head.
        double sweep = Math.Max(18, Math.Abs(degrees)) * Math.PI / 180 * (degrees > 0 ? -1 : 1);
        string words = FormattableString.Invariant($"turn {Math.Abs(degrees):0.#} deg");
        return Arrow.Round(_x, _y, _radius * 0.5, -Math.PI / 2, Math.Max(-1.9 * Math.PI, Math.Min(1.9 * Math.PI, sweep)), 11, Stroke.Of(Palette.Green, 2.6), Palette.Green)
            .Append(Svg.Text(_x, _y + 4, 13, words, "middle", Palette.Green, bold: true));
    }

    private double BlockMm => _fit.Block.BoltCircleRadius.Millimeters;

    private double CoverShare => _fit.Cover.BoltCircleRadius.Millimeters / BlockMm;

    // Counter-clockwise from the right, as the patterns are stated.
    private (double X, double Y) At(double degrees, double radius)
    {
        double rad = degrees * Math.PI / 180;
        return (_x + (radius * Math.Cos(rad)), _y - (radius * Math.Sin(rad)));
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
