using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Fluids;
using MarineService.Core.LayUp;
using MarineService.Core.Tests.Reference;
using MathNet.Numerics.Interpolation;
using UnitsNet;

namespace MarineService.Core.Tests.LayUp;

public sealed class AntifreezeFillTest
{
    private static readonly Antifreeze ReadyMixed = Antifreeze.Of("winter mix", AntifreezeBase.PropyleneGlycol, 0.50, isReadyMixed: true);
    private static readonly Antifreeze Concentrate = Antifreeze.Of("concentrate", AntifreezeBase.PropyleneGlycol, 0.95);

    private static FreezeDecision Low(double celsius) => FreezeDecision.ForLow(Temperature.FromDegreesCelsius(celsius));

    private static RawWaterSide Side(double circuit, double trapped) =>
        RawWaterSide.Of(LowPoint.Of("block", LowPointKind.EngineBlock, 2, trapped: Volume.FromLiters(trapped))).WithCircuit(Volume.FromLiters(circuit));

    private static double Freezing(AntifreezeFill fill, double passed) => fill.After(Volume.FromLiters(passed)).Value.FreezingPoint.Value.DegreesCelsius;

    // Tenths of a litre: a circuit, what stays in it, what goes in.
    private static Arbitrary<(int Circuit, int Trapped, int Passed)> Cases { get; } =
        (from circuit in Gen.Choose(10, 400) from trapped in Gen.Choose(0, circuit) from passed in Gen.Choose(1, 1200) select (circuit, trapped, passed)).ToArbitrary();

    [Law]
    public Property After_MoreTrappedWater_NeverFreezesLower() =>
        Prop.ForAll(Cases, t =>
        {
            double less = Freezing(AntifreezeFill.Of(ReadyMixed, Side(t.Circuit / 10.0, Math.Max(0, t.Trapped - 1) / 10.0), Low(-20)), t.Passed / 10.0);
            double more = Freezing(AntifreezeFill.Of(ReadyMixed, Side(t.Circuit / 10.0, t.Trapped / 10.0), Low(-20)), t.Passed / 10.0);
            return (more >= less - 1e-9).Label($"{t}: {less}, {more}");
        });

    [Law]
    public Property After_MoreAntifreeze_NeverFreezesWarmer() =>
        Prop.ForAll(Cases, t =>
        {
            AntifreezeFill fill = AntifreezeFill.Of(ReadyMixed, Side(t.Circuit / 10.0, t.Trapped / 10.0), Low(-20));
            return (Freezing(fill, t.Passed / 10.0) <= Freezing(fill, (t.Passed - 1) / 10.0) + 1e-9).Label($"{t}");
        });

    /// <summary>Second method: pour a five-thousandth at a time, let it mix, let the surplus run out.</summary>
    [Law(MaxTest = 40)]
    public Property FractionAfter_SmallSteps_ComeToTheSame() =>
        Prop.ForAll(Cases, t =>
        {
            const int steps = 5000;
            (double circuit, double trapped, double step) = (t.Circuit / 10.0, t.Trapped / 10.0, t.Passed / 10.0 / steps);
            double glycol = 0;
            double inside = trapped;
            for (int i = 0; i < steps; i++)
            {
                glycol += 0.5 * step;
                inside += step;
                double surplus = Math.Max(0, inside - circuit);
                glycol -= surplus * glycol / inside;
                inside -= surplus;
            }

            double closed = AntifreezeMath.FractionAfter(0.5, circuit, trapped, t.Passed / 10.0);
            return (Math.Abs(glycol / inside - closed) < 0.005 * 0.5).Label($"{t}: {glycol / inside}, {closed}");
        });

    [Law]
    public Property LitersFor_ThenFractionAfter_GivesTheWantedStrength_OrFillsOnce() =>
        Prop.ForAll(Cases.Generator.Zip(Gen.Choose(1, 499)).ToArbitrary(), t =>
        {
            ((int circuit, int trapped, int _), int perMille) = t;
            double liters = AntifreezeMath.LitersFor(0.5, perMille / 1000.0, circuit / 10.0, trapped / 10.0);
            double reached = AntifreezeMath.FractionAfter(0.5, circuit / 10.0, trapped / 10.0, liters);
            bool fillsOnce = Math.Abs(liters - (circuit - trapped) / 10.0) < 1e-9;
            return (fillsOnce ? reached >= perMille / 1000.0 - 1e-9 : Math.Abs(reached - perMille / 1000.0) < 1e-9).Label($"{t}: {liters} L, {reached}");
        });

