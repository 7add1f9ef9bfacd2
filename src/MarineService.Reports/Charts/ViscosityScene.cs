using System.Globalization;
using System.Xml.Linq;
using MarineService.Core;
using MarineService.Core.Oils;
using MarineService.Reports.Internal;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;
using UnitsNet;

namespace MarineService.Reports.Charts;

/// <summary>A plain logarithmic scale of viscosity over an even scale of temperature; limits as labelled lines over it.</summary>
internal sealed class ViscosityScene
{
    private const double Width = 720;
    private const double Height = 420;
    private const double Margin = 24;
    private const double Top = 58;
    private const double ColdestShown = -45;
    private const double WarmestShown = 115;
    private const double Thinnest = 2;
    private const double Thickest = 100_000;
    private const double Hot = 100;
    private const double Size = 12;
    private const double Step = 1;

    private readonly OilSelection _selection;
    private readonly OilVerdict? _oil;
    private readonly GradeVerdict? _grade;
    private readonly IReadOnlyList<NightMinimum> _nights;
    private readonly DisplayUnits _units;
    private readonly ViscosityLine? _line;
    private readonly Plot _plot;

    internal ViscosityScene(OilSelection selection, OilVerdict? oil, IReadOnlyList<NightMinimum> nights, DisplayUnits units)
    {
        (_selection, _oil, _nights, _units) = (selection, oil, nights, units);
        _grade = oil?.Grade ?? (selection.Best.IsKnown ? selection.Best.Value
            : selection.Ranked.Count > 0 ? selection.Ranked[0] : null);
        _line = oil?.Oil.Viscosity?.ToLine();
        _plot = new Plot(
            "viscosity",
            Top,
            Width,
            Height,
            new LinearAxis
            {
                Position = AxisPosition.Bottom,
                Minimum = ColdestShown,
                Maximum = WarmestShown,
                MajorStep = 20,
                MinorStep = 10,
                Title = units == DisplayUnits.Metric ? "Temperature [°C]" : "Temperature [°F]",
                LabelFormatter = celsius => (units == DisplayUnits.Metric ? celsius : Temperature.FromDegreesCelsius(celsius).DegreesFahrenheit).ToString("0", CultureInfo.InvariantCulture),
            },
            new LogarithmicAxis
            {
                Position = AxisPosition.Left,
                Minimum = Thinnest,
                Maximum = Thickest,
                Title = "Kinematic viscosity [mm²/s]",
                LabelFormatter = value => value.ToString("#,0.##", CultureInfo.InvariantCulture).Replace(',', '\u202F'),
            });
    }

    private string OilName => _oil?.Oil.ToString() ?? _grade?.Designation ?? "no grade";

    internal Drawing Draw()
    {
        AddLine();
        XElement axes = _plot.Draw();
        Notes head = new Notes(Margin, 12, Width - (2 * Margin)).Paragraph($"Oil and temperature: {OilName}", 19, bold: true);
        Notes notes = new(Margin, Top + Height + 6, Width - (2 * Margin));
        foreach (string line in Lines())
        {
            notes.Paragraph(line).Gap(2);
        }

        notes.Gap(4).Findings(null, Findings(), _units);
        return new Drawing(
            "viscosity",
            $"Oil and temperature: {OilName}",
            string.Join(" ", Lines().Concat(Findings().Select(finding => Notes.Sentence(finding, _units)))),
            Svg.Picture(Width, notes.Bottom + Margin, head.Elements, axes, Nights(), Over(), notes.Elements));
    }

