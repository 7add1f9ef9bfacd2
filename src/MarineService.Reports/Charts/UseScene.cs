using System.Xml.Linq;
using MarineService.Core;
using MarineService.Core.Engines;
using MarineService.Core.Scheduling;
using MarineService.Reports.Internal;
using NodaTime;
using NodaTime.Text;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace MarineService.Reports.Charts;

/// <summary>Hours in all upwards, the years across; what lies ahead is dashed and has its range about it.</summary>
internal sealed class UseScene
{
    private const double Width = 720;
    private const double Height = 400;
    private const double Margin = 24;
    private const double Top = 58;
    private const int ForecastStepDays = 7;

    /// <summary>A fifth of full, which every runtime writes as 0.2.</summary>
    private const byte FaintFill = 51;

    /// <summary>Due points nearer to each other than this share a mark.</summary>
    private const double Together = 14;

    private readonly ServiceHistory _history;
    private readonly SeasonalUse _use;
    private readonly LocalDate _until;
    private readonly DisplayUnits _units;
    private readonly (LocalDate Date, HoursEstimate Hours)[] _readings;
    private readonly HoursForecast[] _ahead;
    private readonly TaskDue[] _tasks;
    private readonly IReadOnlyList<DueMark> _marks;

    internal UseScene(ServiceHistory history, IReadOnlyList<TaskDue> tasks, LocalDate until, DisplayUnits units)
    {
        (_history, _use, _until, _units) = (history, history.Use, until, units);
        _readings = [.. history.Meter.ReadingDates.Select(day => (day, history.Meter.HoursOn(day).Value))];
        _ahead = [.. Ahead()];
        _tasks = [.. tasks];
        _marks = DueMark.Of(_tasks, Place, Together * DaysAcross() / (Width - (4 * Margin)));
    }

    internal Drawing Draw()
    {
        Notes head = new Notes(Margin, 12, Width - (2 * Margin)).Paragraph("Engine hours over the years", 19, bold: true);
        (XElement?[] drawn, double bottom) = _readings.Length == 0 ? ([], Top) : (Chart(), Top + Height);
        Notes notes = new(Margin, bottom + 6, Width - (2 * Margin));
        foreach (string line in Lines())
        {
            notes.Paragraph(line).Gap(2);
        }

        notes.Gap(4);
        for (int i = 0; i < _marks.Count; i++)
        {
            DueMark mark = _marks[i];
            notes.Numbered(i + 1, mark.Words(), mark.Color());
            foreach (TaskDue task in mark.Tasks)
            {
                notes.Indented(Words(task) + ".");
            }

            notes.Gap(4);
        }

        foreach (string rest in NotShown())
        {
            notes.Paragraph(rest, color: Palette.Quiet).Gap(2);
        }

        notes.Gap(2).Findings(null, _history.Findings, _units);
        return new Drawing(
            "use",
            "Engine hours over the years",
            string.Join(" ", Lines().Concat(_tasks.Where(task => Place(task) is not null).Select(task => Words(task) + ".")).Concat(NotShown())
                .Concat(_history.Findings.Select(finding => Notes.Sentence(finding, _units)))),
            Svg.Picture(Width, notes.Bottom + Margin, head.Elements, drawn, notes.Elements));
    }

    private static double Day(LocalDate date) => DateTimeAxis.ToDouble(date.ToDateTimeUnspecified());

    private static double Hours(EngineHours hours) => (double)hours.ToHours();

    private static string Iso(LocalDate date) => LocalDatePattern.Iso.Format(date);

    private double DaysAcross() => _readings.Length == 0 ? 1 : Period.DaysBetween(_readings[0].Date, _until);

    private IEnumerable<HoursForecast> Ahead()
    {
        if (_use.LastReadingDate is not LocalDate from)
        {
            yield break;
        }

        for (LocalDate day = from.PlusDays(1); day < _until.PlusDays(ForecastStepDays); day = day.PlusDays(ForecastStepDays))
        {
            Answer<HoursForecast> hours = _use.HoursOn(LocalDate.Min(day, _until));
            if (hours.IsKnown)
            {
                yield return hours.Value;
            }
        }
    }

