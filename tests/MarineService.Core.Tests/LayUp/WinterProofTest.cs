using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Engines;
using MarineService.Core.Fluids;
using MarineService.Core.LayUp;
using UnitsNet;

namespace MarineService.Core.Tests.LayUp;

public sealed class WinterProofTest
{
    private static LowPointWork Read(string id, double celsius, GlycolKind scale = GlycolKind.Propylene) =>
        LowPointWork.Read(id, RefractometerReading.Of(scale, Temperature.FromDegreesCelsius(celsius)));

    private static LowPointWork[] AllRead(double celsius) => [.. Winters.Side.LowPoints.Select(point => Read(point.Id, celsius))];

    private static WinterProof Prove(params LowPointWork[] works) => Winters.Plan.Prove(works).Value;

    private static LowPointVerdict Verdict(WinterProof proof, string id) => proof.Points.Single(point => point.Point.Id == id).Verdict;

    [Law]
    public Property RemovingAnyOneProof_FailsIt() =>
        Prop.ForAll(Gen.Choose(0, Winters.Side.LowPoints.Count - 1).ToArbitrary(), i =>
            (Prove(AllRead(-24)).IsProved && !Prove([.. AllRead(-24).Where((_, j) => j != i)]).IsProved).Label($"{i}"));

    [Law]
    public Property AColderReading_NeverFailsWhereAWarmerOnePasses() =>
        Prop.ForAll(Gen.Choose(-500, -1).ToArbitrary(), tenths =>
            (!Prove(AllRead(tenths / 10.0)).IsProved || Prove(AllRead((tenths - 1) / 10.0)).IsProved).Label($"{tenths}"));

    [Theory]
    [InlineData(-23.0, true)]
    [InlineData(-22.9, false)]
    public void Reading_AtTheLimit_Passes(double celsius, bool expected) => Assert.Equal(expected, Prove(AllRead(celsius)).IsProved);

    [Fact]
    public void Reading_InFahrenheitAtTheLimit_Passes() =>
        Assert.True(Prove([.. Winters.Side.LowPoints.Select(point =>
            LowPointWork.Read(point.Id, RefractometerReading.Of(GlycolKind.Propylene, Temperature.FromDegreesFahrenheit(-9.4))))]).IsProved);

    [Fact]
    public void OnlyAtTheExhaust_ProvesNothing()
    {
        // Common practice, no source: with the thermostat shut the bypass passes this test while the block is full of water.
        WinterProof proof = Prove(Read(LowPointWork.Exhaust, -30));
        Assert.False(proof.IsProved);
        Assert.All(proof.Points, point => Assert.Equal(LowPointVerdict.NotDone, point.Verdict));
        Assert.Contains(proof.Findings, finding => finding.Rule == LayUpRules.OnlyAtExhaust);
    }

    [Fact]
    public void BlockDrainedBeforeTheFill_IsNotProvedByTheExhaust()
    {
        LowPointWork drained = LowPointWork.Drained("block", 2, 2);
        WinterProof before = Prove([drained, .. AllRead(-24).Where(work => work.PointId != "block"), Read(LowPointWork.Exhaust, -24)]);
        Assert.Equal(LowPointVerdict.NotProved, Verdict(before, "block"));
        Assert.Contains(before.Findings, finding => finding.Rule == LayUpRules.DrainedBeforeFill);
        Assert.True(Prove([.. AllRead(-24).Where(work => work.PointId != "block"), drained]).IsProved);
    }

    [Fact]
    public void DrainingAlone_ProvesEveryPointThatHasDrains()
    {
        LowPointWork[] drained = [.. Winters.Side.LowPoints.Select(point => LowPointWork.Drained(point.Id, point.Drains, point.Drains))];
        WinterProof proof = Prove(drained);
        Assert.Equal(LowPointVerdict.Proved, Verdict(proof, "block"));

        // A muffler without a drain cannot be proved by draining.
        Assert.Equal(LowPointVerdict.NotProved, Verdict(proof, "muffler"));
        Assert.False(proof.IsProved);
    }

