using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Procedures;
using NodaTime;

namespace MarineService.Core.Tests.Procedures;

public sealed class WorkRecordTest
{
    private static readonly LocalDate Day = new(2027, 4, 20);
    private static readonly Procedure Petrol = ServiceProcedures.OilAndImpeller.For(Orders.Petrol);

    [Law]
    public Property Work_InAnyOrderOfTheEdges_IsAccepted() => Prop.ForAll(
        ArbMap.Default.ArbFor<int>(),
        seed =>
        {
            Procedure fit = Petrol.For(Circumstances.Unknown.With(Circumstance.OilUnfit, false).With(Circumstance.PiecesMissing, false));
            WorkRecord work = Orders.AtRandom(fit, new Random(seed)).Aggregate(WorkRecord.Begin(fit, Day), (all, id) => all.Do(id, Orders.ProofsOf(fit.Find(id)!)));
            return work.IsComplete.Label(string.Join("; ", work.Findings));
        });

    [Law]
    public Property Work_ThatIsAccepted_KeepsEveryEdge() => Prop.ForAll(
        ArbMap.Default.ArbFor<int>(),
        seed =>
        {
            // Steps come in any order at all; those that count must keep every edge.
            Random random = new(seed);
            Procedure fit = Petrol.For(Circumstances.Unknown.With(Circumstance.OilUnfit, false).With(Circumstance.PiecesMissing, false));
            WorkRecord work = WorkRecord.Begin(fit, Day);
            for (int round = 0; round < 200; round++)
            {
                ProcedureStep step = fit.Steps[random.Next(fit.Steps.Count)];
                work = work.Do(step.Id, Orders.ProofsOf(step));
            }

            List<string> done = [.. work.Events.Where(one => one.Check!.IsAllowed).Select(one => one.Text)];
            return done.Distinct().Count() == done.Count && done.All(id =>
                fit.Find(id)!.Predecessors.All(before => done.IndexOf(before) >= 0 && done.IndexOf(before) < done.IndexOf(id)));
        });

    [Fact]
    public void Work_InListedOrder_IsComplete()
    {
        WorkRecord work = Through(Petrol);
        Assert.True(work.IsComplete);
        Assert.Empty(work.Findings);
        Assert.Empty(work.LeftOpen());
        Assert.Equal(45, work.Events.Count(one => one.Kind == WorkEventKind.Step));
    }

    [Fact]
    public void Start_BeforeWater_IsForbiddenWithItsHarmAndTheMissingStep()
    {
        WorkRecord work = Through(Petrol, until: "open-seacock");
        StepCheck check = work.Check("proof-start", Orders.ProofsOf(Petrol.Find("proof-start")!));
        Assert.Equal(StepVerdict.Forbidden, check.Verdict);
        Assert.Contains("ventilate-again", check.MissingSteps);
        Assert.Contains(check.Findings, one => one.Message(DisplayUnits.Metric).Contains("dry impeller", StringComparison.Ordinal));
        Assert.False(work.Do("proof-start").HasDone("proof-start"));
    }

    [Fact]
    public void Step_TooEarly_NamesTheMissingStep()
    {
        StepCheck check = WorkRecord.Begin(Petrol, Day).Check("secure-boat");
        Assert.Equal(StepVerdict.TooEarly, check.Verdict);
        Assert.Equal(["read-dial"], check.MissingSteps);
        Assert.Equal("read-dial", Assert.Single(check.Findings)["missing step"]!.Word);
    }

    [Theory]
    [InlineData(3.99, StepVerdict.Unproved)]
    [InlineData(4, StepVerdict.Allowed)]
    public void Blower_ForLessThanFourMinutes_IsNotProved(double minutes, StepVerdict expected)
    {
        // 33 CFR 183.610: operate blower for 4 minutes.
        WorkRecord work = Through(Petrol, until: "ventilate-first");
        Assert.Equal(expected, work.Check("ventilate-first", StepProof.Passed("no-vapour-first").WithTime(UnitsNet.Duration.FromMinutes(minutes))).Verdict);
    }

    [Fact]
    public void HoldPoint_WithoutProof_HoldsTheNextStepBack()
    {
        WorkRecord work = WorkRecord.Begin(Petrol, Day).Do("read-dial");
        Assert.Equal(StepVerdict.Unproved, work.Last!.Check!.Verdict);
        Assert.Equal(StepVerdict.TooEarly, work.Check("secure-boat").Verdict);
        Assert.Equal(StepVerdict.Unproved, work.Check("read-dial", StepProof.Passed("dial")).Verdict);
        Assert.True(work.Check("read-dial", StepProof.Passed("dial").WithNote("512.0 h")).IsAllowed);
    }

    [Fact]
    public void StepTwice_DoesNotCountTwice()
    {
        WorkRecord work = WorkRecord.Begin(Petrol, Day).Do("read-dial", StepProof.Passed("dial").WithNote("512.0 h"));
        Assert.Equal(StepVerdict.Repeated, work.Do("read-dial", StepProof.Passed("dial").WithNote("512.0 h")).Last!.Check!.Verdict);
        Assert.Equal(StepVerdict.Unknown, work.Check("read-dail").Verdict);
    }

    [Fact]
    public void OilFoundUnfit_ForbidsTheWarmRun_DrainsCold_AndStartsAfterTheCauseIsMended()
    {
        WorkRecord work = Through(Petrol, until: "look-at-oil-cold").Do("look-at-oil-cold", StepProof.Failed("oil-fit").WithNote("milky"));
        Assert.Equal(true, work.Circumstances[Circumstance.OilUnfit]);
        work = Through(work, until: "warm-run");
        Assert.Equal(StepVerdict.Forbidden, work.Check("warm-run", Orders.ProofsOf(Petrol.Find("warm-run")!)).Verdict);
        work = Through(work, until: "mend-oil-fault");
        Assert.True(work.HasDone("drain-oil"));
        Assert.Equal(StepVerdict.Forbidden, work.Check("proof-start", Orders.ProofsOf(Petrol.Find("proof-start")!)).Verdict);
        Assert.True(Through(work).IsComplete);
    }

