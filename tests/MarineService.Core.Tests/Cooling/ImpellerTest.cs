using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Cooling;
using MarineService.Core.Scheduling;
using NodaTime;
using UnitsNet;
using Duration = UnitsNet.Duration;

namespace MarineService.Core.Tests.Cooling;

public sealed class ImpellerTest
{
    private static readonly LocalDate Day = new(2026, 10, 4);

    private static readonly RawWaterCircuit Circuit = RawWaterCircuit.Of(
        CircuitPlaceKind.HullInlet, CircuitPlaceKind.Seacock, CircuitPlaceKind.Strainer, CircuitPlaceKind.RawWaterPump, CircuitPlaceKind.OilCooler,
        CircuitPlaceKind.HeatExchanger, CircuitPlaceKind.MixingElbow, CircuitPlaceKind.ExhaustOutlet);

    [Fact]
    public void WholeImpeller_IsInspectedAgain()
    {
        ImpellerAssessment judged = ImpellerInspection.Of(6, Day).WithOthersWhole().Judge();
        Assert.Equal(ImpellerVerdict.InspectAgain, judged.Verdict.Value);
        Assert.Empty(judged.Findings);
        Assert.Empty(judged.WhereToSearch(Circuit));
        Assert.Null(judged.DecidedBy);
    }

    [Theory]
    [InlineData(VaneState.Cracked, "IMPELLER-007")]
    [InlineData(VaneState.Set, "IMPELLER-008")]
    public void Vane_CrackedOrSet_IsReplacedAndNothingIsSearched(VaneState state, string code)
    {
        VaneRecord vane = state == VaneState.Cracked ? VaneRecord.Cracked(3) : VaneRecord.Set(3, Angle.FromDegrees(11));
        ImpellerAssessment judged = ImpellerInspection.Of(6, Day).With(vane).WithOthersWhole().Judge();
        Assert.Equal(ImpellerVerdict.Replace, judged.Verdict.Value);
        Assert.Equal(code, judged.DecidedBy!.Code);
        Assert.Empty(judged.WhereToSearch(Circuit));
    }

    [Theory]
    [InlineData(10, ImpellerVerdict.InspectAgain)]
    [InlineData(10.01, ImpellerVerdict.Replace)]
    public void Set_OnTheLimit_GoesBackIn(double degrees, ImpellerVerdict expected) =>
        Assert.Equal(expected, ImpellerInspection.Of(6, Day).With(VaneRecord.Set(1, Angle.FromDegrees(degrees))).WithOthersWhole().Judge().Verdict.Value);

    [Fact]
    public void Vane_TornOrMissing_IsSearchedFor_UntilTheAccountCloses()
    {
        ImpellerInspection seen = ImpellerInspection.Of(6, Day).With(VaneRecord.Torn(2, 0.4), VaneRecord.Missing(5)).WithOthersWhole();
        Assert.Equal(ImpellerVerdict.ReplaceAndSearch, seen.Judge().Verdict.Value);
        Assert.Equal("IMPELLER-001", seen.Judge().DecidedBy!.Code);
        Assert.Equal(1.4, seen.Account.OutstandingVanesRatio.Value, 9);
        ImpellerInspection some = seen.WithFound(FoundPiece.Of(0.4, "heat exchanger"), FoundPiece.Of(0.5, "oil cooler"));
        Assert.Equal(0.5, some.Account.OutstandingVanesRatio.Value, 9);
        Assert.Equal(ImpellerVerdict.ReplaceAndSearch, some.Judge().Verdict.Value);
        ImpellerInspection all = some.WithFound(FoundPiece.Of(0.5, "outlet hose"));
        Assert.True(all.Account.IsClosed);
        Assert.Equal(ImpellerVerdict.Replace, all.Judge().Verdict.Value);
        Assert.Empty(all.Judge().WhereToSearch(Circuit));
    }

    /// <summary>New less whole less found is nothing: 6 new, 4 whole, two gone, in thirds.</summary>
    [Fact]
    public void Account_OfThirds_Closes()
    {
        ImpellerInspection seen = ImpellerInspection.Of(6, Day).With(VaneRecord.Missing(1)).WithOthersWhole()
            .WithFound(FoundPiece.Of(1 / 3.0, "a"), FoundPiece.Of(1 / 3.0, "b"), FoundPiece.Of(1 / 3.0, "c"));
        Assert.True(seen.Account.IsClosed);
        Assert.False(seen.Account.IsOver || seen.Account.IsShort);
        Assert.True(ImpellerInspection.Of(6, Day).With(VaneRecord.Missing(1)).WithOthersWhole().WithFound(FoundPiece.Of(0.99, "a")).Account.IsShort);
    }