    [Fact]
    public void BlockedDrain_IsFound_AndRoddedAgainIsProved()
    {
        WinterProof blocked = Prove(LowPointWork.Drained("block", 2, 1));
        Finding finding = Assert.Single(blocked.Points.Single(point => point.Point.Id == "block").Findings);
        Assert.Equal("LAYUP-013 Act: low point 'engine block': 1 of 2 drains", finding.ToString().Replace("2 of 2 drains rodded, 1 seen running", "1 of 2 drains", StringComparison.Ordinal));
        Assert.Equal(LowPointVerdict.Proved, Verdict(Prove(LowPointWork.Drained("block", 2, 1), LowPointWork.Drained("block", 2, 2)), "block"));
    }

    [Fact]
    public void AWeakReadingAfterADraining_Outweighs_AndAStrongOneAfterItHeals()
    {
        LowPointWork drained = LowPointWork.Drained("strainer", 1, 1);
        Assert.Equal(LowPointVerdict.TooWeak, Verdict(Prove(drained, Read("strainer", -10)), "strainer"));
        Assert.Equal(LowPointVerdict.Proved, Verdict(Prove(Read("strainer", -10), drained), "strainer"));
        Assert.Equal(LowPointVerdict.Proved, Verdict(Prove(Read("strainer", -10), Read("strainer", -24)), "strainer"));
    }

    [Theory]
    [InlineData(AntifreezeBase.Ethanol)]
    [InlineData(AntifreezeBase.PropyleneGlycolWithEthanol)]
    public void AntifreezeWithEthanol_IsExcludedFromTheRefractometer(AntifreezeBase madeOf)
    {
        LayUpPlan plan = Winters.Plan.WithAntifreeze(Antifreeze.Of("pink", madeOf, 0.3));
        WinterProof proof = plan.Prove(AllRead(-45)).Value;
        Assert.All(proof.Points, point => Assert.Equal(LowPointVerdict.NotProved, point.Verdict));
        Assert.All(proof.Points, point => Assert.Equal(LayUpRules.EthanolReading, Assert.Single(point.Findings).Rule));
    }

    [Fact]
    public void ScaleOfTheOtherGlycol_ProvesNothing() =>
        Assert.Contains(Prove(Read("block", -40, GlycolKind.Ethylene)).Findings, finding => finding.Rule == LayUpRules.WrongScale);

    [Fact]
    public void LowPointsThatNobodyThoughtOf_AreAskedFor()
    {
        LayUpPlan plan = LayUpPlan.For(Winters.RawCooled, Winters.Low).WithAntifreeze(Winters.Glycol)
            .WithRawWaterSide(RawWaterSide.Of(LowPoint.Of("block", LowPointKind.EngineBlock, 2)));
        WinterProof proof = plan.Prove([Read("block", -30)]).Value;
        Assert.Equal(LowPointVerdict.Proved, Verdict(proof, "block"));
        Assert.False(proof.IsProved);
        Assert.Equal(8, proof.Findings.Count(finding => finding.Rule == LayUpRules.NotAccountedFor));
        Assert.DoesNotContain(LowPointKind.SeacockBallValve, Winters.Side.NotAccountedFor(Engine.Of("x", cooling: CoolingKind.FreshWater), Boat.Of("Tern", hasSeacock: false)));
        Assert.Equal([LowPointKind.HeatExchanger], Winters.Side.NotAccountedFor(Engine.Of("x")));
    }

    [Fact]
    public void WorkOnAnUnknownPoint_IsFound() =>
        Assert.Contains(Prove([.. AllRead(-24), Read("bollard", -24)]).Findings, finding => finding.Rule == LayUpRules.UnknownLowPoint);

    [Fact]
    public void WithoutALowestTemperature_OnlyDrainingProves()
    {
        LayUpPlan plan = LayUpPlan.For(Winters.RawCooled, FreezeDecision.ForSite(new(2026, 11, 1), new(2027, 4, 1), [])).WithRawWaterSide(Winters.Side).WithAntifreeze(Winters.Glycol);
        Assert.Contains(plan.Prove(AllRead(-24)).Value.Findings, finding => finding.Rule == LayUpRules.LowNotKnown);
    }

    [Fact]
    public void ExhaustHasNoDrain() => Assert.Throws<ArgumentException>("pointId", () => LowPointWork.Drained(LowPointWork.Exhaust, 1, 1));
}
