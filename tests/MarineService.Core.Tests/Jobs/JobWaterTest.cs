using System.Text;
using MarineService.Core.Cooling;
using MarineService.Core.Exchange;
using MarineService.Core.Jobs;
using MarineService.Core.Procedures;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Tests.Exchange;
using MarineService.Core.Tests.Procedures;
using UnitsNet;

namespace MarineService.Core.Tests.Jobs;

/// <summary>What a visit tells of the raw water: the first seconds of the run, the old impeller, the bucket test.</summary>
public sealed class JobWaterTest
{
    private static readonly JobCard Card = Curlew.Card;

    private static readonly string Outlet = Card.Engine.Specification.RawWater!.Circuit.Outlets[0].Name;

    private static StartTimes Good => Card.Engine.Specification.RawWater!.Circuit.Outlets.Aggregate(
        StartTimes.Until(Seconds(40)).PressureCame(Seconds(4)), (all, outlet) => all.WaterCame(outlet.Name, Seconds(12)));

    [Fact]
    public void Start_WithPressureAndWaterInTime_StandsForTheVisit() => Assert.True(Prove(start: Good).IsProved);

    [Fact]
    public void Start_WithoutWater_StopsTheVisit()
    {
        JobProof proof = Prove(start: StartTimes.Until(Seconds(40)).PressureCame(Seconds(4)));
        Assert.Equal(Severity.Stop, proof.Severity);
        Assert.Contains(proof.Findings, one => one.Rule == ExhaustRules.WaterNotCome);
        Assert.False(proof.Complete(Curlew.Log).IsEntered);
    }

    [Fact]
    public void Start_AtAnOutletThatTheEngineDoesNotHave_DoesNotFit()
    {
        JobProof proof = Prove(start: Good.WaterCame("chimney", Seconds(3)));
        Finding finding = Assert.Single(proof.Findings, one => one.Rule == JobRules.DoesNotFit);
        Assert.Contains("chimney", finding.Message(DisplayUnits.Metric), StringComparison.Ordinal);
        Assert.Contains(Outlet, finding.Message(DisplayUnits.Metric), StringComparison.Ordinal);
    }

    [Fact]
    public void StartTimes_WithoutACircuit_AreHeldAgainstTheOutletsThatWereSeen()
    {
        Assert.Equal(StartVerdict.KeepRunning, StartTimes.Until(Seconds(30)).PressureCame(Seconds(10)).WaterCame("port", Seconds(30)).ReportFor(null).Value.Verdict);
        Assert.Equal(StartVerdict.StopNow, StartTimes.Until(Seconds(30)).WaterCame("port", Seconds(12)).ReportFor(null).Value.Verdict);
        Assert.False(StartTimes.Until(Seconds(30)).ReportFor(null).IsKnown);
        Assert.Throws<ArgumentException>("outlet", () => StartTimes.Until(Seconds(30)).WaterCame("port", Seconds(1)).WaterCame("port", Seconds(2)));
    }

    [Fact]
    public void StartTimes_AreJudgedAsTheWatchThatWasKept()
    {
        RawWaterCircuit circuit = Card.Engine.Specification.RawWater!.Circuit;
        StartReport watched = StartWatch.Of(circuit).Value.PressureCame(Seconds(11)).WaterCame(Outlet, Seconds(31)).WentWrong("a hiss", Seconds(5)).At(Seconds(45));
        StartReport told = StartTimes.Until(Seconds(45)).PressureCame(Seconds(11)).WaterCame(Outlet, Seconds(31)).WentWrong("a hiss", Seconds(5)).ReportFor(circuit).Value;
        Assert.Equal(PublicState.Of(watched), PublicState.Of(told));
    }

    [Fact]
    public void OldImpeller_ThatIsWorn_IsHistoryOnceANewOneIsIn_AndIsEntered()
    {
        JobProof proof = Prove(impeller: Looked(VaneRecord.Cracked(2)));
        Assert.True(proof.IsProved, proof.Explain(DisplayUnits.Metric).ToString());
        JobCompletion completion = proof.Complete(Curlew.Log);
        Assert.Single(completion.Entries, entry => entry.Fact is ImpellerInspection);
        Assert.DoesNotContain(proof.Complete(completion.Log).Entries, entry => entry.Fact is ImpellerInspection);
    }

