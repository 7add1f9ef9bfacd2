using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Fluids;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace MarineService.Core.Tests.Fluids;

public sealed class DrainPathTest
{
    private static readonly Volume EightLiters = Volume.FromLiters(8);
    private static readonly Area Surface = Area.FromSquareMeters(0.18);
    private static readonly KinematicViscosity Warm = KinematicViscosity.FromCentistokes(33.6383);
    private static readonly KinematicViscosity Cold = KinematicViscosity.FromCentistokes(447.2710);

    private static DrainPath Hose(double boreMm) =>
        DrainPath.ByGravity(Length.FromMillimeters(boreMm), Length.FromMeters(1.0), Length.FromMeters(0.50));

    private static DrainPath Tube(double boreMm) =>
        DrainPath.BySuction(Length.FromMillimeters(boreMm), Length.FromMeters(1.2), Length.FromMeters(0.70), Pressure.FromKilopascals(60));

    [Law]
    public Property Drain_AnyPath_IsProportionalToViscosityAndFallsWithTheFourthPowerOfTheBore() =>
        Prop.ForAll(
            Gen.Choose(60, 140).Zip(Gen.Choose(100, 500)).ToArbitrary(),
            t =>
            {
                (int tenthsMm, int nu) = t;
                KinematicViscosity once = KinematicViscosity.FromCentistokes(nu);
                KinematicViscosity twice = KinematicViscosity.FromCentistokes(2 * nu);
                double seconds = Hose(tenthsMm / 10.0).Drain(EightLiters, Surface, once).Value.Total.TotalSeconds;
                double thicker = Hose(tenthsMm / 10.0).Drain(EightLiters, Surface, twice).Value.Total.TotalSeconds;
                double wider = Hose(tenthsMm / 5.0).Drain(EightLiters, Surface, KinematicViscosity.FromCentistokes(16 * nu)).Value.Total.TotalSeconds;
                return (Math.Abs(thicker / seconds - 2) < 1e-6 && Math.Abs(wider / seconds - 1) < 1e-6).Label($"{seconds} {thicker} {wider}");
            });

    [Law]
    public Property LeftAfter_AnyTime_FallsFromAllToNothingAndAgreesWithSmallSteps() =>
        Prop.ForAll(
            Gen.Choose(0, 110).Zip(Gen.Choose(0, 30)).ToArbitrary(),
            t =>
            {
                (int seconds, int lossTenths) = t;
                double k = lossTenths / 10.0;
                DrainTime drain = Hose(12).WithLosses(k).Drain(EightLiters, Surface, Warm).Value;
                double left = drain.LeftAfter(Duration.FromSeconds(seconds)).Liters;

                // Second method: Euler steps on the level with the same law written as a pressure balance.
                double level = 0.008 / 0.18;
                const double Step = 0.005;
                for (double time = 0; time < seconds && level > 0; time += Step)
                {
                    double b = 32 * 33.6383e-6 / (0.012 * 0.012);
                    double gh = 9.80665 * (0.5 + level);
                    double v = k == 0 ? gh / b : (-b + Math.Sqrt(b * b + 2 * k * gh)) / k;
                    level -= v * Math.PI / 4 * 0.012 * 0.012 / 0.18 * Step;
                }

                double stepped = Math.Max(0, level) * 180;
                return (Math.Abs(left - stepped) < 0.002).Label($"{seconds} s, K {k}: {left}, {stepped}");
            });

    [Fact]
    public void PressureLoss_HandbookExample_Agrees()
    {
        // FL-1: flow-of-fluids handbook TP-410, example 7-8: 600 oil barrels (42 US gal) an hour, published 6382 Pa with the valve.
        double velocity = 600 * 42 * 3.785411784e-3 / 3600 / LaminarMath.BoreAreaM2(0.202717);
        double pipe = LaminarMath.PressureLossPa(0.130, 60, 0.202717, velocity);
        double valve = 340 * 0.014 * 869.2 * velocity * velocity / 2;
        Assert.Equal(4986.6, pipe, 0.5);
        Assert.Equal(6382, pipe + valve, 6382 * 0.002);
        Assert.Equal(1113, LaminarMath.Reynolds(velocity, 0.202717, 0.130 / 869.2), 0.5);
    }

    [Fact]
    public void PressureLoss_PublishedTube_Agrees()
    {
        // FL-2: published 795.18 Pa/m with the velocity rounded to 0.064 m/s; exact 790.987; Re 7.153.
        double velocity = 72e-3 / 3600 / LaminarMath.BoreAreaM2(0.020);
        Assert.Equal(790.987, LaminarMath.PressureLossPa(0.15531, 1, 0.020, velocity), 790.987 * 1e-5);
        Assert.Equal(795.18, LaminarMath.PressureLossPa(0.15531, 1, 0.020, velocity), 795.18 * 0.006);
        Assert.Equal(7.153, LaminarMath.Reynolds(velocity, 0.020, 0.15531 / 872.5), 0.001);
    }

