using MarineService.Core.Engines;
using MarineService.Core.Fluids;
using MarineService.Core.Jobs;
using MarineService.Core.Procedures;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using NodaTime;

namespace MarineService.Core.Tests.Jobs;

public sealed class JobCardTest
{
    private static readonly JobCard Card = Curlew.Card;

    public static TheoryData<string> EveryProof =>
    [
        "dial meter", "oil account", "belt as it lies", "every count",
        .. Card.Kit.ComesOff.Value.Select(item => $"count {item.Part}"),
        .. Card.Kit.ComesOff.Value.Where(item => item.Part.CaptiveWashers > 0).Select(item => $"washers {item.Part}"),
        .. Card.Tasks.Where(task => task.NeedsVerdict).Select(task => $"verdict {task.TaskId}"),
        .. Card.Steps.Where(step => step.IsNeeded(Card.Procedure.Circumstances) == true).SelectMany(step => step.HoldPoints).Select(point => point.Id),
    ];

    [Fact]
    public void Card_WithNothingMissing_ProvesItself()
    {
        JobProof proof = Card.Prove(Curlew.AllOf(Card));
        Assert.True(proof.IsProved, proof.Explain(DisplayUnits.Metric).ToString());
    }

    [Theory]
    [MemberData(nameof(EveryProof))]
    public void Card_WithAnyOneProofMissing_IsNotProved_AndTheLogIsUntouched(string without)
    {
        JobProof proof = Card.Prove(Curlew.AllOf(Card, without));
        Assert.False(proof.IsProved);
        JobCompletion completion = proof.Complete(Curlew.Log);
        Assert.Empty(completion.Entries);
        Assert.Same(Curlew.Log, completion.Log);
    }

    [Fact]
    public void Card_OfSpring_LooksAtTheOilColdFirst_AndRestoresTheBilgeLast() => Assert.All([Card, Curlew.Due], OilFirstBilgeLast);

    private static void OilFirstBilgeLast(JobCard card)
    {
        string[] order = [.. card.Steps.Select(step => step.Id)];
        Assert.True(Array.IndexOf(order, "look-at-oil-cold") <= 2);
        Assert.True(Array.IndexOf(order, "look-at-oil-cold") < order.Select((id, i) => (id, i)).Where(one => card.Procedure.Find(one.id)!.Acts.Contains(StepAct.Start)).Min(one => one.i));
        Assert.Equal(["restore-bilge", "record"], order.SkipWhile(id => id != "restore-bilge").Where(id => id is not "land-waste").Take(2));
    }

    [Fact]
    public void Card_OfSpring_HoldsWhatIsDueAndSaysWhatItDoesNotKnow()
    {
        JobCard due = Curlew.Due;
        Assert.Contains(due.Tasks, task => task.TaskId == "strainer" && task.How is not null);
        Assert.All(due.Tasks, task => Assert.True(task.Due.Status >= DueStatus.Due));
        Assert.True(due.Procedure.IsSound);
        Assert.Empty(due.Procedure.OpenQuestions);
        Assert.All(due.Tasks.Where(task => task.How is null), task => Assert.Contains(due.Missing, line => line.Contains($"'{task.TaskId}'", StringComparison.Ordinal)));
    }

    [Fact]
    public void Card_ChoosesTheOilForTheWeatherToCome_OrSaysThatTheWeatherIsNotKnown()
    {
        Assert.Equal("15W-40", Card.Oil!.Choice.Value.Best.Value.Designation);
        Assert.Equal(6.6, Card.Oil.ToHave.Value.Liters, 6);
        JobCard blind = JobCard.PrepareFor(Curlew.Boat, Curlew.Log, Curlew.Day, ["engine-oil"]).Value;
        Assert.False(blind.Oil!.Choice.IsKnown);
        Assert.Contains(blind.Missing, line => line.Contains("air temperature", StringComparison.Ordinal));
    }

    [Fact]
    public void Card_OfABoatOfWhichLittleIsSaid_AsksAndDoesNotGuess()
    {
        EngineSpecification bare = EngineSpecification.Named("Brae 16D").With(ServiceTask.Replace("impeller-replace", ServiceInterval.OfMonths(24)));
        BoatSpecification boat = BoatSpecification.Of(Boat.Of("Tern")).WithEngine("main", bare);
        JobCard card = JobCard.Prepare(boat, ServiceLog.Empty, Curlew.Day).Value;
        Assert.Equal([Circumstance.Petrol, Circumstance.BeltBeforePump, Circumstance.Seacock], card.Procedure.OpenQuestions);
        Assert.Contains("The engine's fuel.", card.Missing);
        Assert.DoesNotContain("The engine's fuel.", JobCard.Prepare(boat, ServiceLog.Empty, Curlew.Day, JobConditions.NotStated.With(Circumstance.Petrol, false)).Value.Missing);
    }

    [Fact]
    public void Card_WhenNothingIsDue_IsNotKnown()
    {
        BoatSpecification boat = BoatSpecification.Of(Boat.Of("Tern")).WithEngine("main", EngineSpecification.Named("Brae 16D"));
        Assert.False(JobCard.Prepare(boat, ServiceLog.Empty, Curlew.Day).IsKnown);
        Assert.Throws<KeyNotFoundException>(() => JobCard.Prepare(boat, ServiceLog.Empty, Curlew.Day, engine: "port"));
    }

    [Fact]
    public void Proof_OfAnotherCard_IsRefused()
    {
        JobCard other = Curlew.Due;
        JobProof proof = Card.Prove(Curlew.AllOf(other));
        Assert.Equal("JOB-001", Assert.Single(proof.Findings).Code);
        Assert.False(proof.Complete(Curlew.Log).IsEntered);
    }