    private XElement[] Chart()
    {
        LocalDate first = _readings[0].Date;
        double most = _ahead.Select(hours => Hours(hours.Most)).Concat(_readings.Select(reading => Hours(reading.Hours.Estimate))).Max();
        double least = Hours(_readings[0].Hours.Estimate);
        double air = Math.Max(10, 0.08 * (most - least));
        Plot plot = new(
            "use",
            Top,
            Width,
            Height,
            new DateTimeAxis
            {
                Position = AxisPosition.Bottom,
                Minimum = Day(first.PlusDays(-20)),
                Maximum = Day(_until.PlusDays(20)),
                IntervalType = DateTimeIntervalType.Years,
                MinorIntervalType = DateTimeIntervalType.Months,
                IntervalLength = 60,
                StringFormat = "yyyy",
                Title = "Year, written at its first day",
            },
            new LinearAxis { Position = AxisPosition.Left, Minimum = Math.Max(0, least - air), Maximum = most + air, Title = "Engine hours in all [h]" });
        if (_ahead.Length > 0)
        {
            plot.Add(Range());
            plot.Add(Expected());
        }

        LineSeries read = new() { Color = Plot.Color(Palette.Ink), StrokeThickness = 2 };
        read.Points.AddRange(_readings.Select(reading => new DataPoint(Day(reading.Date), Hours(reading.Hours.Estimate))));
        plot.Add(read);
        XElement axes = plot.Draw();
        return [axes, LayUps(plot), Readings(plot), Today(plot), DuePoints(plot)];
    }

    private AreaSeries Range()
    {
        AreaSeries range = new() { Color = Plot.Color(Palette.Blue), Color2 = Plot.Color(Palette.Blue), StrokeThickness = 0.8, Fill = OxyColor.FromAColor(FaintFill, Plot.Color(Palette.Blue)) };
        range.Points.AddRange(_ahead.Select(hours => new DataPoint(Day(hours.Date), Hours(hours.Most))));
        range.Points2.AddRange(_ahead.Select(hours => new DataPoint(Day(hours.Date), Hours(hours.Least))));
        return range;
    }

    private LineSeries Expected()
    {
        LineSeries expected = new() { Color = Plot.Color(Palette.Blue), StrokeThickness = 2.2, Dashes = [4, 2.5] };
        expected.Points.Add(new DataPoint(Day(_readings[_readings.Length - 1].Date), Hours(_readings[_readings.Length - 1].Hours.Estimate)));
        expected.Points.AddRange(_ahead.Select(hours => new DataPoint(Day(hours.Date), Hours(hours.Expected))));
        return expected;
    }

    private XElement Readings(Plot plot)
    {
        XElement readings = Svg.Group("readings");
        foreach ((LocalDate date, HoursEstimate hours) in _readings)
        {
            XElement dot = Svg.Circle(plot.X(Day(date)), plot.Y(Hours(hours.Estimate)), 3, Stroke.Of(Palette.Ink, 1.4).Filled(Palette.Paper));
            dot.Add(new XAttribute("data-date", Iso(date)), new XAttribute("data-hours", Svg.Number(Hours(hours.Estimate))));
            readings.Add(dot);
        }

        return readings;
    }

    /// <summary>Along the foot, where the engine was laid up or is to be.</summary>
    private XElement LayUps(Plot plot)
    {
        XElement layUps = Svg.Group("lay-ups");
        double foot = plot.Area.Y + plot.Area.Height;
        foreach (LayUpPeriod layUp in _history.LayUps)
        {
            double from = Math.Max(plot.Area.X, plot.X(Day(layUp.From)));
            double to = Math.Min(plot.Area.X + plot.Area.Width, plot.X(Day(layUp.To ?? _until)));
            if (to > from)
            {
                layUps.Add(Svg.Rectangle(from, foot - 7, to - from, 7, Stroke.None.Filled(Palette.Quiet)));
            }
        }

        return layUps;
    }

    private XElement Today(Plot plot)
    {
        double x = plot.X(Day(_history.AsOf));
        return Svg.Group(
            "today",
            Svg.Line(x, plot.Area.Y, x, plot.Area.Y + plot.Area.Height, Stroke.Of(Palette.Ink, 1.4).Dashed("3 3")),
            Svg.Text(x - 5, plot.Area.Y + 15, 12, $"today, {Iso(_history.AsOf)}", "end"));
    }

