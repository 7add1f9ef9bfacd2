using MarineService.Core.Belts;
using UnitsNet;

namespace MarineService.Core.Tests.Belts;

/// <summary>What a person sees on a belt. Common practice, no source; the count of cracks and the hours are project choices.</summary>
public sealed class BeltInspectionTest
{
    private static readonly BeltInspection Newer = BeltInspection.Of(BeltRubber.EthylenePropylene).Gauged(RibGauge.StandsProud);

    [Fact]
    public void RibBesideItsGroove_StopsTheEngine_AndNamesThePulley()
    {
        Finding finding = Assert.Single(Newer.RibsOffGroove("alternator", 1).Findings);
        Assert.Equal((WearRules.RibOffGroove, Severity.Stop, "pulley 'alternator'"), (finding.Rule, finding.Severity, finding.Subject));
        Assert.Empty(Newer.RibsOffGroove("alternator", 0).Findings);
    }

    [Theory]
    [InlineData(0, 75, null)]
    [InlineData(2, 75, "BELT-072")]
    [InlineData(3, 75, "BELT-071")]
    [InlineData(5, 150, "BELT-072")]
    [InlineData(6, 150, "BELT-071")]
    [InlineData(1, 25, "BELT-071")]
    public void Cracks_AreCountedAgainstThreeIn75Millimetres(int cracks, double overMm, string? code) =>
        Assert.Equal(code, Newer.Cracked(cracks, Length.FromMillimeters(overMm)).Findings.SingleOrDefault()?.Code);

    [Fact]
    public void Cracks_AgainstTheBeltMakersFigure_TakeIt()
    {
        Assert.Equal("BELT-072", Newer.Cracked(4, Length.FromMillimeters(75), limit: 5).Findings.Single().Code);
        Assert.Equal("BELT-071", Newer.Cracked(5, Length.FromMillimeters(75), limit: 5).Findings.Single().Code);
    }

    [Fact]
    public void EverySight_IsAFinding_InTheOrderSeen()
    {
        BeltInspection seen = Newer.RibMissing(Length.FromMillimeters(12)).Glazed().Contaminated("coolant").Frayed();
        Assert.Equal(
            [WearRules.MissingRib, WearRules.Glazed, WearRules.Contaminated, WearRules.Frayed], seen.Findings.Select(finding => finding.Rule));
        Assert.StartsWith("belt: coolant is on it", seen.Findings[2].Message(DisplayUnits.Metric), StringComparison.Ordinal);
        Assert.Equal(Severity.Stop, seen.Findings[0].Severity);
    }

    [Fact]
    public void NewerRubber_WearsWithoutCracking_SoItIsGauged()
    {
        Assert.Equal(WearRules.NotGauged, Assert.Single(BeltInspection.Of(BeltRubber.EthylenePropylene).Findings).Rule);
        Assert.Equal(WearRules.NotGauged, Assert.Single(BeltInspection.Of(BeltRubber.Unknown).Findings).Rule);
        Assert.Empty(BeltInspection.Of(BeltRubber.Chloroprene).Findings);
        Assert.Empty(Newer.Findings);
    }

    [Theory]
    [InlineData(RibGauge.Level)]
    [InlineData(RibGauge.Sinks)]
    public void Gauge_ThatDoesNotStandProud_SaysWorn(RibGauge reading) =>
        Assert.Equal(WearRules.Worn, Assert.Single(BeltInspection.Of(BeltRubber.Unknown).Gauged(reading).Findings).Rule);

    [Fact]
    public void NewBelt_WantsASecondLook_FromItsHourOn()
    {
        EngineHours ten = EngineHours.FromHours(10m);
        Assert.Equal(WearRules.NewBelt, Assert.Single(Newer.NewBelt(EngineHours.FromHours(9.999m), ten).Findings).Rule);
        Assert.Equal(WearRules.NewBeltDue, Assert.Single(Newer.NewBelt(ten, ten).Findings).Rule);
    }

    [Fact]
    public void Inspection_IsNeverChanged_ByWhatIsAdded()
    {
        _ = Newer.Glazed();
        Assert.Empty(Newer.Findings);
    }
}