    [Fact]
    public void After_WorkedMixes_Agree()
    {
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = ReferenceTable.Read("antifreeze-mixing.csv");
        Assert.Equal(5, rows.Count);
        foreach (IReadOnlyDictionary<string, string> row in rows)
        {
            AntifreezeFill fill = AntifreezeFill.Of(ReadyMixed, Side(row.Number("circuit"), row.Number("trapped")), Low(-20));
            GlycolMixture mixture = fill.After(Volume.FromLiters(row.Number("passed"))).Value;
            Assert.Equal(row.Number("percent"), 100 * mixture.VolumeFraction, 0.0501);
            Assert.Equal(row.Number("freezing_C"), mixture.FreezingPoint.Value.DegreesCelsius, 0.1);
        }
    }

    [Fact]
    public void LitersFor_FortyPercentAtTheOutlet_AgreesWithTheWorkedCase() =>
        // Worked out independently: 9 L system, 50 % fluid, 40 % wanted: 14.5 L.
        Assert.Equal(14.5, AntifreezeMath.LitersFor(0.5, 0.4, 9, 9), 0.05);

    [Fact]
    public void Wanted_PublishedNeeds_AndMathNetAgree()
    {
        IReadOnlyDictionary<string, string>[] table = [.. ReferenceTable.Read("glycol-freezing.csv").Where(row => row["fluid"] == "propylene glycol")];
        LinearSpline spline = LinearSpline.Interpolate(
            table.Select(row => -row.Number("freezing_point_C")), table.Select(row => row.Number("volume_percent_at_ashrae_basis")));
        LayUpLimits noMargin = LayUpLimits.Default.WithFrost(TemperatureDelta.FromKelvins(0), TemperatureDelta.FromKelvins(0));
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("propylene-needed.csv"))
        {
            double celsius = row.Number("freezing_C");
            double percent = 100 * AntifreezeFill.Of(ReadyMixed, Side(9, 0), Low(celsius), noMargin).Wanted.Value.VolumeFraction;
            Assert.Equal(row.Number("percent"), percent, 0.06);
            Assert.Equal(spline.Interpolate(-celsius), percent, 1e-9);

            // The plan's own need is 3 K stronger.
            double withMargin = 100 * AntifreezeFill.Of(ReadyMixed, Side(9, 0), Low(celsius)).Wanted.Value.VolumeFraction;
            Assert.Equal(spline.Interpolate(3 - celsius), withMargin, 1e-9);
        }
    }

    [Fact]
    public void FreezingPoint_TwoSources_DifferByLessThanTheMargin()
    {
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("propylene-handbook.csv"))
        {
            double ashrae = GlycolMixture.OfVolume(GlycolKind.Propylene, row.Number("percent") / 100).FreezingPoint.Value.DegreesCelsius;
            Assert.InRange(row.Number("freezing_C") - ashrae, 0, 1.4);
        }
    }

    [Fact]
    public void Concentrate_IsMixedStronger_ByWhatTrappedWaterTakes()
    {
        // 9 L circuit, 1.5 L trapped, -20 °C: 41.418 % wanted (table rows 40.6 and 41.6 %), so 41.418 · 9/7.5 = 49.70 % goes in.
        AntifreezeFill fill = AntifreezeFill.Of(Concentrate, Side(9, 1.5), Low(-20));
        Assert.Equal(0.41418, fill.Wanted.Value.VolumeFraction, 0.00001);
        Assert.Equal(0.49702, fill.Strength.Value.VolumeFraction, 0.00001);
        Assert.Equal(7.5 * 0.49702 / 0.95, fill.Fill.Value.Product.Liters, 0.001);
        Assert.Equal(7.5, fill.Fill.Value.Product.Liters + fill.Fill.Value.Water.Liters, 1e-9);
        Assert.Equal(7.5, fill.PumpThrough.Value.Liters, 1e-6);
        Assert.Equal(-23, Freezing(fill, 7.5), 1e-6);
        Assert.Empty(fill.Findings);
    }

    [Fact]
    public void ReadyMixed_IsNeverThinned_AndTooMuchTrappedWaterIsFound()
    {
        AntifreezeFill fill = AntifreezeFill.Of(ReadyMixed, Side(9, 3), Low(-20));
        Assert.Equal(0, fill.Fill.Value.Water.Liters);
        Finding finding = Assert.Single(fill.Findings);
        Assert.Equal(LayUpRules.ThinnedTooMuch, finding.Rule);
        Assert.Equal(1.0 / 3, finding["filled"]!.Number!.Value, 1e-9);
        Assert.Equal(-23, Freezing(fill, fill.PumpThrough.Value.Liters), 1e-6);
        Assert.True(fill.PumpThrough.Value.Liters > 6);
    }

    [Fact]
    public void TooWeakProduct_IsFound_AndNoAmountOfItIsEnough()
    {
        AntifreezeFill fill = AntifreezeFill.Of(Antifreeze.Of("pink", AntifreezeBase.PropyleneGlycol, 0.30, isReadyMixed: true).WithBurstRating(Temperature.FromDegreesCelsius(-45)), Side(9, 1), Low(-20));
        Assert.Equal([LayUpRules.BurstRating, LayUpRules.TooWeakAsDelivered], fill.Findings.Select(finding => finding.Rule));
        Assert.False(fill.PumpThrough.IsKnown);

        // A burst rating moves nothing: with it and without it every answer is the same.
        AntifreezeFill without = AntifreezeFill.Of(Antifreeze.Of("pink", AntifreezeBase.PropyleneGlycol, 0.30, isReadyMixed: true), Side(9, 1), Low(-20));
        Assert.Equal(Freezing(without, 8), Freezing(fill, 8));
    }

    [Theory]
    [InlineData(AntifreezeBase.Ethanol, "LAYUP-021")]
    [InlineData(AntifreezeBase.PropyleneGlycolWithEthanol, "LAYUP-021")]
    [InlineData(AntifreezeBase.NotStated, "LAYUP-022")]
    public void WithoutAKnownGlycol_NothingIsWorkedOut(AntifreezeBase madeOf, string code)
    {
        AntifreezeFill fill = AntifreezeFill.Of(Antifreeze.Of("x", madeOf, 0.5), Side(9, 1), Low(-20));
        Assert.Equal(code, Assert.Single(fill.Findings).Code);
        Assert.False(fill.Wanted.IsKnown);
        Assert.False(fill.Fill.IsKnown);
        Assert.False(fill.After(Volume.FromLiters(9)).IsKnown);
    }

    [Fact]
    public void EthyleneGlycol_OnTheRawSide_IsFound() =>
        Assert.Contains(AntifreezeFill.Of(Antifreeze.Of("green", AntifreezeBase.EthyleneGlycol, 0.5), Side(9, 0), Low(-20)).Findings, finding => finding.Rule == LayUpRules.EthyleneOnRawSide);

    [Fact]
    public void WithoutCircuitOrTrappedWater_AmountsAreNotKnown_AndSaySo()
    {
        RawWaterSide noVolume = RawWaterSide.Of(LowPoint.Of("muffler", LowPointKind.WaterLiftMuffler, 0));
        AntifreezeFill fill = AntifreezeFill.Of(ReadyMixed, noVolume, Low(-20));
        Assert.False(fill.Fill.IsKnown);
        Assert.Contains("How much the whole raw-water circuit holds.", fill.Fill.Missing);
        Assert.Contains(fill.Fill.Missing, missing => missing.Contains("water-lift muffler", StringComparison.Ordinal));
        Assert.True(fill.Wanted.IsKnown);
    }

    [Fact]
    public void BeyondTheTable_NothingIsExtrapolated()
    {
        AntifreezeFill fill = AntifreezeFill.Of(Concentrate, Side(9, 1), Low(-55));
        Assert.False(fill.Wanted.IsKnown);
        Assert.False(fill.Fill.IsKnown);

        // Half of the circuit stays full of water: a fill would have to be stronger than any table.
        AntifreezeFill half = AntifreezeFill.Of(Concentrate, Side(9, 4.5), Low(-20));
        Assert.Equal(0.60, half.Strength.Value.VolumeFraction, 1e-12);
        Assert.Contains(half.Findings, finding => finding.Rule == LayUpRules.ThinnedTooMuch);
        Assert.Equal(-23, Freezing(half, half.PumpThrough.Value.Liters), 1e-6);
    }

    [Fact]
    public void BadLabels_AreRefusedByName()
    {
        Assert.Throws<ArgumentOutOfRangeException>("glycolVolumeFraction", () => Antifreeze.Of("x", AntifreezeBase.PropyleneGlycol, 1.01));
        Assert.Throws<ArgumentOutOfRangeException>("glycolVolumeFraction", () => Antifreeze.Of("x", AntifreezeBase.PropyleneGlycol, 0));
        Assert.Throws<ArgumentOutOfRangeException>("circuit", () => Side(0, 0));
        Assert.Throws<ArgumentOutOfRangeException>("circuit", () => Side(2, 3));
        Assert.Throws<ArgumentOutOfRangeException>("trapped", () => LowPoint.Of("a", LowPointKind.Hose, 1, Volume.FromLiters(1), Volume.FromLiters(2)));
        Assert.Throws<ArgumentException>("lowPoints", () => RawWaterSide.Of(LowPoint.Of("a", LowPointKind.Hose, 1), LowPoint.Of("a", LowPointKind.Strainer, 1)));
    }
}
