using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Fluids;
using MarineService.Core.Tests.Reference;
using UnitsNet;

namespace MarineService.Core.Tests.Fluids;

public sealed class GlycolMixtureTest
{
    private static Temperature Celsius(double value) => Temperature.FromDegreesCelsius(value);

    private static GlycolKind Kind(string name) => name.StartsWith("ethylene", StringComparison.OrdinalIgnoreCase) ? GlycolKind.Ethylene : GlycolKind.Propylene;

    [Law]
    public Property FreezingPoint_StrongerMixture_IsLowerInsideTheTable() =>
        Prop.ForAll(
            Gen.Elements(GlycolKind.Ethylene, GlycolKind.Propylene).Zip(Gen.Choose(0, 569)).ToArbitrary(),
            t =>
            {
                (GlycolKind kind, int perMille) = t;
                double weak = GlycolMixture.OfVolume(kind, perMille / 1000.0).FreezingPoint.Value.DegreesCelsius;
                double strong = GlycolMixture.OfVolume(kind, (perMille + 1) / 1000.0).FreezingPoint.Value.DegreesCelsius;
                return (strong < weak).Label($"{kind} {perMille}: {weak}, {strong}");
            });

    [Law]
    public Property FreezingAt_ThenFreezingPoint_GivesTheTemperatureBack() =>
        Prop.ForAll(
            Gen.Elements(GlycolKind.Ethylene, GlycolKind.Propylene).Zip(Gen.Choose(-480, 0)).ToArbitrary(),
            t =>
            {
                (GlycolKind kind, int tenths) = t;
                GlycolMixture mixture = GlycolMixture.FreezingAt(kind, Celsius(tenths / 10.0)).Value;
                return (Math.Abs(mixture.FreezingPoint.Value.DegreesCelsius - tenths / 10.0) < 1e-9).Label($"{mixture}");
            });

    [Law]
    public Property DilutedBy_ThenFilledAsNeeded_ReachesTheWantedStrength() =>
        Prop.ForAll(
            Gen.Choose(1, 100).Zip(Gen.Choose(1, 590)).ToArbitrary(),
            t =>
            {
                (int waterTenths, int perMille) = t;
                GlycolMixture strong = GlycolMixture.OfVolume(GlycolKind.Propylene, 0.60);
                Volume water = Volume.FromLiters(waterTenths / 10.0);
                Volume fill = strong.FillNeeded(water, perMille / 1000.0).Value;
                return (Math.Abs(strong.DilutedBy(fill, water).VolumeFraction - perMille / 1000.0) < 1e-12).Label($"{water}, {fill}");
            });

    [Fact]
    public void FreezingPoint_EveryRowOfTheTable_Agrees()
    {
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = ReferenceTable.Read("glycol-freezing.csv");
        Assert.Equal(90, rows.Count);
        foreach (IReadOnlyDictionary<string, string> row in rows)
        {
            GlycolMixture mixture = GlycolMixture.OfVolume(Kind(row["fluid"]), row.Number("volume_percent_at_ashrae_basis") / 100);
            Assert.Equal(row.Number("freezing_point_C"), mixture.FreezingPoint.Value.DegreesCelsius, 1e-9);
            Assert.Equal(row.Number("mass_percent") / 100, mixture.MassFraction.Value, 1e-9);
            Assert.Equal(mixture.VolumeFraction, GlycolMixture.OfMass(Kind(row["fluid"]), row.Number("mass_percent") / 100).VolumeFraction, 1e-9);
        }
    }

    // GL-1 to GL-4: linear interpolation in the table, worked out independently.
    [Theory]
    [InlineData("GL-1", GlycolKind.Propylene, 0.30)]
    [InlineData("GL-2", GlycolKind.Ethylene, 0.30)]
    [InlineData("GL-3", GlycolKind.Propylene, 0.50)]
    [InlineData("GL-4", GlycolKind.Ethylene, 0.50)]
    public void FreezingPoint_CheckValue_Agrees(string id, GlycolKind kind, double fraction) =>
        Assert.Equal(CheckValue.Numbers(id)[0], GlycolMixture.OfVolume(kind, fraction).FreezingPoint.Value.DegreesCelsius, 0.001);

