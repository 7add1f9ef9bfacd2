using System.Globalization;
using System.Xml.Linq;
using MarineService.Core;
using MarineService.Core.Scheduling;
using MarineService.Reports.Internal;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Reports.Drawings;

/// <summary>A year on each line, months across; visits above the line, due days below it.</summary>
internal sealed class VisitScene
{
    private const double Width = 720;
    private const double Margin = 24;
    private const double Left = 76;
    private const double Right = Width - Margin;
    private const double Top = 92;
    private const double Row = 96;
    private const double Band = 26;
    private const double MarkSize = 22;

    private static readonly string[] Months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

    private readonly VisitPlan _plan;
    private readonly VisitPlanner _planner;
    private readonly int _firstYear;
    private readonly int _lastYear;

    internal VisitScene(VisitPlan plan, VisitPlanner planner)
    {
        (_plan, _planner) = (plan, planner);
        _firstYear = planner.Today.Year;
        _lastYear = Math.Max(_firstYear, plan.Visits.Select(visit => visit.Date.Year).DefaultIfEmpty(_firstYear).Max());
    }

    internal Drawing Draw()
    {
        Notes head = new Notes(Margin, 12, Width - (2 * Margin))
            .Paragraph("Visits ahead", 19, bold: true)
            .Paragraph($"{_plan}, from {Iso(_planner.Today)}. A numbered flag is a visit; a stroke below the line is the day on which a task of a visit is due.", color: Palette.Quiet);
        XElement years = Svg.Group("years");
        for (int year = _firstYear; year <= _lastYear; year++)
        {
            years.Add(Year(year));
        }

        double bottom = Top + ((_lastYear - _firstYear + 1) * Row);
        Notes notes = new(Margin, bottom + 30, Width - (2 * Margin));
        for (int i = 0; i < _plan.Visits.Count; i++)
        {
            Write(notes, _plan.Visits[i], i + 1);
        }

        foreach (string line in Sums())
        {
            notes.Paragraph(line).Gap(1);
        }

        return new Drawing(
            "visits",
            "Visits ahead",
            string.Join(" ", Describe()),
            Svg.Picture(Width, notes.Bottom + Margin, head.Elements, years, Legend(bottom + 12), notes.Elements));
    }

    private XElement Year(int year)
    {
        double line = Top + ((year - _firstYear) * Row) + 50;
        XElement drawn = Svg.Group(
            "year",
            Svg.Text(Margin, line - (Band / 2) + 5, 15, year.ToString(CultureInfo.InvariantCulture), bold: true),
            Svg.Rectangle(Left, line - Band, Right - Left, Band, Stroke.Of(Palette.Quiet, 0.8).Filled(Palette.Paper)));
        drawn.Add(new XAttribute("data-year", year));
        foreach (DateInterval blocked in _planner.BlockedPeriods)
        {
            drawn.Add(Blocked(blocked, year, line));
        }

        for (int month = 1; month <= 12; month++)
        {
            double x = X(new LocalDate(year, month, 1));
            drawn.Add(month == 1 ? null : Svg.Line(x, line - Band, x, line, Stroke.Of(Palette.Quiet, 0.5)));
            drawn.Add(Svg.Text(x + 25, line + 27, 11, Months[month - 1], "middle", Palette.Quiet));
        }

        if (year == _planner.Today.Year)
        {
            double x = X(_planner.Today);
            drawn.Add(
                Svg.Line(x, line - Band - 4, x, line + 4, Stroke.Of(Palette.Ink, 1.6).Dashed("3 2")),
                Svg.Text(x, line - Band - 30, 11, "today", x > Right - 30 ? "end" : "middle", Palette.Ink));
        }

        drawn.Add(Dues(year, line), Flags(year, line));
        return drawn;
    }

    private static XElement? Blocked(DateInterval blocked, int year, double line)
    {
        LocalDate from = LocalDate.Max(blocked.Start, new LocalDate(year, 1, 1));
        LocalDate to = LocalDate.Min(blocked.End, new LocalDate(year, 12, 31));
        if (from > to)
        {
            return null;
        }

        (double left, double right) = (X(from), X(to.PlusDays(1), year));
        SvgPath hatch = new();
        for (double x = left - Band; x < right; x += 7)
        {
            // Each stroke rises to the right and ends at the edges of its box.
            double start = Math.Max(0, left - x);
            double end = Math.Min(Band, right - x);
            if (end > start)
            {
                hatch.To(x + start, line - start).Line(x + end, line - end);
            }
        }

        XElement box = Svg.Group(
            "blocked",
            Svg.Rectangle(left, line - Band, right - left, Band, Stroke.Of(Palette.Quiet, 0.8).Filled(Palette.Tint)),
            Svg.Path(hatch.ToString(), Stroke.Of(Palette.Quiet, 0.8)));
        box.Add(new XAttribute("data-from", Iso(from)), new XAttribute("data-to", Iso(to)));
        return box;
    }

