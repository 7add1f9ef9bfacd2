using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Fluids;
using UnitsNet;
using static MarineService.Core.Tests.Fluids.Changes;
using Duration = NodaTime.Duration;

namespace MarineService.Core.Tests.Fluids;

public sealed class OilChangeTest
{
    private static readonly DipstickReading Full = DipstickReading.OfRange(1.0);

    private static OilChange Drained(double liters = 5.5) =>
        OilChange.Begin(SixLiters, DipstickReading.OfRange(0.6)).Drained(At15(liters)).FilterChanged(oldEmptiedIntoMeasure: true);

    private static double InEngine(OilChange change) => change.Estimate.Value.InEngine.Liters;

    private static double Room(OilChange change) => change.Estimate.Value.RoomToFull.Liters;

    // Laws.
    [Law]
    public Property InEngine_PoursRunsAndDrawingsOff_ConserveVolume() =>
        Prop.ForAll(
            Gen.Choose(100, 400).ListOf(6).ToArbitrary(),
            t =>
            {
                double[] liters = [.. t.Select(cl => cl / 100.0)];
                OilChange start = Drained();
                OilChange change = start.FilterPrimed(At15(0.1));
                double expected = InEngine(start) + 0.1;
                foreach (double amount in liters)
                {
                    change = change.Poured(At15(amount)).Ran().DrawnOff(At15(amount / 4));
                    expected += amount - amount / 4;
                }

                return (Math.Abs(InEngine(change) - expected) < 1e-12 * 100).Label($"{InEngine(change)} {expected}");
            });

    [Law]
    public Property Estimate_OrderOfPours_DoesNotMatter() =>
        Prop.ForAll(
            Gen.Choose(1, 300).Three().ToArbitrary(),
            t =>
            {
                (int a, int b, int c) = t;
                OilChange one = Drained().Poured(At15(a / 100.0)).Poured(At15(b / 100.0)).Poured(At15(c / 100.0)).Ran();
                OilChange other = Drained().Poured(At15(c / 100.0)).Poured(At15(a / 100.0)).Ran().Poured(At15(b / 100.0));
                OilEstimate first = one.Estimate.Value;
                OilEstimate second = other.Estimate.Value;
                return (Math.Abs(first.RoomToFull.Liters - second.RoomToFull.Liters) < 1e-10
                    && Math.Abs(first.RoomStandardUncertainty.Liters - second.RoomStandardUncertainty.Liters) < 1e-10)
                    .Label($"{first} {second}");
            });

    [Law]
    public Property Estimate_ABetterMeasure_NeverWidensIt() =>
        Prop.ForAll(
            Gen.Choose(1, 60).ListOf(5).Zip(Gen.Choose(440, 640)).Zip(Gen.Choose(0, 4)).ToArbitrary(),
            t =>
            {
                ((IEnumerable<int> hundredths, int drained), int better) = t;
                double[] sigma = [.. hundredths.Select(value => value / 100.0)];
                OilEstimate rough = Run(sigma, drained / 100.0);
                sigma[better] /= 2;
                OilEstimate fine = Run(sigma, drained / 100.0);
                return (fine.RoomStandardUncertainty.Liters <= rough.RoomStandardUncertainty.Liters + 1e-12
                    && fine.InEngineStandardUncertainty.Liters <= rough.InEngineStandardUncertainty.Liters + 1e-12
                    && fine.InFilterStandardUncertainty.Liters <= rough.InFilterStandardUncertainty.Liters + 1e-12)
                    .Label($"{rough.RoomStandardUncertainty.Liters} {fine.RoomStandardUncertainty.Liters}");

                static OilEstimate Run(double[] s, double d) => OilChange.Begin(SixLiters, DipstickReading.OfRange(0.6, s[0]))
                    .Drained(At15(d, s[1])).FilterChanged(true).Poured(At15(4.8, s[2]))
                    .Settled(DipstickReading.OfRange(0.4, s[3])).Ran().Settled(DipstickReading.OfRange(-0.2, s[4])).Estimate.Value;
            });