    private void AddLine()
    {
        if (_line is null)
        {
            return;
        }

        LineSeries series = new() { Color = Plot.Color(Palette.Blue), StrokeThickness = 2.6 };
        double from = Math.Max(ColdestShown, _line.Coldest.DegreesCelsius);
        double to = Math.Min(WarmestShown, _line.Warmest.DegreesCelsius);
        for (int i = 0; i <= (to - from) / Step; i++)
        {
            double celsius = Math.Min(to, from + (i * Step));
            series.Points.Add(new DataPoint(celsius, _line.At(Temperature.FromDegreesCelsius(celsius)).Centistokes));
        }

        _plot.Add(series);
        OilViscosity published = _oil!.Oil.Viscosity!;
        LineSeries points = new() { MarkerType = MarkerType.Circle, MarkerSize = 4, MarkerFill = Plot.Color(Palette.Blue), StrokeThickness = 0 };
        points.Points.Add(new DataPoint(40, published.At40C.Centistokes));
        points.Points.Add(new DataPoint(Hot, published.At100C.Centistokes));
        _plot.Add(points);
    }

    /// <summary>One stroke for each night, grown by the number of nights of that whole degree.</summary>
    private XElement Nights()
    {
        XElement nights = Svg.Group("nights");
        double foot = _plot.Area.Y + _plot.Area.Height;
        IGrouping<double, NightMinimum>[] degrees = [.. _nights.GroupBy(night => Math.Round(night.Temperature.DegreesCelsius)).Where(IsShown).OrderBy(degree => degree.Key)];
        if (degrees.Length == 0)
        {
            return nights;
        }

        double unit = Math.Min(5, 70.0 / degrees.Max(degree => degree.Count()));
        foreach (IGrouping<double, NightMinimum> degree in degrees)
        {
            double x = _plot.X(degree.Key);
            XElement bar = Svg.Line(x, foot, x, foot - (unit * degree.Count()), Stroke.Of(Palette.Quiet, 2));
            bar.Add(new XAttribute("data-celsius", Svg.Number(degree.Key)), new XAttribute("data-nights", degree.Count()));
            nights.Add(bar);
        }

        return nights;
    }

    private static bool IsShown(IGrouping<double, NightMinimum> degree) => degree.Key is > ColdestShown and < WarmestShown;

    // Limits and their words: each upright line has its label in a row of its own at the top, so that none covers another.
    private XElement Over()
    {
        XElement over = Svg.Group("limits");
        List<(double Celsius, string Words, string Color, string Dashes)> upright =
        [
            (_selection.Start.DegreesCelsius, $"{(_selection.IsLaidUp ? "coldest while laid up" : "coldest start")} {Degrees(_selection.Start)}", Palette.Ink, "2 3"),
        ];
        foreach (TemperatureLimit limit in _grade?.Limits ?? [])
        {
            bool decides = limit.Kind == _grade!.DecidedBy.Kind;
            upright.Add((limit.Temperature.DegreesCelsius, (decides ? "decides: " : string.Empty) + limit.ToString(_units), decides ? Palette.Red : Palette.Amber, decides ? string.Empty : "5 4"));
        }

        (double Celsius, string Words, string Color, string Dashes)[] shown = [.. upright.Where(limit => limit.Celsius is >= ColdestShown and <= WarmestShown).OrderBy(limit => limit.Celsius)];
        for (int i = 0; i < shown.Length; i++)
        {
            double x = _plot.X(shown[i].Celsius);
            double row = _plot.Area.Y + 18 + (i * 19);

            // From its own row down, so that it crosses no label of a colder one.
            Stroke stroke = Stroke.Of(shown[i].Color, shown[i].Dashes.Length == 0 ? 2.6 : 1.8);
            over.Add(
                Svg.Line(x, row - 13, x, _plot.Area.Y + _plot.Area.Height, shown[i].Dashes.Length == 0 ? stroke : stroke.Dashed(shown[i].Dashes)),
                Label(x, row, shown[i].Words, shown[i].Color));
        }

        over.Add(Window());
        if (_line is null)
        {
            over.Add(Svg.Text(_plot.X(50), _plot.Y(60), 13, "the oil's own line is not known", "middle", Palette.Amber));
        }

        return over;
    }

