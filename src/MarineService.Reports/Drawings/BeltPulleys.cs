using System.Globalization;
using System.Xml.Linq;
using MarineService.Core.Belts;
using MarineService.Reports.Internal;

namespace MarineService.Reports.Drawings;

/// <summary>The pulleys to scale, with their names, and an arrow for the sense in which the belt turns each.</summary>
internal sealed class BeltPulleys
{
    private const double NameSize = 12;
    private const double Head = 10;

    private readonly BeltRouting _routing;
    private readonly BeltFrame _frame;
    private readonly Placement _room;
    private readonly bool _turns;

    internal BeltPulleys(BeltRouting routing, BeltFrame frame, Placement room, bool turns) => (_routing, _frame, _room, _turns) = (routing, frame, room, turns);

    /// <summary>Circles at the effective diameter; a second ring where there are grooves, dashes where the belt does not come.</summary>
    internal XElement Circles()
    {
        XElement circles = Svg.Group("pulleys");
        foreach (Pulley pulley in _routing.Drive.Pulleys)
        {
            (double x, double y, double radius) = Disc(pulley);
            bool isReached = StopOf(pulley) is not null;
            Stroke rim = Stroke.Of(isReached ? Palette.Ink : Palette.Quiet, 1.4).Filled(isReached ? Palette.Tint : Palette.Paper);
            XElement circle = Svg.Circle(x, y, radius, isReached ? rim : rim.Dashed("5 3"));
            circle.Add(
                new XAttribute("class", "pulley"),
                new XAttribute("data-pulley", PlainText.Of(pulley.Name)),
                new XAttribute("data-surface", pulley.Surface == PulleySurface.Grooved ? "grooved" : "smooth"),
                new XAttribute("data-diameter-mm", pulley.DiameterMm.ToString("0.###", CultureInfo.InvariantCulture)));
            circles.Add(circle);
            if (pulley.Surface == PulleySurface.Grooved)
            {
                circles.Add(Svg.Circle(x, y, Math.Max(1, radius - 5), Stroke.Of(isReached ? Palette.Ink : Palette.Quiet, 0.8)));
            }
        }

        return circles;
    }

    internal XElement NamesAndSenses()
    {
        XElement names = Svg.Group("names");
        foreach (Pulley pulley in _routing.Drive.Pulleys)
        {
            (double x, double y, double radius) = Disc(pulley);
            double ring = radius - 12;
            IReadOnlyList<string> lines = Lettering.Wrap(pulley.Name, NameSize, Math.Max(70, 1.5 * ring));
            double width = lines.Max(line => Lettering.Width(line, NameSize));
            double height = lines.Count * NameSize * Lettering.Leading;
            bool fits = Math.Sqrt((width * width) + (height * height)) / 2 < ring - 5;
            Box inside = Box.Around(x, y, width, height);
            fits &= !_room.IsCrossed(inside);
            Box box = fits ? inside : _room.Beside(x, y, radius + 6, width, height, _frame.Outward(x, y));
            if (!fits)
            {
                names.Add(Svg.Circle(x, y, 1.6, Stroke.None.Filled(Palette.Ink)));
            }

            for (int i = 0; i < lines.Count; i++)
            {
                names.Add(Svg.Text(box.CenterX, box.Y + ((i + 0.78) * NameSize * Lettering.Leading), NameSize, lines[i], "middle", bold: pulley == _routing.Drive.Crank));
            }

            if (_turns && StopOf(pulley) is int stop)
            {
                names.Add(Turning(x, y, Math.Max(6, ring), _routing.TurningOf(stop).AsSeenFrom(Viewpoint.PulleyEnd) == Core.Sense.Clockwise));
            }
        }

        return names;
    }

    // Over the top of the pulley, a third of a turn.
    private static XElement Turning(double x, double y, double radius, bool clockwise)
    {
        double sweep = Math.PI * 0.7;
        double from = (-Math.PI / 2) + (clockwise ? -sweep / 2 : sweep / 2);
        XElement arrow = Svg.Group("sense", Arrow.Round(x, y, radius, from, clockwise ? sweep : -sweep, Math.Min(Head, radius), Stroke.Of(Palette.Blue, 2.4), Palette.Blue));
        arrow.Add(new XAttribute("data-sense", clockwise ? "clockwise" : "counter-clockwise"));
        return arrow;
    }

    private (double X, double Y, double Radius) Disc(Pulley pulley) => (_frame.X(pulley.XMm), _frame.Y(pulley.YMm), pulley.DiameterMm / 2 * _frame.Scale);

    private int? StopOf(Pulley pulley)
    {
        for (int i = 0; i < _routing.Stops.Count; i++)
        {
            if (_routing.Stops[i].PulleyName == pulley.Name)
            {
                return i;
            }
        }

        return null;
    }
}
