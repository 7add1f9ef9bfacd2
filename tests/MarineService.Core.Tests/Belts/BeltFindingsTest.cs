using MarineService.Core.Belts;
using UnitsNet;

namespace MarineService.Core.Tests.Belts;

/// <summary>Each finding beside its limit: two equal pulleys, whose spans run at 52 mm to either side, and a third beside or between them.</summary>
public sealed class BeltFindingsTest
{
    // 100 mm effective diameter and 2 mm of differential.
    private const double SpanMm = 52;

    [Theory]
    [InlineData(0, 0.5, BeltVerdict.Closes)]
    [InlineData(0, -0.5, BeltVerdict.SpanThroughPulley)]
    [InlineData(1, 0.5, BeltVerdict.AtLimit)]
    [InlineData(1, -0.5, BeltVerdict.AtLimit)]
    [InlineData(1, 6, BeltVerdict.Closes)]
    [InlineData(1, -6, BeltVerdict.SpanThroughPulley)]
    public void SpanBesideAPulley_NearerThanTheCentresAreKnown_IsAtTheLimit(double uncertaintyMm, double gapMm, BeltVerdict verdict)
    {
        BeltCheck check = Beside(gapMm, uncertaintyMm).Check();
        Assert.Equal(verdict, check.Verdict);
        Assert.Equal(verdict == BeltVerdict.AtLimit, check.Findings.Any(finding => finding.Rule == BeltRules.AtLimit));
        Assert.Equal(verdict == BeltVerdict.SpanThroughPulley, check.Findings.Any(finding => finding.Rule == BeltRules.SpanThroughPulley));
    }

    [Fact]
    public void AtLimit_WithALargerCoverageFactor_IsSaidSooner()
    {
        Assert.Equal(BeltVerdict.Closes, Beside(6, 1).Check().Verdict);
        Assert.Equal(BeltVerdict.AtLimit, Beside(6, 1).Check(BeltCheckLimits.Default.WithCoverageFactor(10)).Verdict);
    }

    [Theory]
    [InlineData(2.999, true)]
    [InlineData(3.001, false)]
    public void BackOfTheBelt_CloseByARim_IsFoundBelowThreeMillimetres(double gapMm, bool found) =>
        Assert.Equal(found, Beside(gapMm, 0).Check().Findings.Any(finding => finding.Rule == BeltRules.CloseBy));

    [Theory]
    [InlineData(2.399, "BELT-022")]
    [InlineData(2.401, "BELT-021")]
    [InlineData(5.401, null)]
    public void RibsOfTheBelt_StandFartherOut_SoTheyRubSooner(double gapMm, string? code)
    {
        // A smooth pulley of 20 mm inside the loop: ribs reach 3.6 mm in from the pitch line, the rim 1.2 mm less than its pitch circle.
        BeltRouting routing = Plate(0).Smooth("idler", SpanMm - 11.2 - gapMm, 150, 20).Build().Route("crank", "pump");
        Assert.Equal(code, routing.Check().Findings.Select(finding => finding.Code).SingleOrDefault(found => found is "BELT-021" or "BELT-022"));
    }

    [Theory]
    [InlineData(44.999, "BELT-018")]
    [InlineData(45, "BELT-019")]
    [InlineData(49.999, "BELT-019")]
    [InlineData(50, null)]
    public void SmallGroovedPulley_IsHeldAgainstBothFigures(double diameterMm, string? code)
    {
        // ISO 9981:2020, 5.2: 45 mm; SAE J1596, as summarized by others: 50 mm.
        BeltRouting routing = Plate(0).Grooved("alternator", -200, 150, diameterMm).Build().Route("crank", "pump", "alternator");
        Assert.Equal(code, routing.Check().Findings.Select(finding => finding.Code).SingleOrDefault(found => found is "BELT-018" or "BELT-019"));
    }

    [Theory]
    [InlineData(89.999, true)]
    [InlineData(90, false)]
    public void SmallPulleyOnTheBack_IsANote(double diameterMm, bool found)
    {
        // SAE J1596, as summarized by others: 90 mm.
        BeltRouting routing = Plate(0).Smooth("idler", 80, 150, diameterMm).Build().Route("crank", "idler", "pump");
        Assert.Equal(found, routing.Check().Findings.Any(finding => finding.Rule == BeltRules.SmallBackPulley && finding.Severity == Severity.Note));
    }

