using MarineService.Core.Procedures;
using NodaTime;

namespace MarineService.Core.Tests.Procedures;

/// <summary>The coolant exchange. Its order is common practice, no source.</summary>
public sealed class CoolantTest
{
    private static readonly LocalDate Day = new(2027, 4, 20);

    private static readonly Procedure Coolant = ServiceProcedures.Coolant.For(Orders.Petrol);

    public static TheoryData<string, string> MustPrecede => new()
    {
        { "stop-and-isolate", "coolant-cap-off" }, { "coolant-cold", "coolant-cap-off" }, { "catch-spills", "coolant-cap-off" }, { "coolant-cap-off", "coolant-drain" },
        { "coolant-drain", "coolant-flush" }, { "coolant-flush", "coolant-drains-shut" }, { "coolant-drains-shut", "coolant-fill" }, { "coolant-strength", "coolant-fill" },
        { "coolant-fill", "coolant-cap-on" }, { "coolant-cap-on", "proof-start" }, { "prove-water-first", "proof-start" }, { "load-run", "coolant-level" },
        { "coolant-level", "record" }, { "coolant-away", "restore-bilge" }, { "restore-bilge", "record" },
    };

    public static TheoryData<string, string> Harmful => new()
    {
        // Take the step away that makes it safe, and the check must say what happens.
        { "coolant-cold", "scald" }, { "catch-spills", "poisonous" }, { "stop-and-isolate", "boils dry" }, { "coolant-drains-shut", "runs into the bilge" },
        { "coolant-level", "air" }, { "restore-bilge", "sinks" },
    };

    [Theory]
    [MemberData(nameof(MustPrecede))]
    public void Pair_MustPrecede_InTheGraphAndBySearch(string first, string then)
    {
        Assert.True(Coolant.MustPrecede(first, then));
        Assert.True(Orders.Reaches(Coolant, first, then));
    }

    [Fact]
    public void Procedure_IsSound_AndMarkedAsCommonPractice()
    {
        Assert.Empty(ServiceProcedures.Coolant.Findings);
        Assert.Empty(Coolant.Findings);
        Assert.Equal(CitationStanding.CommonPractice, Coolant.Source.Standing);
    }

    [Theory]
    [MemberData(nameof(Harmful))]
    public void Procedure_WithoutTheStepThatMakesItSafe_IsFoundHarmful(string without, string harm)
    {
        // The warm run of the oil change goes before, so that it is the wait that makes the cap safe.
        Procedure warm = Visit(ServiceProcedures.Oil);
        Procedure less = Procedure.Of("less", "Less", warm.Only("less", "Less", [.. warm.Steps.Select(step => step.Id).Where(id => id != without)]).Steps);
        Assert.Contains(less.Findings, one => one.Rule == ProcedureRules.HarmfulOrder && one["harm"]!.Word!.Contains(harm, StringComparison.Ordinal));
    }

    [Fact]
    public void EveryStepAtTheOpenCircuit_WarnsOfPoison_AndTheCapOfScalding()
    {
        Assert.All(
            Coolant.Steps.Where(step => step.Acts.Contains(StepAct.OpenCoolant) || step.Acts.Contains(StepAct.PourCoolant) || step.Acts.Contains(StepAct.ProveCoolant)),
            step => Assert.Contains(step.Cautions, one => one.Word == SignalWord.Warning && one.Text.Contains("poisonous", StringComparison.Ordinal) && one.Text.Contains("overboard", StringComparison.Ordinal)));
        Assert.All(["coolant-cold", "coolant-cap-off", "coolant-level"], id => Assert.Contains(Coolant.Find(id)!.Cautions, one => one.Word == SignalWord.Warning && one.Text.Contains("cold to the hand", StringComparison.Ordinal)));
    }

    [Fact]
    public void CapOfAHotEngine_IsForbidden_UntilItIsCold()
    {
        Procedure visit = Visit(ServiceProcedures.Oil);
        WorkRecord work = Until(visit, "coolant-cold", started: true);
        Assert.True(work.HasDone("warm-run"));
        StepCheck check = work.Check("coolant-cap-off", Orders.ProofsOf(visit.Find("coolant-cap-off")!));
        Assert.Equal(StepVerdict.Forbidden, check.Verdict);
        Assert.Contains(check.Findings, one => one.Message(DisplayUnits.Metric).Contains("scald", StringComparison.Ordinal));
        work = work.Do("coolant-cold", Orders.ProofsOf(visit.Find("coolant-cold")!));
        Assert.True(work.Check("coolant-cap-off", Orders.ProofsOf(visit.Find("coolant-cap-off")!)).IsAllowed);
    }

    [Fact]
    public void Start_WithTheCircuitOpen_AndSigningOffUnproved_AreForbidden()
    {
        WorkRecord open = Until(Coolant, "coolant-drains-shut");
        Assert.Contains(open.Check("proof-start").Findings, one => one.Message(DisplayUnits.Metric).Contains("boils dry", StringComparison.Ordinal));
        Assert.Contains(open.PutDown("dark").LeftOpen(), one => one["what"]!.Word == "coolant's circuit open");
        WorkRecord unproved = Until(Coolant, "coolant-level");
        Assert.Contains(unproved.Check("record").Findings, one => one.Message(DisplayUnits.Metric).Contains("level has fallen", StringComparison.Ordinal));
    }

    [Fact]
    public void MergedWithEveryOtherVisit_OpensTheCircuitCold_AndLosesNoStep()
    {
        foreach (Procedure other in ServiceProcedures.All.Where(one => one != ServiceProcedures.Coolant))
        {
            Procedure visit = Visit(other);
            Assert.True(visit.IsSound, $"{other.Id}: {string.Join("; ", visit.Findings)}");
            Assert.All(Coolant.Steps, step => Assert.NotNull(visit.Find(step.Id)));
            foreach (string start in visit.Steps.Where(step => step.Acts.Contains(StepAct.Start) && !visit.MustPrecede("coolant-cap-off", step.Id)).Select(step => step.Id))
            {
                Assert.True(visit.MustPrecede(start, "coolant-cold"), $"{other.Id}: {start} may come between the wait and the cap");
            }
        }
    }

    private static Procedure Visit(Procedure other) => Procedure.Merge("visit", "Visit", [ServiceProcedures.Coolant, other]).For(Orders.Petrol);

    /// <summary>Everything that the edges let be done before a step, or only that: done in the listed order.</summary>
    private static WorkRecord Until(Procedure procedure, string step, bool started = false)
    {
        WorkRecord work = WorkRecord.Begin(procedure, Day);
        foreach (ProcedureStep one in procedure.InOrder().Where(one => procedure.MustPrecede(one.Id, step) || (started && procedure.MustPrecede(one.Id, "warm-run")) || (started && one.Id == "warm-run")))
        {
            work = one.IsNeeded(work.Circumstances) == false ? work : work.Do(one.Id, Orders.ProofsOf(one));
            Assert.True(work.HasDone(one.Id), $"{one.Id}: {work.Last}");
        }

        return work;
    }
}
