using System.Xml.Linq;
using MarineService.Core;
using MarineService.Core.Belts;
using MarineService.Reports.Internal;

namespace MarineService.Reports.Drawings;

/// <summary>One belt drive on the page: what is drawn first lies below, names and marks take the room that is left.</summary>
internal sealed class BeltScene
{
    private const double Top = 64;

    private readonly BeltRouting _routing;
    private readonly BeltDrive _drive;
    private readonly BeltCheck _check;
    private readonly string _answer;
    private readonly RoutingComparison? _differs;
    private readonly DisplayUnits _units;
    private readonly BeltFrame _frame;
    private readonly BeltPath? _belt;
    private readonly BeltPath? _should;
    private readonly Placement _room;
    private readonly BeltPlaces _places;
    private readonly TensionerCheck? _tensioner;

    internal BeltScene(BeltCheck check, IReadOnlyList<Finding> findings, string answer, RoutingComparison? differs, DisplayUnits units)
    {
        (_check, _routing, _drive) = (check, check.Routing, check.Routing.Drive);
        (_answer, _differs, _units) = (answer, differs, units);
        _frame = new BeltFrame(_drive, Top);
        _belt = check.Geometry.IsKnown ? new BeltPath(_frame, _routing, check.Geometry.Value) : null;
        _should = differs?.Right.Measure() is { IsKnown: true } right ? new BeltPath(_frame, differs.Right, right.Value) : null;
        _room = new Placement(_frame.Page);
        _places = new BeltPlaces(_routing, findings);

        // A belt that lies wrong says nothing about the arm: the right routing does.
        _tensioner = differs is null ? Released(check) : Released(differs.Right.Check());
    }

    internal Drawing Draw()
    {
        foreach (Pulley pulley in _drive.Pulleys)
        {
            _room.KeepClearDisc(_frame.X(pulley.XMm), _frame.Y(pulley.YMm), (pulley.DiameterMm / 2 * _frame.Scale) + 9);
        }

        _belt?.KeepClear(_room);
        _should?.KeepGhostClear(_room);
        BeltPulleys pulleys = new(_routing, _frame, _room, _check.Geometry.IsKnown);
        XElement drive = Svg.Group("drive", _frame.Attributes(), _should?.Ghost(), pulleys.Circles(), _belt?.Band(_places.IsWrongSpan));
        XElement? arm = _drive.Tensioner is Tensioner tensioner ? new BeltArm(tensioner, _drive, _tensioner, _frame, _room).Draw() : null;
        drive.Add(arm, pulleys.NamesAndSenses(), _places.Marks(_frame, _belt, _room));

        Notes head = new Notes(BeltFrame.Margin, 12, BeltFrame.Width - (2 * BeltFrame.Margin))
            .Paragraph("Belt drive, seen from the pulley end", 19, bold: true);
        head.Paragraph($"{CrankWords()}.", color: Palette.Quiet);
        Notes notes = Words(out XElement legend);
        return new Drawing(
            "belt",
            "Belt drive, seen from the pulley end",
            string.Join(" ", Describe()),
            Svg.Picture(BeltFrame.Width, notes.Bottom + BeltFrame.Margin, head.Elements, drive, legend, notes.Elements));
    }

    private static TensionerCheck? Released(BeltCheck? check) =>
        check is { Tensioner: { IsKnown: true, Value.Release.IsKnown: true } tensioner } ? tensioner.Value : null;

    private string CrankWords() => $"Seen so the crank turns {Word(_drive.CrankTurns.AsSeenFrom(Viewpoint.PulleyEnd))}. Pulleys and their places are to scale";

    private Notes Words(out XElement legend)
    {
        legend = BeltLegend.Draw(BeltFrame.Margin, Top + _frame.Height + 4, _differs is not null, out double bottom);
        Notes notes = new(BeltFrame.Margin, bottom, BeltFrame.Width - (2 * BeltFrame.Margin));
        notes.Gap(8).Paragraph(_answer, 15, bold: true).Gap(2);
        foreach (string line in Lies().Concat(Steps()).Concat(TensionerWords()))
        {
            notes.Paragraph(line).Gap(2);
        }

        notes.Gap(6);
        _places.Write(notes, _units);
        return notes.Gap(2).Paragraph("The engine's own diagram outranks this one. Engine off, key out, and nobody near the start while hands are near the belt.", 12, color: Palette.Quiet);
    }

    private IEnumerable<string> Lies()
    {
        yield return $"The belt lies: {_routing}.";
        if (_belt is null)
        {
            yield return $"Its way is not known: {string.Join(" ", _check.Geometry.Missing)}";
        }

        if (_differs is not null)
        {
            yield return $"It should lie: {_differs.Right}.";
        }
    }

    private IEnumerable<string> Steps() => _differs is null ? [] : _differs.Edits.Select((edit, i) => FormattableString.Invariant($"Step {i + 1}: {edit}."));

    private IEnumerable<string> TensionerWords()
    {
        if (_drive.Tensioner is null)
        {
            yield break;
        }

        yield return _tensioner is not null
            ? $"Tensioner{(_differs is null ? string.Empty : ", with the belt on right")}: {_tensioner.Explain(_units).Answer} The spring is strong: keep fingers clear of arm and belt, and let it back slowly."
            : $"Tensioner: which way it is released is not known. {string.Join(" ", _check.Tensioner.IsKnown ? _check.Tensioner.Value.Release.Missing : _check.Tensioner.Missing)}";
    }

    private IEnumerable<string> Describe()
    {
        yield return _answer;
        yield return $"{CrankWords()}.";
        foreach (string line in Lies())
        {
            yield return line;
        }

        for (int i = 0; _check.Geometry.IsKnown && i < _routing.Stops.Count; i++)
        {
            RoutingStop stop = _routing.Stops[i];
            yield return $"{stop.PulleyName}: on the belt's {(stop.Face == BeltFace.Ribs ? "ribs" : "back")}, turns {Word(_routing.TurningOf(i).AsSeenFrom(Viewpoint.PulleyEnd))}.";
        }

        foreach (string line in Steps().Concat(TensionerWords()).Concat(_places.Sentences(_units)))
        {
            yield return line;
        }
    }

    private static string Word(Sense sense) => sense == Sense.Clockwise ? "clockwise" : "counter-clockwise";
}
