using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Oils;
using MarineService.Core.Tests.Reference;
using static MarineService.Core.Tests.Oils.OilUnits;

namespace MarineService.Core.Tests.Oils;

public sealed class FuelDilutionTest
{
    [Law]
    public Property Of_WhatAShareOfFuelMakes_BracketsThatShare() =>
        Prop.ForAll(Gen.Choose(20, 200).Zip(Gen.Choose(1, 200)).ToArbitrary(), pair =>
        {
            double share = pair.Item2 / 1000.0;
            ViscosityBracket thinned = FuelDilution.ViscosityWith(Kv(pair.Item1), Kv(3), share);
            FractionBracket low = FuelDilution.Of(Kv(pair.Item1), thinned.Low, Kv(3)).Value.Fuel;
            FractionBracket high = FuelDilution.Of(Kv(pair.Item1), thinned.High, Kv(3)).Value.Fuel;
            return (Math.Abs(low.LowFraction - share) < 1e-4 && Math.Abs(high.HighFraction - share) < 1e-4 && low.HighFraction >= share && high.LowFraction <= share)
                .Label($"{pair.Item1} mm²/s, {share}: {low}, {high}");
        });

    [Fact]
    public void Of_ThePublishedCases_HoldsTheirAnswersInside()
    {
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("fuel-dilution-checks.csv"))
        {
            double Mm2PerS(string column) => row["unit"] == "SSU" ? Saybolt.Kinematic(row.Number(column)) : row.Number(column);
            FractionBracket fuel = FuelDilution.Of(Kv(Mm2PerS("new")), Kv(Mm2PerS("used")), Kv(Mm2PerS("fuel"))).Value.Fuel;
            double tolerance = row.Number("tolerance_percent");
            Assert.Equal(row.Number("low_percent"), fuel.LowFraction * 100, tolerance);
            Assert.Equal(row.Number("high_percent"), fuel.HighFraction * 100, tolerance);
            Assert.InRange(row.Number("published_percent"), fuel.LowFraction * 100, fuel.HighFraction * 100);
        }
    }

    [Fact]
    public void ViscosityWith_FivePercent_TakesSae30TowardsSae20()
    {
        // A laboratory page says that 5 % of fuel takes SAE 30 to SAE 20: by the double log it does.
        ViscosityBracket thinned = FuelDilution.ViscosityWith(Kv(10.5), Kv(1.2), 0.05);
        Assert.Equal(["20"], SaeNonWGrade.Holding(thinned.Low).Select(grade => grade.Designation));
    }

    [Theory]
    [InlineData(160, "soot or oxidation may hide fuel")]
    [InlineData(150, "does not prove that there is no fuel")]
    [InlineData(3, "not thicker than the fuel")]
    public void Of_NoThinning_IsNotKnown(double used, string reason)
    {
        Answer<FuelDilution> dilution = FuelDilution.Of(Kv(150), Kv(used), Kv(3));
        Assert.False(dilution.IsKnown);
        Assert.Contains(reason, dilution.Missing[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Of_BadInput_Throws()
    {
        Assert.Throws<ArgumentException>("fuel", () => FuelDilution.Of(Kv(100), Kv(90), Kv(100)));
        Assert.Throws<ArgumentOutOfRangeException>("fuel", () => FuelDilution.Of(Kv(100), Kv(90), Kv(0.3)));
        Assert.Throws<ArgumentOutOfRangeException>("newOil", () => FuelDilution.Of(default, Kv(90), Kv(3)));
        Assert.Throws<ArgumentOutOfRangeException>("usedOil", () => FuelDilution.Of(Kv(100), Kv(-1), Kv(3)));
        foreach (double bad in NotNumbers)
        {
            Assert.Throws<ArgumentOutOfRangeException>("fuelFraction", () => FuelDilution.ViscosityWith(Kv(100), Kv(3), bad));
        }
    }

    [Fact]
    public void Explain_SaysWhatMisleads() =>
        Assert.Contains("soot and oxidation thicken", FuelDilution.Of(Kv(160), Kv(137), Kv(3)).Value.Explain(DisplayUnits.Metric).ToString(), StringComparison.Ordinal);
}
