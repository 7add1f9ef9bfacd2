using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Engines;
using MarineService.Core.LayUp;
using UnitsNet;

namespace MarineService.Core.Tests.LayUp;

public sealed class FuelLayUpTest
{
    private static readonly FuelStabilizer OunceForFiveGallons = FuelStabilizer.Of("stabilizer", Volume.FromUsOunces(1), Volume.FromUsGallons(5));

    [Law]
    public Property Dose_TreatsAllThatIsInTheTankAfterFilling() =>
        Prop.ForAll(Gen.Choose(10, 5000).Zip(Gen.Choose(0, 1000)).ToArbitrary(), t =>
        {
            double capacity = t.Item1 / 10.0;
            double inside = capacity * t.Item2 / 1000;
            FuelLayUp fuel = FuelLayUp.Of(FuelTank.Of(Fuel.Petrol, Volume.FromLiters(capacity)), Volume.FromLiters(inside), OunceForFiveGallons);
            double after = inside + fuel.Add.Value.Liters;
            return (Math.Abs(after - Math.Max(inside, 0.9 * capacity)) < 1e-9
                && Math.Abs(fuel.Dose.Value.UsOunces - Volume.FromLiters(after).UsGallons / 5) < 1e-9).Label($"{t}: {after}");
        });

    [Fact]
    public void Label_CustomaryDoses_ComeOutInMillilitersForEachLiter()
    {
        // 1 US fl oz for 5 and for 2.5 US gal are about 1.6 and 3.1 mL/L (from memory).
        Assert.Equal(1.56, OunceForFiveGallons.Dose.Milliliters / OunceForFiveGallons.Treats.Liters, 0.005);
        FuelStabilizer strong = FuelStabilizer.Of("strong", Volume.FromUsOunces(1), Volume.FromUsGallons(2.5));
        Assert.Equal(3.13, strong.Dose.Milliliters / strong.Treats.Liters, 0.005);
    }

    [Theory]
    [InlineData(90, 0)]
    [InlineData(95, 0)]
    [InlineData(95.5, 1)]
    public void Tank_WithoutRoomToExpand_IsFound(double inside, int findings) =>
        Assert.Equal(findings, FuelLayUp.Of(FuelTank.Of(Fuel.Diesel, Volume.FromLiters(100)), Volume.FromLiters(inside)).Findings(30).Count);

    [Theory]
    [InlineData(Fuel.Petrol, 30, false)]
    [InlineData(Fuel.Petrol, 173, true)]
    [InlineData(Fuel.Diesel, 173, false)]
    [InlineData(Fuel.Diesel, 183, true)]
    [InlineData(Fuel.NotStated, 400, false)]
    public void Untreated_LongerThanItKeeps_IsFound(Fuel fuel, int days, bool expected)
    {
        FuelTank tank = FuelTank.Of(fuel, Volume.FromLiters(100));
        Assert.Equal(expected, FuelLayUp.Of(tank).Findings(days).Any(finding => finding.Rule == LayUpRules.FuelGoesStale));
        Assert.Empty(FuelLayUp.Of(tank, null, OunceForFiveGallons).Findings(days));
    }

    [Fact]
    public void LevelOrLabelMissing_IsNotKnown()
    {
        FuelLayUp fuel = FuelLayUp.Of(FuelTank.Of(Fuel.Petrol, Volume.FromLiters(100)));
        Assert.False(fuel.Add.IsKnown);
        Assert.False(fuel.Dose.IsKnown);
        Assert.Equal(90, fuel.Treated.Liters, 1e-9);
    }

    [Fact]
    public void BadAmounts_AreRefusedByName()
    {
        FuelTank tank = FuelTank.Of(Fuel.Petrol, Volume.FromLiters(100));
        Assert.Throws<ArgumentOutOfRangeException>("inside", () => FuelLayUp.Of(tank, Volume.FromLiters(101)));
        Assert.Throws<ArgumentOutOfRangeException>("dose", () => FuelStabilizer.Of("x", Volume.FromLiters(1), Volume.FromLiters(5)));
        Assert.Throws<ArgumentOutOfRangeException>("capacity", () => FuelTank.Of(Fuel.Petrol, Volume.FromLiters(0)));
    }
}
