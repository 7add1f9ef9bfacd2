using System.Xml.Linq;
using MarineService.Core.Scheduling;
using MarineService.Reports.Drawings;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Reports.Tests.Drawings;

/// <summary>Every visit stands at its day, every task has its words, and days without visits are hatched.</summary>
public sealed class VisitPlanDrawingTest
{
    private static readonly LocalDate Today = new(2026, 10, 12);

    private static readonly VisitPlanner Planner = VisitPlanner.From(Today, 60m).Blocked(new LocalDate(2026, 12, 20), new LocalDate(2027, 1, 4))
        .LaidUp(new LocalDate(2027, 11, 1), new LocalDate(2028, 3, 31));

    private static readonly VisitPlan Plan = Planner.LeastCost(
    [
        VisitTask.Of("impeller", new LocalDate(2026, 10, 12), 0.1m, 4m),
        VisitTask.Of("belt", new LocalDate(2026, 12, 24), 0.8m, 2m),
        VisitTask.Of("engine-oil", new LocalDate(2027, 6, 9), 0.9m, 2m),
        VisitTask.Of("fuel-filter", new LocalDate(2027, 6, 30), 0.3m, 1m),
        VisitTask.Of("anodes", new LocalDate(2028, 2, 1), 1m, 3m),
    ]).Value;

    /// <summary>A day's place is its share of its year: counted here from the day of the year, not from the library.</summary>
    [Fact]
    public void Of_Plan_PutsEveryVisitAtItsDay()
    {
        XElement svg = Pictures.Parse(VisitPlanDrawing.Of(Plan, Planner));
        XElement[] visits = [.. svg.Descendants().Where(one => (string?)one.Attribute("class") == "visit")];
        Assert.Equal(Plan.Visits.Select(visit => LocalDatePattern.Iso.Format(visit.Date)), visits.Select(visit => (string)visit.Attribute("data-date")!));
        foreach (XElement visit in visits)
        {
            LocalDate date = LocalDatePattern.Iso.Parse((string)visit.Attribute("data-date")!).Value;
            XElement year = visit.Ancestors().First(one => (string?)one.Attribute("class") == "year");
            Assert.Equal(date.Year, (int)year.Attribute("data-year")!);
            XElement band = year.Elements().First(one => one.Name.LocalName == "rect");
            double share = (date.DayOfYear - 1) / (DateTime.IsLeapYear(date.Year) ? 366.0 : 365.0);
            double x = (double)band.Attribute("x")! + ((double)band.Attribute("width")! * share);
            Assert.Equal(x, double.Parse(((string)visit.Elements().First().Attribute("d")!).Split(' ', 'M')[1], System.Globalization.CultureInfo.InvariantCulture), 0.02);
        }
    }

    [Fact]
    public void Of_Plan_SaysEveryVisitAndTask()
    {
        Drawing drawing = VisitPlanDrawing.Of(Plan, Planner);
        string words = Pictures.Words(drawing);
        foreach (VisitItem item in Plan.Visits.SelectMany(visit => visit.Items))
        {
            Assert.Contains(item.ToString(), words, StringComparison.Ordinal);
            Assert.Contains(item.ToString(), drawing.Description, StringComparison.Ordinal);
        }

        Pictures.AssertTextStaysInside(drawing);
    }

    [Fact]
    public void Of_BlockedDays_HatchesThemOnEachOfTheirYears()
    {
        string[] blocked = [.. Pictures.ByClass(VisitPlanDrawing.Of(Plan, Planner), "blocked").Select(run => $"{(string?)run.Attribute("data-from")} {(string?)run.Attribute("data-to")}")];
        Assert.Equal("2026-12-20 2026-12-31", blocked[0]);
        Assert.Contains("2027-01-01 2027-01-04", blocked);
        Assert.Contains("2027-11-02 2027-12-31", blocked);
    }

    [Fact]
    public void Of_EmptyPlan_DrawsTheYear() =>
        Assert.Single(Pictures.ByClass(VisitPlanDrawing.Of(Planner.LeastCost(Array.Empty<VisitTask>()).Value, Planner), "year"));

    [Fact]
    public void Of_HostileTaskNames_StayText() => Pictures.AssertHostileWordsStayText(name =>
        VisitPlanDrawing.Of(Planner.LeastCost([VisitTask.Of(name, new LocalDate(2026, 11, 3), 1m, 1m)]).Value, Planner));

    [Fact]
    public void Of_AnyCulture_GivesTheSameBytes() => Pictures.AssertSameEverywhere(() => VisitPlanDrawing.Of(Plan, Planner));

    [Fact]
    public void Of_BadInput_IsRefusedByName()
    {
        Assert.Equal("plan", Assert.Throws<ArgumentNullException>(() => VisitPlanDrawing.Of(null!, Planner)).ParamName);
        Assert.Equal("planner", Assert.Throws<ArgumentNullException>(() => VisitPlanDrawing.Of(Plan, null!)).ParamName);
    }
}
