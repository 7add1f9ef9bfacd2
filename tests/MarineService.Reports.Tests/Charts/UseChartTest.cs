using System.Globalization;
using System.Xml.Linq;
using MarineService.Core;
using MarineService.Core.Engines;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using MarineService.Reports.Charts;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Reports.Tests.Charts;

/// <summary>Readings and due points stand where Core has them, on axes that grow evenly.</summary>
public sealed class UseChartTest
{
    private static readonly EngineSpecification Engine = Club.Boat("curlew").Engines[0].Specification;

    private static readonly ServiceHistory History = Club.Log("curlew").History(Engine, Club.Today);

    private static readonly DueList Due = Club.Log("curlew").DueList(Engine, Club.Today);

    [Fact]
    public void Of_History_DrawsEveryReadingInProportion()
    {
        XElement[] dots = [.. Pictures.ByClass(UseChart.Of(History), "readings").Elements()];
        Assert.Equal(History.Meter.ReadingDates.Select(LocalDatePattern.Iso.Format), dots.Select(dot => (string)dot.Attribute("data-date")!));

        // Two dots fix both scales; all others must lie on them.
        (double X, double Y, double Day, double Hours)[] places =
        [
            .. dots.Zip(History.Meter.ReadingDates, (dot, day) => (
                (double)dot.Attribute("cx")!,
                (double)dot.Attribute("cy")!,
                (double)Period.DaysBetween(new LocalDate(2020, 1, 1), day),
                (double)History.Meter.HoursOn(day).Value.Estimate.ToHours())),
        ];
        (double X, double Y, double Day, double Hours) first = places[0];
        (double X, double Y, double Day, double Hours) last = places[places.Length - 1];
        foreach ((double X, double Y, double Day, double Hours) place in places)
        {
            Assert.Equal(first.X + ((last.X - first.X) * (place.Day - first.Day) / (last.Day - first.Day)), place.X, 0.02);
            Assert.Equal(first.Y + ((last.Y - first.Y) * (place.Hours - first.Hours) / (last.Hours - first.Hours)), place.Y, 0.02);
        }

        Assert.True(last.Y < first.Y && last.X > first.X);
    }

    /// <summary>The year numbers of the axis stand at the first of January, by the scale that the readings give.</summary>
    [Fact]
    public void Of_History_WritesTheYearsAtTheirFirstDay()
    {
        Drawing drawing = UseChart.Of(History);
        XElement svg = Pictures.Parse(drawing);
        XElement[] dots = [.. Pictures.ByClass(drawing, "readings").Elements()];
        double Day(string text) => Period.DaysBetween(new LocalDate(2020, 1, 1), LocalDatePattern.Iso.Parse(text).Value);
        double firstDay = Day((string)dots[0].Attribute("data-date")!);
        double lastDay = Day((string)dots[dots.Length - 1].Attribute("data-date")!);
        double firstX = (double)dots[0].Attribute("cx")!;
        double lastX = (double)dots[dots.Length - 1].Attribute("cx")!;
        int seen = 0;
        foreach (XElement text in svg.Descendants().Where(one => one.Name.LocalName == "text" && one.Value.Length == 4 && one.Attribute("transform") is not null && one.Value.StartsWith("20", StringComparison.Ordinal)))
        {
            double x = double.Parse(((string)text.Attribute("transform")!).Split('(', ',')[1], CultureInfo.InvariantCulture);
            double expected = firstX + ((lastX - firstX) * (Day($"{text.Value}-01-01") - firstDay) / (lastDay - firstDay));
            Assert.Equal(expected, x, 0.05);
            seen++;
        }

        Assert.True(seen >= 3, $"{seen} years");
    }

    [Fact]
    public void Of_DueList_MarksEveryTaskOrSaysWhyNot()
    {
        Drawing drawing = UseChart.Of(History, Due);
        string words = Pictures.Words(drawing);
        Assert.All(Due.Tasks, task => Assert.Contains(task.TaskId, words, StringComparison.Ordinal));
        Assert.All(Due.Tasks, task => Assert.Contains(task.TaskId, drawing.Description, StringComparison.Ordinal));
        XElement[] diamonds = [.. Pictures.ByClass(drawing, "due-point").Elements().Where(one => one.Attribute("data-task") is not null)];
        Assert.Equal(
            Due.Tasks.Where(task => task.Forecast.Expected is not null).Select(task => task.TaskId).OrderBy(id => id, StringComparer.Ordinal),
            diamonds.Select(one => (string)one.Attribute("data-task")!).OrderBy(id => id, StringComparer.Ordinal));
        Assert.All(diamonds, one => Assert.Equal(LocalDatePattern.Iso.Format(Due[(string)one.Attribute("data-task")!].Forecast.Expected!.Value), (string)one.Attribute("data-date")!));
        Assert.All(History.Findings, finding => Assert.Contains(finding.Message(DisplayUnits.Metric), words, StringComparison.Ordinal));
        Pictures.AssertTextStaysInside(drawing);
    }

    [Fact]
    public void Of_NoReading_SaysWhatIsMissing()
    {
        ServiceHistory none = ServiceHistory.Of(HourMeter.Plain, [], Club.Today);
        Assert.Contains("Missing: two meter readings", UseChart.Of(none, Due).Description, StringComparison.Ordinal);
        ServiceHistory one = ServiceHistory.Of(HourMeter.Plain, [MeterReading.Of(new LocalDate(2026, 9, 1), EngineHours.FromHours(412m))], Club.Today);
        Assert.Contains("Forecast not known", UseChart.Of(one).Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_AnyCulture_GivesTheSameBytes() => Pictures.AssertSameEverywhere(() => UseChart.Of(History, Due));

    [Fact]
    public void Of_BadInput_IsRefusedByName()
    {
        Assert.Equal("history", Assert.Throws<ArgumentNullException>(() => UseChart.Of(null!)).ParamName);
        Assert.Equal("until", Assert.Throws<ArgumentOutOfRangeException>(() => UseChart.Of(History, until: Club.Today)).ParamName);
        Assert.Equal("until", Assert.Throws<ArgumentOutOfRangeException>(() => UseChart.Of(History, until: default(LocalDate))).ParamName);
        Assert.Equal("units", Assert.Throws<ArgumentOutOfRangeException>(() => UseChart.Of(History, units: (DisplayUnits)9)).ParamName);
    }
}
