using System.Xml.Linq;
using MarineService.Core;
using MarineService.Core.Belts;
using MarineService.Reports.Internal;

namespace MarineService.Reports.Drawings;

/// <summary>The tensioner's arm on its pivot, and the way in which it is turned to let the belt off.</summary>
internal sealed class BeltArm
{
    private const double PivotRadius = 5;
    private const double ReleaseRadius = 23;

    private readonly Tensioner _tensioner;
    private readonly Pulley? _pulley;
    private readonly TensionerCheck? _check;
    private readonly BeltFrame _frame;
    private readonly Placement _room;

    internal BeltArm(Tensioner tensioner, BeltDrive drive, TensionerCheck? check, BeltFrame frame, Placement room) =>
        (_tensioner, _pulley, _check, _frame, _room) = (tensioner, drive.Find(tensioner.PulleyName), check, frame, room);

    internal XElement Draw()
    {
        XElement arm = Svg.Group("arm");
        (double x, double y) = (_frame.X(_tensioner.PivotXMm), _frame.Y(_tensioner.PivotYMm));
        if (_pulley is null)
        {
            return arm;
        }

        (double px, double py) = (_frame.X(_pulley.XMm), _frame.Y(_pulley.YMm));
        arm.Add(
            Svg.Line(x, y, px, py, Stroke.Of(Palette.Ink, 7)),
            Svg.Line(x, y, px, py, Stroke.Of(Palette.Paper, 4)),
            Svg.Circle(x, y, PivotRadius, Stroke.Of(Palette.Ink, 1.6).Filled(Palette.Paper)),
            Svg.Circle(x, y, 1.8, Stroke.None.Filled(Palette.Ink)),
            Svg.Circle(px, py, 3.5, Stroke.Of(Palette.Ink, 1.6).Filled(Palette.Paper)));
        _room.KeepClearLine(x, y, px, py, 5);
        _room.KeepClearDisc(x, y, ReleaseRadius + 6);
        if (_check is null)
        {
            Label(arm, x, y, "release: not known");
        }
        else
        {
            Sense release = _check.Release.Value.AsSeenFrom(Viewpoint.PulleyEnd);
            double sweep = Math.PI * 1.25 * (release == Sense.Clockwise ? 1 : -1);

            // The gap of the ring lies towards the pulley, where the arm is.
            double from = Math.Atan2(py - y, px - x) + Math.PI - (sweep / 2);

            // White beneath it, where the belt runs under it.
            arm.Add(Arrow.Round(x, y, ReleaseRadius, from, sweep, 10, Stroke.Of(Palette.Paper, 9), Palette.Paper));
            arm.Add(Arrow.Round(x, y, ReleaseRadius, from, sweep, 10, Stroke.Of(Palette.Green, 2.4).Dashed("6 3"), Palette.Green));
            Label(arm, x, y, "release");
        }

        return arm;
    }

    private void Label(XElement arm, double x, double y, string words)
    {
        Box box = _room.Beside(x, y, ReleaseRadius + 3, Lettering.Width(words, 12), 14, _frame.Outward(x, y));
        arm.Add(Svg.Text(box.CenterX, box.Y + 11, 12, words, "middle", Palette.Green, bold: true));
    }
}