    [Fact]
    public void DilutedBy_TrappedWater_AgreesWithTheCheckValue()
    {
        // GL-5.
        GlycolMixture mixture = GlycolMixture.OfVolume(GlycolKind.Propylene, 0.60).DilutedBy(Volume.FromLiters(4), Volume.FromLiters(1));
        Assert.Equal(0.480, mixture.VolumeFraction, 1e-12);
        Assert.Equal(-30.873, mixture.FreezingPoint.Value.DegreesCelsius, 0.001);
    }

    [Fact]
    public void FillNeeded_ForATemperature_AgreesWithTheCheckValue()
    {
        // GL-6.
        double wanted = GlycolMixture.FreezingAt(GlycolKind.Propylene, Celsius(-20)).Value.VolumeFraction;
        Assert.Equal(0.3840, wanted, 0.00005);
        Volume fill = GlycolMixture.OfVolume(GlycolKind.Propylene, 0.60).FillNeeded(Volume.FromLiters(1.5), wanted).Value;
        Assert.Equal(2.6667, fill.Liters, 1e-4);
    }

    [Fact]
    public void FlushNeeded_PerfectMixing_AgreesWithTheCheckValue() =>
        // GL-7.
        Assert.Equal(7.1670, GlycolMixture.OfVolume(GlycolKind.Propylene, 0.60).FlushNeeded(Volume.FromLiters(4), 0.50).Value.Liters, 1e-4);

    [Fact]
    public void FreezingPoint_OtherHandbook_IsWithinTheMargin()
    {
        // GL-8: Lange's Handbook of Chemistry, 15th ed., table 5.13: 40 % propylene glycol by volume freezes at -20.6 °C.
        GlycolMixture mixture = GlycolMixture.OfVolume(GlycolKind.Propylene, 0.40);
        Assert.Equal(-20.6, mixture.FreezingPoint.Value.DegreesCelsius, 1.0);
        Assert.Equal(mixture.FreezingPoint.Value.DegreesCelsius + 3, mixture.ProtectsDownTo().Value.DegreesCelsius, 1e-9);
        Assert.Equal(
            mixture.FreezingPoint.Value.DegreesCelsius + 5,
            mixture.ProtectsDownTo(TemperatureDelta.FromKelvins(5)).Value.DegreesCelsius,
            1e-9);
    }

    [Fact]
    public void FreezingPoint_BeyondTheTable_IsNotKnown()
    {
        // Strong ethylene glycol freezes warmer again, so nothing may be extrapolated.
        GlycolMixture strong = GlycolMixture.OfVolume(GlycolKind.Ethylene, 0.579);
        Assert.False(strong.FreezingPoint.IsKnown);
        Assert.False(strong.MassFraction.IsKnown);
        Assert.False(strong.ProtectsDownTo().IsKnown);
        Assert.False(strong.DensityAt(Celsius(15)).IsKnown);
        Assert.Contains("not known", strong.Explain(DisplayUnits.Metric).Answer, StringComparison.Ordinal);
        Assert.False(GlycolMixture.FreezingAt(GlycolKind.Ethylene, Celsius(-49)).IsKnown);
    }

