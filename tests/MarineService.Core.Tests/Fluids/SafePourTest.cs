using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Fluids;
using MathNet.Numerics.Distributions;
using UnitsNet;
using static MarineService.Core.Tests.Fluids.Changes;

namespace MarineService.Core.Tests.Fluids;

public sealed class SafePourTest
{
    private static OilChange Drained(Sump sump, double p0, double liters) =>
        OilChange.Begin(sump, DipstickReading.OfRange(p0)).Drained(At15(liters)).FilterChanged(oldEmptiedIntoMeasure: true);

    [Law]
    public Property NextSafePour_SmallerRisk_IsNeverMore() =>
        Prop.ForAll(
            Gen.Choose(1, 250).Zip(Gen.Choose(1, 250)).ToArbitrary(),
            t =>
            {
                (int a, int b) = t;
                OilChange change = Drained(SixLiters, 0.6, 5.5).Poured(At15(4.4)).Ran();
                double careful = change.NextSafePour(Math.Min(a, b) / 500.0).Value.Volume.Liters;
                double bold = change.NextSafePour(Math.Max(a, b) / 500.0).Value.Volume.Liters;
                return (careful <= bold + 1e-12).Label($"{careful} {bold}");
            });

    [Law]
    public Property NextSafePour_WaterSeen_IsNothingFromThenOn() =>
        Prop.ForAll(
            Gen.Choose(0, 7).Zip(Gen.Elements(OilAppearance.Milky, OilAppearance.WaterBelow)).ToArbitrary(),
            t =>
            {
                (int seenAfter, OilAppearance look) = t;
                Func<OilChange, OilChange>[] day =
                [
                    change => change.Drained(At15(5.5)), change => change.FilterChanged(oldEmptiedIntoMeasure: true),
                    change => change.Poured(At15(4.4)), change => change.Ran(), change => change.Settled(DipstickReading.OfRange(0.1)),
                    change => change.Looked(OilAppearance.Usual), change => change.DrawnOff(At15(0.2)),
                ];
                OilChange change = OilChange.BeginWithoutReading(SixLiters);
                bool held = true;
                for (int i = 0; i <= day.Length; i++)
                {
                    change = i == seenAfter ? change.Looked(look) : change;
                    held &= i >= seenAfter
                        ? change.NextSafePour() is { IsKnown: true, Value: { Volume.Liters: 0, DecidedBy: SafePourLimit.CauseNotFound, Cause.Code: "FLUID-016" } }
                        : change.NextSafePour() is not { IsKnown: true, Value.Cause: not null };
                    change = i < day.Length ? day[i](change) : change;
                }

                return held.Label($"{look} after {seenAfter}");
            });

    [Fact]
    public void NextSafePour_GainOutsideTheNoise_IsNothingBeforeItsCauseIsFound()
    {
        // Left at 0.5 of 1 L, found at 1.4: 0.9 L more, where 0.2 L are fine and two readings are good to some 0.15 L.
        OilChange gained = OilChange.Begin(SixLiters, DipstickReading.OfRange(1.4)).Since(PeriodSinceChange.From(DipstickReading.OfRange(0.5)))
            .Drained(At15(6)).FilterChanged(oldEmptiedIntoMeasure: true);
        SafePour pour = gained.NextSafePour().Value;
        Assert.Equal((0, SafePourLimit.CauseNotFound, "FLUID-028"), (pour.Volume.Liters, pour.DecidedBy, pour.Cause!.Code));
        Assert.Equal("Pour nothing before the cause is found.", pour.Explain(DisplayUnits.Metric).Answer);
        Assert.Contains(pour.Explain(DisplayUnits.Metric).Lines, line => line.Label == "by the account" && line.Text.Contains("FLUID-028", StringComparison.Ordinal));

        // A gain that the noise covers, or none, leaves the pour to the room.
        foreach ((double found, double doubt) in new[] { (0.85, 0.2), (0.65, 0.05), (0.5, 0.05), (0.1, 0.05) })
        {
            OilChange usual = OilChange.Begin(SixLiters, DipstickReading.OfRange(found, doubt)).Since(PeriodSinceChange.From(DipstickReading.OfRange(0.5)))
                .Drained(At15(5.2)).FilterChanged(oldEmptiedIntoMeasure: true);
            Assert.True(usual.NextSafePour().Value.Volume.Liters > 0, $"{found}");
            Assert.Null(usual.NextSafePour().Value.Cause);
        }
    }

