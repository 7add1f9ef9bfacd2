using MarineService.Core.Procedures;
using MarineService.Core.Tests.Reference;

namespace MarineService.Core.Tests.Procedures;

public sealed class ProcedureTest
{
    private static readonly Procedure Whole = ServiceProcedures.OilAndImpeller;

    private static readonly Procedure Fit = Whole.For(Circumstances.Unknown.With(Circumstance.OilUnfit, false));

    public static TheoryData<string, string> MustPrecede =>
        [.. ReferenceTable.Read("procedure-must-precede.csv").Select(row => (row["first"], row["then"]))];

    public static TheoryData<string> Own => [.. ServiceProcedures.All.Select(one => one.Id)];

    [Fact]
    public void OilAndImpeller_WithFitOil_IsTheGraphStepByStep()
    {
        Dictionary<string, string[]> expected = ReferenceTable.Read("oil-and-impeller-graph.csv")
            .ToDictionary(row => row["step"], row => row["after"].Split(' ', StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal(46, expected.Count);
        Assert.Equal(expected.Keys.Order(), Fit.Steps.Select(step => step.Id).Order());
        Assert.All(Fit.Steps, step => Assert.Equal(expected[step.Id].Order(), step.Predecessors.Order()));
        Assert.Equal(70, Fit.Steps.Sum(step => step.Predecessors.Count));
    }

    [Fact]
    public void OilAndImpeller_LongestChain_Is24Steps()
    {
        Dictionary<string, int> length = [];
        int Length(string id) => length.TryGetValue(id, out int known)
            ? known
            : length[id] = 1 + Fit.Find(id)!.Predecessors.Select(Length).DefaultIfEmpty(0).Max();
        Assert.Equal(24, Fit.Steps.Max(step => Length(step.Id)));
    }

    [Fact]
    public void OilAndImpeller_StartsAndEnds_WhereItShould()
    {
        HashSet<string> waitedFor = [.. Fit.Steps.SelectMany(step => step.Predecessors)];
        Assert.Equal(["read-dial"], Fit.Steps.Where(step => step.Predecessors.Count == 0).Select(step => step.Id));
        Assert.Equal(["land-waste", "plan-next"], Fit.Steps.Select(step => step.Id).Where(id => !waitedFor.Contains(id)).Order());
    }

    [Fact]
    public void OilAndImpeller_OilAndRawWater_AreFreeOfEachOtherAfterTheStop()
    {
        Assert.False(Fit.MustPrecede("drain-oil", "shut-seacock"));
        Assert.False(Fit.MustPrecede("open-seacock", "fill-to-mark"));
        Assert.False(Fit.MustPrecede("shut-seacock", "drain-oil"));
    }

    [Theory]
    [MemberData(nameof(MustPrecede))]
    public void OilAndImpeller_PairThatMustPrecede_DoesInTheGraphAndBySearch(string first, string then)
    {
        Assert.True(Fit.MustPrecede(first, then));
        Assert.True(Orders.Reaches(Fit, first, then));
        Assert.False(Fit.MustPrecede(then, first));
    }

    [Fact]
    public void Precedence_OfEveryPair_IsThatOfAPlainSearch()
    {
        foreach (Procedure procedure in new[] { Fit, Whole, Whole.For(Orders.Petrol), Whole.For(Orders.Diesel) })
        {
            Assert.All(
                from first in procedure.Steps from then in procedure.Steps select (first.Id, Then: then.Id),
                pair => Assert.Equal(Orders.Reaches(procedure, pair.Id, pair.Then), procedure.MustPrecede(pair.Id, pair.Then)));
        }
    }

    [Theory]
    [MemberData(nameof(Own))]
    public void OwnProcedure_InEveryCircumstance_IsSound(string id)
    {
        Procedure procedure = ServiceProcedures.All.Single(one => one.Id == id);
        Assert.Equal(CitationStanding.CommonPractice, procedure.Source.Standing);
        Circumstance[] all = Enum.GetValues<Circumstance>();
        for (int set = 0; set < 729; set++)
        {
            // Each circumstance holds, does not, or is not known.
            Circumstances known = Circumstances.Unknown;
            for (int i = 0, digits = set; i < all.Length; i++, digits /= 3)
            {
                known = digits % 3 == 2 ? known : known.With(all[i], digits % 3 == 1);
            }

            Procedure variant = procedure.For(known);
            Assert.True(variant.Findings.Count == 0, $"{known}: {string.Join("; ", variant.Findings)}");
        }
    }

    [Fact]
    public void For_Diesel_LeavesTheBlowerOut()
    {
        Procedure diesel = Fit.For(Circumstances.Unknown.With(Circumstance.Petrol, false));
        Assert.Equal(["ventilate-again", "ventilate-first"], Fit.Steps.Select(step => step.Id).Except(diesel.Steps.Select(step => step.Id)).Order());
        Assert.True(diesel.MustPrecede("secure-boat", "warm-run"));
        Assert.True(diesel.MustPrecede("sniff-and-switch-on", "proof-start"));
    }

    [Fact]
    public void For_GearDrivenPump_LeavesTheBeltOutAndKeepsTheRest()
    {
        Procedure gear = Fit.For(Circumstances.Unknown.With(Circumstance.BeltBeforePump, false));
        Assert.Equal(["belt-off", "belt-on", "feel-idlers"], Fit.Steps.Select(step => step.Id).Except(gear.Steps.Select(step => step.Id)).Order());
        Assert.True(gear.MustPrecede("stop-and-isolate", "pump-cover-off"));
        Assert.True(gear.MustPrecede("pump-cover-on", "count-tools"));
        Assert.All(
            from first in gear.Steps from then in gear.Steps where Fit.MustPrecede(first.Id, then.Id) select (first.Id, Then: then.Id),
            pair => Assert.True(gear.MustPrecede(pair.Id, pair.Then)));
    }

    [Fact]
    public void For_OilFoundUnfit_DrainsColdAndMendsBeforeTheFill()
    {
        Procedure unfit = Whole.For(Circumstances.Unknown.With(Circumstance.OilUnfit, true));
        Assert.Null(unfit.Find("warm-run"));
        Assert.True(unfit.MustPrecede("look-at-oil-cold", "drain-oil"));
        Assert.True(unfit.MustPrecede("mend-oil-fault", "proof-start"));
        Assert.True(unfit.MustPrecede("mend-oil-fault", "first-pour"));
        Assert.True(unfit.MustPrecede("catch-spills", "drain-oil"));
    }

    [Fact]
    public void InOrder_OfTheService_LooksAtTheOilFirstAndRestoresTheBilgeLast()
    {
        string[] order = [.. Whole.For(Orders.Petrol).InOrder().Select(step => step.Id)];
        Assert.Equal(["read-dial", "look-at-oil-cold"], order.Take(2));
        Assert.Equal(["restore-bilge", "record"], order.SkipWhile(id => id != "restore-bilge").Take(2));
        Assert.True(Array.IndexOf(order, "pump-cover-on") < Array.IndexOf(order, "belt-on"));
    }

    [Fact]
    public void Circle_IsPrinted_AndRefused()
    {
        Procedure round = Procedure.Of("round", "Round", [
            ProcedureStep.Of("a", "A"), ProcedureStep.Of("b", "B").After("a", "d"), ProcedureStep.Of("c", "C").After("b"),
            ProcedureStep.Of("d", "D").After("c"), ProcedureStep.Of("e", "E").After("d")]);
        Finding circle = Assert.Single(round.Findings, finding => finding.Rule == ProcedureRules.Circle);
        Assert.Equal("b -> c -> d -> b", circle["circle"]!.Word);
        Assert.Equal(["step 'b'", "step 'c'", "step 'd'", "step 'e'"], round.Findings.Where(one => one.Rule == ProcedureRules.Unreachable).Select(one => one.Subject));
        Assert.Contains("b -> c -> d -> b", Assert.Throws<InvalidOperationException>(round.InOrder).Message, StringComparison.Ordinal);
        Assert.Contains("b -> c -> d -> b", Assert.Throws<ArgumentException>("procedures", () => Procedure.Merge("m", "M", [round])).Message, StringComparison.Ordinal);
        Assert.Contains("b -> c -> d -> b", Assert.Throws<ArgumentException>("procedure", () => WorkRecord.Begin(round, new(2027, 4, 20))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void UnknownStep_IsNamed_AndWhatWaitsForItCannotBeReached()
    {
        Procedure lost = Procedure.Of("lost", "Lost", [ProcedureStep.Of("a", "A").After("nowhere"), ProcedureStep.Of("b", "B").After("a"), ProcedureStep.Of("c", "C")]);
        Assert.Equal("nowhere", Assert.Single(lost.Findings, one => one.Rule == ProcedureRules.UnknownStep)["missing step"]!.Word);
        Assert.Equal(["step 'a'", "step 'b'"], lost.Findings.Where(one => one.Rule == ProcedureRules.Unreachable).Select(one => one.Subject));
        Assert.DoesNotContain(lost.Findings, one => one.Rule == ProcedureRules.Circle);
    }

    [Fact]
    public void StepTwice_IsRefused() =>
        Assert.Throws<ArgumentException>("steps", () => Procedure.Of("p", "P", [ProcedureStep.Of("a", "A"), ProcedureStep.Of("a", "B")]));

    public static TheoryData<string, string> Forbidden => new()
    {
        // The orders that must never happen: take the edge's meaning away, and the check must say so.
        { "open-seacock", "impeller" }, { "ventilate-again", "vapour" }, { "shut-seacock", "floods" }, { "belt-off", "rounded" },
        { "look-at-oil-cold", "bearings" }, { "close-drain", "bilge" }, { "filter-on", "bilge" }, { "filter-off", "two gaskets" },
        { "read-level-after", "drunk its fill" }, { "catch-spills", "overboard" }, { "restore-bilge", "sinks" }, { "stop-and-isolate", "fingers" },
    };

    [Theory]
    [MemberData(nameof(Forbidden))]
    public void Procedure_WithoutTheStepThatMakesItSafe_IsFoundHarmful(string without, string harm)
    {
        Procedure less = Procedure.Of("less", "Less", Whole.Steps.Where(step => step.Id != without).Select(step => Rebuild(step, without)));
        Assert.Contains(less.Findings, one => one.Rule == ProcedureRules.HarmfulOrder && one["harm"]!.Word!.Contains(harm, StringComparison.Ordinal));
    }

    [Fact]
    public void FuelOpenBesideACharger_IsFound()
    {
        Procedure bad = Procedure.Of("bad", "Bad", [
            ProcedureStep.Of("off", "Off").Does(StepAct.Isolate),
            ProcedureStep.Of("charge", "Charge").Does(StepAct.StartCharging),
            ProcedureStep.Of("fuel", "Open").After("off").Does(StepAct.OpenFuel),
            ProcedureStep.Of("close", "Close").After("fuel").Does(StepAct.CloseFuel)]);
        Assert.Equal(2, bad.Findings.Count(one => one.Rule == ProcedureRules.HarmfulOrder));
        Assert.Empty(bad.For(Circumstances.Unknown.With(Circumstance.Petrol, false)).Findings);
    }

    [Fact]
    public void Cautions_NameTheirSources()
    {
        Caution vapour = Fit.Find("ventilate-first")!.Cautions[0];
        Assert.Equal(SignalWord.Warning, vapour.Word);
        Assert.Equal("33 CFR 183.610", vapour.Citation.Document);
        Assert.Contains("4 minutes", vapour.Text, StringComparison.Ordinal);
        Assert.Equal(4, Fit.Find("ventilate-first")!.HoldPoints[0].LeastTime!.Value.Minutes, 9);
        Assert.Contains(Fit.Find("catch-spills")!.Cautions, one => one.Citation.Document == "40 CFR 110");
        Assert.Contains(Fit.Find("filter-off")!.Cautions, one => one.Citation.Document == "40 CFR 261.4");
        Assert.Contains(Fit.Find("load-run")!.Cautions, one => one.Citation.Document == "NAVEDTRA 14075 Engineman 1 & C");
        Assert.All(ServiceProcedures.FuelFilter.Steps.Where(step => step.Acts.Contains(StepAct.OpenFuel)), step => Assert.Equal(SignalWord.Danger, step.Cautions[0].Word));
    }

    private static ProcedureStep Rebuild(ProcedureStep step, string without)
    {
        ProcedureStep copy = ProcedureStep.Of(step.Id, step.Text).Does([.. step.Acts]).After([.. step.Predecessors.Where(id => id != without)]);
        return step.Condition is Circumstance condition ? copy.When(condition, step.ConditionHolds) : copy;
    }
}
