using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Procedures;

namespace MarineService.Core.Tests.Procedures;

public sealed class ProcedureMergeTest
{
    [Law]
    public Property Merge_LosesNoStepNoCautionNoHoldPoint() => Prop.ForAll(
        ArbMap.Default.ArbFor<int>(),
        seed =>
        {
            Procedure[] parts = Parts(seed);
            Procedure whole = Procedure.Merge("whole", "Whole", parts);
            return parts.All(part => part.Steps.All(step =>
                whole.Find(step.Id) is ProcedureStep found
                && step.Cautions.All(found.Cautions.Contains)
                && step.HoldPoints.All(found.HoldPoints.Contains)));
        });

    [Law]
    public Property Merge_KeepsEveryEdge() => Prop.ForAll(
        ArbMap.Default.ArbFor<int>(),
        seed =>
        {
            Procedure[] parts = Parts(seed);
            Procedure whole = Procedure.Merge("whole", "Whole", parts);
            return whole.Steps.Count == whole.InOrder().Count && parts.All(part => part.Steps.All(step => step.Predecessors.All(before =>
                whole.Find(before) == whole.Find(step.Id) || Orders.Reaches(whole, whole.Find(before)!.Id, whole.Find(step.Id)!.Id))));
        });

    [Law]
    public Property Merge_IsFreeOfTheOrderOfItsParts() => Prop.ForAll(
        ArbMap.Default.ArbFor<int>(),
        seed =>
        {
            Procedure[] parts = Parts(seed);
            return Text(Procedure.Merge("whole", "Whole", parts)) == Text(Procedure.Merge("whole", "Whole", parts.Reverse()))
                && Text(Procedure.Merge("whole", "Whole", parts)) == Text(Procedure.Merge("whole", "Whole", [parts[1], parts[2], parts[0]]));
        });

    public static TheoryData<int> Subsets => [.. Enumerable.Range(0, 31).Select(i => i == 0 ? 2047 : i).Concat([1023, 1024, 1025, 1026, 1028, 1040, 1056, 1088, 1536, 1072, 32, 64, 96, 128, 256, 512, 480, 992, 72, 520])];

    [Theory]
    [MemberData(nameof(Subsets))]
    public void Merge_OfAnyOwnProcedures_IsHarmless(int subset)
    {
        Procedure[] parts = [.. ServiceProcedures.All.Where((_, i) => (subset & (1 << i)) != 0)];
        foreach (Circumstances known in new[] { Circumstances.Unknown, Orders.Petrol, Orders.Diesel })
        {
            Procedure whole = Procedure.Merge("visit", "Visit", parts).For(known);
            Procedure other = Procedure.Merge("visit", "Visit", parts.Select(part => part.For(known)));
            Assert.True(whole.IsSound && other.IsSound, string.Join("; ", whole.Findings.Concat(other.Findings)));
            Assert.True(whole.Steps.Count(step => step.Acts.Contains(StepAct.Start)) <= 3);
        }
    }

    [Fact]
    public void Merge_OilAndBelt_TakesTheBeltOffOnceAndFitsTheNewOne()
    {
        Procedure whole = Procedure.Merge("visit", "Visit", [ServiceProcedures.OilAndImpeller, ServiceProcedures.BeltReplacement]).For(Orders.Petrol);
        Assert.Single(whole.Steps, step => step.Acts.Contains(StepAct.BeltOff));
        ProcedureStep on = Assert.Single(whole.Steps, step => step.Acts.Contains(StepAct.BeltOn));
        Assert.Equal(StepWork.Replace, on.Work);
        Assert.True(whole.MustPrecede("pump-cover-on", "belt-on"));
    }

    [Fact]
    public void Merge_PetrolFuelFilterAndOil_OpensFuelBeforeTheEngineIsWarm()
    {
        Procedure whole = Procedure.Merge("visit", "Visit", [ServiceProcedures.OilAndImpeller, ServiceProcedures.FuelFilter]).For(Orders.Petrol);
        Assert.True(whole.MustPrecede("fuel-filter-off", "warm-run"));
        Assert.True(whole.MustPrecede("fuel-close", "warm-run"));
        Assert.True(whole.MustPrecede("ventilate-after-fuel", "warm-run"));
        Assert.True(whole.MustPrecede("ventilate-after-fuel", "catch-spills"));
        Assert.Single(whole.Steps, step => step.Id == "proof-start");
    }

