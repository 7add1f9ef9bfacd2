using System.Xml.Linq;
using MarineService.Core;
using MarineService.Core.Belts;
using MarineService.Reports.Internal;

namespace MarineService.Reports.Drawings;

/// <summary>What was found, gathered by the place that it concerns: one number for each place, in the order in which it was found.</summary>
internal sealed class BeltPlaces
{
    private readonly BeltRouting _routing;
    private readonly List<(string Subject, List<Finding> Findings)> _places = [];

    internal BeltPlaces(BeltRouting routing, IReadOnlyList<Finding> findings)
    {
        _routing = routing;
        foreach (Finding finding in findings)
        {
            List<Finding>? known = _places.Find(place => place.Subject == finding.Subject).Findings;
            if (known is null)
            {
                _places.Add((finding.Subject, known = []));
            }

            known.Add(finding);
        }
    }

    /// <summary>Whether the span that leaves a stop must be put right.</summary>
    internal bool IsWrongSpan(int stop) =>
        _places.Exists(place => SpanOf(place.Subject) == stop && place.Findings.Exists(finding => finding.Severity >= Severity.Act));

    internal XElement Marks(BeltFrame frame, BeltPath? belt, Placement room)
    {
        XElement marks = Svg.Group("marks");
        int number = 0;
        foreach ((string subject, List<Finding> findings) in _places)
        {
            if (Where(subject, frame, belt) is not (double X, double Y, double Radius) place)
            {
                continue;
            }

            double size = (2 * Notes.MarkRadius) + 2;
            Box box = room.Beside(place.X, place.Y, place.Radius, size, size, frame.Outward(place.X, place.Y), hasLeader: true);
            Severity worst = findings.Max(finding => finding.Severity);
            marks.Add(Leader(place, box, Notes.SeverityColor(worst)), Notes.Mark(box.CenterX, box.CenterY, ++number, worst));
        }

        return marks;
    }

    internal void Write(Notes notes, DisplayUnits units)
    {
        int number = 0;
        foreach ((_, List<Finding> findings) in _places.Where(place => IsShown(place.Subject)))
        {
            notes.Findings(++number, findings, units);
        }

        (string Subject, List<Finding> Findings)[] rest = [.. _places.Where(place => !IsShown(place.Subject))];
        if (number > 0 && rest.Length > 0)
        {
            notes.Gap(2).Paragraph("Not to be shown at one place:", bold: true);
        }

        foreach ((_, List<Finding> findings) in rest)
        {
            notes.Findings(null, findings, units);
        }

        if (_places.Count == 0)
        {
            notes.Paragraph("Nothing was found that must be put right.", bold: true, color: Palette.Green);
        }
    }

    internal IEnumerable<string> Sentences(DisplayUnits units) => _places.Count == 0
        ? ["Nothing was found that must be put right."]
        : _places.SelectMany(place => place.Findings).Select(finding => Notes.Sentence(finding, units));

    // A short line from the mark to its place, when it had to stand off.
    private static XElement? Leader((double X, double Y, double Radius) place, Box box, string color)
    {
        double dx = box.CenterX - place.X;
        double dy = box.CenterY - place.Y;
        double far = Math.Sqrt((dx * dx) + (dy * dy));
        double reach = far - place.Radius - Notes.MarkRadius;
        return reach < 1 ? null : Svg.Line(
            place.X + (dx / far * place.Radius),
            place.Y + (dy / far * place.Radius),
            place.X + (dx / far * (far - Notes.MarkRadius)),
            place.Y + (dy / far * (far - Notes.MarkRadius)),
            Stroke.Of(color, 1.4));
    }

    private (double X, double Y, double Radius)? Where(string subject, BeltFrame frame, BeltPath? belt)
    {
        if (PulleyOf(subject) is Pulley pulley)
        {
            return (frame.X(pulley.XMm), frame.Y(pulley.YMm), (pulley.DiameterMm / 2 * frame.Scale) + 5);
        }

        if (SpanOf(subject) is not int span || belt is null)
        {
            return null;
        }

        (double x, double y) = belt.MiddleOfSpan(span);
        return (x, y, 3);
    }

    // Spans can be shown only when the belt's way is known.
    private bool IsShown(string subject) => PulleyOf(subject) is not null || (SpanOf(subject) is not null && _routing.Measure().IsKnown);

    private Pulley? PulleyOf(string subject) =>
        _routing.Drive.Pulleys.FirstOrDefault(pulley => subject == $"pulley '{pulley.Name}'" || subject == $"tensioner '{pulley.Name}'")
        ?? (subject == "tensioner" && _routing.Drive.Tensioner is Tensioner tensioner ? _routing.Drive.Find(tensioner.PulleyName) : null);

    private int? SpanOf(string subject)
    {
        for (int i = 0; i < _routing.Stops.Count; i++)
        {
            string from = _routing.Stops[i].PulleyName;
            string to = _routing.Stops[i + 1 < _routing.Stops.Count ? i + 1 : 0].PulleyName;
            if (subject == $"span '{from}' to '{to}'" || subject == $"span from '{from}'")
            {
                return i;
            }
        }

        return null;
    }
}