    private XElement Label(double x, double row, string words, string color)
    {
        double width = Lettering.Width(words, Size) + 8;
        double right = _plot.Area.X + _plot.Area.Width - 2;

        // At the right of its line, else at its left; where neither has room, over it.
        double from = x + 5 + width <= right ? x + 5 : Math.Max(_plot.Area.X, x - 5 - width >= _plot.Area.X ? x - 5 - width : right - width);
        return Svg.Group(
            "label",
            Svg.Rectangle(from, row - 13, width, 17, Stroke.None.Filled(Palette.Paper)),
            Svg.Text(from + 4, row, Size, words, color: color));
    }

    /// <summary>What the grade promises at 100 °C.</summary>
    private XElement? Window()
    {
        (double? least, double? below) = (_grade?.Grade.Hot?.LeastViscosityAt100C.Centistokes ?? _grade?.Grade.Winter?.LeastViscosityAt100C.Centistokes, _grade?.Grade.Hot?.ViscosityAt100CBelow.Centistokes);
        if (least is not double low)
        {
            return null;
        }

        double x = _plot.X(Hot);
        double foot = _plot.Y(low);
        double head = _plot.Y(below ?? Thickest);
        XElement window = Svg.Group(
            "window",
            Svg.Line(x, foot, x, head, Stroke.Of(Palette.Green, 5)),
            Svg.Line(x - 8, foot, x + 8, foot, Stroke.Of(Palette.Green, 2.4)),
            Svg.Line(x - 8, head, x + 8, head, Stroke.Of(Palette.Green, 2.4)),
            Label(x - 14 - Lettering.Width(WindowWords(), Size), foot + 26, WindowWords(), Palette.Green));
        window.Add(new XAttribute("data-least", Svg.Number(low)));
        return window;
    }

    private string WindowWords()
    {
        SaeGrade? grade = _grade?.Grade;
        double? least = grade?.Hot?.LeastViscosityAt100C.Centistokes ?? grade?.Winter?.LeastViscosityAt100C.Centistokes;
        double? below = grade?.Hot?.ViscosityAt100CBelow.Centistokes;
        string at = Degrees(Temperature.FromDegreesCelsius(Hot));
        return below is null
            ? FormattableString.Invariant($"{grade?.Designation} at {at}: {least:0.0##} mm²/s or more")
            : FormattableString.Invariant($"{grade?.Designation} at {at}: {least:0.0##} to below {below:0.0##} mm²/s");
    }

    private IEnumerable<string> Lines()
    {
        yield return $"For this engine: {_selection.Explain(_units).Answer}";
        if (_grade is not null)
        {
            yield return _grade.Explain(_units).Answer;
            yield return $"{WindowWords()}. {string.Join("; ", _grade.Limits.Select(limit => limit.ToString(_units)))}.";
        }

        OilViscosity? viscosity = _oil?.Oil.Viscosity;
        yield return viscosity is not null
            ? FormattableString.Invariant($"The line: {viscosity.At40C.Centistokes:0.##} mm²/s at 40 °C and {viscosity.At100C.Centistokes:0.##} mm²/s at 100 °C by its data sheet, between and beyond by ASTM D341. It does not tell how the engine cranks in the cold: that is another test.")
            : "The oil's own line is not known. Missing: its viscosities at 40 °C and 100 °C, from its data sheet.";
        if (_nights.Count > 0)
        {
            yield return FormattableString.Invariant($"Strokes along the foot: {_nights.Count} nights, as high as there are nights of that degree; the coldest ")
                + $"{Degrees(Temperature.FromDegreesCelsius(_nights.Min(night => night.Temperature.DegreesCelsius)))}.";
        }
    }

    private IReadOnlyList<Finding> Findings() => [.. _selection.Findings.Concat(_oil?.Findings ?? []).GroupBy(finding => finding.Message(_units)).Select(same => same.First())];

    private string Degrees(Temperature temperature) => Figure.Of("temperature", temperature.DegreesCelsius, FigureUnit.DegreeCelsius).ToString(_units);
}
