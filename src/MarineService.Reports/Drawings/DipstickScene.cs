using System.Globalization;
using System.Xml.Linq;
using MarineService.Core;
using MarineService.Core.Fluids;
using MarineService.Reports.Internal;

namespace MarineService.Reports.Drawings;

/// <summary>A dipstick upright on the page: marks at its left, levels at its right.</summary>
internal sealed class DipstickScene
{
    private const double Width = 720;
    private const double Margin = 24;
    private const double StickX = 250;
    private const double StickWidth = 44;
    private const double Full = 190;
    private const double Add = 370;
    private const double Top = 84;
    private const double Foot = 460;
    private const double LabelX = 362;
    private const double LabelRow = 38;

    private readonly OilChange _change;
    private readonly IReadOnlyList<Finding> _findings;
    private readonly DisplayUnits _units;
    private readonly Answer<OilEstimate> _estimate;
    private readonly Answer<SafePour> _pour;
    private readonly DipstickReading? _reading;

    internal DipstickScene(OilChange change, IReadOnlyList<Finding> findings, DisplayUnits units)
    {
        (_change, _findings, _units) = (change, findings, units);
        (_estimate, _pour) = (change.Estimate, change.NextSafePour());
        _reading = change.Events.Where(one => !one.IsRefused).LastOrDefault(one => one.Reading is not null)?.Reading;
    }

    internal Drawing Draw()
    {
        Notes head = new Notes(Margin, 12, Width - (2 * Margin)).Paragraph("Oil on the dipstick", 19, bold: true)
            .Paragraph("Shares are of the range between the marks: nothing at add, all at full.", color: Palette.Quiet);
        Notes notes = new(Margin, Foot + 34, Width - (2 * Margin));
        foreach (string line in Lines())
        {
            notes.Paragraph(line).Gap(2);
        }

        notes.Gap(4).Findings(null, _findings, _units);
        notes.Paragraph("The engine's own manual says how and when its stick is read. Never fill above the full mark.", 12, color: Palette.Quiet);
        return new Drawing(
            "dipstick",
            "Oil on the dipstick",
            string.Join(" ", Lines().Concat(_findings.Select(finding => Notes.Sentence(finding, _units)))),
            Svg.Picture(Width, notes.Bottom + Margin, head.Elements, Stick(), Levels(), notes.Elements));
    }

    // 0 at the add mark, 1 at the full mark.
    private static double Y(double rangeFraction) => Add + ((Full - Add) * rangeFraction);

    private static double OnStick(double rangeFraction) => Math.Max(Top + 24, Math.Min(Foot - 8, Y(rangeFraction)));

    private static bool IsOnStick(double rangeFraction) => OnStick(rangeFraction) == Y(rangeFraction);

    private XElement Stick()
    {
        double left = StickX - (StickWidth / 2);
        double right = StickX + (StickWidth / 2);
        XElement stick = Svg.Group("stick", Svg.Rectangle(left, Top, StickWidth, Foot - Top, Stroke.None.Filled(Palette.Paper)));
        if (_estimate.IsKnown)
        {
            double y = OnStick(_estimate.Value.RangeFraction);
            stick.Add(Svg.Path(
                new SvgPath().To(left, y).Line(left, Foot).Arc(StickWidth / 2, large: false, clockwise: false, right, Foot).Line(right, y).Close().ToString(),
                Stroke.None.Filled(Palette.Tint)));
        }

        // Hatched between the marks, as many sticks are; the rounded foot is only a look.
        SvgPath hatch = new();
        for (double y = Full; y < Add; y += 15)
        {
            hatch.To(left, y + 15).Line(right, y);
        }

        stick.Add(
            Svg.Path(hatch.ToString(), Stroke.Of(Palette.Quiet, 0.7)),
            Svg.Path(
                new SvgPath().To(left, Top).Line(left, Foot).Arc(StickWidth / 2, large: false, clockwise: false, right, Foot).Line(right, Top).ToString(),
                Stroke.Of(Palette.Ink, 1.8)),
            Mark("full", Full, Height(_change.Sump.Dipstick.FullMark), 1),
            Mark("add", Add, Height(_change.Sump.Dipstick.AddMark), 0));
        string range = Write(_change.Sump.Dipstick.RangeVolume.Liters);
        double middle = (Full + Add) / 2;
        stick.Add(
            Svg.Line(left - 52, Full + 16, left - 52, Add - 16, Stroke.Of(Palette.Quiet, 0.8)),
            Svg.Text(left - 62, middle, 13, range, "end", Palette.Quiet),
            Svg.Text(left - 62, middle + 17, 12, "between the marks", "end", Palette.Quiet));
        return stick;
    }

    private static XElement Mark(string name, double y, string height, int fraction)
    {
        XElement mark = Svg.Group(
            "stick-mark",
            Svg.Line(StickX - (StickWidth / 2) - 16, y, StickX + (StickWidth / 2), y, Stroke.Of(Palette.Ink, 3)),
            Svg.Text(StickX - (StickWidth / 2) - 22, y + 5, 15, name + height, "end", bold: true));
        mark.Add(new XAttribute("data-range-fraction", fraction));
        return mark;
    }