    [Law]
    public Property Account_IsOrderFree() => Prop.ForAll(
        Gen.Choose(1, 999).ArrayOf(8).Zip(Gen.Choose(0, int.MaxValue - 1)).ToArbitrary(),
        t =>
        {
            (int[] shares, int seed) = t;
            Random random = new(seed);
            FoundPiece[] pieces = [.. shares.Select((share, i) => FoundPiece.Of(share / 1000.0, $"place {i}"))];
            VaneRecord[] vanes = [.. Enumerable.Range(1, 8).Select(number => VaneRecord.Torn(number, shares[number - 1] / 1000.0))];
            FoundPiece[] mixed = [.. pieces.OrderBy(_ => random.Next())];
            VaneRecord[] turned = [.. vanes.OrderBy(_ => random.Next())];
            int cut = random.Next(9);
            VaneAccount one = ImpellerInspection.Of(8, Day).With(vanes).WithFound(pieces).Account;
            VaneAccount other = ImpellerInspection.Of(8, Day).WithFound(mixed[..cut]).With(turned).WithFound(mixed[cut..]).Account;
            return one.IsClosed && other.IsClosed && one.OutstandingVanesRatio.Value == 0 && other.OutstandingVanesRatio.Value == 0
                && one.FoundVanesRatio == other.FoundVanesRatio;
        });

    [Fact]
    public void MoreFoundThanMissing_IsFound()
    {
        ImpellerAssessment judged = ImpellerInspection.Of(6, Day).With(VaneRecord.Torn(1, 0.2)).WithOthersWhole().WithFound(FoundPiece.Of(0.5, "heat exchanger")).Judge();
        Assert.Contains(judged.Findings, finding => finding.Code == "IMPELLER-002");
        Assert.Equal(ImpellerVerdict.Replace, judged.Verdict.Value);
    }

    [Fact]
    public void VaneNotLookedAt_LeavesTheVerdictOpen_UnlessRubberIsMissingAlready()
    {
        ImpellerAssessment open = ImpellerInspection.Of(6, Day).With(VaneRecord.Cracked(1)).Judge();
        Assert.False(open.Verdict.IsKnown);
        Assert.Contains("5 are not recorded", Assert.Single(open.Verdict.Missing), StringComparison.Ordinal);
        Assert.Contains(open.Findings, finding => finding.Code == "IMPELLER-013");
        Assert.Equal(ImpellerVerdict.ReplaceAndSearch, ImpellerInspection.Of(6, Day).With(VaneRecord.Missing(1)).Judge().Verdict.Value);
    }

    [Theory]
    [InlineData(ImpellerFault.TipsWornFlat, "IMPELLER-009")]
    [InlineData(ImpellerFault.HubLoose, "IMPELLER-005")]
    [InlineData(ImpellerFault.HubDriveWorn, "IMPELLER-010")]
    [InlineData(ImpellerFault.Hard, "IMPELLER-011")]
    [InlineData(ImpellerFault.Sticky, "IMPELLER-011")]
    [InlineData(ImpellerFault.Swollen, "IMPELLER-011")]
    [InlineData(ImpellerFault.Melted, "IMPELLER-006")]
    public void Fault_OfHubOrRubber_ReplacesIt(ImpellerFault fault, string code)
    {
        ImpellerAssessment judged = ImpellerInspection.Of(6, Day).WithOthersWhole().With(fault, fault).Judge();
        Assert.Equal(ImpellerVerdict.Replace, judged.Verdict.Value);
        Assert.Equal(code, Assert.Single(judged.Findings).Code);
    }

    [Theory]
    [InlineData(2023, 10, 4, ImpellerVerdict.InspectAgain)]
    [InlineData(2023, 10, 3, ImpellerVerdict.Replace)]
    public void Age_BeyondItsMonths_ReplacesItWhateverItLooksLike(int year, int month, int day, ImpellerVerdict expected) =>
        Assert.Equal(expected, ImpellerInspection.Of(6, Day).WithFittedOn(new LocalDate(year, month, day)).WithOthersWhole().Judge().Verdict.Value);

