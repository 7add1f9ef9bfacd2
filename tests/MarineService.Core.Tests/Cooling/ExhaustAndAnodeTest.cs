using MarineService.Core.Cooling;
using MarineService.Core.Engines;

namespace MarineService.Core.Tests.Cooling;

public sealed class ExhaustAndAnodeTest
{
    private static readonly RawWaterCircuit Dry = Circuit(muffler: false);

    private static readonly RawWaterCircuit WithMuffler = Circuit(muffler: true);

    /// <summary>Common practice, no source: water must keep coming from every outlet; a water-lift muffler gulps, and that is healthy.</summary>
    [Fact]
    public void Outlets_AllWithWater_AreProved_AndAMufflerMayGulp()
    {
        Assert.True(ExhaustCheck.Of(WithMuffler).Value.Seen("port", OutletWater.Gulps).Seen("starboard", OutletWater.KeepsComing).IsProved);
        Assert.Empty(ExhaustCheck.Of(WithMuffler).Value.Seen("port", OutletWater.Gulps).Seen("starboard", OutletWater.Gulps).Findings);
        Assert.Equal("EXHAUST-005", Assert.Single(ExhaustCheck.Of(Dry).Value.Seen("port", OutletWater.Gulps).Seen("starboard", OutletWater.KeepsComing).Findings).Code);
    }

    [Theory]
    [InlineData(OutletWater.None, "EXHAUST-001", Severity.Stop)]
    [InlineData(OutletWater.Stopped, "EXHAUST-001", Severity.Stop)]
    [InlineData(OutletWater.SteamAndLittleWater, "EXHAUST-002", Severity.Stop)]
    [InlineData(OutletWater.Weak, "EXHAUST-003", Severity.Act)]
    public void OneOutletOfTwo_WithoutItsWater_IsFound(OutletWater water, string code, Severity severity)
    {
        ExhaustCheck check = ExhaustCheck.Of(Dry).Value.Seen("port", OutletWater.KeepsComing).Seen("starboard", water);
        Finding found = Assert.Single(check.Findings);
        Assert.Equal((code, severity), (found.Code, found.Severity));
        Assert.False(check.IsProved);
        Assert.Empty(ExhaustCheck.Of(Dry).Value.Seen("port", OutletWater.KeepsComing).Seen("starboard", OutletWater.SteamAndStrongWater).Findings);
    }

    [Fact]
    public void OneOutletOfTwo_ThatNobodyLookedAt_IsNoProof()
    {
        ExhaustCheck check = ExhaustCheck.Of(Dry).Value.Seen("port", OutletWater.KeepsComing);
        Assert.Equal("EXHAUST-004", Assert.Single(check.Findings).Code);
        Assert.Equal("1 of 2 outlets with water", check.ToString());
        Assert.Throws<ArgumentException>("outlet", () => check.Seen("stern", OutletWater.None));
        Assert.False(ExhaustCheck.Of(RawWaterCircuit.Of(CircuitPlaceKind.RawWaterPump)).IsKnown);
    }

    [Theory]
    [InlineData(5, StartVerdict.Watch)]
    [InlineData(10, StartVerdict.Watch)]
    [InlineData(10.1, StartVerdict.StopNow)]
    public void Pressure_ThatDoesNotCome_StopsTheEngine(double seconds, StartVerdict expected) =>
        Assert.Equal(expected, StartWatch.Of(Dry).Value.At(Seconds(seconds)).Verdict);

    [Theory]
    [InlineData(12, StartVerdict.Watch)]
    [InlineData(30, StartVerdict.Watch)]
    [InlineData(30.1, StartVerdict.StopNow)]
    public void Water_ThatComesAtOneOutletOnly_StopsTheEngine(double seconds, StartVerdict expected) =>
        Assert.Equal(expected, StartWatch.Of(Dry).Value.PressureCame(Seconds(3)).WaterCame("port", Seconds(8)).At(Seconds(seconds)).Verdict);

    [Fact]
    public void Start_WithAllInTime_KeepsRunning_FromTheMomentTheLastCame()
    {
        StartWatch watch = StartWatch.Of(Dry).Value.PressureCame(Seconds(3)).WaterCame("port", Seconds(8)).WaterCame("starboard", Seconds(19));
        Assert.Equal(StartVerdict.Watch, watch.At(Seconds(18.9)).Verdict);
        Assert.Equal(StartVerdict.KeepRunning, watch.At(Seconds(19)).Verdict);
        Assert.Equal(["oil pressure", "water at port", "water at starboard"], watch.At(Seconds(30)).Items.Select(item => item.Name));
        Assert.Equal("after 30 s: keep running", watch.At(Seconds(30)).ToString());
    }

