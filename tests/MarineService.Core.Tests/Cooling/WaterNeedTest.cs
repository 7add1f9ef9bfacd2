using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Cooling;
using MarineService.Core.Engines;
using MarineService.Core.Tests.Reference;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace MarineService.Core.Tests.Cooling;

public sealed class WaterNeedTest
{
    [Fact]
    public void Flow_OfTheWorkedTable_IsThat()
    {
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("heat-balance-checks.csv"))
        {
            HeatToWater heat = HeatToWater.Of(Power.FromKilowatts(row.Number("kilowatts")), Enum.Parse<Fuel>(row["fuel"])).Value;
            Assert.Equal(row.Number("share"), heat.ShareRatio, 9);
            WaterNeed need = heat.FlowFor(TemperatureDelta.FromKelvins(row.Number("rise")), WaterKind.Salt);
            Assert.InRange(Math.Abs(need.Flow.LitersPerMinute - row.Number("litersPerMinute")), 0, 0.5);
        }
    }

    [Fact]
    public void RuleOfThumb_LiesInsideTheComputedBand()
    {
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("flow-rules-of-thumb.csv"))
        {
            HeatToWater heat = HeatToWater.Given(Power.FromKilowatts(74.5699872), row.Number("share"));
            double warm = heat.RiseAt(VolumeFlow.FromLitersPerMinute(row.Number("leastPer100Bhp")), WaterKind.Salt).Kelvins;
            double cool = heat.RiseAt(VolumeFlow.FromLitersPerMinute(row.Number("mostPer100Bhp")), WaterKind.Salt).Kelvins;
            Assert.InRange(Math.Abs(cool - row.Number("leastRise")), 0, 0.05);
            Assert.InRange(Math.Abs(warm - row.Number("mostRise")), 0, 0.05);

            // Behind a heat exchanger between the rises of the table; raw-water engines recirculate and let the water warm up further.
            Assert.InRange(warm, 10, row["circuit"] == "raw water" ? DischargeLimit.RawWaterBlock.RoomForRise(Temperature.FromDegreesCelsius(25)).Kelvins : 25);
        }
    }

    [Law]
    public Property MoreFlow_NeverRaisesTheTemperature() => Prop.ForAll(
        Gen.Choose(1, 500).Zip(Gen.Choose(1, 3000)).Zip(Gen.Choose(0, 3000)).Zip(Gen.Elements(WaterKind.Fresh, WaterKind.Salt, WaterKind.NotStated)).ToArbitrary(),
        t =>
        {
            (((int kilowatts, int flow), int more), WaterKind water) = t;
            HeatToWater heat = HeatToWater.Of(Power.FromKilowatts(kilowatts), Fuel.Petrol).Value;
            return heat.RiseAt(VolumeFlow.FromLitersPerMinute((flow + more) / 2.0), water).Kelvins <= heat.RiseAt(VolumeFlow.FromLitersPerMinute(flow / 2.0), water).Kelvins;
        });

    /// <summary>Second method: the flow at which the rise is what was asked for, found by MathNet.Numerics.</summary>
    [Law(MaxTest = 200)]
    public Property FlowFor_IsTheRootOfRiseAt() => Prop.ForAll(
        Gen.Choose(2, 400).Zip(Gen.Choose(2, 50)).Zip(Gen.Elements(WaterKind.Fresh, WaterKind.Salt)).ToArbitrary(),
        t =>
        {
            ((int kilowatts, int rise), WaterKind water) = t;
            HeatToWater heat = HeatToWater.Of(Power.FromKilowatts(kilowatts), Fuel.Diesel).Value;
            double root = Brent.FindRoot(flow => heat.RiseAt(VolumeFlow.FromLitersPerMinute(flow), water).Kelvins - rise, 0.1, 10_000, 1e-10);
            return Math.Abs(root - heat.FlowFor(TemperatureDelta.FromKelvins(rise), water).Flow.LitersPerMinute) < 1e-5 * root;
        });

    /// <summary>Second method: the table's flows interpolated over one over the rise, by MathNet.Numerics, between its columns.</summary>
    [Theory]
    [InlineData(12.5)]
    [InlineData(17.0)]
    [InlineData(22.0)]
    public void Flow_BetweenTheTablesRises_IsInterpolated(double rise)
    {
        IReadOnlyDictionary<string, string>[] rows =
            [.. ReferenceTable.Read("heat-balance-checks.csv").Where(row => row["kilowatts"] == "200").OrderByDescending(row => row.Number("rise"))];
        MathNet.Numerics.Interpolation.IInterpolation line = MathNet.Numerics.Interpolate.Linear(
            rows.Select(row => 1 / row.Number("rise")), rows.Select(row => row.Number("litersPerMinute")));
        double flow = HeatToWater.Of(Power.FromKilowatts(200), Fuel.Petrol).Value.FlowFor(TemperatureDelta.FromKelvins(rise), WaterKind.Salt).Flow.LitersPerMinute;
        Assert.InRange(Math.Abs(line.Interpolate(1 / rise) - flow), 0, 0.5);
    }

    [Fact]
    public void Need_SpansTheSharesThatAreLikely()
    {
        WaterNeed need = HeatToWater.Of(Power.FromKilowatts(100), Fuel.Diesel).Value.FlowFor(TemperatureDelta.FromKelvins(15), WaterKind.Salt);
        Assert.Equal(need.Flow.LitersPerMinute * 0.6 / 0.8, need.LeastLikelyFlow.LitersPerMinute, 9);
        Assert.Equal(need.Flow.LitersPerMinute * 0.9 / 0.8, need.HighestLikelyFlow.LitersPerMinute, 9);
        Assert.Contains("from memory", need.Explain(DisplayUnits.UsCustomary).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void WaterThatIsNotKnownToBeFresh_TakesLessHeat()
    {
        HeatToWater heat = HeatToWater.Of(Power.FromKilowatts(100), Fuel.Diesel).Value;
        TemperatureDelta rise = TemperatureDelta.FromKelvins(15);
        Assert.True(heat.FlowFor(rise, WaterKind.Fresh).Flow < heat.FlowFor(rise, WaterKind.Salt).Flow);
        Assert.Equal(heat.FlowFor(rise, WaterKind.Salt).Flow.LitersPerMinute, heat.FlowFor(rise, WaterKind.NotStated).Flow.LitersPerMinute, 12);
        Assert.Equal(heat.FlowFor(rise, WaterKind.Salt).Flow.LitersPerMinute, heat.FlowFor(rise, WaterKind.Brackish).Flow.LitersPerMinute, 12);
    }

    [Fact]
    public void Heat_WithoutTheFuel_IsNotKnown() => Assert.False(HeatToWater.Of(Power.FromKilowatts(100), Fuel.NotStated).IsKnown);

    [Theory]
    [InlineData(-1)]
    [InlineData(0)]
    [InlineData(5001)]
    public void Power_OutsideWhatABoatHas_IsNamed(double kilowatts)
    {
        Assert.Throws<ArgumentOutOfRangeException>("shaftPower", () => HeatToWater.Of(Power.FromKilowatts(kilowatts), Fuel.Diesel));
        Assert.Throws<ArgumentOutOfRangeException>("shaftPower", () => HeatToWater.Given(Power.FromKilowatts(kilowatts), 1));
    }

    [Fact]
    public void Displacement_OfTheWorkedPumps_GivesTheirFlow()
    {
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("pump-displacement-checks.csv"))
        {
            double liters = 0.9 * row.Number("kilowatts") / row.Number("ratedRpm");
            double unit = row["litersPerTurn"].Length == 6 ? 0.00005 : 0.0005;
            Assert.InRange(Math.Abs(liters - row.Number("litersPerTurn")), 0, unit);
            RawWaterPump pump = RawWaterPump.Of(Impeller.Of(6), Volume.FromLiters(liters));
            Assert.Equal(0.9 * row.Number("kilowatts"), pump.FlowAt(RotationalSpeed.FromRevolutionsPerMinute(row.Number("ratedRpm"))).Value.LitersPerMinute, 9);
            Assert.InRange(Math.Abs(pump.FlowAt(RotationalSpeed.FromRevolutionsPerMinute(700)).Value.LitersPerMinute - row.Number("atIdle")), 0, 0.5);
        }
    }

    [Fact]
    public void Pump_WearAndRatio_ScaleItsFlow()
    {
        RawWaterPump pump = RawWaterPump.Of(Impeller.Of(6), Volume.FromLiters(0.02), speedRatio: 1.5);
        RotationalSpeed speed = RotationalSpeed.FromRevolutionsPerMinute(2000);
        Assert.Equal(60, pump.FlowAt(speed).Value.LitersPerMinute, 9);
        Assert.Equal(45, pump.FlowAt(speed, wearFraction: 0.25).Value.LitersPerMinute, 9);
        Assert.False(RawWaterPump.Of(Impeller.Of(6)).FlowAt(speed).IsKnown);
    }

    [Fact]
    public void DischargeLimit_IsThePublishedOne_BehindHeatExchangersOnly()
    {
        Assert.Equal(130, DischargeLimit.For(CoolingKind.FreshWater).Value.Limit.DegreesFahrenheit, 9);
        Assert.Equal(CitationStanding.Published, DischargeLimit.HeatExchanger.Citation.Standing);
        Assert.Equal(60, DischargeLimit.For(CoolingKind.RawWater).Value.Limit.DegreesCelsius, 9);
        Assert.Equal(CitationStanding.CommonPractice, DischargeLimit.RawWaterBlock.Citation.Standing);
        Assert.False(DischargeLimit.For(CoolingKind.NotStated).IsKnown);
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("discharge-limits.csv"))
        {
            double room = DischargeLimit.HeatExchanger.RoomForRise(Temperature.FromDegreesCelsius(row.Number("intake"))).Kelvins;
            Assert.InRange(Math.Abs(room - row.Number("room")), 0, 0.5);
        }
    }

    [Theory]
    [InlineData(54.3, "")]
    [InlineData(54.45, "WATER-001")]
    [InlineData(14.9, "WATER-002")]
    [InlineData(15, "")]
    public void Temperatures_AreJudged_AgainstTheLimitAndTheIntake(double outlet, string expected) =>
        Assert.Equal(expected, string.Join(' ', DischargeLimit.HeatExchanger
            .Judge(Temperature.FromDegreesCelsius(15), Temperature.FromDegreesCelsius(outlet)).Select(finding => finding.Code)));

    [Fact]
    public void Temperature_OnTheLimit_IsNotBelowIt()
    {
        Assert.Single(DischargeLimit.HeatExchanger.Judge(Temperature.FromDegreesFahrenheit(60), Temperature.FromDegreesFahrenheit(130)));
        Assert.Empty(DischargeLimit.HeatExchanger.Judge(Temperature.FromDegreesFahrenheit(60), Temperature.FromDegreesFahrenheit(129.99)));
        Assert.Empty(DischargeLimit.Given(Temperature.FromDegreesCelsius(70)).Judge(Temperature.FromDegreesCelsius(15), Temperature.FromDegreesCelsius(69)));
    }
}
