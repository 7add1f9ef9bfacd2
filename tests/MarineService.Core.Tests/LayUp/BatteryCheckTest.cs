using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.LayUp;
using MarineService.Core.Tests.Reference;
using MathNet.Numerics.Interpolation;
using UnitsNet;

namespace MarineService.Core.Tests.LayUp;

public sealed class BatteryCheckTest
{
    private static readonly FreezeDecision Low = FreezeDecision.ForLow(Temperature.FromDegreesCelsius(-20));

    private static BatteryCheck Density(double ratio) => BatteryCheck.Of(BatteryReading.OfDensity(ratio), Low);

    private static BatteryCheck Volts(double volts, double? rested = 24, BatteryKind kind = BatteryKind.FloodedLead) =>
        BatteryCheck.Of(BatteryReading.OfVoltage(kind, ElectricPotential.FromVolts(volts), rested), Low);

    [Law]
    public Property FreezingPoint_StrongerAcid_IsLower_AsMathNetHasIt()
    {
        IReadOnlyDictionary<string, string>[] rows = [.. ReferenceTable.Read("battery-freezing.csv").Reverse()];
        LinearSpline spline = LinearSpline.Interpolate(rows.Select(row => row.Number("specific_gravity")), rows.Select(row => row.Number("freezing_F")));
        return Prop.ForAll(Gen.Choose(10_500, 12_649).ToArbitrary(), tenThousandths =>
        {
            double weak = Density(tenThousandths / 10_000.0).FreezingPoint.Value.DegreesFahrenheit;
            double strong = Density((tenThousandths + 1) / 10_000.0).FreezingPoint.Value.DegreesFahrenheit;
            return (strong < weak && Math.Abs(spline.Interpolate(tenThousandths / 10_000.0) - weak) < 1e-9).Label($"{tenThousandths}: {weak}, {strong}");
        });
    }

    [Fact]
    public void FreezingPoint_PublishedRows_Agree()
    {
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("battery-freezing.csv"))
        {
            Assert.Equal(row.Number("freezing_F"), Density(row.Number("specific_gravity")).FreezingPoint.Value.DegreesFahrenheit, 1e-6);
        }
    }

    [Fact]
    public void Voltage_CustomaryFigures_FallIntoTheMakersBands()
    {
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("battery-charge.csv"))
        {
            BatteryCheck check = Volts(row.Number("customary_volts"));
            Assert.True(check.LeastDensityRatio.Value <= row.Number("most_gravity") && check.MostDensityRatio.Value >= row.Number("least_gravity"), row["charge_percent"]);
        }
    }

    [Theory]
    [InlineData(12.65, 0)]
    [InlineData(12.40, 0)]
    [InlineData(12.39, 1)]
    public void Voltage_UnderTheLimit_WantsCharge(double volts, int findings)
    {
        BatteryCheck check = Volts(volts);
        Assert.Equal(findings, check.Findings.Count);
        Assert.All(check.Findings, finding => Assert.Equal(LayUpRules.BatteryWantsCharge, finding.Rule));
    }

    [Fact]
    public void FlatBattery_FreezesAndWantsCharge()
    {
        BatteryCheck check = Volts(11.8);
        Assert.Equal([LayUpRules.BatteryFreezes, LayUpRules.BatteryWantsCharge], check.Findings.Select(finding => finding.Rule));
        Assert.InRange(check.FreezingPoint.Value.DegreesCelsius, -11, -8);
    }

    [Fact]
    public void NearlyWater_HasNoFreezingPointInTheTable_AndIsFound() =>
        Assert.Contains(Density(1.03).Findings, finding => finding.Rule == LayUpRules.BatteryNearlyWater);

    [Fact]
    public void StrongerThanTheTable_FreezesThereOrBelow()
    {
        Assert.Equal(-75, Density(1.29).FreezingPoint.Value.DegreesFahrenheit, 1e-6);
        Assert.Contains("or below", Density(1.29).ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(BatteryKind.AbsorbedGlassMat)]
    [InlineData(BatteryKind.Gel)]
    [InlineData(BatteryKind.LithiumIronPhosphate)]
    [InlineData(BatteryKind.NotStated)]
    public void OtherKinds_AreNotWorkedOut(BatteryKind kind)
    {
        BatteryCheck check = Volts(12.8, kind: kind);
        Assert.False(check.FreezingPoint.IsKnown);
        Assert.Contains(check.Findings, finding => finding.Rule == LayUpRules.BatteryNotKnown);
        Assert.Equal(kind == BatteryKind.LithiumIronPhosphate, check.Findings.Any(finding => finding.Rule == LayUpRules.LithiumInTheCold));
    }

    [Theory]
    [InlineData(null)]
    [InlineData(1.0)]
    public void VoltageWithoutARest_ProvesNothing(double? rested) => Assert.False(Volts(12.7, rested).FreezingPoint.IsKnown);

    [Fact]
    public void Readings_OutOfRange_AreRefusedByName()
    {
        Assert.Throws<ArgumentOutOfRangeException>("voltage", () => Volts(240));
        Assert.Throws<ArgumentOutOfRangeException>("densityRatio", () => Density(12.65));
    }
}