    [Fact]
    public void DensityAt_MelindersTable_Agrees()
    {
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("glycol-density.csv"))
        {
            GlycolMixture mixture = GlycolMixture.OfMass(Kind(row["kind"]), row.Number("mass_percent") / 100);
            double celsius = Math.Max(row.Number("celsius"), mixture.FreezingPoint.Value.DegreesCelsius);
            double density = GlycolTable.Of(mixture.Kind).Density.KilogramsPerCubicMeter(row.Number("mass_percent"), row.Number("celsius"));
            Assert.Equal(row.Number("fit"), density, 0.00001);
            Assert.Equal(row.Number("density"), density, 1.6);
            Assert.Equal(density, mixture.DensityAt(Celsius(celsius)).Value.KilogramsPerCubicMeter, 1.0);
        }
    }

    [Fact]
    public void DensityAt_HotCoolantIceOrWeakPropylene_IsNotKnown()
    {
        Assert.False(GlycolMixture.OfVolume(GlycolKind.Ethylene, 0.5).DensityAt(Celsius(80)).IsKnown);
        Assert.False(GlycolMixture.OfVolume(GlycolKind.Ethylene, 0.3).DensityAt(Celsius(-20)).IsKnown);
        Assert.False(GlycolMixture.OfVolume(GlycolKind.Propylene, 0.1).DensityAt(Celsius(15)).IsKnown);
    }

    [Fact]
    public void Brought_WarmedMixture_Expands()
    {
        // By the two rows of glycol-density.csv for 31 % ethylene glycol by mass: 1042.10 and 1030.57 kg/m³.
        Volume warm = GlycolMixture.OfMass(GlycolKind.Ethylene, 0.31).Brought(Volume.FromLiters(10), Celsius(15), Celsius(40)).Value;
        Assert.Equal(10 * 1042.100545 / 1030.571542, warm.Liters, 0.005);
        Assert.False(GlycolMixture.OfMass(GlycolKind.Ethylene, 0.31).Brought(Volume.FromLiters(10), Celsius(15), Celsius(90)).IsKnown);
    }

    [Fact]
    public void Water_HandbookFigures_Agree()
    {
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("water-density.csv"))
        {
            Assert.Equal(row.Number("density"), Water.DensityAt(Celsius(row.Number("celsius"))).Value.KilogramsPerCubicMeter, 0.02);
            Assert.Equal(
                row.Number("density"),
                GlycolMixture.OfVolume(GlycolKind.Propylene, 0).DensityAt(Celsius(row.Number("celsius"))).Value.KilogramsPerCubicMeter,
                0.02);
        }

        Assert.False(Water.DensityAt(Celsius(-0.1)).IsKnown);
        Assert.False(Water.DensityAt(Celsius(100.1)).IsKnown);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.NegativeInfinity)]
    [InlineData(-0.01)]
    [InlineData(1.01)]
    public void OfVolume_FractionOutsideItsRange_IsRefused(double fraction)
    {
        Assert.Equal("volumeFraction", Assert.Throws<ArgumentOutOfRangeException>(() => GlycolMixture.OfVolume(GlycolKind.Ethylene, fraction)).ParamName);
        Assert.Equal("massFraction", Assert.Throws<ArgumentOutOfRangeException>(() => GlycolMixture.OfMass(GlycolKind.Ethylene, fraction)).ParamName);
        GlycolMixture mixture = GlycolMixture.OfVolume(GlycolKind.Ethylene, 0.5);
        Assert.Throws<ArgumentOutOfRangeException>(() => mixture.FillNeeded(Volume.FromLiters(1), fraction));
        Assert.Throws<ArgumentOutOfRangeException>(() => mixture.FlushNeeded(Volume.FromLiters(1), fraction));
    }

    [Fact]
    public void Mixture_OtherBadInput_IsRefusedByName()
    {
        GlycolMixture mixture = GlycolMixture.OfVolume(GlycolKind.Ethylene, 0.5);
        Assert.Equal("kind", Assert.Throws<ArgumentOutOfRangeException>(() => GlycolMixture.OfVolume((GlycolKind)7, 0.5)).ParamName);
        Assert.Equal("own", Assert.Throws<ArgumentOutOfRangeException>(() => mixture.DilutedBy(Volume.Zero, Volume.FromLiters(1))).ParamName);
        Assert.Equal("water", Assert.Throws<ArgumentOutOfRangeException>(() => mixture.DilutedBy(Volume.FromLiters(1), Volume.FromLiters(-1))).ParamName);
        Assert.Equal("circuit", Assert.Throws<ArgumentOutOfRangeException>(() => mixture.FlushNeeded(Volume.Zero, 0.3)).ParamName);
        Assert.Equal("temperature", Assert.Throws<ArgumentOutOfRangeException>(() => mixture.DensityAt(default)).ParamName);
        Assert.Equal("temperature", Assert.Throws<ArgumentOutOfRangeException>(() => Water.DensityAt(default)).ParamName);
        Assert.Equal("margin", Assert.Throws<ArgumentOutOfRangeException>(() => mixture.ProtectsDownTo(TemperatureDelta.FromKelvins(-1))).ParamName);
        Assert.Equal("freezingPoint", Assert.Throws<ArgumentOutOfRangeException>(
            () => GlycolMixture.FreezingAt(GlycolKind.Ethylene, Celsius(1))).ParamName);
        Assert.False(mixture.FillNeeded(Volume.FromLiters(1), 0.5).IsKnown);
        Assert.False(mixture.FlushNeeded(Volume.FromLiters(1), 0.6).IsKnown);
    }
}
