using MarineService.Core.Cooling;
using MarineService.Core.Engines;
using MarineService.Core.Tests.Reference;
using NodaTime;
using UnitsNet;
using Duration = UnitsNet.Duration;

namespace MarineService.Core.Tests.Cooling;

public sealed class BucketAndFlushTest
{
    private static readonly LocalDate Day = new(2026, 5, 2);

    private static readonly RawWaterCircuit TwoOutlets = RawWaterCircuit.Of(
        CircuitPlace.Of(CircuitPlaceKind.RawWaterPump),
        CircuitPlace.Of(CircuitPlaceKind.HeatExchanger),
        CircuitPlace.Of(CircuitPlaceKind.ExhaustOutlet, "port"),
        CircuitPlace.Of(CircuitPlaceKind.ExhaustOutlet, "starboard"));

    // 100 kW diesel, 15 K, sea water: 78.2 L/min at 3000 a minute.
    private static readonly WaterNeed Need = HeatToWater.Of(Power.FromKilowatts(100), Fuel.Diesel).Value.FlowFor(TemperatureDelta.FromKelvins(15), WaterKind.Salt);

    private static readonly RotationalSpeed Rated = Rpm(3000);

    /// <summary>Common practice, no source: litres in 10 s times 6 are litres a minute.</summary>
    [Fact]
    public void Bucket_LitersInTenSecondsTimesSix_AreLitersAMinute() =>
        Assert.Equal(42, Test(1500, ("port", 7, 10)).Flow.LitersPerMinute, 9);

    [Fact]
    public void Bucket_SumsEveryOutlet_AndScalesWithSpeed()
    {
        BucketCheck check = Test(1500, ("port", 3.5, 10), ("starboard", 7, 20)).Judge(Need, Rated, circuit: TwoOutlets);
        Assert.Equal(84, check.FlowAtRatedSpeed.LitersPerMinute, 9);
        Assert.True(check.IsEnough);
    }

    [Theory]
    [InlineData(6.0, "WATER-003")]
    [InlineData(6.4, "WATER-004")]
    [InlineData(6.9, "WATER-004")]
    [InlineData(7.2, "")]
    public void Bucket_IsJudged_WithItsUncertainty(double liters, string expected)
    {
        // 0.3 s in 10 s and 0.1 L: 6.52 L in 10 s is the need; twice the uncertainty is about 0.4 L there.
        BucketTest test = BucketTest.Of(Day, Rpm(1500), [BucketCatch.Of("port", MeasuredVolume.Of(Volume.FromLiters(liters), null, Volume.FromLiters(0.1)), Duration.FromSeconds(10))]);
        Assert.Equal(expected, string.Join(' ', test.Judge(Need, Rated).Findings.Select(finding => finding.Code)));
    }

    [Fact]
    public void Bucket_Uncertainty_IsThatOfVolumeAndTimingTogether()
    {
        BucketTest test = BucketTest.Of(Day, Rpm(1500), [BucketCatch.Of("port", MeasuredVolume.Of(Volume.FromLiters(5), null, Volume.FromLiters(0.2)), Duration.FromSeconds(10))]);
        double expected = 60 * Math.Sqrt(Math.Pow(0.2 / 5, 2) + Math.Pow(0.3 / 10, 2));
        Assert.Equal(expected, test.Judge(Need, Rated).StandardUncertainty.LitersPerMinute, 9);
    }

    [Fact]
    public void Bucket_ShowsTheWear_AgainstANewPump()
    {
        // 30 mL a turn at 1500 a minute: 45 L/min when new; 33.6 caught: 25.3 % less.
        RawWaterPump pump = RawWaterPump.Of(Impeller.Of(6), Volume.FromLiters(0.03));
        BucketCheck worn = Test(1500, ("port", 5.6, 10)).Judge(Need, Rated, pump);
        Assert.Equal(1 - (33.6 / 45), worn.WearFraction.Value, 9);
        Assert.Equal("WATER-005", worn.Findings[^1].Code);
        Assert.Equal(CitationStanding.Derived, worn.Findings[^1].Rule.Citation.Standing);
        Assert.Equal("WATER-007", Test(1500, ("port", 9, 10)).Judge(Need, Rated, pump).Findings[^1].Code);
        Assert.False(Test(1500, ("port", 9, 10)).Judge(Need, Rated).WearFraction.IsKnown);
    }

