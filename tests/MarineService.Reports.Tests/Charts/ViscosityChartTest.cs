using System.Xml.Linq;
using MarineService.Core;
using MarineService.Core.Oils;
using MarineService.Reports.Charts;
using NodaTime;
using UnitsNet;

namespace MarineService.Reports.Tests.Charts;

/// <summary>Limits, nights and the line stand where they belong; what is not known is said.</summary>
public sealed class ViscosityChartTest
{
    private static readonly NightMinimum[] Nights =
    [
        .. Enumerable.Range(0, 120).Select(day => NightMinimum.Of(new LocalDate(2026, 10, 12).PlusDays(day), Temperature.FromDegreesCelsius(6 - (day % 17)))),
    ];

    private static readonly OilSeason Season = Club.Boat("curlew").Engines[0].Specification.ChooseOil().Value.ForNights(Nights);

    private static readonly LabelledOil Measured = LabelledOil.Of(
        SaeGrade.Parse("15W-40"), null, OilViscosity.Of(KinematicViscosity.FromCentistokes(110), KinematicViscosity.FromCentistokes(14.5)));

    /// <summary>The scale is logarithmic: the promised window of SAE 40 at 100 °C, 12.5 to 16.3 mm²/s (SAE J300), against the axis' own decades.</summary>
    [Fact]
    public void Of_Oil_PutsTheWindowOnALogarithmicScale()
    {
        XElement svg = Pictures.Parse(ViscosityChart.Of(Season.Selection, Measured, Nights));
        double ten = Decade(svg, "10");
        double hundred = Decade(svg, "100");
        XElement window = svg.Descendants().Single(one => (string?)one.Attribute("class") == "window").Elements().First();
        Assert.Equal(ten + ((hundred - ten) * Math.Log10(12.5 / 10)), (double)window.Attribute("y1")!, 0.1);
        Assert.Equal(ten + ((hundred - ten) * Math.Log10(16.3 / 10)), (double)window.Attribute("y2")!, 0.1);
    }

    [Fact]
    public void Of_Season_DrawsEveryNightOnce()
    {
        XElement[] bars = [.. Pictures.ByClass(ViscosityChart.Of(Season, Nights, DisplayUnits.Metric), "nights").Elements()];
        Assert.Equal(Nights.Length, bars.Sum(bar => (int)bar.Attribute("data-nights")!));
        Assert.Equal(17, bars.Length);
        double[] x = [.. bars.Select(bar => (double)bar.Attribute("x1")!)];
        Assert.All(Enumerable.Range(1, x.Length - 1), i => Assert.Equal(x[1] - x[0], x[i] - x[i - 1], 0.02));
    }

    [Theory]
    [InlineData(DisplayUnits.Metric)]
    [InlineData(DisplayUnits.UsCustomary)]
    public void Of_Oil_SaysEveryLimitAndFinding(DisplayUnits units)
    {
        Drawing drawing = ViscosityChart.Of(Season.Selection, Measured, Nights, units);
        string words = Pictures.Words(drawing);
        OilVerdict verdict = Season.Selection.Judge(Measured);
        Assert.All(verdict.Grade.Limits, limit => Assert.Contains(limit.ToString(units), words, StringComparison.Ordinal));
        Assert.Contains($"decides: {verdict.Grade.DecidedBy.ToString(units)}", words, StringComparison.Ordinal);
        Assert.All(Season.Selection.Findings.Concat(verdict.Findings), finding => Assert.Contains(finding.Message(units), words, StringComparison.Ordinal));
        Assert.All(Season.Selection.Findings.Concat(verdict.Findings), finding => Assert.Contains(finding.Message(units), drawing.Description, StringComparison.Ordinal));
        Pictures.AssertTextStaysInside(drawing);
    }

    [Fact]
    public void Of_OilWithoutDataSheet_SaysItsLineIsNotKnown()
    {
        Drawing drawing = ViscosityChart.Of(Season.Selection, LabelledOil.Of("15W-40"));
        Assert.Contains("the oil's own line is not known", Pictures.Words(drawing), StringComparison.Ordinal);
        Assert.Contains("Missing: its viscosities at 40 °C and 100 °C", drawing.Description, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("SAE 40")]
    [InlineData("10W")]
    [InlineData("0W-8")]
    public void Of_AnyGrade_DrawsWhatTheGradePromises(string designation)
    {
        Drawing drawing = ViscosityChart.Of(Season.Selection, LabelledOil.Of(designation));
        Assert.Single(Pictures.ByClass(drawing, "window"));
        Pictures.AssertTextStaysInside(drawing);
    }

    [Fact]
    public void Of_AnyCulture_GivesTheSameBytes() => Pictures.AssertSameEverywhere(() => ViscosityChart.Of(Season.Selection, Measured, Nights));

    [Fact]
    public void Of_BadInput_IsRefusedByName()
    {
        Assert.Equal("selection", Assert.Throws<ArgumentNullException>(() => ViscosityChart.Of((OilSelection)null!)).ParamName);
        Assert.Equal("season", Assert.Throws<ArgumentNullException>(() => ViscosityChart.Of((OilSeason)null!, Nights, DisplayUnits.Metric)).ParamName);
        Assert.Equal("nights", Assert.Throws<ArgumentNullException>(() => ViscosityChart.Of(Season, null!, DisplayUnits.Metric)).ParamName);
        Assert.Equal("nights", Assert.Throws<ArgumentException>(() => ViscosityChart.Of(Season, [null!], DisplayUnits.Metric)).ParamName);
        Assert.Equal("units", Assert.Throws<ArgumentOutOfRangeException>(() => ViscosityChart.Of(Season, Nights, (DisplayUnits)9)).ParamName);
    }

    // Where the stroke of a decade stands on the page: the stroke of the axis that is nearest to the number's own middle.
    private static double Decade(XElement svg, string number)
    {
        XElement text = svg.Descendants().Single(one => one.Name.LocalName == "text" && one.Value == number && (string?)one.Attribute("text-anchor") == "end" && one.Attribute("transform") is not null);
        XElement plot = text.Ancestors().Single(one => (string?)one.Attribute("class") == "plot");
        double middle = Numbers((string)text.Attribute("transform")!)[1] - 4;
        double tick = plot.Descendants().Where(one => one.Name.LocalName == "polyline")
            .Select(line => Numbers((string)line.Attribute("points")!))
            .Where(points => points.Length == 4 && points[1] == points[3] && Math.Abs(points[0] - points[2]) < 10)
            .Select(points => points[1]).OrderBy(y => Math.Abs(y - middle)).First();
        return Numbers((string)plot.Attribute("transform")!)[1] + tick;
    }

    private static double[] Numbers(string text) =>
        [.. text.Split('(', ')', ',', ' ').Where(part => part.Length > 0 && part[0] is '-' or (>= '0' and <= '9')).Select(part => double.Parse(part, System.Globalization.CultureInfo.InvariantCulture))];
}
