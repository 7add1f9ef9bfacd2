using System.Text;
using MarineService.Core.Exchange;
using MarineService.Core.Fluids;
using MarineService.Core.Jobs;
using MarineService.Core.Parts;
using MarineService.Core.Procedures;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Tests.Procedures;
using NodaTime;

namespace MarineService.Core.Tests.Jobs;

/// <summary>A visit that is put down before its end: what is proved is entered, the rest is said to be open, and the next day goes on.</summary>
public sealed class PutDownVisitTest
{
    private static readonly JobCard Card = Curlew.Card;

    [Fact]
    public void VisitWithoutTheOil_EntersWhatIsProved_AndSaysWhatIsOpen()
    {
        JobProof proof = Card.Prove(Measured(HalfDone().PutDown("dark")));
        Assert.True(proof.IsPartial);
        Assert.False(proof.IsProved);
        Assert.Equal(["belt-inspect", "strainer"], proof.ProvedTasks.Select(task => task.TaskId).Order());
        Assert.Equal(["engine-oil", "fuel-filter", "impeller-replace"], proof.Findings.Where(one => one.Rule == JobRules.TaskOpen).Select(one => one.Subject.Split('\'')[1]).Order());
        Assert.DoesNotContain(proof.Findings, one => one.Rule == JobRules.StepOpen || one.Rule == JobRules.NotMeasured);
        Assert.Contains("drain-oil", proof.Findings.First(one => one.Subject == "task 'engine-oil'").Message(DisplayUnits.Metric), StringComparison.Ordinal);
        Assert.StartsWith("Put down: proved ", proof.ToString(), StringComparison.Ordinal);
        Assert.Equal(proof.OpenTasks.Select(task => task.TaskId).Order(), Card.Tasks.Where(task => task.CoveredBy is null).Select(task => task.TaskId).Except(["belt-inspect", "strainer"]).Order());

        JobCompletion completion = proof.Complete(Curlew.Log);
        Assert.Equal(["belt-inspect", "strainer"], Done(completion).Keys.Order());
        Assert.True(completion.NextDue["strainer"].Status < DueStatus.Due);
        Assert.True(completion.NextDue["engine-oil"].LastDone < Curlew.Day);
    }

    [Fact]
    public void BoatLeftOpen_IsToldAlthoughTasksAreEntered()
    {
        JobProof proof = Card.Prove(Measured(HalfDone().PutDown("dark")));
        Assert.Contains(proof.Findings, one => one.Rule == WorkRules.LeftDangerous && one["what"]!.Word == "bilge pump off");
        Assert.Equal(Severity.Stop, proof.Severity);
    }

    [Fact]
    public void SameVisit_ThatWasNotPutDown_IsAllOrNothing()
    {
        JobProof proof = Card.Prove(Measured(HalfDone()));
        Assert.False(proof.IsPartial);
        Assert.Empty(proof.ProvedTasks);
        Assert.Empty(proof.Complete(Curlew.Log).Entries);
        Assert.Contains(proof.Findings, one => one.Rule == JobRules.StepOpen);
    }

    [Theory]
    [InlineData("belt as it lies", "strainer")]
    [InlineData("verdict belt-inspect", "strainer")]
    [InlineData("dial meter", "")]
    public void Task_WithoutAMeasurementOfItsOwn_IsOpen(string without, string proved)
    {
        JobProof proof = Card.Prove(Measured(HalfDone().PutDown("dark"), without));
        Assert.Equal(proved, string.Join(" ", proof.ProvedTasks.Select(task => task.TaskId)));
        Assert.Contains(proof.Findings, one => one.Rule == JobRules.NotMeasured);
        Assert.Equal(proved.Length > 0, proof.Complete(Curlew.Log).IsEntered);
    }

    /// <summary>A screw that stayed off keeps out the tasks that took anything off, and no other.</summary>
    [Fact]
    public void CountThatDoesNotComeToNought_KeepsOutWhatTookSomethingOff()
    {
        WorkRecord work = Through(WorkRecord.Begin(Card.Procedure, Curlew.Day), step => step != "record" && step != "plan-next");
        LooseItem[] off = [.. Curlew.OffBy(Card, work)];
        JobMeasurements all = Measured(work.PutDown("late")).With(Curlew.Account()).With(Curlew.Back(off.Skip(1)));
        JobProof proof = Card.Prove(all);
        string[] takesOff = [.. Card.Engine.Specification.PartsSheet!.ComesOff.Where(task => task.Items.Count > 0).Select(task => task.TaskId)];
        Assert.NotEmpty(proof.ProvedTasks);
        Assert.DoesNotContain(proof.ProvedTasks, task => takesOff.Contains(task.TaskId));
        Assert.Contains(proof.Findings, one => one.Code == "TALLY-001");
    }

