using MarineService.Core.Oils;
using static MarineService.Core.Tests.Oils.OilUnits;

namespace MarineService.Core.Tests.Oils;

public sealed class UsedOilCheckTest
{
    [Theory]
    [InlineData(100, null)]
    [InlineData(90.0001, null)]
    [InlineData(90, "OIL-101")]
    [InlineData(80.0001, "OIL-101")]
    [InlineData(80, "OIL-102")]
    [InlineData(114.9999, null)]
    [InlineData(115, "OIL-103")]
    [InlineData(124.9999, "OIL-103")]
    [InlineData(125, "OIL-104")]
    public void WithViscosity_AtEachLimitOfTheDefault_CountsAsReached(double used, string? code)
    {
        // Project choice: -10 and -20 %, +15 and +25 % of the measured new oil.
        UsedOilCheck check = UsedOilCheck.Against(UsedOilLimits.ProjectDefault).WithViscosity(C(40), Kv(100), Kv(used));
        Assert.Equal(code, check.Findings.SingleOrDefault()?.Code);
        Assert.Equal(Math.Round((used - 100) / 100, 6), check.Measured[0].Number!.Value, 6);
    }

    [Theory]
    [InlineData(0.0019, null)]
    [InlineData(0.002, "OIL-108")]
    [InlineData(0.005, "OIL-109")]
    public void WithMeasuredWater_AtEachLimit_CountsAsReached(double water, string? code) =>
        Assert.Equal(code, UsedOilCheck.Against(UsedOilLimits.ProjectDefault).WithMeasuredWater(water).Findings.SingleOrDefault()?.Code);

    [Theory]
    [InlineData(0.034, null)]
    [InlineData(0.035, "OIL-106")]
    [InlineData(0.07, "OIL-107")]
    public void WithMeasuredFuel_ByTheLaboratoryGuide_UsesItsLimits(double fuel, string? code)
    {
        UsedOilCheck check = UsedOilCheck.Against(UsedOilLimits.LaboratoryGuideDiesel).WithMeasuredFuel(fuel);
        Assert.Equal(code, check.Findings.SingleOrDefault()?.Code);
        Assert.Contains("Oil laboratory guide", check.Explain(DisplayUnits.Metric).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void WithFuel_BracketAcrossTheLimit_OnlyAsksForALaboratory()
    {
        // 160 to 130 mm²/s: about 3.1 to 5.2 %, across the 4 %; 160 to 100: all beyond.
        UsedOilCheck across = UsedOilCheck.Against(UsedOilLimits.ProjectDefault).WithFuel(FuelDilution.Of(Kv(160), Kv(130), Kv(3)).Value);
        Assert.Equal("OIL-105", Assert.Single(across.Findings).Code);
        UsedOilCheck beyond = UsedOilCheck.Against(UsedOilLimits.ProjectDefault).WithFuel(FuelDilution.Of(Kv(160), Kv(100), Kv(3)).Value);
        Assert.Equal("OIL-107", Assert.Single(beyond.Findings).Code);
        Assert.Equal(Severity.Stop, beyond.Worst);
        UsedOilCheck within = UsedOilCheck.Against(UsedOilLimits.ProjectDefault).WithFuel(FuelDilution.Of(Kv(160), Kv(155), Kv(3)).Value);
        Assert.Empty(within.Findings);
        Assert.Null(within.Worst);
    }

    [Fact]
    public void Of_LimitsOfTheMaker_AreUsedAndCited()
    {
        // Medium-speed engine maker, SAE 40, KV40 lower 108, alarm 180, reject 200 against a nominal 145: -26, +24, +38 %.
        UsedOilLimits maker = UsedOilLimits.Of(0.26, 0.26, 0.24, 0.38, 0.04, 0.04, 0.002, 0.005, Citation.Secondary("Medium-speed engine maker's oil guide"));
        Assert.Equal("OIL-103", Assert.Single(UsedOilCheck.Against(maker).WithViscosity(C(40), Kv(145), Kv(181)).Findings).Code);
        Assert.Equal("OIL-104", Assert.Single(UsedOilCheck.Against(maker).WithViscosity(C(40), Kv(145), Kv(201)).Findings).Code);
        Assert.Equal("OIL-102", Assert.Single(UsedOilCheck.Against(maker).WithViscosity(C(40), Kv(145), Kv(107)).Findings).Code);
        Assert.Empty(UsedOilCheck.Against(maker).WithViscosity(C(40), Kv(145), Kv(109)).Findings);
    }

    [Fact]
    public void Explain_ShowsChangeLimitTemperatureAndSource()
    {
        UsedOilCheck check = UsedOilCheck.Against(UsedOilLimits.ProjectDefault).WithViscosity(F(212), Kv(14.5), Kv(11.5)).WithMeasuredWater(0);
        string text = check.Explain(DisplayUnits.UsCustomary).ToString();
        Assert.Contains("-20.7 % at 212 °F, critical at -20.0 %", text, StringComparison.Ordinal);
        Assert.Contains("project choice", text, StringComparison.Ordinal);
        Assert.Equal(2, check.Measured.Count);
        Assert.Equal("Nothing was measured.", UsedOilCheck.Against(UsedOilLimits.ProjectDefault).Explain(DisplayUnits.Metric).Answer);
    }

    [Fact]
    public void BadInput_Throws()
    {
        UsedOilCheck check = UsedOilCheck.Against(UsedOilLimits.ProjectDefault);
        Assert.Throws<ArgumentNullException>("limits", () => UsedOilCheck.Against(null!));
        Assert.Throws<ArgumentNullException>("dilution", () => check.WithFuel(null!));
        Assert.Throws<ArgumentOutOfRangeException>("at", () => check.WithViscosity(default, Kv(100), Kv(90)));
        Assert.Throws<ArgumentOutOfRangeException>("newOil", () => check.WithViscosity(C(40), default, Kv(90)));
        Assert.Throws<ArgumentOutOfRangeException>("usedOil", () => check.WithViscosity(C(40), Kv(100), Kv(-2)));
        Assert.Throws<ArgumentOutOfRangeException>("fuelCriticalFraction", () => UsedOilLimits.Of(0.1, 0.2, 0.1, 0.2, 0.05, 0.04, 0.1, 0.1));
        foreach (double bad in NotNumbers.Concat([-0.1, 1.1]))
        {
            Assert.Throws<ArgumentOutOfRangeException>("waterFraction", () => check.WithMeasuredWater(bad));
            Assert.Throws<ArgumentOutOfRangeException>("fuelFraction", () => check.WithMeasuredFuel(bad));
            Assert.ThrowsAny<ArgumentException>(() => UsedOilLimits.Of(bad, 0.2, 0.1, 0.2, 0.04, 0.04, 0.1, 0.1));
        }
    }
}