    [Fact]
    public void Bucket_UnderOneOutletOfTwo_ProvesNothing()
    {
        BucketCheck check = Test(1500, ("port", 8, 10)).Judge(Need, Rated, circuit: TwoOutlets);
        Assert.Equal("WATER-006", check.Findings[0].Code);
        Assert.False(check.IsEnough);
    }

    [Fact]
    public void Bucket_OfNothingOrTwiceOneOutlet_IsNamed()
    {
        Assert.Throws<ArgumentException>("catches", () => BucketTest.Of(Day, Rpm(1500), []));
        Assert.Throws<ArgumentException>("catches", () => Test(1500, ("port", 5, 10), ("port", 5, 10)));
        Assert.Throws<ArgumentOutOfRangeException>("volume", () => Test(1500, ("port", 0, 10)));
    }

    [Fact]
    public void Flush_ThermalNeed_IsTheWorkedOne()
    {
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("flush-checks.csv"))
        {
            FlushCheck check = FlushCheck.Of(
                VolumeFlow.FromLitersPerMinute(30), Enum.Parse<Fuel>(row["fuel"]), VolumeFlow.FromLitersPerHour(row.Number("litersPerHour")), null, Rpm(700)).Value;
            Assert.InRange(Math.Abs(check.ThermalNeed.LitersPerMinute - row.Number("litersPerMinute")), 0, 0.05);
        }
    }

    [Theory]
    [InlineData(5.0, 0.006, "FLUSH-001")]
    [InlineData(8.0, 0.02, "FLUSH-002")]
    [InlineData(5.0, 0.02, "FLUSH-001 FLUSH-002")]
    [InlineData(15.0, 0.02, "")]
    public void Flush_BothTestsMustPass(double hose, double litersPerTurn, string expected)
    {
        FlushCheck check = FlushCheck.Of(
            VolumeFlow.FromLitersPerMinute(hose), Fuel.Petrol, VolumeFlow.FromLitersPerHour(2), RawWaterPump.Of(Impeller.Of(6), Volume.FromLiters(litersPerTurn)), Rpm(700)).Value;
        Assert.Equal(expected, string.Join(' ', check.Findings.Select(finding => finding.Code)));
        Assert.Equal(expected.Length == 0, check.Passes);
    }

    [Fact]
    public void Flush_WithoutThePumpsDisplacement_IsNotProved()
    {
        FlushCheck check = FlushCheck.Of(VolumeFlow.FromLitersPerMinute(60), Fuel.Diesel, VolumeFlow.FromLitersPerHour(0.6), RawWaterPump.Of(Impeller.Of(6)), Rpm(800)).Value;
        Assert.Equal("FLUSH-003", Assert.Single(check.Findings).Code);
        Assert.False(check.Passes || check.DisplacementNeed.IsKnown);
        Assert.False(FlushCheck.Of(VolumeFlow.FromLitersPerMinute(60), Fuel.NotStated, VolumeFlow.FromLitersPerHour(0.6), null, Rpm(800)).IsKnown);
    }

    private static RotationalSpeed Rpm(double rpm) => RotationalSpeed.FromRevolutionsPerMinute(rpm);

    private static BucketTest Test(double rpm, params (string Outlet, double Liters, double Seconds)[] catches) => BucketTest.Of(
        Day, Rpm(rpm), [.. catches.Select(bucket => BucketCatch.Of(bucket.Outlet, MeasuredVolume.Of(Volume.FromLiters(bucket.Liters)), Duration.FromSeconds(bucket.Seconds)))]);
}