    [Fact]
    public void NextSafePour_BelowTheAddMark_StillSaysHowMuch()
    {
        // Stop says: do not run. What mends it is a pour.
        OilChange low = Drained(SixLiters, 0.6, 5.5).Poured(At15(4)).Ran().Settled(DipstickReading.OfRange(-0.9));
        Assert.Equal(Severity.Stop, low.Balance().Severity);
        Assert.True(low.NextSafePour().Value.Volume.Liters > 0.4);
    }

    [Law]
    public Property LitersWithinRisk_Result_MeetsItsOwnEquation() =>
        Prop.ForAll(
            Gen.Choose(1, 600).Zip(Gen.Choose(0, 60)).Zip(Gen.Choose(0, 100)).Zip(Gen.Choose(0, 300)).ToArbitrary(),
            t =>
            {
                (((int room, int sigma), int share), int z) = t;
                (double m, double s, double r, double k) = (room / 100.0, sigma / 100.0, share / 1000.0, z / 100.0);
                double pour = SafePour.LitersWithinRisk(m, s * s, r, k);
                double reach = pour + k * Math.Sqrt(s * s + r * r * pour * pour);
                return (pour == 0 ? k * s >= m - 1e-9 : Math.Abs(reach - m) < 1e-9).Label($"{pour} {reach} {m}");
            });

    [Fact]
    public void DeviationsLeavingAbove_AnyShare_EqualsTheInverseNormal()
    {
        foreach (double share in new[] { 1e-6, 1e-4, 0.01, 0.025, 0.05, 0.1, 0.25, 0.4, 0.5 })
        {
            Assert.Equal(Normal.InvCDF(0, 1, 1 - share), FluidMath.DeviationsLeavingAbove(share), 1e-8);
            Assert.Equal(Normal.CDF(0, 1, 3 * share), FluidMath.NormalCdf(3 * share), 1e-12);
        }

        Assert.Equal(Normal.CDF(0, 1, -6.9), FluidMath.NormalCdf(-6.9), 1e-14);
    }

    [Fact]
    public void NextSafePour_FirstPour_IsAtMostThePlansShare()
    {
        // Exact figures: plan = 5.5 out + 0.4 below - 0.1 = 5.8 L; 85 % of it is 4.93 L.
        Sump exact = Sump.Holding(L(6), L(0.6), Dipstick.WithRange(L(1), Volume.Zero)).WithUncertainties(Volume.Zero, Volume.Zero)
            .WithResidual(DrainMethod.DrainPlug, Volume.Zero, L(10));
        OilChange change = OilChange.Begin(exact, DipstickReading.OfRange(0.6, 0), NoDoubtOfHeat).Drained(At15(5.5, 0)).FilterChanged(true);
        SafePour pour = change.NextSafePour().Value;
        Assert.Equal(4.93, pour.Volume.Liters, 1e-9);
        Assert.Equal(SafePourLimit.FirstPour, pour.DecidedBy);
        Assert.False(pour.IsAtTarget);

        // A primed filter counts as poured.
        Assert.Equal(4.93 - 0.4, change.FilterPrimed(At15(0.4, 0)).NextSafePour().Value.Volume.Liters, 1e-9);

        // Filter not emptied into the measure: the same plan from 4.9 L in the jug and 0.6 L lost.
        OilChange lost = OilChange.Begin(exact, DipstickReading.OfRange(0.6, 0), NoDoubtOfHeat).Drained(At15(4.9, 0)).FilterChanged(false);
        Assert.Equal(4.93, lost.NextSafePour().Value.Volume.Liters, 1e-9);
    }

    [Fact]
    public void NextSafePour_PrimedLargeFilter_NeverReachesTheWorkedOverfill()
    {
        // Service fill 4.0 L, prefill 0.9 L: 85 % of the plan on top of it would make 4.13 L (common practice, worked out independently).
        Sump sump = Sump.Holding(L(4.0), L(0.9), Dipstick.WithRange(L(1.0)));
        OilChange change = Drained(sump, 0.9, 3.9).FilterPrimed(At15(0.9));
        double total = 0.9 + change.NextSafePour().Value.Volume.Liters;
        Assert.True(total < 3.4, $"{total} L");
    }

