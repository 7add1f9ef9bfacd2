using System.Globalization;
using System.Xml.Linq;
using MarineService.Core.Belts;
using MarineService.Reports.Internal;

namespace MarineService.Reports.Drawings;

/// <summary>The belt along its pitch line: arcs and spans, and the comb on the side of its ribs.</summary>
internal sealed class BeltPath
{
    private const double BandWidth = 4;
    private const double ToothEvery = 8;
    private const double ToothLength = 7;
    private const double Crowded = 400;
    private const double GhostWidth = 2.2;

    private readonly BeltFrame _frame;
    private readonly BeltRouting _routing;
    private readonly IReadOnlyList<StopGeometry> _stops;

    internal BeltPath(BeltFrame frame, BeltRouting routing, RoutingGeometry geometry) =>
        (_frame, _routing, _stops) = (frame, routing, geometry.Stops);

    /// <summary>The ribs face the pulleys that carry them: on the left of the belt's travel when these turn counter-clockwise.</summary>
    private bool RibsAreLeft => (_routing.Stops[0].Face == BeltFace.Ribs) == _stops[0].TurnsCounterClockwise;

    /// <summary>The whole way as one dotted line: where the belt should lie.</summary>
    internal XElement Ghost()
    {
        SvgPath path = new();
        for (int i = 0; i < _stops.Count; i++)
        {
            StopGeometry stop = _stops[i];
            _ = i == 0 ? path.To(_frame.X(stop.EntryXMm), _frame.Y(stop.EntryYMm)) : path.Line(_frame.X(stop.EntryXMm), _frame.Y(stop.EntryYMm));
            AddArc(path, stop);
        }

        return Svg.Group("should-lie", Svg.Path(path.Close().ToString(), Stroke.Of(Palette.Blue, GhostWidth).Dashed("1.5 5")));
    }

    /// <summary>The band, stop by stop; a span of which something was found is drawn in dashes.</summary>
    internal XElement Band(Func<int, bool> isWrongSpan)
    {
        XElement band = Svg.Group("belt");
        for (int i = 0; i < _stops.Count; i++)
        {
            StopGeometry stop = _stops[i];
            SvgPath path = new SvgPath().To(_frame.X(stop.EntryXMm), _frame.Y(stop.EntryYMm));
            AddArc(path, stop);
            XElement arc = Svg.Path(path.ToString(), Stroke.Of(Palette.Ink, BandWidth));
            arc.Add(new XAttribute("class", "arc"), new XAttribute("data-pulley", PlainText.Of(_routing.Stops[i].PulleyName)), new XAttribute("data-face", Face(i)));
            band.Add(arc);
        }

        for (int i = 0; i < _stops.Count; i++)
        {
            StopGeometry from = _stops[i];
            StopGeometry to = _stops[Next(i)];
            Stroke stroke = isWrongSpan(i) ? Stroke.Of(Palette.Red, BandWidth + 2).Dashed("9 4") : Stroke.Of(Palette.Ink, BandWidth);
            XElement span = Svg.Line(_frame.X(from.ExitXMm), _frame.Y(from.ExitYMm), _frame.X(to.EntryXMm), _frame.Y(to.EntryYMm), stroke);
            span.Add(
                new XAttribute("class", "span"),
                new XAttribute("data-from", PlainText.Of(_routing.Stops[i].PulleyName)),
                new XAttribute("data-to", PlainText.Of(_routing.Stops[Next(i)].PulleyName)),
                new XAttribute("data-length-mm", from.ExitSpanMm.ToString("0.###", CultureInfo.InvariantCulture)));
            band.Add(span);
        }

        band.Add(Comb());
        return band;
    }

    /// <summary>Where names and marks must not stand.</summary>
    internal void KeepClear(Placement room) => KeepClear(room, ToothLength);

    /// <summary>The same for the dotted line of <see cref="Ghost"/>, which has no comb.</summary>
    internal void KeepGhostClear(Placement room) => KeepClear(room, GhostWidth);

