using System.Xml.Linq;
using MarineService.Core;
using MarineService.Core.Parts;
using MarineService.Reports.Drawings;
using UnitsNet;

namespace MarineService.Reports.Tests.Drawings;

/// <summary>Which cross lies in its ring is Core's word, and every finding is there.</summary>
public sealed class BoltPatternDrawingTest
{
    private static readonly CoverFit Fit = Club.Boat("curlew").Engines[0].Specification.Covers[0].FitOfItself().Value;

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(57)]
    [InlineData(180)]
    [InlineData(-299)]
    public void Of_HeldCover_SaysWhatCoreSays(double turn)
    {
        HeldCover held = Fit.AsHeld(Angle.FromDegrees(turn)).Value;
        Drawing drawing = BoltPatternDrawing.Of(held, DisplayUnits.Metric);
        XElement[] views = [.. Pictures.ByClass(drawing, "pattern")];
        Assert.Equal(2, views.Length);
        bool[] goIn = [.. views[0].Elements().Where(one => (string?)one.Attribute("class") == "cover-hole").Select(one => (bool)one.Attribute("data-goes-in")!)];
        Assert.Equal(Fit.Cover.HoleCount, goIn.Length);
        Assert.Equal(held.Goes, goIn.All(one => one));
        Assert.Equal(held.Goes, goIn[held.WorstHole - 1]);
        Assert.All(held.Findings.Concat(Fit.Findings), finding => Assert.Contains(finding.Message(DisplayUnits.Metric), Pictures.Words(drawing), StringComparison.Ordinal));
        Assert.All(held.Findings, finding => Assert.Contains(finding.Message(DisplayUnits.Metric), drawing.Description, StringComparison.Ordinal));
        Pictures.AssertTextStaysInside(drawing);
    }

    /// <summary>Angles run counter-clockwise seen from outside: hole 2 at 58 degrees lies up and to the right of the middle.</summary>
    [Fact]
    public void Of_Fit_DrawsTheBlocksHolesCounterClockwise()
    {
        XElement view = Pictures.ByClass(BoltPatternDrawing.Of(Fit), "pattern").First();
        (double X, double Y)[] rings =
        [
            .. view.Elements().Where(one => (string?)one.Attribute("class") == "block-hole")
                .Select(hole => hole.Elements().First()).Select(circle => ((double)circle.Attribute("cx")!, (double)circle.Attribute("cy")!)),
        ];
        XElement middle = view.Elements().First(one => one.Name.LocalName == "circle");
        (double x, double y, double r) = ((double)middle.Attribute("cx")!, (double)middle.Attribute("cy")!, (double)middle.Attribute("r")!);
        for (int i = 0; i < rings.Length; i++)
        {
            double angle = Fit.Block.AnglesDegrees[i] * Math.PI / 180;
            Assert.Equal(x + (r * Math.Cos(angle)), rings[i].X, 0.02);
            Assert.Equal(y - (r * Math.Sin(angle)), rings[i].Y, 0.02);
        }
    }

    /// <summary>A cross within its ring goes in: one that does not stands outside, and the cover's hole reaches over the edge of the block's.</summary>
    [Theory]
    [InlineData(3)]
    [InlineData(57)]
    [InlineData(58.9)]
    public void Of_HeldCover_PutsNoCrossInARingThatItDoesNotEnter(double turn)
    {
        XElement view = Pictures.ByClass(BoltPatternDrawing.Of(Fit.AsHeld(Angle.FromDegrees(turn)).Value, DisplayUnits.Metric), "pattern").First();
        (double X, double Y, double R)[] rings = [.. ByClass(view, "block-hole").Select(hole => hole.Elements().First()).Select(ring => ((double)ring.Attribute("cx")!, (double)ring.Attribute("cy")!, (double)ring.Attribute("r")!))];
        foreach (XElement cross in ByClass(view, "cover-hole"))
        {
            XElement stroke = cross.Elements().First();
            double x = ((double)stroke.Attribute("x1")! + (double)stroke.Attribute("x2")!) / 2;
            double y = ((double)stroke.Attribute("y1")! + (double)stroke.Attribute("y2")!) / 2;
            bool isWithin = rings.Any(ring => Math.Sqrt(Math.Pow(x - ring.X, 2) + Math.Pow(y - ring.Y, 2)) < ring.R);
            Assert.Equal((bool)cross.Attribute("data-goes-in")!, isWithin);
        }
    }

    [Fact]
    public void Of_EvenPattern_SaysWhichFitsAreWrong()
    {
        BoltPattern even = BoltPattern.EvenlySpaced(Length.FromMillimeters(34), 6);
        CoverFit fit = even.Fit(even, ScrewClearance.OnTappedHole(Length.FromMillimeters(5.5), Length.FromMillimeters(5)), CoverLocation.Centered, 1);
        string words = Pictures.Words(BoltPatternDrawing.Of(fit));
        Assert.Contains("hole 1 on 1: fits, and belongs so", words, StringComparison.Ordinal);
        Assert.Contains("hole 1 on 2: fits, but is wrong", words, StringComparison.Ordinal);
        Assert.All(fit.Findings, finding => Assert.Contains(finding.Message(DisplayUnits.Metric), words, StringComparison.Ordinal));
    }

    [Fact]
    public void Of_OtherNumberOfHoles_DrawsWhatIsThereAndSaysSo()
    {
        CoverFit fit = Fit.Block.Fit(BoltPattern.EvenlySpaced(Length.FromMillimeters(34), 5), Fit.Clearance);
        Drawing drawing = BoltPatternDrawing.Of(fit);
        Assert.Single(Pictures.ByClass(drawing, "pattern"));
        Assert.All(fit.Findings, finding => Assert.Contains(finding.Message(DisplayUnits.Metric), drawing.Description, StringComparison.Ordinal));
    }

    [Fact]
    public void Of_AnyCulture_GivesTheSameBytes() => Pictures.AssertSameEverywhere(() => BoltPatternDrawing.Of(Fit.AsHeld(Angle.FromDegrees(57.3)).Value, DisplayUnits.Metric));

    [Fact]
    public void Of_BadInput_IsRefusedByName()
    {
        Assert.Equal("fit", Assert.Throws<ArgumentNullException>(() => BoltPatternDrawing.Of((CoverFit)null!)).ParamName);
        Assert.Equal("held", Assert.Throws<ArgumentNullException>(() => BoltPatternDrawing.Of((HeldCover)null!, DisplayUnits.Metric)).ParamName);
        Assert.Equal("units", Assert.Throws<ArgumentOutOfRangeException>(() => BoltPatternDrawing.Of(Fit, (DisplayUnits)9)).ParamName);
    }

    private static IEnumerable<XElement> ByClass(XElement view, string name) => view.Elements().Where(one => (string?)one.Attribute("class") == name);
}