    [Fact]
    public void Start_WithLateWater_RunsOnButIsFound_AndLatePressureStops()
    {
        StartReport late = StartWatch.Of(Dry).Value.PressureCame(Seconds(3)).WaterCame("port", Seconds(8)).WaterCame("starboard", Seconds(34)).At(Seconds(40));
        Assert.Equal(StartVerdict.KeepRunning, late.Verdict);
        Assert.Equal("EXHAUST-006", Assert.Single(late.Findings).Code);
        StartReport dry = StartWatch.Of(Dry).Value.PressureCame(Seconds(11)).At(Seconds(12));
        Assert.Equal((StartVerdict.StopNow, "EXHAUST-008"), (dry.Verdict, Assert.Single(dry.Findings).Code));
    }

    [Fact]
    public void Start_WithSomethingElseWrong_Stops_FromThatMomentOn()
    {
        StartWatch watch = StartWatch.Of(Dry).Value.PressureCame(Seconds(3)).WentWrong("water at port stopped", Seconds(15));
        Assert.Equal(StartVerdict.Watch, watch.At(Seconds(14)).Verdict);
        Assert.Equal((StartVerdict.StopNow, "EXHAUST-010"), (watch.At(Seconds(15)).Verdict, watch.At(Seconds(15)).Findings[0].Code));
    }

    [Fact]
    public void Start_ByTheManualsTimes_IsJudgedByThem()
    {
        StartWatch watch = StartWatch.Of(Dry, Seconds(5), Seconds(60)).Value;
        Assert.Equal(StartVerdict.StopNow, watch.At(Seconds(5.1)).Verdict);
        Assert.Equal(StartVerdict.Watch, watch.PressureCame(Seconds(2)).At(Seconds(59)).Verdict);
    }

    [Theory]
    [InlineData(AnodeMetal.Zinc, WaterKind.Salt, true)]
    [InlineData(AnodeMetal.Aluminium, WaterKind.Salt, true)]
    [InlineData(AnodeMetal.Magnesium, WaterKind.Salt, false)]
    [InlineData(AnodeMetal.Zinc, WaterKind.Fresh, false)]
    [InlineData(AnodeMetal.Aluminium, WaterKind.Fresh, true)]
    [InlineData(AnodeMetal.Magnesium, WaterKind.Fresh, true)]
    [InlineData(AnodeMetal.Zinc, WaterKind.Brackish, false)]
    [InlineData(AnodeMetal.Aluminium, WaterKind.Brackish, true)]
    [InlineData(AnodeMetal.Magnesium, WaterKind.Brackish, false)]
    public void Anode_GoesByTheWater(AnodeMetal metal, WaterKind water, bool suits) =>
        Assert.Equal(suits ? [] : ["ANODE-003"], AnodeCheck.Of(metal, water, 0.3, 12).Findings.Select(finding => finding.Code));

    /// <summary>TM 55-1930-209-14&amp;P-17: replaced at half. Common practice, no source: an unworn anode is no pass.</summary>
    [Theory]
    [InlineData(0.50, 12, "ANODE-001")]
    [InlineData(0.49, 12, "")]
    [InlineData(0.06, 12, "")]
    [InlineData(0.05, 12, "ANODE-002")]
    [InlineData(0.0, 3, "ANODE-002")]
    [InlineData(0.0, 2, "ANODE-005")]
    public void Anode_IsReplacedAtHalf_AndAnUnwornOneIsNoPass(double worn, int months, string expected)
    {
        AnodeCheck check = AnodeCheck.Of(AnodeMetal.Aluminium, WaterKind.Salt, worn, months);
        Assert.Equal(expected, string.Join(' ', check.Findings.Select(finding => finding.Code)));
        Assert.Equal(expected is "" or "ANODE-005", check.Passes);
    }

    [Fact]
    public void Anode_OfUnknownMetal_IsNotJudgedByTheWater() =>
        Assert.Equal("ANODE-004", Assert.Single(AnodeCheck.Of(AnodeMetal.NotStated, WaterKind.Salt, 0.3, 12).Findings).Code);

    private static UnitsNet.Duration Seconds(double seconds) => UnitsNet.Duration.FromSeconds(seconds);

    private static RawWaterCircuit Circuit(bool muffler) => RawWaterCircuit.Of(
    [
        CircuitPlace.Of(CircuitPlaceKind.RawWaterPump),
        .. muffler ? [CircuitPlace.Of(CircuitPlaceKind.WaterLiftMuffler)] : Array.Empty<CircuitPlace>(),
        CircuitPlace.Of(CircuitPlaceKind.ExhaustOutlet, "port"),
        CircuitPlace.Of(CircuitPlaceKind.ExhaustOutlet, "starboard"),
    ]);
}