    // FL-3 to FL-5: university problem, level, 8° rising, 8° falling; g 9.81 there. 876 kg/m³, 0.24 Pa·s, 15 mm, 15 m, 47 kPa.
    [Theory]
    [InlineData(0, 1.6222e-5)]
    [InlineData(8, 1.0030e-5)]
    [InlineData(-8, 2.2414e-5)]
    public void Flow_InclinedTube_AgreesWithTheTextbook(double degrees, double expected)
    {
        double pressure = 47_000 - 876 * 9.81 * 15 * Math.Sin(degrees * Math.PI / 180);
        Assert.Equal(expected, LaminarMath.FlowM3PerS(pressure, 0.24, 15, 0.015), expected * 1e-4);
    }

    // FL-6, FL-7 and the typical numbers: 8 L of a 15W-40 in a 0.60 × 0.30 m sump, outlet 0.50 m below the floor; worked out independently.
    [Theory]
    [InlineData(12, 33.6383, 4.84681, 103.311)]
    [InlineData(12, 447.2710, 0.36452, 1373.669)]
    public void Drain_GravityHose_AgreesWithTheCheckValue(double boreMm, double nu, double flow, double seconds)
    {
        DrainTime drain = Hose(boreMm).Drain(EightLiters, Surface, KinematicViscosity.FromCentistokes(nu)).Value;
        Assert.Equal(flow, drain.FirstFlow.LitersPerMinute, flow * 1e-4);
        Assert.Equal(seconds, drain.Total.TotalSeconds, seconds * 1e-4);
    }

    [Theory]
    [InlineData(12, 0, 103.3)]
    [InlineData(12, 2, 112.0)]
    [InlineData(16, 0, 32.7)]
    [InlineData(16, 2, 40.4)]
    public void Drain_WithVelocityHead_AgreesWithTheTypicalNumbers(double boreMm, double k, double seconds) =>
        Assert.Equal(seconds, Hose(boreMm).WithLosses(k).Drain(EightLiters, Surface, Warm).Value.Total.TotalSeconds, 0.06);

    // FL-8, FL-9: 60 kPa, lift 0.70 m to the pump held constant (a very wide sump), 8 mm × 1.2 m; density 880 at 15 °C.
    [Theory]
    [InlineData(845.098, 33.6383, 54198.7, 9.58335, 50.09)]
    [InlineData(880.000, 447.2710, 53959.1, 0.68910, 696.56)]
    public void Drain_SuctionTube_AgreesWithTheCheckValue(double density, double nu, double pressure, double flow, double seconds)
    {
        Assert.Equal(pressure, 60_000 - density * 9.80665 * 0.70, 0.1);
        DrainTime drain = Tube(8).Drain(
            EightLiters, Area.FromSquareMeters(1000), KinematicViscosity.FromCentistokes(nu), Density.FromKilogramsPerCubicMeter(density)).Value;
        Assert.Equal(flow, drain.FirstFlow.LitersPerMinute, flow * 1e-4);
        Assert.Equal(seconds, drain.Total.TotalSeconds, seconds * 2e-4);
    }

    [Fact]
    public void Drain_WarmAgainstCold_TakesMinutesAgainstFarLonger()
    {
        // Fact of the trade (common practice, no source): oil at about 70 °C (160 °F) drains in minutes, cold oil takes far longer.
        double warm = Hose(12).Drain(EightLiters, Surface, Warm).Value.Total.TotalMinutes;
        double cold = Hose(12).Drain(EightLiters, Surface, Cold).Value.Total.TotalMinutes;
        Assert.InRange(warm, 1, 5);
        Assert.InRange(cold, 15, 60);
        // FL-10: the ratio is that of the viscosities.
        Assert.Equal(CheckValue.Numbers("FL-10")[0], cold / warm, 1e-4);
    }

    [Fact]
    public void Drain_SuctionAgainstGravity_LosesThroughANarrowTube()
    {
        // 60 kPa is some twelve times the push of half a meter of oil, yet a 6 mm tube is slower than a 12 mm hose.
        double tube = Tube(6).Drain(EightLiters, Surface, Warm).Value.Total.TotalSeconds;
        double hose = Hose(12).Drain(EightLiters, Surface, Warm).Value.Total.TotalSeconds;
        Assert.True(tube > hose);
    }

    [Fact]
    public void Drain_WhatTheLawCannotSay_IsNotKnown()
    {
        // Water-thin oil through a wide hose is turbulent.
        Assert.False(Hose(25).Drain(EightLiters, Surface, KinematicViscosity.FromCentistokes(5)).IsKnown);
        // Level with the floor the last of it never leaves: ln(H1/H2) has no end.
        Assert.False(DrainPath.ByGravity(Length.FromMillimeters(12), Length.FromMeters(1), Length.Zero).Drain(EightLiters, Surface, Warm).IsKnown);
        // 5 kPa lifts oil by 0.58 m, not by 0.70.
        DrainPath weak = DrainPath.BySuction(Length.FromMillimeters(8), Length.FromMeters(1.2), Length.FromMeters(0.70), Pressure.FromKilopascals(5));
        Assert.False(weak.Drain(EightLiters, Surface, Warm).IsKnown);
    }