    /// <summary>
    /// Common practice, no source: looked at every 50 hours and replaced only on sight by careful owners. So inspect and replace are two
    /// limbs, and an inspection that passes does not move the replace limit.
    /// </summary>
    [Fact]
    public void InspectAndReplace_AreTwoLimbs_AndTheReplaceLimitStays()
    {
        TaskPlan plan = TaskPlan.Of(
        [
            ServiceTask.Inspect("impeller-inspect", ServiceInterval.OfHours(EngineHours.FromHours(50m))),
            ServiceTask.Replace("impeller-replace", ServiceInterval.FirstOf(EngineHours.FromHours(300m), 24)),
        ]);
        ServiceFact[] facts =
        [
            Completion.Of("impeller-replace", new LocalDate(2025, 4, 1), EngineHours.FromHours(100m)),
            Completion.Of("impeller-inspect", new LocalDate(2025, 4, 1), EngineHours.FromHours(100m)),
            Completion.Passed("impeller-inspect", new LocalDate(2026, 4, 1), EngineHours.FromHours(150m)),
        ];
        DueList due = DueList.Evaluate(plan, ServiceHistory.Of(MarineService.Core.Engines.HourMeter.Plain, facts, new LocalDate(2026, 4, 2)), "main");
        Assert.Equal(200m, due["impeller-inspect"].Due.Hours!.Value.ToHours());
        Assert.Equal(400m, due["impeller-replace"].Due.Hours!.Value.ToHours());
    }