    [Fact]
    public void OldImpeller_WithRubberMissing_AndNobodyLooking_StopsTheVisit()
    {
        JobProof proof = Prove(impeller: Looked(VaneRecord.Missing(3)));
        Assert.Contains(proof.Findings, one => one.Rule == JobRules.PiecesNotSought);
        Assert.Contains(proof.Findings, one => one.Rule == ImpellerRules.PiecesOutstanding);
        Assert.Equal(Severity.Stop, proof.Severity);
    }

    [Fact]
    public void OldImpeller_WithRubberMissing_ThatWasFoundDownstream_StandsNoMore()
    {
        WorkRecord work = WorkRecord.Begin(Card.Procedure, Curlew.Day);
        while (work.Next.Count > 0)
        {
            ProcedureStep step = work.Next[0];
            work = work.Do(step.Id, step.Id == "inspect-impeller" ? [StepProof.Passed("vanes").WithMissing(1)] : Orders.ProofsOf(step));
        }

        Assert.True(work.HasDone("trace-pieces"));
        JobMeasurements given = JobMeasurements.Of(work).WithDial(EngineHours.FromHours(104.2m)).With(Curlew.Account()).With(Card.Belt.Value).Inspected("belt-inspect", true).With(Looked(VaneRecord.Missing(3))).With(Curlew.Back(Card.Kit.ComesOff.Value));
        JobProof proof = Card.Prove(given);
        Assert.True(proof.IsProved, proof.Explain(DisplayUnits.Metric).ToString());
    }

    [Fact]
    public void Impeller_ThatPassedAgainstWhatWasSeen_IsContradicted()
    {
        JobCard look = JobCard.PrepareFor(Curlew.Boat, Curlew.Log, Curlew.Day, ["impeller-inspect"]).Value;
        JobMeasurements all = Curlew.AllOf(look);
        Assert.True(look.Prove(all.With(Looked())).IsProved, look.Prove(all.With(Looked())).Explain(DisplayUnits.Metric).ToString());
        JobProof worn = look.Prove(all.With(Looked(VaneRecord.Cracked(2))));
        Assert.Contains(worn.Findings, one => one.Rule == JobRules.VerdictContradicted);
        Assert.Contains(worn.Findings, one => one.Rule == ImpellerRules.VaneCracked);
        Assert.DoesNotContain(look.Prove(all.Inspected("impeller-inspect", passed: false).With(Looked(VaneRecord.Cracked(2)))).Findings, one => one.Rule == JobRules.VerdictContradicted);
    }

    [Fact]
    public void VaneThatNobodyLookedAt_StandsAgainstTheVisit() =>
        Assert.Contains(Prove(impeller: ImpellerInspection.Of(6, Curlew.Day).With(VaneRecord.Whole(1))).Findings, one => one.Rule == ImpellerRules.NotLookedAt);

    [Fact]
    public void BucketTest_WithTooLittle_StandsAgainstTheVisit_AndIsEnteredWhenEnough()
    {
        JobProof little = Prove(bucket: Caught(0.2));
        Assert.Contains(little.Findings, one => one.Rule == WaterRules.TooLittle);
        Assert.False(little.IsProved);
        JobProof enough = Prove(bucket: Caught(6));
        Assert.DoesNotContain(enough.Findings, one => one.Rule == WaterRules.TooLittle || one.Rule == JobRules.NotJudged);
    }

    /// <summary>The engine has two ratings, 180 and 210: what the one needs may be less than what the other does.</summary>
    [Fact]
    public void BucketTest_BetweenTwoRatings_AsksWhichOneItIs()
    {
        double[] tried = [.. Enumerable.Range(1, 400).Select(i => i * 0.02).Where(liters => Prove(bucket: Caught(liters)).Findings.Any(one => one.Rule == JobRules.NotJudged))];
        Assert.NotEmpty(tried);
        Assert.All(tried, liters => Assert.DoesNotContain(Prove(bucket: Caught(liters)).Findings, one => one.Rule == WaterRules.TooLittle));
        Assert.True(tried[^1] / tried[0] < 1.5, $"{tried[0]} to {tried[^1]} L");
    }

