using MarineService.Core.Engines;
using MarineService.Core.LayUp;
using MarineService.Core.Records;
using MarineService.Core.Specifications;
using MarineService.Core.Tests.LayUp;
using NodaTime;

namespace MarineService.Core.Tests.Records;

public sealed class WinterProofOfTheLogTest
{
    private static readonly EngineSpecification Sheet = EngineSpecification.Of(Winters.RawCooled)
        .WithLayUp(LayUpSheet.Empty.With(RawWaterSide.Of(LowPoint.Of("block", LowPointKind.EngineBlock, 2))
            .Without([.. Enum.GetValues<LowPointKind>().Where(kind => kind != LowPointKind.EngineBlock)])));

    private static readonly LocalDate LaidUpOn = new(2026, 10, 24);
    private static readonly LocalDate Today = new(2026, 12, 24);

    private static ServiceLog Log(int drained) => ServiceLog.Empty
        .With(WinterWork.On(LaidUpOn, [LowPointWork.Drained("block", drained, drained)], EngineHours.FromHours(412.5m)));

    private static WinterProof Proof(ServiceLog log) => log.WinterProof(Sheet, Winters.Low, Today).Value;

    [Theory]
    [InlineData(2, true)]
    [InlineData(1, false)]
    public void DrainedOnRecord_IsProvedByTheRecord(int drained, bool expected) => Assert.Equal(expected, Proof(Log(drained)).IsProved);

    [Fact]
    public void AStartInAWarmWeek_VoidsTheProof()
    {
        // Claim files tell of it: engine run again after it was protected, block cracked, claim refused.
        WinterProof proof = Proof(Log(2).With(MeterReading.Of(new LocalDate(2026, 12, 2), EngineHours.FromHours(412.8m))));
        Assert.False(proof.IsProved);
        Finding finding = Assert.Single(proof.Findings);
        Assert.Equal(LayUpRules.Void, finding.Rule);
        Assert.Equal(0.3, finding["hours"]!.Number!.Value, 1e-9);
        Assert.True(Proof(Log(2).With(MeterReading.Of(new LocalDate(2026, 12, 2), EngineHours.FromHours(412.5m)))).IsProved);
    }

    [Fact]
    public void WorkOfLastWinter_CountsNoMore_AndWithoutLowPointsNothingIsKnown()
    {
        ServiceLog log = Log(2).With(Commissioned.On(new LocalDate(2026, 11, 20)));
        Assert.False(Proof(log).IsProved);
        Assert.False(log.WinterProof(EngineSpecification.Named("x"), Winters.Low, Today).IsKnown);
    }

    [Fact]
    public void NoWork_IsRefused() => Assert.Throws<ArgumentException>("works", () => WinterWork.On(LaidUpOn, []));
}