    [Fact]
    public void Merge_OilAndLayUp_RunsFirstAndDrainsForWinterLast()
    {
        Procedure whole = Procedure.Merge("visit", "Visit", [ServiceProcedures.OilAndImpeller, ServiceProcedures.LayUp]).For(Orders.Petrol);
        Assert.True(whole.MustPrecede("load-run", "open-raw-drains"));
        Assert.True(whole.MustPrecede("proof-start", "fog-cylinders"));
        Assert.True(whole.MustPrecede("sniff-and-switch-on", "stop-for-winter"));
        Assert.True(whole.MustPrecede("stabilize-fuel", "warm-run"));
        Assert.Single(whole.Steps, step => step.Id == "warm-run");
    }

    [Fact]
    public void Merge_ImpellerAndCommissioning_OpensTheSeacockOnlyWithThePumpClosed()
    {
        Procedure whole = Procedure.Merge("visit", "Visit", [ServiceProcedures.Impeller, ServiceProcedures.Commissioning]).For(Orders.Petrol);
        Assert.True(whole.MustPrecede("prove-water-first", "pump-cover-off") || whole.MustPrecede("pump-cover-on", "prove-water-first"));
    }

    [Fact]
    public void Merge_SharedAccess_IsOpenedOnceAndClosedInReverse()
    {
        static ProcedureStep S(string id, params string[] after) => ProcedureStep.Of(id, id).After(after);
        Procedure one = Procedure.Of("one", "One", [S("box-off").Opening("box"), S("guard-off", "box-off").Opening("guard"), S("work", "guard-off"), S("guard-on", "work").Closing("guard"), S("box-on", "work").Closing("box")]);
        Procedure two = Procedure.Of("two", "Two", [S("lift-box").Opening("box"), S("other work", "lift-box"), S("put-box", "other work").Closing("box")]);
        Procedure whole = Procedure.Merge("both", "Both", [one, two]);
        string[] order = [.. whole.InOrder().Select(step => step.Id)];
        Assert.Equal("box-off", order[0]);
        Assert.Equal(["guard-on", "box-on"], order.Where(id => id.EndsWith("-on", StringComparison.Ordinal)));
        Assert.Equal(6, order.Length);
        Assert.Equal("box-off", whole.Find("lift-box")!.Id);
        Assert.True(whole.MustPrecede("guard-on", "box-on"));
        Assert.True(whole.MustPrecede("other work", "box-on"));
        Assert.Empty(whole.Findings);
    }

    [Fact]
    public void Merge_LookAndReplace_IsReplace()
    {
        Procedure look = Procedure.Of("look", "Look", [
            ProcedureStep.Of("look-belt", "Look").Inspecting("belt").With(HoldPoint.Confirmed("seen", "seen")).With(Caution.Of(SignalWord.Warning, "mind", Citation.CommonPractice)),
            ProcedureStep.Of("after", "After").After("look-belt")]);
        Procedure whole = Procedure.Merge("both", "Both", [look, Procedure.Of("new", "New", [ProcedureStep.Of("new-belt", "New").Replacing("belt")])]);
        ProcedureStep fit = whole.Find("look-belt")!;
        Assert.Equal("new-belt", fit.Id);
        Assert.Equal(["look-belt"], fit.Includes);
        Assert.Single(fit.HoldPoints);
        Assert.Single(fit.Cautions);
        Assert.True(whole.MustPrecede("new-belt", "after"));
    }

    [Fact]
    public void Merge_WhereNoOrderIsHarmless_SaysSo()
    {
        // The one must be cold, the other hot at the same time: fuel is opened only after the run that heats the engine.
        Procedure bad = Procedure.Of("bad", "Bad", [
            ProcedureStep.Of("run", "Run").Does(StepAct.SupplyWater, StepAct.Ventilate, StepAct.PassOil, StepAct.Start, StepAct.Stop, StepAct.Isolate),
            ProcedureStep.Of("fuel", "Open").After("run").Does(StepAct.OpenFuel)]);
        Procedure whole = Procedure.Merge("visit", "Visit", [bad]);
        Finding finding = Assert.Single(whole.Findings);
        Assert.Contains("hot surface", finding.Message(DisplayUnits.Metric), StringComparison.Ordinal);
    }

    [Fact]
    public void Merge_OfContradictingBoats_IsRefused() =>
        Assert.Throws<ArgumentException>(() => Procedure.Merge("v", "V", [ServiceProcedures.OilAndImpeller.For(Orders.Petrol), ServiceProcedures.FuelFilter.For(Orders.Diesel)]));

    private static Procedure[] Parts(int seed)
    {
        Random random = new(seed);
        return [Orders.Random("a", random), Orders.Random("b", random), Orders.Random("c", random)];
    }

    private static string Text(Procedure procedure) => string.Join('\n', procedure.Steps.Select(step =>
        $"{step} < {string.Join(' ', step.Predecessors.Order())} | {string.Join(' ', step.Cautions)} | {string.Join(' ', step.HoldPoints)} | {string.Join(' ', step.Includes)} | {step.Time}"));
}