    [Fact]
    public void TaskWithoutOneOfItsSteps_IsOpen()
    {
        WorkRecord work = Through(WorkRecord.Begin(Card.Procedure, Curlew.Day), step => !Waits("drain-oil", step) && step != "open-seacock" && !Waits("open-seacock", step));
        JobProof proof = Card.Prove(Measured(work.PutDown("rain")));
        Assert.Equal(["belt-inspect"], proof.ProvedTasks.Select(task => task.TaskId));
        Assert.Contains("open-seacock", proof.Findings.First(one => one.Subject == "task 'strainer'").Message(DisplayUnits.Metric), StringComparison.Ordinal);
    }

    [Fact]
    public void HarmThatNeverCameRight_KeepsEverythingOut()
    {
        JobProof proof = Card.Prove(Measured(HalfDone().Do("proof-start").PutDown("water in the boat")));
        Assert.Contains(proof.Findings, one => one.Rule == WorkRules.Forbidden);
        Assert.Empty(proof.ProvedTasks);
        Assert.False(proof.Complete(Curlew.Log).IsEntered);
    }

    [Fact]
    public void StepThatCameTooEarly_HindersOnlyItsOwnTasks()
    {
        JobProof proof = Card.Prove(Measured(HalfDone().Do("reconcile").PutDown("dark")));
        Assert.Contains(proof.Findings, one => one.Rule == WorkRules.TooEarly);
        Assert.Equal(["belt-inspect", "strainer"], proof.ProvedTasks.Select(task => task.TaskId).Order());
    }

    [Fact]
    public void TakenUpTheNextDay_TheRestIsEntered_EachTaskOnceAndOnItsOwnDay()
    {
        JobCompletion first = Card.Prove(Measured(HalfDone().PutDown("dark"))).Complete(Curlew.Log);
        WorkRecord next = HalfDone().PutDown("dark").TakeUp(Curlew.Day.PlusDays(1));
        Assert.Contains(next.ToDo, step => step.Id == "open-seacock");
        JobProof proof = Card.Prove(Measured(Through(next, _ => true)).With(Curlew.Account()));
        Assert.True(proof.IsProved, proof.Explain(DisplayUnits.Metric).ToString());
        JobCompletion second = proof.Complete(first.Log);
        Assert.Equal(["engine-oil", "fuel-filter", "impeller-replace"], Done(second).Keys.Order());
        Assert.All(Done(second).Values, date => Assert.Equal(Curlew.Day.PlusDays(1), date));
        Assert.All(Done(first).Values, date => Assert.Equal(Curlew.Day, date));

        // The same report on a log that knows nothing of the first day gives both days.
        Assert.Equal(Curlew.Day, Done(proof.Complete(Curlew.Log))["strainer"]);
        Assert.Equal(5, Done(proof.Complete(Curlew.Log)).Count);

        // And told twice it is entered once.
        Assert.False(proof.Complete(second.Log).IsEntered);
    }

    [Fact]
    public void EverythingProvedButTheLastSteps_IsStillNotWhole()
    {
        WorkRecord work = Through(WorkRecord.Begin(Card.Procedure, Curlew.Day), step => step != "record" && step != "plan-next");
        JobProof proof = Card.Prove(Measured(work.PutDown("late")).With(Curlew.Account()));
        Assert.False(proof.IsProved);
        Assert.Equal(["step 'plan-next'", "step 'record'"], proof.Findings.Where(one => one.Rule == JobRules.StepOpen).Select(one => one.Subject).Order());
        Assert.Equal(5, proof.ProvedTasks.Count);
    }