    [Law]
    public Property Estimate_UnitSystem_ChangesNothing() =>
        Prop.ForAll(
            Gen.Choose(400, 650).Zip(Gen.Choose(0, 90)).ToArbitrary(),
            t =>
            {
                (int centiliters, int celsius) = t;
                double liters = centiliters / 100.0;
                MeasuredVolume metric = MeasuredVolume.Of(Volume.FromLiters(liters), Temperature.FromDegreesCelsius(celsius));
                MeasuredVolume us = MeasuredVolume.Of(
                    Volume.FromUsQuarts(Volume.FromLiters(liters).UsQuarts),
                    Temperature.FromDegreesFahrenheit(Temperature.FromDegreesCelsius(celsius).DegreesFahrenheit));
                Sump usSump = Sump.Holding(
                    Volume.FromUsQuarts(L(6.0).UsQuarts), Volume.FromUsQuarts(L(0.6).UsQuarts), Dipstick.WithRange(Volume.FromUsQuarts(L(1.0).UsQuarts)));
                OilChange one = OilChange.Begin(SixLiters, DipstickReading.OfRange(0.6)).Drained(metric).FilterChanged(true);
                OilChange other = OilChange.Begin(usSump, DipstickReading.OfRange(0.6)).Drained(us).FilterChanged(true);
                return (Math.Abs(Room(one) - Room(other)) < 1e-9
                    && Math.Abs(one.NextSafePour().Value.Volume.Liters - other.NextSafePour().Value.Volume.Liters) < 1e-9
                    && one.Balance().Severity == other.Balance().Severity)
                    .Label($"{Room(one)} {Room(other)}");
            });

    [Law]
    public Property Reading_TiltAtTheCenter_ChangesNothing() =>
        Prop.ForAll(
            Gen.Choose(-40, 40).Zip(Gen.Choose(-40, 40)).ToArbitrary(),
            t =>
            {
                (int pitch, int roll) = t;
                SumpShape shape = SumpShape.Rectangular(Length.FromMeters(0.5), Length.FromMeters(0.25));
                Sump sump = SixLiters.With(SixLiters.Dipstick.InSump(shape));
                DipstickReading level = DipstickReading.OfRange(0.6);
                DipstickReading tilted = level.Tilted(Angle.FromDegrees(pitch / 10.0), Angle.FromDegrees(roll / 10.0));
                return (Room(OilChange.Begin(sump, level)) == Room(OilChange.Begin(sump, tilted))).Label($"{pitch} {roll}");
            });

    // The account, step by step.
    [Fact]
    public void Estimate_AfterEachEvent_IsWhatThePencilSays()
    {
        // Exact book, exact readings, exact jug; then each step is a plain sum.
        Sump exact = Sump.Holding(L(6), L(0.6), Dipstick.WithRange(L(1), Volume.Zero)).WithUncertainties(Volume.Zero, Volume.Zero)
            .WithResidual(DrainMethod.DrainPlug, Volume.Zero, L(10));
        OilChange change = OilChange.Begin(exact, DipstickReading.OfRange(0.6, 0), NoDoubtOfHeat);
        Assert.Equal(5.6, InEngine(change), 1e-9);
        change = change.Drained(At15(5.5, 0));
        Assert.Equal(0.1, InEngine(change), 1e-9);
        change = change.FilterChanged(true);
        Assert.Equal(5.3, Room(change), 1e-9);
        change = change.FilterPrimed(At15(0.2, 0));
        Assert.Equal(0.3, InEngine(change), 1e-9);
        Assert.Equal(5.3, Room(change), 1e-9);
        change = change.Poured(At15(4.6, 0));
        Assert.Equal(0.7, Room(change), 1e-9);
        change = change.Ran();
        Assert.Equal(1.1, Room(change), 1e-9);
        Assert.Equal(0.6, change.Estimate.Value.InFilter.Liters, 1e-9);
        Assert.Equal(4.9, InEngine(change), 1e-9);
        Assert.Equal(-0.1, change.Estimate.Value.RangeFraction, 1e-9);
        Assert.Equal(6, change.Events.Count);
        Assert.Equal([OilChangeStep.Begun, OilChangeStep.Drained, OilChangeStep.FilterChanged, OilChangeStep.FilterPrimed, OilChangeStep.Poured, OilChangeStep.Ran],
            change.Events.Select(step => step.Step));
    }