    private XElement DuePoints(Plot plot)
    {
        XElement points = Svg.Group("due-points");
        Placement room = new(plot.Area);
        foreach ((LocalDate date, HoursEstimate hours) in _readings)
        {
            room.KeepClearDisc(plot.X(Day(date)), plot.Y(Hours(hours.Estimate)), 4);
        }

        HoursForecast[] line = _ahead;
        for (int i = 1; i < line.Length; i++)
        {
            room.KeepClearLine(plot.X(Day(line[i - 1].Date)), plot.Y(Hours(line[i - 1].Expected)), plot.X(Day(line[i].Date)), plot.Y(Hours(line[i].Expected)), 2);
        }

        for (int i = 0; i < _marks.Count; i++)
        {
            DueMark mark = _marks[i];
            double size = 2 * Notes.MarkRadius;
            XElement point = Svg.Group("due-point");
            foreach ((TaskDue task, LocalDate date, double hours) in mark.Places)
            {
                (double x, double y) = (plot.X(Day(date)), plot.Y(hours));
                XElement diamond = Svg.Path(new SvgPath().To(x, y - 5).Line(x + 5, y).Line(x, y + 5).Line(x - 5, y).Close().ToString(), Stroke.Of(mark.Color(), 1.4).Filled(Palette.Paper));
                diamond.Add(new XAttribute("data-task", PlainText.Of(task.TaskId)), new XAttribute("data-date", Iso(date)));
                point.Add(Span(task, plot, y, mark.Color()), diamond);
            }

            (double at, double level) = (plot.X(Day(mark.Places[0].Date)), plot.Y(mark.Places[0].Hours));
            Box box = room.Beside(at, level, 16, size, size, -Math.PI * 0.6);
            point.AddFirst(Svg.Line(at, level, box.CenterX, box.CenterY, Stroke.Of(mark.Color(), 1.2)));
            point.Add(Notes.Mark(box.CenterX, box.CenterY, i + 1, mark.Color()));
            points.Add(point);
        }

        return points;
    }

    /// <summary>From the earliest to the latest day on which it comes due.</summary>
    private static XElement? Span(TaskDue task, Plot plot, double y, string color)
    {
        if (task.Forecast.Earliest is not LocalDate earliest || task.Forecast.Latest is not LocalDate latest || earliest == latest)
        {
            return null;
        }

        double from = Math.Max(plot.Area.X, plot.X(Day(earliest)));
        double to = Math.Min(plot.Area.X + plot.Area.Width, plot.X(Day(latest)));
        return to > from ? Svg.Group("range", Svg.Line(from, y, to, y, Stroke.Of(color, 1.6)), Svg.Line(from, y - 4, from, y + 4, Stroke.Of(color, 1.6)), Svg.Line(to, y - 4, to, y + 4, Stroke.Of(color, 1.6))) : null;
    }

    /// <summary>Where a task's due point stands: its expected day, at the hours that the engine has then.</summary>
    private (LocalDate, double)? Place(TaskDue task)
    {
        if (_readings.Length == 0 || task.Forecast.Expected is not LocalDate date || date > _until || date < _readings[0].Date)
        {
            return null;
        }

        Answer<HoursForecast> hours = _use.HoursOn(date);
        return hours.IsKnown ? (date, Hours(hours.Value.Expected)) : null;
    }

    private IEnumerable<string> Lines()
    {
        if (_readings.Length == 0)
        {
            yield return "No reading of the hour meter is known. Missing: two meter readings, some weeks apart.";
            yield break;
        }

        yield return $"{_readings.Length} readings, the last {_readings[_readings.Length - 1].Hours.Estimate} on {Iso(_readings[_readings.Length - 1].Date)}.";
        Answer<HoursForecast> then = _use.HoursOn(_until);
        yield return then.IsKnown
            ? $"Forecast: {then.Value.Explain(_units).Answer} {Notes.Sentence(string.Join("; ", then.Value.Explain(_units).Lines.Where(line => line.Label is "stands on" or "how sure").Select(line => $"{line.Label}: {line.Text}")))}"
            : $"Forecast not known: {string.Join(" ", then.Missing)}";
        yield return "Rings: readings. Dashes: expected, within the range of the past seasons. Bars along the foot: laid up. Diamonds: a task comes due, with the earliest and latest day where they differ.";
    }

    private static string Words(TaskDue task) => $"{task.TaskId}: {(task.Due.IsNone ? "no due point" : $"due {task.Due}")}, {Spaced(task.Status)}"
        + (task.Forecast.Expected is LocalDate day ? $"; expected {Iso(day)}" : string.Empty)
        + (task.Forecast.Earliest is LocalDate earliest && task.Forecast.Latest is LocalDate latest && earliest != latest ? $", from {Iso(earliest)} to {Iso(latest)}" : string.Empty);

    private static string Spaced(DueStatus status) => string.Concat(status.ToString().Select((letter, i) => i > 0 && char.IsUpper(letter) ? $" {char.ToLowerInvariant(letter)}" : char.ToLowerInvariant(letter).ToString()));

    private IEnumerable<string> NotShown() =>
        from task in _tasks
        where Place(task) is null
        select $"Not in the picture: {Words(task)}{(task.Forecast.Missing.Count > 0 ? ". Missing: " + string.Join(" ", task.Forecast.Missing) : string.Empty)}{(task.Forecast.Missing.Count > 0 ? string.Empty : ".")}";
}