    [Fact]
    public void OilThatDoesNotAddUp_KeepsTheOilOut_AndNothingElse()
    {
        WorkRecord work = Through(WorkRecord.Begin(Card.Procedure, Curlew.Day), step => step != "record" && step != "plan-next");
        OilChange account = Curlew.Account().Poured(MeasuredVolume.Of(UnitsNet.Volume.FromLiters(1), UnitsNet.Temperature.FromDegreesCelsius(15)))
            .Settled(DipstickReading.OfRange(0.9).SettledFor(NodaTime.Duration.FromMinutes(15)));
        JobProof proof = Card.Prove(Measured(work.PutDown("late")).With(account));
        Assert.Equal(["belt-inspect", "fuel-filter", "impeller-replace", "strainer"], proof.ProvedTasks.Select(task => task.TaskId).Order());
        Assert.Contains(proof.Findings, one => one.Subject == "task 'engine-oil'" && one.Rule == JobRules.TaskOpen);
    }

    [Fact]
    public void Report_OfHalfAVisit_SaysTheSameAsTheRecord_AndItsCardIsFoundAgain()
    {
        VisitReport report = VisitReport.Of(Card.Id, Curlew.Day,
            [.. HalfDone().Events.Select(one => VisitEvent.Step(one.Text, [.. one.Proofs])), VisitEvent.PutDown("dark")])
            .Measured(EngineHours.FromHours(104.2m), belt: [.. Card.Belt.Value.Stops.Select(stop => stop.Face == MarineService.Core.Belts.BeltFace.Back ? $"{stop.PulleyName}(back)" : stop.PulleyName)],
                verdicts: new Dictionary<string, bool> { ["belt-inspect"] = true }).WithTally(Curlew.Lines(Curlew.OffBy(Card, HalfDone())));
        report = VisitReportJson.Read(Encoding.UTF8.GetBytes(VisitReportJson.ToText(report))).Value;
        JobProof proof = Card.Prove(report);
        Assert.Equal(["belt-inspect", "strainer"], proof.ProvedTasks.Select(task => task.TaskId).Order());

        ServiceLog after = proof.Complete(Curlew.Log).Log;
        Assert.Equal(Card.Id, JobCard.PrepareAgain(Curlew.Boat, after, report, Curlew.Spring).Value.Id);
        Assert.DoesNotContain(JobCard.Prepare(Curlew.Boat, after, Curlew.Day).Value.Tasks, task => task.TaskId == "strainer");
        Assert.False(JobCard.PrepareAgain(Curlew.Boat, after, VisitReport.Of("Dipper/main/2027-04-20/strainer", Curlew.Day, [])).IsKnown);
        Assert.False(JobCard.PrepareAgain(Curlew.Boat, after, VisitReport.Of("Curlew/main/2027-04-20/nothing", Curlew.Day, [])).IsKnown);
        Assert.False(JobCard.PrepareAgain(Curlew.Boat, after, VisitReport.Of(Card.Id, Curlew.Day.PlusDays(1), [])).IsKnown);
    }

    /// <summary>Everything that the oil does not hold up.</summary>
    private static WorkRecord HalfDone() => Through(WorkRecord.Begin(Card.Procedure, Curlew.Day), step => !Waits("drain-oil", step));

    private static bool Waits(string first, string step) => first == step || Card.Procedure.MustPrecede(first, step);

    private static WorkRecord Through(WorkRecord work, Func<string, bool> isDone)
    {
        while (work.Next.FirstOrDefault(step => isDone(step.Id)) is ProcedureStep step)
        {
            work = work.Do(step.Id, Orders.ProofsOf(step));
            Assert.True(work.Last!.Check!.IsAllowed, work.Last.ToString());
        }

        return work;
    }

    private static JobMeasurements Measured(WorkRecord work, string? without = null)
    {
        JobMeasurements all = JobMeasurements.Of(work).With(Curlew.Back(Curlew.OffBy(Card, work)));
        all = without == "dial meter" ? all : all.WithDial(EngineHours.FromHours(104.2m));
        all = without == "belt as it lies" ? all : all.With(Card.Belt.Value);
        return without == "verdict belt-inspect" ? all : all.Inspected("belt-inspect", passed: true);
    }

    private static Dictionary<string, LocalDate> Done(JobCompletion completion) => completion.Entries.Select(entry => entry.Fact!).ToDictionary(
        fact => fact is Completion done ? done.TaskId : ((OilChangeRecord)fact).TaskId, fact => fact.Date);
}