    [Fact]
    public void Estimate_DrainAgreesWithTheBook_WeighsBoth()
    {
        // Level -0.4 ± 0.0539 (reading 0.05, range 0.05·0.4), drain 5.5 ± 0.0514, filter 0.6 ± 0.06: sums say 5.3 ± 0.0957.
        // The book says 0 ± 0.05 in an empty sump of 6.0 ± 0.06 less the filter: 5.4 ± 0.0985. Room lies between, surer than either.
        OilChange change = OilChange.Begin(SixLiters, DipstickReading.OfRange(0.6)).Drained(At15(5.5, 0.05)).FilterChanged(true);
        OilEstimate estimate = change.Estimate.Value;
        Assert.InRange(estimate.RoomToFull.Liters, 5.301, 5.399);
        Assert.True(estimate.RoomStandardUncertainty.Liters < 0.0950);
    }

    [Fact]
    public void Estimate_DrainShortBeyondTheBand_BelievesTheOilIsStillInside()
    {
        OilChange change = OilChange.Begin(SixLiters, Full).Drained(At15(4.9)).FilterChanged(true);
        Assert.Equal(4.9 - 0.6, Room(change), 1e-9);
    }

    [Fact]
    public void Estimate_DrainSurplusBeyondTheBand_BelievesTheBook()
    {
        // 6.6 L out of 6.0 L: by the sums the sump would hold less than nothing. The book's empty sump leaves less room.
        OilChange change = OilChange.Begin(SixLiters, Full).Drained(At15(6.6)).FilterChanged(true);
        Assert.Equal(5.4, Room(change), 1e-9);
        Assert.Contains("leaves less room", change.Estimate.Value.Explain(DisplayUnits.Metric).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Estimate_WithoutAReading_IsKnownOnceTheSumpIsDrained()
    {
        OilChange change = OilChange.BeginWithoutReading(SixLiters);
        Assert.False(change.Estimate.IsKnown);
        Assert.False(change.NextSafePour().IsKnown);
        change = change.Drained(At15(5.0)).FilterChanged(true);
        Assert.Equal(5.4, Room(change), 1e-9);
        Assert.True(change.NextSafePour().IsKnown);
        Assert.False(OilChange.BeginWithoutReading(SixLiters).Drained(At15(5), DrainMethod.Extractor).FilterChanged(true).Estimate.IsKnown);
        Assert.Equal(0.4, Room(OilChange.BeginWithoutReading(SixLiters).Settled(DipstickReading.OfRange(0.6))), 1e-9);
    }

    [Fact]
    public void Estimate_DrainInTwoGoes_CountsTheBetterWay()
    {
        Sump sump = SixLiters.DrainedOnlyByExtractor(L(0.5));
        OilChange extractor = OilChange.Begin(sump, Full).Drained(At15(5.5), DrainMethod.Extractor);
        OilChange both = extractor.Drained(At15(0.5)).FilterChanged(true);
        Assert.Equal(0, both.Balance().Drain.Value.Difference.Liters, 1e-9);
        Assert.False(both.Balance().CountsProRata);
        Assert.True(extractor.FilterChanged(true).Balance().CountsProRata);
        Assert.Equal(0, extractor.FilterChanged(true).Balance().Drain.Value.Difference.Liters, 1e-9);
    }

    [Fact]
    public void Reading_HotOilOnAColdStick_StandsHigher()
    {
        // Sump of 5.4 L: from 15 to 80 °C it grows by 1/0.95305 - 1, 4.9 %; a cold stick reads it higher by that.
        double factor = OilDensity.Typical.VolumeCorrectionRatio(80);
        OilChange hot = OilChange.Begin(SixLiters, Full.WithOilAt(C(80)));
        Assert.Equal(5.4 * (1 - factor), Room(hot), 1e-9);
        // A stick that is marked for hot oil says the truth when hot, and too little when cold.
        Sump hotStick = SixLiters.With(SixLiters.Dipstick.MarkedForHotOil(C(80)));
        Assert.Equal(0, Room(OilChange.Begin(hotStick, Full.WithOilAt(C(80)))), 1e-9);
        Assert.Equal(-5.4 * (1 / factor - 1), Room(OilChange.Begin(hotStick, Full.WithOilAt(C(15)))), 1e-9);
        Assert.Equal(0, Room(OilChange.Begin(hotStick, Full)), 1e-9);
    }

    [Fact]
    public void Reading_KnownTilt_IsCorrected()
    {
        // 1.0° stern down, stick 100 mm aft, 0.125 m²: 100·tan 1° = 1.7455 mm, 0.21819 L too much.
        SumpShape shape = SumpShape.Rectangular(Length.FromMeters(0.5), Length.FromMeters(0.25)).WithStickAt(Length.FromMeters(0.1), Length.Zero);
        Sump sump = SixLiters.With(SixLiters.Dipstick.InSump(shape));
        OilChange change = OilChange.Begin(sump, DipstickReading.OfRange(0.8).Tilted(Angle.FromDegrees(1), Angle.Zero));
        Assert.Equal(0.2 + 0.21819, Room(change), 1e-4);
    }

    [Fact]
    public void Surprise_LaterReading_IsMeasuredAgainstPredicted()
    {
        OilChange change = Drained().Poured(At15(4.6)).Ran();
        double predicted = Room(change);
        OilChange read = change.Settled(DipstickReading.OfRange(-0.3));
        Assert.Equal(1.3, read.Surprise.Value.Measured.Liters, 1e-9);
        Assert.Equal(predicted, read.Surprise.Value.Predicted.Liters, 1e-9);
        Assert.True(read.Surprise.Value.IsInsideNoise);
        Assert.False(change.Surprise.IsKnown);
    }

    // What is refused: the account so far is kept.
    public static TheoryData<string, string> Refusals => new()
    {
        { "too hot", "FLUID-001" },
        { "unsettled", "FLUID-002" },
        { "unsettled warm", "FLUID-002" },
        { "screwed in", "FLUID-003" },
        { "on the trailer", "FLUID-004" },
        { "tilted, no shape", "FLUID-005" },
        { "drain too large", "FLUID-006" },
        { "drain after pour", "FLUID-007" },
        { "filter twice", "FLUID-007" },
        { "kept after changed", "FLUID-007" },
        { "filter after pour", "FLUID-007" },
        { "primed without filter", "FLUID-007" },
        { "period twice", "FLUID-007" },
        { "primed too much", "FLUID-008" },
        { "drawn off too much", "FLUID-009" },
    };

    [Theory]
    [MemberData(nameof(Refusals))]
    public void Event_ThatCannotBeRight_IsRefusedAndTheAccountIsKept(string what, string code)
    {
        DipstickReading read = DipstickReading.OfRange(0.5);
        OilChange start = OilChange.Begin(SixLiters, DipstickReading.OfRange(0.6));
        OilChange poured = Drained().Poured(At15(4.6));
        (OilChange before, OilChange after) = what switch
        {
            "too hot" => (start, start.Drained(At(5.5, 151))),
            "unsettled" => (poured, poured.Settled(read.SettledFor(Duration.FromMinutes(9.9)))),
            "unsettled warm" => (poured, poured.Settled(read.WithOilAt(C(40)).SettledFor(Duration.FromMinutes(1.9)))),
            "screwed in" => (poured, poured.Settled(read.With(StickSeating.ScrewedIn))),
            "on the trailer" => (poured, poured.Settled(read.With(BoatAttitude.OnTrailer))),
            "tilted, no shape" => (poured, poured.Settled(read.Tilted(Angle.FromDegrees(2), Angle.Zero))),
            "drain too large" => (start, start.Drained(At15(12.001))),
            "drain after pour" => (poured, poured.Drained(At15(0.5))),
            "filter twice" => (Drained(), Drained().FilterChanged(false)),
            "kept after changed" => (Drained(), Drained().FilterKept()),
            "filter after pour" => (poured, poured.FilterChanged(true)),
            "primed without filter" => (start, start.FilterPrimed(At15(0.3))),
            "period twice" => (start.Since(PeriodSinceChange.From(Full)), start.Since(PeriodSinceChange.From(Full)).Since(PeriodSinceChange.From(Full))),
            "primed too much" => (Drained(), Drained().FilterPrimed(At15(0.9))),
            _ => (poured, poured.DrawnOff(At15(7))),
        };
        Assert.True(after.IsRefused);
        Finding finding = Assert.Single(after.Findings);
        Assert.Equal(code, finding.Code);
        Assert.DoesNotContain("{", finding.Message(DisplayUnits.Metric) + finding.Rule.Remedy, StringComparison.Ordinal);
        Assert.Equal(InEngine(before), InEngine(after));
        Assert.Equal(Room(before), Room(after));
        Assert.Equal(before.Estimate.Value.RoomStandardUncertainty.Liters, after.Estimate.Value.RoomStandardUncertainty.Liters);
        Assert.Equal(before.Events.Count + 1, after.Events.Count);
        // Nothing stands in the way of going on.
        Assert.Equal(Room(before.Looked(OilAppearance.Usual)), Room(after.Looked(OilAppearance.Usual)));
    }

    [Fact]
    public void Event_JustInsideItsLimit_IsTakenIn()
    {
        OilChange poured = Drained().Poured(At15(4.6));
        DipstickReading read = DipstickReading.OfRange(0.3);
        Assert.False(poured.Settled(read.SettledFor(Duration.FromMinutes(10))).IsRefused);
        Assert.False(poured.Settled(read.WithOilAt(C(40)).SettledFor(Duration.FromMinutes(2))).IsRefused);
        Assert.True(poured.Settled(read.WithOilAt(C(39)).SettledFor(Duration.FromMinutes(2))).IsRefused);
        Assert.False(OilChange.Begin(SixLiters, Full).Drained(At15(12.0)).IsRefused);
        Assert.False(OilChange.Begin(SixLiters, Full).Drained(At(5.5, 150)).IsRefused);
        Assert.False(poured.Settled(read.With(StickSeating.Seated).With(BoatAttitude.Afloat)).IsRefused);
    }

    [Fact]
    public void Begin_UnusableReading_LeavesTheLevelUnknown()
    {
        OilChange change = OilChange.Begin(SixLiters, Full.With(BoatAttitude.OnTrailer));
        Assert.True(change.IsRefused);
        Assert.False(change.Estimate.IsKnown);
        Assert.True(change.Drained(At15(6)).FilterChanged(true).Estimate.IsKnown);
        // The same reading can be used on a boat whose marks are true on the trailer.
        Sump trailer = SixLiters.With(SixLiters.Dipstick.Read(BoatAttitude.OnTrailer));
        Assert.False(OilChange.Begin(trailer, Full.With(BoatAttitude.OnTrailer)).IsRefused);
        Sump screwed = SixLiters.With(SixLiters.Dipstick.Read(StickSeating.ScrewedIn));
        Assert.False(OilChange.Begin(screwed, Full.With(StickSeating.ScrewedIn)).IsRefused);
    }

    [Fact]
    public void Begin_LevelOutsideTheMarks_ForbidsAWarmRun()
    {
        Finding above = Assert.Single(OilChange.Begin(SixLiters, DipstickReading.OfRange(1.7)).Findings);
        Assert.Equal(("FLUID-012", Severity.Stop), (above.Code, above.Severity));
        Finding below = Assert.Single(OilChange.Begin(SixLiters, DipstickReading.OfRange(-0.5)).Findings);
        Assert.Equal(("FLUID-013", Severity.Stop), (below.Code, below.Severity));
        Assert.Empty(OilChange.Begin(SixLiters, DipstickReading.OfRange(1.05)).Findings);
    }

    [Fact]
    public void Remarks_OddEvents_AreTakenInAndSaid()
    {
        OilChange noTemperature = OilChange.Begin(SixLiters, Full).Drained(MeasuredVolume.Of(L(6)));
        Assert.Equal("FLUID-010", Assert.Single(noTemperature.Findings).Code);
        Assert.False(noTemperature.IsRefused);

        OilChange noFilter = OilChange.Begin(SixLiters, Full).Drained(At15(5.4)).Poured(At15(4));
        Assert.Equal("FLUID-011", Assert.Single(noFilter.Findings).Code);
        Assert.Equal(0.6, noFilter.Estimate.Value.InFilter.Liters, 0.01);

        OilChange tooMuch = Drained().Poured(At15(5.5));
        Assert.Equal("FLUID-014", Assert.Single(tooMuch.Findings).Code);

        OilChange dry = Drained().Poured(At15(1.0)).Ran();
        Assert.Equal("FLUID-015", Assert.Single(dry.Findings).Code);
        Assert.Equal(Severity.Stop, dry.Balance().Severity);

        OilChange warmRun = OilChange.Begin(SixLiters, Full).Ran();
        Assert.Empty(warmRun.Findings);
        Assert.Equal(0, Room(warmRun), 1e-12);
    }

    [Fact]
    public void Temperature_NotTaken_WidensTheEstimate()
    {
        OilChange taken = OilChange.Begin(SixLiters, Full).Drained(At(6, 45)).FilterChanged(true);
        OilChange notTaken = OilChange.Begin(SixLiters, Full).Drained(MeasuredVolume.Of(L(6))).FilterChanged(true);
        // The means differ a little, because a surer drain weighs more against the book.
        Assert.Equal(Room(taken), Room(notTaken), 0.03);
        Assert.True(notTaken.Estimate.Value.RoomStandardUncertainty.Liters > taken.Estimate.Value.RoomStandardUncertainty.Liters);
    }

    [Fact]
    public void Settled_AboveFull_SaysStopAtOnce()
    {
        OilChange over = Drained().Poured(At15(5.9)).Ran().Settled(DipstickReading.OfRange(1.6));
        Finding finding = Assert.Single(over.Findings);
        Assert.Equal("FLUID-030", finding.Code);
        double above = finding["above"]!.Number!.Value;
        OilChange drawn = over.DrawnOff(At15(above)).Settled(DipstickReading.OfRange(1.0));
        Assert.DoesNotContain(drawn.Balance().Findings, f => f.Code == "FLUID-030");
    }

    [Fact]
    public void Change_AnotherCulture_ChangesNoText()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        string here = Drained().Poured(At15(4.6)).Explain(DisplayUnits.Metric).ToString();
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(here, Drained().Poured(At15(4.6)).Explain(DisplayUnits.Metric).ToString());
            Assert.Equal("Poured 4.60 L at 15 °C", Drained().Poured(At15(4.6)).ToString());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Events_ToldAgainInOrder_GiveTheSameAccount()
    {
        OilChange change = Drained().FilterPrimed(At15(0.3)).Poured(At15(4.4)).Ran().Settled(DipstickReading.OfRange(0.1)).Poured(At15(0.5));
        OilChange again = OilChange.Begin(change.Sump, change.Events[0].Reading!);
        foreach (OilChange step in change.Events.Skip(1))
        {
            again = step.Step switch
            {
                OilChangeStep.Drained => again.Drained(step.Measured!, step.DrainedBy!.Value),
                OilChangeStep.FilterChanged => again.FilterChanged(step.OldFilterEmptiedIntoMeasure!.Value),
                OilChangeStep.FilterPrimed => again.FilterPrimed(step.Measured!),
                OilChangeStep.Poured => again.Poured(step.Measured!),
                OilChangeStep.Ran => again.Ran(),
                _ => again.Settled(step.Reading!),
            };
        }

        Assert.Equal(Room(change), Room(again));
        Assert.Equal(change.Estimate.Value.RoomStandardUncertainty.Liters, again.Estimate.Value.RoomStandardUncertainty.Liters);
    }

    [Fact]
    public void Events_VeryManyOrAskedOneByOne_GiveTheSameAccount()
    {
        // Asked once at the end, or after every event: the same sums; and a hundred thousand events do not exhaust the stack.
        OilChange once = OilChange.Begin(SixLiters, DipstickReading.OfRange(0.6));
        OilChange always = once;
        for (int i = 0; i < 1000; i++)
        {
            once = i % 2 == 0 ? once.Poured(At15(0.1)) : once.DrawnOff(At15(0.1));
            always = i % 2 == 0 ? always.Poured(At15(0.1)) : always.DrawnOff(At15(0.1));
            Assert.True(always.Estimate.IsKnown);
        }

        Assert.Equal(Room(always), Room(once));
        Assert.Equal(always.Estimate.Value.RoomStandardUncertainty.Liters, once.Estimate.Value.RoomStandardUncertainty.Liters);
        for (int i = 0; i < 100_000; i++)
        {
            once = once.Looked(OilAppearance.Usual);
        }

        Assert.Equal(Room(always), Room(once));
        Assert.Equal(101_001, once.Events.Count);
    }

    [Fact]
    public void Events_NullOrUndefined_AreRefusedByName()
    {
        OilChange change = OilChange.Begin(SixLiters, Full);
        Assert.Equal("sump", Assert.Throws<ArgumentNullException>(() => OilChange.Begin(null!, Full)).ParamName);
        Assert.Equal("before", Assert.Throws<ArgumentNullException>(() => OilChange.Begin(SixLiters, null!)).ParamName);
        Assert.Equal("sump", Assert.Throws<ArgumentNullException>(() => OilChange.BeginWithoutReading(null!)).ParamName);
        Assert.Equal("measured", Assert.Throws<ArgumentNullException>(() => change.Drained(null!)).ParamName);
        Assert.Equal("measured", Assert.Throws<ArgumentNullException>(() => change.Poured(null!)).ParamName);
        Assert.Equal("measured", Assert.Throws<ArgumentNullException>(() => change.FilterPrimed(null!)).ParamName);
        Assert.Equal("measured", Assert.Throws<ArgumentNullException>(() => change.DrawnOff(null!)).ParamName);
        Assert.Equal("reading", Assert.Throws<ArgumentNullException>(() => change.Settled(null!)).ParamName);
        Assert.Equal("period", Assert.Throws<ArgumentNullException>(() => change.Since(null!)).ParamName);
        Assert.Equal("method", Assert.Throws<ArgumentOutOfRangeException>(() => change.Drained(At15(1), (DrainMethod)9)).ParamName);
        Assert.Equal("appearance", Assert.Throws<ArgumentOutOfRangeException>(() => change.Looked((OilAppearance)9)).ParamName);
        Assert.Throws<ArgumentOutOfRangeException>(() => change.Explain((DisplayUnits)9));
    }

    [Fact]
    public void Limits_BadInput_IsRefusedByName()
    {
        OilChangeLimits limits = OilChangeLimits.Default;
        Assert.Equal("overfillRiskFraction", Assert.Throws<ArgumentOutOfRangeException>(() => limits.WithPours(overfillRiskFraction: 0)).ParamName);
        Assert.Equal("firstPourFraction", Assert.Throws<ArgumentOutOfRangeException>(() => limits.WithPours(firstPourFraction: 1.1)).ParamName);
        Assert.Equal("laterPourRangeFraction", Assert.Throws<ArgumentOutOfRangeException>(() => limits.WithPours(laterPourRangeFraction: double.NaN)).ParamName);
        Assert.Equal("targetRangeFraction", Assert.Throws<ArgumentOutOfRangeException>(() => limits.WithPours(targetRangeFraction: -1)).ParamName);
        Assert.Equal("doubtful", Assert.Throws<ArgumentOutOfRangeException>(() => limits.WithBands(L(0.5), 0.04, L(0.2), 0.08)).ParamName);
        Assert.Equal("fullChangeFraction", Assert.Throws<ArgumentOutOfRangeException>(() => limits.WithJudgement(fullChangeFraction: 0.4)).ParamName);
        Assert.Equal("warm", Assert.Throws<ArgumentOutOfRangeException>(() => limits.WithSettling(Duration.FromMinutes(-1), Duration.Zero)).ParamName);
        Assert.Equal("temperatureUncertainty", Assert.Throws<ArgumentOutOfRangeException>(
            () => limits.WithUncertainties(0.01, TemperatureDelta.FromKelvins(-1), 0)).ParamName);
    }
}