    [Fact]
    public void SuctionCeiling_OilOfUsualDensity_IsAboutTwelveMeters() =>
        // 101 325/(880·9.80665) = 11.741 m.
        Assert.Equal(11.741, DrainPath.SuctionCeiling(Density.FromKilogramsPerCubicMeter(880)).Meters, 0.001);

    [Fact]
    public void Advise_ColdOil_NamesTheViscosityAndTheBoreThatWouldDo()
    {
        DrainTime cold = Hose(12).Drain(EightLiters, Surface, Cold).Value;
        IReadOnlyList<Finding> advice = cold.Advise();
        Assert.Equal(["FLUID-060", "FLUID-061"], advice.Select(finding => finding.Code));
        double thinner = advice[0]["thinner"]!.Number!.Value;
        double wider = advice[1]["wider"]!.Number!.Value;
        Assert.Equal(15, Hose(12).Drain(EightLiters, Surface, KinematicViscosity.FromCentistokes(thinner)).Value.Total.TotalMinutes, 0.001);
        Assert.Equal(15, Hose(wider).Drain(EightLiters, Surface, Cold).Value.Total.TotalMinutes, 0.001);
        Assert.All(advice, finding => Assert.Equal(Severity.Advice, finding.Severity));
    }

    [Fact]
    public void Advise_HotOilAndTilt_AreSaid()
    {
        DrainTime warm = Hose(12).Drain(EightLiters, Surface, Warm).Value;
        Assert.Empty(warm.Advise(Temperature.FromDegreesCelsius(40), Volume.FromLiters(0.1)));
        Assert.Equal(
            ["FLUID-062", "FLUID-063"],
            warm.Advise(Temperature.FromDegreesCelsius(70), Volume.FromLiters(0.5)).Select(finding => finding.Code));
        Assert.Contains("158 °F", warm.Advise(Temperature.FromDegreesCelsius(70))[0].Message(DisplayUnits.UsCustomary), StringComparison.Ordinal);
        Assert.Empty(Hose(12).CallingSlowAfter(Duration.FromHours(1)).Drain(EightLiters, Surface, Cold).Value.Advise());
    }

    [Fact]
    public void Path_BadInput_IsRefusedByName()
    {
        Length one = Length.FromMillimeters(1);
        Assert.Equal("bore", Assert.Throws<ArgumentOutOfRangeException>(() => DrainPath.ByGravity(Length.Zero, one, one)).ParamName);
        Assert.Equal("length", Assert.Throws<ArgumentOutOfRangeException>(() => DrainPath.ByGravity(one, Length.FromMeters(101), one)).ParamName);
        Assert.Equal("outletBelowFloor", Assert.Throws<ArgumentOutOfRangeException>(() => DrainPath.ByGravity(one, one, -one)).ParamName);
        Assert.Equal("suction", Assert.Throws<ArgumentOutOfRangeException>(
            () => DrainPath.BySuction(one, one, one, Pressure.FromKilopascals(102))).ParamName);
        Assert.Equal("lossRatio", Assert.Throws<ArgumentOutOfRangeException>(() => Hose(12).WithLosses(double.NaN)).ParamName);
        Assert.Equal("oil", Assert.Throws<ArgumentOutOfRangeException>(() => Hose(12).Drain(default, Surface, Warm)).ParamName);
        Assert.Equal("surface", Assert.Throws<ArgumentOutOfRangeException>(() => Hose(12).Drain(EightLiters, default, Warm)).ParamName);
        Assert.Equal("viscosity", Assert.Throws<ArgumentOutOfRangeException>(() => Hose(12).Drain(EightLiters, Surface, default)).ParamName);
        Assert.Equal("density", Assert.Throws<ArgumentOutOfRangeException>(
            () => Hose(12).Drain(EightLiters, Surface, Warm, Density.FromKilogramsPerCubicMeter(20))).ParamName);
        Assert.Equal("density", Assert.Throws<ArgumentOutOfRangeException>(() => DrainPath.SuctionCeiling(default)).ParamName);
        Assert.Equal("slowAfter", Assert.Throws<ArgumentOutOfRangeException>(() => Hose(12).CallingSlowAfter(Duration.Zero)).ParamName);
        DrainTime drain = Hose(12).Drain(EightLiters, Surface, Warm).Value;
        Assert.Equal("after", Assert.Throws<ArgumentOutOfRangeException>(() => drain.LeftAfter(Duration.FromSeconds(-1))).ParamName);
        Assert.Equal("oilTemperature", Assert.Throws<ArgumentOutOfRangeException>(() => drain.Advise(default(Temperature))).ParamName);
    }
}