    [Fact]
    public void NextSafePour_LaterPour_IsAtMostHalfTheRange()
    {
        OilChange change = Drained(SixLiters, 0.6, 5.5).Poured(At15(4.0)).Ran();
        SafePour pour = change.NextSafePour().Value;
        Assert.Equal(0.5, pour.Volume.Liters, 1e-12);
        Assert.Equal(SafePourLimit.LaterPour, pour.DecidedBy);
        // A top-up without a drain is a later pour too.
        Assert.Equal(0.5, OilChange.Begin(SixLiters, DipstickReading.OfRange(-0.2)).NextSafePour().Value.Volume.Liters, 1e-12);
    }

    [Fact]
    public void NextSafePour_NearFull_IsDecidedByTheRisk()
    {
        // Room 0.40 ± 0.05385 (reading 0.05 and 5 % of the range over 0.4 of it); jug 1.5 % and 0.1/√12 L.
        // 0.4 - 1.645·√(0.05385² + 0.02887² + (0.015·F)²) with F = 0.2994: √(0.0029 + 0.00083333 + 0.00002017) = 0.061267; 0.4 - 0.100775 = 0.2992.
        SafePour pour = OilChange.Begin(SixLiters, DipstickReading.OfRange(0.6)).NextSafePour().Value;
        Assert.Equal(0.2992, pour.Volume.Liters, 0.0002);
        Assert.Equal(SafePourLimit.OverfillRisk, pour.DecidedBy);
        Assert.StartsWith("Pour at most 0.30 L.", pour.Explain(DisplayUnits.Metric).Answer, StringComparison.Ordinal);
    }

    [Fact]
    public void NextSafePour_AboveFull_IsNothing()
    {
        SafePour pour = OilChange.Begin(SixLiters, DipstickReading.OfRange(1.2)).NextSafePour().Value;
        Assert.Equal(0, pour.Volume.Liters);
        Assert.Equal("Pour nothing.", pour.Explain(DisplayUnits.UsCustomary).Answer);
    }

    [Fact]
    public void NextSafePour_FilterNotSaid_IsNotKnown()
    {
        Answer<SafePour> next = OilChange.Begin(SixLiters, DipstickReading.OfRange(1)).Drained(At15(6)).NextSafePour();
        Assert.False(next.IsKnown);
        Assert.Contains("filter", next.Missing[0], StringComparison.Ordinal);
    }

    [Fact]
    public void NextSafePour_SafeAmount_IsNotBlamedForPassingFull()
    {
        OilChange change = Drained(SixLiters, 0.6, 5.5).Poured(At15(4.4)).Ran().Settled(DipstickReading.OfRange(0.5));
        int pours = 0;
        for (Volume next = change.NextSafePour().Value.Volume; next.Liters > 0; next = change.NextSafePour().Value.Volume)
        {
            change = change.Poured(MeasuringVessel.WorkshopJug.Read(next, C(15)));
            Assert.Empty(change.Findings);
            pours++;
        }

        Assert.True(pours > 0);
    }

    [Fact]
    public void NextSafePour_StickReadsFullAgainstTheAccount_IsNothing()
    {
        // By the sums there are two liters of room; the stick says full. Whatever is wrong, nothing more is poured.
        OilChange change = Drained(SixLiters, 1.0, 6.0).Poured(At15(4.0)).Ran().Settled(DipstickReading.OfRange(1.0));
        Assert.Equal(0, change.NextSafePour().Value.Volume.Liters);
        Assert.Contains("FLUID-024", change.Balance().Findings.Select(finding => finding.Code));
        // Drawing off makes room again by the stick.
        Assert.True(change.DrawnOff(At15(0.8)).NextSafePour().Value.Volume.Liters > 0.3);
    }

    [Fact]
    public void NextSafePour_TargetReached_SaysThatNoMoreIsNeeded()
    {
        OilChange change = Drained(SixLiters, 0.6, 5.5).Poured(At15(4.9)).Ran().Settled(DipstickReading.OfRange(0.95, 0.01));
        Assert.True(change.NextSafePour().Value.IsAtTarget);
        Assert.False(Drained(SixLiters, 0.6, 5.5).Poured(At15(4.9)).NextSafePour().Value.IsAtTarget);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-0.05)]
    [InlineData(0.51)]
    [InlineData(double.NaN)]
    public void NextSafePour_RiskOutsideItsRange_IsRefused(double risk) =>
        Assert.Equal("overfillRiskFraction", Assert.Throws<ArgumentOutOfRangeException>(
            () => OilChange.Begin(SixLiters, DipstickReading.OfRange(1)).NextSafePour(risk)).ParamName);
}