    [Theory]
    [InlineData(null, "BELT-016")]
    [InlineData(118.1, "BELT-017")]
    [InlineData(118.0, null)]
    public void Wrap_OfTheAlternator_IsHeldAgainstTheUsualFigure_OrTheMakers(double? least, string? code)
    {
        // 118.009408 degrees in the layout; 120 is usual (common practice, no source).
        BeltDrive drive = Layouts.Drive("S07");
        Pulley alternator = drive.Find("ALT")!.WithDuty(PulleyDuty.Alternator);
        drive = drive.WithPulley(least is double degrees ? alternator.WithLeastWrap(degrees) : alternator);
        BeltCheck check = drive.Route("CRK", "TEN", "RWP", "ALT", "WP", "PS", "IDL").Check();
        Assert.Equal(code, check.Findings.Select(finding => finding.Code).SingleOrDefault(found => found is "BELT-016" or "BELT-017"));
    }

    [Fact]
    public void ExtraPulley_IsNamed()
    {
        BeltDrive drive = Layouts.Drive("S07");
        RoutingComparison seen = drive.Route("CRK", "TEN", "RWP", "ALT", "WP", "PS", "IDL").CompareWith(drive.Route("CRK", "TEN", "RWP", "ALT", "WP", "PS"));
        Assert.Equal("pulley 'IDL'", Assert.Single(seen.Findings, finding => finding.Rule == ComparisonRules.Extra).Subject);
    }

    [Fact]
    public void PulleyElsewhereInTheOrder_IsNamedWhereTheOrderDeparts()
    {
        BeltDrive drive = Layouts.Drive("S07");
        RoutingComparison seen = drive.Route("CRK", "RWP", "ALT", "WP", "PS", "IDL", "TEN").CompareWith(drive.Route("CRK", "TEN", "RWP", "ALT", "WP", "PS", "IDL"));
        Finding finding = Assert.Single(seen.Findings, found => found.Rule == ComparisonRules.OrderDiffers);
        Assert.Equal("pulley 'CRK'", finding.Subject);
        Assert.Contains("goes to 'RWP'; the engine's routing goes to 'TEN'", finding.Message(DisplayUnits.Metric), StringComparison.Ordinal);
    }

    [Fact]
    public void LengthOfASwappedBelt_DiffersByTheTablesFigure()
    {
        BeltDrive drive = Layouts.Drive("S07");
        RoutingComparison seen = drive.Route("CRK", "TEN", "RWP", "WP", "ALT", "PS", "IDL").CompareWith(drive.Route("CRK", "TEN", "RWP", "ALT", "WP", "PS", "IDL"));
        Assert.Equal(422.368, seen.LengthDifference.Value.Millimeters, 0.0005);
        Assert.Single(seen.Findings, finding => finding.Rule == ComparisonRules.LengthDiffers);
    }

    [Fact]
    public void PulleyThatLeans_ShowsWhereTheBeltLeavesIt()
    {
        // The span leaves the crank straight up, so a lean of 0.01 is 0.573 degrees against the limit of 0.33.
        BeltDrive drive = Plate(0).Build();
        drive = drive.WithPulley(drive.Crank.WithAxialPosition(0, leanUpRatio: 0.01)).WithPulley(drive.Find("pump")!.WithAxialPosition(0));
        AlignmentCheck check = drive.Route("crank", "pump").CheckAlignment().Value;
        Assert.Equal("span from 'crank'", Assert.Single(check.Findings, finding => finding.Rule == AlignmentRules.LeavingAngle).Subject);
    }

    [Fact]
    public void PullOfNothing_HangsSlack()
    {
        BeltDrive drive = Plate(0).WithBelt(RibbedBelt.Pk(6)).Build();
        drive = drive.WithPulley(drive.Find("pump")!.WithLoad(Power.FromKilowatts(1)));
        TensionCheck check = drive.Route("crank", "pump").CheckTension(RotationalSpeed.FromRevolutionsPerMinute(2000), Force.Zero).Value;
        Assert.Contains(check.Findings, finding => finding.Rule == TensionRules.Slack);
    }

    private static BeltRouting Beside(double gapMm, double uncertaintyMm) =>
        Plate(uncertaintyMm).Smooth("idler", SpanMm + 41.2 + gapMm, 150, 80).Build().Route("crank", "pump");

    private static BeltDriveBuilder Plate(double uncertaintyMm) => BeltDrive.SeenFromPulleyEnd(Sense.CounterClockwise)
        .WithCentersKnownTo(uncertaintyMm).Grooved("crank", 0, 0, 100).Grooved("pump", 0, 300, 100);
}