    [Fact]
    public void BucketTest_OfAnEngineOfWhichNothingIsStated_IsRecordedAndNotJudged()
    {
        MarineService.Core.Specifications.EngineSpecification bare = MarineService.Core.Specifications.EngineSpecification.Named("Brae 16D").With(ServiceTask.Clean("strainer", ServiceInterval.OfMonths(1)));
        MarineService.Core.Specifications.BoatSpecification boat = MarineService.Core.Specifications.BoatSpecification.Of(MarineService.Core.Engines.Boat.Of("Tern", hasSeacock: true)).WithEngine("main", bare);
        JobCard card = JobCard.Prepare(boat, ServiceLog.Empty, Curlew.Day, JobConditions.NotStated.With(Circumstance.Petrol, false)).Value;
        JobMeasurements all = JobMeasurements.Of(Curlew.Work(card)).WithDial(EngineHours.FromHours(10m)).With(Caught(1));
        JobProof proof = card.Prove(all);
        Assert.Equal(Severity.Note, Assert.Single(proof.Findings, one => one.Rule == JobRules.NotJudged).Severity);
        Assert.True(proof.IsProved, proof.Explain(DisplayUnits.Metric).ToString());
        Assert.Single(proof.Complete(ServiceLog.Empty).Entries, entry => entry.Fact is BucketTest);
    }

    [Fact]
    public void Report_CarriesAllOfIt_AndRefusesAnotherDay()
    {
        VisitReport report = VisitReport.Of(Card.Id, Curlew.Day, []).Measured(EngineHours.FromHours(104.2m))
            .Seen(Good.WentWrong("a hiss", Seconds(20)), Looked(VaneRecord.Torn(2, 0.4)), Caught(3));
        VisitReport read = VisitReportJson.Read(Encoding.UTF8.GetBytes(VisitReportJson.ToText(report))).Value;
        Assert.Equal(VisitReportJson.ToText(report), VisitReportJson.ToText(read));
        Assert.Equal(PublicState.Of(report.Start), PublicState.Of(read.Start));
        Assert.Equal(EngineHours.FromHours(104.2m), read.Impeller!.Dial);
        Assert.Contains(Card.Prove(read).Findings, one => one.Rule == ExhaustRules.SomethingElse);
        Assert.Throws<ArgumentException>("impeller", () => report.Seen(impeller: ImpellerInspection.Of(6, Curlew.Day.PlusDays(1))));
        Assert.Throws<ArgumentException>("bucket", () => report.Seen(bucket: BucketTest.Of(Curlew.Day.PlusDays(1), RotationalSpeed.FromRevolutionsPerMinute(900), Caught(3).Catches)));
    }

    [Fact]
    public void ReportDocument_NamesAFittingDayAfterTheInspection_IsRefusedThere()
    {
        string text = Encoding.UTF8.GetString(GoldenDocuments.Read("Documents/v1/visit-report-water.json")).Replace("2025-04-02", "2027-04-21", StringComparison.Ordinal);
        Assert.Equal("/impeller/fittedOn", Assert.Single(VisitReportJson.Read(Encoding.UTF8.GetBytes(text)).Faults).Place);
    }

    private static JobProof Prove(StartTimes? start = null, ImpellerInspection? impeller = null, BucketTest? bucket = null)
    {
        JobMeasurements all = Curlew.AllOf(Card);
        VisitReport report = VisitReport.Of(Card.Id, Curlew.Day, all.Work.Events.Select(one => VisitEvent.Step(one.Text, [.. one.Proofs])))
            .Measured(all.Dial, all.Oil!.Told, [.. all.Belt!.Stops.Select(stop => stop.Face == MarineService.Core.Belts.BeltFace.Back ? $"{stop.PulleyName}(back)" : stop.PulleyName)], all.Verdicts)
            .Seen(start, impeller, bucket).WithTally(Curlew.Lines(Card.Kit.ComesOff.Value));
        return Card.Prove(report);
    }

    private static ImpellerInspection Looked(params VaneRecord[] vanes) => ImpellerInspection.Of(6, Curlew.Day).With(vanes).WithOthersWhole();

    private static BucketTest Caught(double liters) => BucketTest.Of(
        Curlew.Day, RotationalSpeed.FromRevolutionsPerMinute(1500), Card.Engine.Specification.RawWater!.Circuit.Outlets.Select(outlet => BucketCatch.Of(outlet.Name, MeasuredVolume.Of(Volume.FromLiters(liters)), Seconds(10))));

    private static UnitsNet.Duration Seconds(double seconds) => UnitsNet.Duration.FromSeconds(seconds);
}