    [Fact]
    public void PiecesMissing_AreTracedBeforeTheNewImpeller()
    {
        WorkRecord work = Through(Petrol, until: "inspect-impeller").Do("inspect-impeller", StepProof.Passed("vanes").WithMissing(2));
        Assert.True(work.Last!.Check!.IsAllowed);
        Assert.Equal(["inspect-pump", "trace-pieces"], work.Check("impeller-in", Orders.ProofsOf(Petrol.Find("impeller-in")!)).MissingSteps);
        Assert.Equal(StepVerdict.Unproved, work.Check("trace-pieces", StepProof.Passed("pieces").WithMissing(1)).Verdict);
        Assert.True(Through(work).IsComplete);
    }

    [Fact]
    public void PutDown_WithThePumpOpen_IsLeftDangerous_AndTagsExpireOvernight()
    {
        WorkRecord work = Through(Petrol, until: "impeller-in").PutDown("dark");
        Assert.Contains(work.LeftOpen(), one => one.Rule == WorkRules.LeftDangerous && one["what"]!.Word == "raw-water side open");
        Assert.Equal(WorkRules.NotTakenUp, Assert.Single(work.Check("impeller-in").Findings).Rule);
        Assert.Empty(work.TakeUp(Day).ToDo.Select(step => step.Id).Intersect(["shut-seacock", "stop-and-isolate"]));
        WorkRecord next = work.TakeUp(Day.PlusDays(1));
        string[] toDo = [.. next.ToDo.Select(step => step.Id)];
        Assert.Contains("shut-seacock", toDo);
        Assert.Contains("stop-and-isolate", toDo);
        Assert.DoesNotContain("read-dial", toDo);
        Assert.DoesNotContain("warm-run", toDo);
        Assert.DoesNotContain("read-level-before", toDo);
        Assert.True(Through(next).IsComplete);
    }

    [Fact]
    public void TakenUp_BeforeTheRun_AsksForSniffWaterAndOilAgain()
    {
        WorkRecord next = Through(Petrol, until: "warm-run").PutDown("rain").TakeUp(Day.PlusDays(3));
        Assert.Equal(
            ["catch-spills", "look-at-oil-cold", "prove-water-first", "secure-boat", "ventilate-first"],
            next.ToDo.TakeWhile(step => step.Id != "warm-run").Select(step => step.Id).Order());
        Assert.Equal(StepVerdict.Forbidden, next.Check("warm-run", Orders.ProofsOf(Petrol.Find("warm-run")!)).Verdict);
        Assert.True(Through(next).IsComplete);
    }

    [Fact]
    public void Cranking_WantsTheSeacockShut_StartingWantsWater()
    {
        Procedure crank = Procedure.Of("crank", "Crank", [
            ProcedureStep.Of("shut", "Shut").Does(StepAct.ShutSeacock), ProcedureStep.Of("air", "Air").Does(StepAct.Ventilate),
            ProcedureStep.Of("crank", "Crank").After("shut", "air").Does(StepAct.Crank), ProcedureStep.Of("open", "Open").After("crank").Does(StepAct.SupplyWater)]);
        Assert.Empty(crank.Findings);
        Procedure wrong = Procedure.Of("wrong", "Wrong", [
            ProcedureStep.Of("air", "Air").Does(StepAct.Ventilate), ProcedureStep.Of("open", "Open").Does(StepAct.SupplyWater),
            ProcedureStep.Of("crank", "Crank").After("open", "air").Does(StepAct.Crank)]);
        Assert.NotEmpty(wrong.Findings);
        Assert.All(wrong.Findings, one => Assert.Contains("muffler", one.Message(DisplayUnits.Metric), StringComparison.Ordinal));
    }

    [Fact]
    public void UnknownFuel_IsAskedFor_NotGuessed()
    {
        Procedure unknown = ServiceProcedures.OilAndImpeller.For(Circumstances.Unknown.With(Circumstance.Seacock, true));
        Assert.Equal([Circumstance.Petrol, Circumstance.BeltBeforePump], unknown.OpenQuestions);
        WorkRecord work = Through(unknown, until: "ventilate-first");
        StepCheck check = work.Check("catch-spills", Orders.ProofsOf(unknown.Find("catch-spills")!));
        Assert.Contains(check.Findings, one => one.Rule == WorkRules.NotSaid && one["circumstance"]!.Word == "Petrol");
        Assert.True(work.Found(Circumstance.Petrol, false).Check("catch-spills", Orders.ProofsOf(unknown.Find("catch-spills")!)).IsAllowed);
    }

    private static WorkRecord Through(Procedure procedure, string? until = null) => Through(WorkRecord.Begin(procedure, Day), until);

    private static WorkRecord Through(WorkRecord work, string? until = null)
    {
        while (work.Next.FirstOrDefault(step => step.Id != until) is ProcedureStep step && !(until is not null && work.Procedure.InOrder().TakeWhile(one => one.Id != until).All(one => one.Id == until || work.HasDone(one.Id) || one.IsNeeded(work.Circumstances) == false)))
        {
            work = work.Do(step.Id, Orders.ProofsOf(step));
            Assert.True(work.Last!.Check!.IsAllowed, work.Last.ToString());
        }

        return work;
    }
}
