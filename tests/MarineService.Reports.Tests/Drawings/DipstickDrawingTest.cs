using System.Xml.Linq;
using MarineService.Core;
using MarineService.Core.Fluids;
using MarineService.Reports.Drawings;
using UnitsNet;

namespace MarineService.Reports.Tests.Drawings;

/// <summary>The levels stand where the account says, and what is not known is said.</summary>
public sealed class DipstickDrawingTest
{
    private static readonly Sump Sump = Club.Boat("curlew").Engines[0].Specification.Sump!;

    private static readonly OilChange Poured = OilChange.Begin(Sump, DipstickReading.OfRange(0.6))
        .Drained(Liters(5.5, 70)).FilterChanged(oldEmptiedIntoMeasure: true).Poured(Liters(4.6, 15)).Ran().Settled(DipstickReading.OfRange(0.35));

    [Fact]
    public void Of_Change_PutsEstimatePourAndReadingInProportionToTheMarks()
    {
        XElement svg = Pictures.Parse(DipstickDrawing.Of(Poured));
        double add = MarkAt(svg, "0");
        double full = MarkAt(svg, "1");
        OilEstimate estimate = Poured.Estimate.Value;
        double pour = Poured.NextSafePour().Value.Volume.Liters / Sump.Dipstick.RangeVolume.Liters;
        foreach ((string name, double fraction) in new[] { ("estimate", estimate.RangeFraction), ("pour", estimate.RangeFraction + pour), ("reading", 0.35) })
        {
            XElement level = svg.Descendants().Single(one => (string?)one.Attribute("class") == name);
            Assert.Equal(add + ((full - add) * fraction), (double)level.Elements().First().Attribute("y1")!, 0.02);
        }

        XElement doubt = svg.Descendants().Single(one => (string?)one.Attribute("class") == "uncertainty").Elements().First();
        double height = Math.Abs((double)doubt.Attribute("y2")! - (double)doubt.Attribute("y1")!);
        Assert.Equal(2 * estimate.RangeStandardUncertaintyFraction * (add - full), height, 0.03);
        Pictures.AssertTextStaysInside(DipstickDrawing.Of(Poured));
    }

    [Fact]
    public void Of_DrainedEngine_SaysTheLevelIsBelowTheStick()
    {
        Drawing drawing = DipstickDrawing.Of(OilChange.Begin(Sump, DipstickReading.OfRange(0.6)).Drained(Liters(5.5, 70)));
        Assert.Contains("below the stick", Pictures.Words(drawing), StringComparison.Ordinal);
        Assert.Contains("Next pour not known", drawing.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_ChangeWithoutReading_SaysTheLevelIsNotKnown()
    {
        OilChange change = OilChange.BeginWithoutReading(Sump);
        Drawing drawing = DipstickDrawing.Of(change);
        Assert.Contains("Level not known", Pictures.Words(drawing), StringComparison.Ordinal);
        Assert.All(change.Estimate.Missing, missing => Assert.Contains(missing, drawing.Description, StringComparison.Ordinal));
    }

    [Fact]
    public void Of_MilkyOil_DrawsNoPourAndSaysWhyNot()
    {
        Drawing drawing = DipstickDrawing.Of(Poured.Looked(OilAppearance.Milky));
        Assert.DoesNotContain(Pictures.Parse(drawing).Descendants(), one => (string?)one.Attribute("class") == "pour");
        Assert.Contains("Next: Pour nothing before the cause is found. By the account: FLUID-016", drawing.Description, StringComparison.Ordinal);
        Pictures.AssertTextStaysInside(drawing);
    }

    [Fact]
    public void Of_Balance_SaysEveryFinding()
    {
        FluidBalance balance = Poured.Poured(Liters(0.4, 15)).Settled(DipstickReading.OfRange(1.12)).Balance();
        Assert.NotEmpty(balance.Findings);
        Drawing drawing = DipstickDrawing.Of(balance, DisplayUnits.UsCustomary);
        Assert.All(balance.Findings, finding => Assert.Contains(finding.Message(DisplayUnits.UsCustomary), Pictures.Words(drawing), StringComparison.Ordinal));
        Assert.All(balance.Findings, finding => Assert.Contains(finding.Message(DisplayUnits.UsCustomary), drawing.Description, StringComparison.Ordinal));
    }

    [Fact]
    public void Of_AnyCulture_GivesTheSameBytes() => Pictures.AssertSameEverywhere(() => DipstickDrawing.Of(Poured));

    [Fact]
    public void Of_BadInput_IsRefusedByName()
    {
        Assert.Equal("change", Assert.Throws<ArgumentNullException>(() => DipstickDrawing.Of((OilChange)null!)).ParamName);
        Assert.Equal("balance", Assert.Throws<ArgumentNullException>(() => DipstickDrawing.Of((FluidBalance)null!, DisplayUnits.Metric)).ParamName);
        Assert.Equal("units", Assert.Throws<ArgumentOutOfRangeException>(() => DipstickDrawing.Of(Poured, (DisplayUnits)9)).ParamName);
    }

    private static double MarkAt(XElement svg, string fraction) => (double)svg.Descendants()
        .Single(one => (string?)one.Attribute("class") == "stick-mark" && (string?)one.Attribute("data-range-fraction") == fraction).Elements().First().Attribute("y1")!;

    private static MeasuredVolume Liters(double liters, double celsius) => MeasuredVolume.Of(
        Volume.FromLiters(liters), Temperature.FromDegreesCelsius(celsius), standardUncertainty: Volume.FromLiters(0.05));
}