    private XElement Dues(int year, double line)
    {
        XElement dues = Svg.Group("dues");
        foreach (LocalDate due in _plan.Visits.SelectMany(visit => visit.Items).Select(item => item.Task.Due).Where(due => due.Year == year).Distinct().OrderBy(due => due))
        {
            double x = X(due);
            dues.Add(Svg.Line(x, line, x, line + 12, Stroke.Of(Palette.Amber, 2)));
        }

        return dues;
    }

    private XElement Flags(int year, double line)
    {
        (Visit Visit, int Number)[] visits = [.. _plan.Visits.Select((visit, i) => (visit, i + 1)).Where(one => one.visit.Date.Year == year)];
        double[] places = Spread.Apart([.. visits.Select(one => X(one.Visit.Date))], [.. visits.Select(_ => MarkSize)], Left - 10, Right + 10);
        XElement flags = Svg.Group("visits");
        for (int i = 0; i < visits.Length; i++)
        {
            double x = X(visits[i].Visit.Date);
            XElement flag = Svg.Group(
                "visit",
                Svg.Path(new SvgPath().To(x, line).Line(x, line - Band - 3).Line(places[i], line - Band - 9).ToString(), Stroke.Of(Palette.Blue, 2)),
                Svg.Circle(places[i], line - Band - 17, 9.5, Stroke.Of(Palette.Blue, 1.8).Filled(Palette.Paper)),
                Svg.Text(places[i], line - Band - 13, 11, Number(visits[i].Number), "middle", Palette.Blue, bold: true));
            flag.Add(new XAttribute("data-date", Iso(visits[i].Visit.Date)));
            flags.Add(flag);
        }

        return flags;
    }

    private static XElement Legend(double y) => Svg.Group(
        "legend",
        Svg.Circle(Margin + 10, y, 8, Stroke.Of(Palette.Blue, 1.8).Filled(Palette.Paper)),
        Svg.Text(Margin + 26, y + 4, 12, "visit", color: Palette.Quiet),
        Svg.Line(Margin + 84, y - 6, Margin + 84, y + 6, Stroke.Of(Palette.Amber, 2)),
        Svg.Text(Margin + 94, y + 4, 12, "task due", color: Palette.Quiet),
        Svg.Rectangle(Margin + 176, y - 7, 24, 14, Stroke.Of(Palette.Quiet, 0.8).Filled(Palette.Tint)),
        Svg.Path(new SvgPath().To(Margin + 176, y + 7).Line(Margin + 190, y - 7).To(Margin + 186, y + 7).Line(Margin + 200, y - 7).ToString(), Stroke.Of(Palette.Quiet, 0.8)),
        Svg.Text(Margin + 210, y + 4, 12, "no visits: blocked or laid up", color: Palette.Quiet));

    private static void Write(Notes notes, Visit visit, int number)
    {
        notes.Numbered(number, Words(visit), Palette.Blue);
        foreach (VisitItem item in visit.Items)
        {
            notes.Indented($"{item}.");
        }

        notes.Gap(5);
    }

    private static string Words(Visit visit) => FormattableString.Invariant(
        $"{Iso(visit.Date)} {visit.Date.DayOfWeek}, {visit.Cost:0.00}{(visit.SetUpCost == 0 ? ", setting up already paid for" : string.Empty)}");

    private IEnumerable<string> Sums() =>
        from line in _plan.Explain(DisplayUnits.Metric).Lines
        where line.Label is not ("visit" or "task")
        select $"{char.ToUpperInvariant(line.Label[0])}{line.Label.Substring(1)}: {line.Text}.";

    private IEnumerable<string> Describe()
    {
        yield return $"{_plan}, from {Iso(_planner.Today)}.";
        for (int i = 0; i < _plan.Visits.Count; i++)
        {
            yield return $"Visit {Number(i + 1)}, {Words(_plan.Visits[i])}: {string.Join("; ", _plan.Visits[i].Items)}.";
        }

        foreach (DateInterval blocked in _planner.BlockedPeriods.Where(run => run.Start.Year <= _lastYear && run.End >= _planner.Today))
        {
            yield return $"No visits from {Iso(blocked.Start)} to {Iso(blocked.End)}.";
        }

        foreach (string line in Sums())
        {
            yield return line;
        }
    }

    private static double X(LocalDate date) => X(date, date.Year);

    // The day after the last of a year stands at the right edge of that year.
    private static double X(LocalDate date, int year)
    {
        LocalDate first = new(year, 1, 1);
        double days = Period.DaysBetween(first, new LocalDate(year, 12, 31)) + 1;
        return Left + ((Right - Left) * Period.DaysBetween(first, date) / days);
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Iso(LocalDate date) => LocalDatePattern.Iso.Format(date);
}