    [Fact]
    public void Proof_WithTheBeltLaidOtherwise_IsRefused()
    {
        string[] stops = [.. Card.Belt.Value.Stops.Select(stop => stop.PulleyName)];
        (stops[1], stops[2]) = (stops[2], stops[1]);
        JobProof proof = Card.Prove(Curlew.AllOf(Card, "belt as it lies").With(Card.Engine.Specification.BeltDrive!.Route(stops)));
        Assert.Contains(proof.Findings, finding => finding.Code == "JOB-004");
        Assert.False(proof.IsProved);
    }

    [Fact]
    public void Proof_WithOilThatDoesNotAddUp_IsRefused()
    {
        OilChange account = Curlew.Account().Poured(MeasuredVolume.Of(UnitsNet.Volume.FromLiters(1), UnitsNet.Temperature.FromDegreesCelsius(15)))
            .Settled(DipstickReading.OfRange(0.9).SettledFor(NodaTime.Duration.FromMinutes(15)));
        Assert.False(Card.Prove(Curlew.AllOf(Card).With(account)).IsProved);
        Assert.Contains(Card.Prove(Curlew.AllOf(Card).With(Curlew.Account().Ran())).Findings, finding => finding.Code == "JOB-005");
    }

    [Fact]
    public void Completion_OfAProvedVisit_EntersEachTaskOnce_AndMovesTheDuePoints()
    {
        JobCompletion completion = Card.Prove(Curlew.AllOf(Card)).Complete(Curlew.Log);
        Assert.Equal(
            Card.Tasks.Where(task => task.How is not null && task.CoveredBy is null).Select(task => task.TaskId).Order(),
            completion.Entries.Select(entry => entry.Fact switch { Completion done => done.TaskId, OilChangeRecord oil => oil.TaskId, _ => "" }).Order());
        Assert.Equal(Curlew.Log.Entries.Count + completion.Entries.Count, completion.Log.Entries.Count);
        Assert.Equal(EvidenceGrade.PhotoReceiptAndChecker, completion.Grade);
        Assert.All(Card.Tasks.Where(task => task.How is not null), task => Assert.True(completion.NextDue[task.TaskId].Status < DueStatus.Due));
        Assert.All(completion.Entries, entry => Assert.NotNull(entry.Id));
        Assert.Equal(new LocalDate(2028, 4, 20), completion.NextDue["engine-oil"].Due.Date);
    }

    [Fact]
    public void Completion_OfAFailedInspection_SaysSo()
    {
        JobTask task = Card.Tasks.First(one => one.NeedsVerdict);
        JobCompletion completion = Card.Prove(Curlew.AllOf(Card).Inspected(task.TaskId, passed: false)).Complete(Curlew.Log);
        Assert.Contains(completion.Entries, entry => entry.Fact is Completion { Outcome: CompletionOutcome.Failed } done && done.TaskId == task.TaskId);
    }

    [Fact]
    public void Start_BeforeWater_StandsAgainstTheVisit()
    {
        WorkRecord work = WorkRecord.Begin(Card.Procedure, Curlew.Day).Do("read-dial", StepProof.Passed("dial").WithNote("104.2 h")).Do("proof-start");
        JobProof proof = Card.Prove(JobMeasurements.Of(work));
        Assert.Contains(proof.Findings, finding => finding.Code == "WORK-002" && finding.Message(DisplayUnits.Metric).Contains("dry impeller", StringComparison.Ordinal));
        Assert.Equal(Severity.Stop, proof.Severity);
    }

    [Fact]
    public void Visit_TakesTheTasksOfThePlan()
    {
        Visit visit = VisitPlanner.From(Curlew.Day, 10m).LeastCost([VisitTask.Of("engine-oil", Curlew.Day, 1m, 1m)]).Value.Visits[0];
        JobCard card = JobCard.PrepareVisit(Curlew.Boat, Curlew.Log, visit, Curlew.Spring).Value;
        Assert.Equal(["engine-oil"], card.Tasks.Select(task => task.TaskId));
        Assert.False(card.MovesBelt);
    }

    /// <summary>A plan over years names the tasks of a second engine behind its id: each engine's card takes its own.</summary>
    [Theory]
    [InlineData("port", "hoses")]
    [InlineData("starboard", "strainer")]
    public void Visit_OfABoatWithTwoEngines_GivesEachItsOwnTasks(string engine, string taskId)
    {
        BoatSpecification boat = BoatSpecification.Of(Boat.Of("Tern", hasSeacock: true))
            .WithEngine("port", EngineSpecification.Named("Brae 16D").With(ServiceTask.Inspect("hoses", ServiceInterval.OfMonths(12))))
            .WithEngine("starboard", EngineSpecification.Named("Brae 16D").With(ServiceTask.Clean("strainer", ServiceInterval.OfMonths(12))));
        ServiceLog log = ServiceLog.Of(
        [
            LogEntry.Of(Completion.Passed("hoses", Curlew.Day.PlusMonths(-12))).For("port"),
            LogEntry.Of(Completion.Of("strainer", Curlew.Day.PlusMonths(-12))).For("starboard"),
        ]);
        RepeatedTask[] tasks = [.. log.DueList(boat, Curlew.Day).Tasks.Select(due => RepeatedTask.Of(due, 10m, 1m).Value)];
        Visit visit = VisitPlanner.From(Curlew.Day, 10m).LeastCost(tasks, Curlew.Day.PlusMonths(6)).Value.Visits[0];
        Assert.Equal(2, visit.Items.Count);
        Assert.Equal([taskId], JobCard.PrepareVisit(boat, log, visit, engine: engine).Value.Tasks.Select(task => task.TaskId));
    }
}