    [Fact]
    public void Search_GoesWithTheFlow_ThenBackOnTheSuctionSide()
    {
        IReadOnlyList<SearchPlace> search = ImpellerInspection.Of(6, Day).With(VaneRecord.Missing(1)).WithOthersWhole().Judge().WhereToSearch(Circuit);
        Assert.Equal(
            ["raw-water pump", "oil cooler", "heat exchanger", "mixing elbow", "exhaust outlet", "strainer", "seacock", "hull inlet"],
            search.Select(place => place.Place.Name));
        Assert.Equal([true, true, true, true, true, false, false, false], search.Select(place => place.IsDownstream));
        Assert.Contains("first sieve", search[1].Reason, StringComparison.Ordinal);
        Assert.Contains("slipped through", search[2].Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Circuit_WithoutExactlyOnePump_IsNamed()
    {
        Assert.Throws<ArgumentException>("kinds", () => RawWaterCircuit.Of(CircuitPlaceKind.Seacock));
        Assert.Throws<ArgumentException>("kinds", () => RawWaterCircuit.Of(Array.Empty<CircuitPlaceKind>()));
        Assert.Throws<ArgumentException>("kinds", () => RawWaterCircuit.Of(CircuitPlaceKind.RawWaterPump, CircuitPlaceKind.RawWaterPump));
        Assert.Throws<ArgumentException>("places", () => RawWaterCircuit.Of(CircuitPlace.Of(CircuitPlaceKind.RawWaterPump, "a"), CircuitPlace.Of(CircuitPlaceKind.RawWaterPump, "b")));
        Assert.Throws<ArgumentException>("kinds", () => RawWaterCircuit.Of(CircuitPlaceKind.RawWaterPump, CircuitPlaceKind.ExhaustOutlet, CircuitPlaceKind.Manifold));
    }

    [Fact]
    public void Records_ThatCannotBe_AreNamed()
    {
        ImpellerInspection six = ImpellerInspection.Of(6, Day);
        Assert.Contains("no vane 7", Assert.Throws<ArgumentException>("vanes", () => six.With(VaneRecord.Whole(7))).Message, StringComparison.Ordinal);
        Assert.Contains("twice", Assert.Throws<ArgumentException>("vanes", () => six.With(VaneRecord.Whole(1), VaneRecord.Cracked(1))).Message, StringComparison.Ordinal);
        FoundPiece[] seven = [.. Enumerable.Range(0, 7).Select(_ => FoundPiece.Of(1, "bilge"))];
        Assert.Contains("7 vanes were found", Assert.Throws<ArgumentException>("pieces", () => six.WithFound(seven)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("date", () => six.WithFittedOn(Day.PlusDays(1)));
        Assert.Throws<ArgumentOutOfRangeException>("missingFraction", () => VaneRecord.Torn(1, 1));
    }

    [Theory]
    [InlineData(Sense.Clockwise, PumpSide.Cover, Sense.CounterClockwise)]
    [InlineData(Sense.Clockwise, PumpSide.Drive, Sense.Clockwise)]
    [InlineData(Sense.CounterClockwise, PumpSide.Drive, Sense.CounterClockwise)]
    public void Tips_Trail(Sense sense, PumpSide from, Sense lean)
    {
        Impeller impeller = Impeller.Of(6, ImpellerHub.Keyed, ImpellerRubber.Chloroprene, PumpRotation.Of(sense, from));
        Assert.Equal(lean, impeller.Rotation!.Value.TipsLeanFromCover);
        Assert.True(Fitted(impeller, lean).IsProved);
        Sense wrong = lean == Sense.Clockwise ? Sense.CounterClockwise : Sense.Clockwise;
        Assert.Equal("IMPELLER-030", Assert.Single(Fitted(impeller, wrong).Findings).Code);
    }

    [Theory]
    [InlineData(ImpellerRubber.NaturalRubber, "IMPELLER-033")]
    [InlineData(ImpellerRubber.NotStated, "IMPELLER-033")]
    [InlineData(ImpellerRubber.EthylenePropylene, "IMPELLER-033")]
    [InlineData(ImpellerRubber.Nitrile, "IMPELLER-034")]
    public void MineralGrease_HarmsEveryRubberButNitrile(ImpellerRubber rubber, string code)
    {
        Impeller impeller = Impeller.Of(6, ImpellerHub.Keyed, rubber, PumpRotation.Of(Sense.Clockwise, PumpSide.Cover));
        Assert.Equal(code, Assert.Single(Fitted(impeller, Sense.CounterClockwise).WithLubricant(ImpellerLubricant.MineralOilOrGrease).Findings).Code);
        Assert.Empty(Fitted(impeller, Sense.CounterClockwise).WithLubricant(ImpellerLubricant.Glycerine).Findings);
        Assert.Equal("IMPELLER-035", Assert.Single(Fitted(impeller, Sense.CounterClockwise).WithLubricant(ImpellerLubricant.None).Findings).Code);
    }

    [Fact]
    public void Fitting_WithoutItsChecks_IsNotProved()
    {
        ImpellerFitting begun = ImpellerFitting.Of(Impeller.Of(6));
        Assert.Equal(5, begun.Findings.Count(finding => finding.Code == "IMPELLER-038"));
        Assert.False(begun.IsProved);
        Impeller known = Impeller.Of(6, rotation: PumpRotation.Of(Sense.Clockwise, PumpSide.Cover));
        Assert.Equal("IMPELLER-031", Assert.Single(Fitted(Impeller.Of(6), Sense.Clockwise).Findings).Code);
        Assert.Equal("IMPELLER-032", Assert.Single(Fitted(known, Sense.CounterClockwise).WithHubEngaged(false).Findings).Code);
        Assert.Equal("IMPELLER-036", Assert.Single(Fitted(known, Sense.CounterClockwise).WithGasket(CoverGasket.Reused).Findings).Code);
        Assert.Equal("IMPELLER-037", Assert.Single(Fitted(known, Sense.CounterClockwise).WithPumpLookedAt(PumpPart.Cam).Findings).Code);
        Assert.Equal("IMPELLER-039", Assert.Single(Fitted(known, Sense.CounterClockwise).WithTipsLeaning(Sense.CounterClockwise, Sense.Clockwise).Findings).Code);
    }

    [Fact]
    public void DryRun_OfAnyLength_AsksForALookNow()
    {
        Assert.Equal(Severity.Act, DryRun.Judge(Duration.FromSeconds(5)).Severity);
        Assert.Contains("5.0 s", DryRun.Judge(Duration.FromSeconds(5)).ToString(), StringComparison.Ordinal);
        Assert.Contains("nobody knows", DryRun.Judge(null).ToString(), StringComparison.Ordinal);
        ServiceTask inspect = ServiceTask.Inspect("impeller-inspect", ServiceInterval.OfHours(EngineHours.FromHours(100m))).DueAfterEvents(DryRun.EventKind);
        ServiceFact[] facts =
        [
            Completion.Passed("impeller-inspect", new LocalDate(2026, 4, 1), EngineHours.FromHours(10m)),
            ServiceEvent.Of(DryRun.EventKind, new LocalDate(2026, 5, 1), EngineHours.FromHours(12m)),
        ];
        DueList due = DueList.Evaluate(TaskPlan.Of([inspect]), ServiceHistory.Of(MarineService.Core.Engines.HourMeter.Plain, facts, new LocalDate(2026, 5, 2)), "main");
        Assert.True(due["impeller-inspect"].Status >= DueStatus.Due);
    }

    [Fact]
    public void Explanation_SaysWhatDecidedAndThatTheLimitStays()
    {
        string text = ImpellerInspection.Of(6, Day).With(VaneRecord.Torn(3, 0.4)).WithOthersWhole().Judge().Explain(DisplayUnits.Metric).ToString();
        Assert.Contains("IMPELLER-001 New vanes less whole ones", text, StringComparison.Ordinal);
        Assert.Contains("vane 3: torn, 0.4 of it gone", text, StringComparison.Ordinal);
        Assert.Contains("replace task stay as they are", text, StringComparison.Ordinal);
    }

    private static ImpellerFitting Fitted(Impeller impeller, Sense tips) => ImpellerFitting.Of(impeller)
        .WithTipsLeaning(tips)
        .WithHubEngaged(true)
        .WithLubricant(ImpellerLubricant.SiliconeGrease)
        .WithGasket(CoverGasket.New)
        .WithPumpLookedAt();
}