    private void KeepClear(Placement room, double halfWidth)
    {
        for (int i = 0; i < _stops.Count; i++)
        {
            (StopGeometry from, StopGeometry to) = (_stops[i], _stops[Next(i)]);
            room.KeepClearLine(_frame.X(from.ExitXMm), _frame.Y(from.ExitYMm), _frame.X(to.EntryXMm), _frame.Y(to.EntryYMm), halfWidth);
        }
    }

    internal (double X, double Y) MiddleOfSpan(int stop)
    {
        (StopGeometry from, StopGeometry to) = (_stops[stop], _stops[Next(stop)]);
        return (_frame.X((from.ExitXMm + to.EntryXMm) / 2), _frame.Y((from.ExitYMm + to.EntryYMm) / 2));
    }

    private void AddArc(SvgPath path, in StopGeometry stop)
    {
        // In parts of a quarter turn at most: where an arc comes near to half a turn, two decimals no longer say where its middle is.
        double sign = stop.TurnsCounterClockwise ? 1 : -1;
        double start = Math.Atan2(stop.EntryYMm - stop.CenterYMm, stop.EntryXMm - stop.CenterXMm);
        double radius = stop.PitchRadiusMm * _frame.Scale;
        int parts = Math.Max(1, (int)Math.Ceiling(stop.WrapRadians / (Math.PI / 2)));
        for (int part = 1; part < parts; part++)
        {
            double angle = start + (sign * stop.WrapRadians * part / parts);
            path.Arc(
                radius,
                large: false,
                clockwise: !stop.TurnsCounterClockwise,
                _frame.X(stop.CenterXMm + (stop.PitchRadiusMm * Math.Cos(angle))),
                _frame.Y(stop.CenterYMm + (stop.PitchRadiusMm * Math.Sin(angle))));
        }

        path.Arc(radius, large: false, clockwise: !stop.TurnsCounterClockwise, _frame.X(stop.ExitXMm), _frame.Y(stop.ExitYMm));
    }

    private XElement Comb()
    {
        double whole = _stops.Sum(stop => stop.ArcMm + stop.ExitSpanMm) * _frame.Scale;
        double every = Math.Max(ToothEvery, whole / Crowded) / _frame.Scale;
        double side = RibsAreLeft ? 1 : -1;
        SvgPath teeth = new();
        double ahead = every / 2;
        foreach (StopGeometry stop in _stops)
        {
            double sign = stop.TurnsCounterClockwise ? 1 : -1;
            double start = Math.Atan2(stop.EntryYMm - stop.CenterYMm, stop.EntryXMm - stop.CenterXMm);
            for (; ahead < stop.ArcMm; ahead += every)
            {
                double angle = start + (sign * ahead / stop.PitchRadiusMm);

                // To the left of the travel is towards the middle of a pulley that turns counter-clockwise.
                AddTooth(
                    teeth,
                    stop.CenterXMm + (stop.PitchRadiusMm * Math.Cos(angle)),
                    stop.CenterYMm + (stop.PitchRadiusMm * Math.Sin(angle)),
                    -side * sign * Math.Cos(angle),
                    -side * sign * Math.Sin(angle));
            }

            for (ahead -= stop.ArcMm; ahead < stop.ExitSpanMm; ahead += every)
            {
                AddTooth(
                    teeth,
                    stop.ExitXMm + (ahead * stop.ExitDirectionXRatio),
                    stop.ExitYMm + (ahead * stop.ExitDirectionYRatio),
                    -side * stop.ExitDirectionYRatio,
                    side * stop.ExitDirectionXRatio);
            }

            ahead -= stop.ExitSpanMm;
        }

        XElement comb = Svg.Path(teeth.ToString(), Stroke.Of(Palette.Ink, 1.6));
        comb.Add(new XAttribute("class", "ribs"));
        return comb;
    }

    private void AddTooth(SvgPath teeth, double xMm, double yMm, double alongX, double alongY)
    {
        (double x, double y) = (_frame.X(xMm), _frame.Y(yMm));
        teeth.To(x, y).Line(x + (ToothLength * alongX), y - (ToothLength * alongY));
    }

    private string Face(int stop) => _routing.Stops[stop].Face == BeltFace.Ribs ? "ribs" : "back";

    private int Next(int stop) => stop + 1 < _stops.Count ? stop + 1 : 0;
}