    private XElement Levels()
    {
        List<(string Class, double Fraction, string Words, string Under, string Color)> levels = [];
        if (_estimate.IsKnown)
        {
            OilEstimate level = _estimate.Value;
            levels.Add((
                "estimate",
                level.RangeFraction,
                $"By the account: {Where(level.RangeFraction, level.RangeStandardUncertaintyFraction)}",
                $"room to full {Write(level.RoomToFull.Liters)} ± {Write(level.RoomStandardUncertainty.Liters)}",
                Palette.Blue));
            if (_pour.IsKnown && _pour.Value.Volume.Liters > 0)
            {
                double after = level.RangeFraction + (_pour.Value.Volume.Liters / _change.Sump.Dipstick.RangeVolume.Liters);
                levels.Add(("pour", after, $"After the next pour: {Where(after, null)}", _pour.Value.Explain(_units).Answer, Palette.Green));
            }
        }

        if (_reading is not null)
        {
            levels.Add((
                "reading", _reading.RangeFraction, $"As last read: {Where(_reading.RangeFraction, _reading.StandardUncertaintyFraction)}", string.Empty, Palette.Ink));
        }

        double[] rows = Spread.Apart([.. levels.Select(level => OnStick(level.Fraction))], [.. levels.Select(_ => LabelRow)], Top, Foot + 20);
        XElement drawn = Svg.Group("levels");
        for (int i = 0; i < levels.Count; i++)
        {
            drawn.Add(Level(levels[i].Class, levels[i].Fraction, levels[i].Words, levels[i].Under, levels[i].Color, rows[i]));
        }

        if (_estimate.IsKnown)
        {
            drawn.Add(Doubt(_estimate.Value));
        }
        else
        {
            drawn.Add(Svg.Text(LabelX, (Full + Add) / 2, 14, "Level not known", bold: true, color: Palette.Amber));
        }

        return drawn;
    }

    private static XElement Level(string name, double fraction, string words, string under, string color, double row)
    {
        double right = StickX + (StickWidth / 2);
        double y = OnStick(fraction);
        Stroke stroke = name switch
        {
            "pour" => Stroke.Of(color, 2.2).Dashed("7 3"),
            "reading" => Stroke.Of(color, 2.2).Dashed("2 3"),
            _ => Stroke.Of(color, 3.2),
        };
        XElement level = Svg.Group(
            name,
            Svg.Line(StickX - (StickWidth / 2), y, right, y, stroke),
            Svg.Path(new SvgPath().To(right, y).Line(right + 44, y).Line(LabelX - 8, row).ToString(), Stroke.Of(color, 0.9)),
            Svg.Text(LabelX, row + (under.Length == 0 ? 5 : -3), 14, words, color: color, bold: true),
            under.Length == 0 ? null : Svg.Text(LabelX, row + 13, 12, under, color: Palette.Quiet));
        level.Add(new XAttribute("data-range-fraction", fraction.ToString("0.####", CultureInfo.InvariantCulture)));
        return level;
    }

    /// <summary>One standard uncertainty each way, beside the stick.</summary>
    private static XElement Doubt(OilEstimate level)
    {
        double x = StickX + (StickWidth / 2) + 14;
        double high = OnStick(level.RangeFraction + level.RangeStandardUncertaintyFraction);
        double low = OnStick(level.RangeFraction - level.RangeStandardUncertaintyFraction);
        return Svg.Group(
            "uncertainty",
            Svg.Line(x, high, x, low, Stroke.Of(Palette.Blue, 2)),
            Svg.Line(x - 6, high, x + 6, high, Stroke.Of(Palette.Blue, 2)),
            Svg.Line(x - 6, low, x + 6, low, Stroke.Of(Palette.Blue, 2)));
    }

    private IEnumerable<string> Lines()
    {
        if (_estimate.IsKnown)
        {
            Explanation level = _estimate.Value.Explain(_units);
            yield return level.Answer;
            yield return Notes.Sentence(string.Join("; ", level.Lines.Select(line => $"{line.Label}: {line.Text}"))) + " ± is one standard uncertainty.";
        }
        else
        {
            yield return $"The level is not known: {string.Join(" ", _estimate.Missing)}";
        }

        if (_reading is not null)
        {
            yield return $"Last read at {Share(_reading.RangeFraction)} of the range, counted from the add mark.";
        }

        if (_pour.IsKnown)
        {
            Explanation pour = _pour.Value.Explain(_units);
            yield return $"Next: {pour.Answer} {Notes.Sentence(string.Join("; ", pour.Lines.Where(line => line.Label.StartsWith("by ", StringComparison.Ordinal)).Select(line => $"{line.Label}: {line.Text}")))}";
        }
        else
        {
            yield return $"Next pour not known: {string.Join(" ", _pour.Missing)}";
        }
    }

    private string Where(double fraction, double? uncertainty) =>
        !IsOnStick(fraction) ? (fraction < 0 ? "below the stick" : "far above full")
        : uncertainty is double doubt ? $"{Share(fraction)} ± {Share(doubt)}"
        : Share(fraction);

    private string Height(UnitsNet.Length? mark) => mark is UnitsNet.Length height ? $" ({Figure.Of("height", height.Millimeters, FigureUnit.Millimeter).ToString(_units)})" : string.Empty;

    private string Write(double liters) => Figure.Of("volume", liters, FigureUnit.Liter).ToString(_units);

    private string Share(double fraction) => Figure.Of("share", fraction, FigureUnit.Fraction).ToString(_units);
}
