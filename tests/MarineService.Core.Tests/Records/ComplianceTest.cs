using MarineService.Core.Engines;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using NodaTime;

namespace MarineService.Core.Tests.Records;

/// <summary>Oil at 100 h or 12 months, first done on 2023-05-15 at 250 h: due on 2024-05-15 or at 350 h, 36 days or 10 h of tolerance in planning.</summary>
public sealed class ComplianceTest
{
    private static readonly LocalDate First = new(2023, 5, 15);
    private static readonly LocalDate Due = new(2024, 5, 15);

    [Theory]
    [InlineData(0, 350.0, ComplianceVerdict.Kept, ComplianceVerdict.Kept)]
    [InlineData(-9, 350.001, ComplianceVerdict.KeptWithinTolerance, ComplianceVerdict.Exceeded)]
    [InlineData(-9, 360.0, ComplianceVerdict.KeptWithinTolerance, ComplianceVerdict.Exceeded)]
    [InlineData(-9, 360.001, ComplianceVerdict.Exceeded, ComplianceVerdict.Exceeded)]
    [InlineData(1, 300.0, ComplianceVerdict.KeptWithinTolerance, ComplianceVerdict.Exceeded)]
    [InlineData(36, 300.0, ComplianceVerdict.KeptWithinTolerance, ComplianceVerdict.Exceeded)]
    [InlineData(37, 300.0, ComplianceVerdict.Exceeded, ComplianceVerdict.Exceeded)]
    public void Completion_AtTheLimits_IsJudgedByPlanningAndByWarranty(int days, double hours, ComplianceVerdict planning, ComplianceVerdict warranty)
    {
        ServiceLog log = Log(Completion.Of("oil", Due.PlusDays(days), EngineHours.FromHours((decimal)hours)));
        Assert.Equal(planning, Second(log, ComplianceBasis.Planning).Verdict);
        Assert.Equal(warranty, Second(log, ComplianceBasis.Warranty).Verdict);
    }

    [Theory]
    [InlineData(355.0, ComplianceVerdict.KeptWithinTolerance)]
    [InlineData(355.001, ComplianceVerdict.Exceeded)]
    public void MakerTolerance_CountsForWarranty(double hours, ComplianceVerdict verdict)
    {
        ServiceLog log = Log(Completion.Of("oil", Due.PlusDays(-9), EngineHours.FromHours((decimal)hours)));
        ServiceTask oil = ServiceTask.Replace("oil", ServiceInterval.FirstOf(Hours(100), 12)).WithMakerTolerance(5m);
        Assert.Equal(verdict, log.Compliance(EngineSpecification.Named("Corrie 60P").With(oil), Due, ComplianceBasis.Warranty).Items[1].Verdict);
    }

    [Fact]
    public void FirstCompletionOnRecord_IsNotCounted()
    {
        ComplianceReport report = Log().Compliance(Specification, First);
        Assert.Equal(ComplianceVerdict.FirstOnRecord, Assert.Single(report.Items).Verdict);
        Assert.Equal((0, 0), (report.Kept, report.Of));
    }

    [Fact]
    public void Exceeded_ReportsDueDoneAndTolerance()
    {
        ServiceLog log = Log(Completion.Of("oil", new LocalDate(2024, 7, 1), Hours(340)));
        Finding finding = Assert.Single(log.Compliance(Specification, new(2024, 7, 1), ComplianceBasis.Planning).Findings, f => f.Rule == ComplianceRules.Exceeded);
        Assert.Equal("RECORD-003", finding.Code);
        Assert.Equal("task 'oil': was due 350.0 h or 2024-05-15 and done 2024-07-01 at 340.0 h, beyond the tolerance of 10.0 %", finding.Message(DisplayUnits.Metric));
        Assert.Equal(0.1, finding["tolerance"]!.Number);
    }

    [Theory]
    [InlineData(36, 0)]
    [InlineData(37, 1)]
    public void OpenOccurrence_IsMissingOnlyBeyondTheTolerance(int days, int missing)
    {
        ComplianceReport report = Log(MeterReading.Of(Due, Hours(300))).Compliance(Specification, Due.PlusDays(days), ComplianceBasis.Planning);
        Finding[] findings = [.. report.Findings.Where(finding => finding.Rule == ComplianceRules.Missing)];
        Assert.Equal(missing, findings.Length);
        Assert.Equal(missing, report.Items.Count(item => item.Verdict == ComplianceVerdict.Missing));
        Assert.All(findings, finding => Assert.Equal("task 'oil': was due 350.0 h or 2024-05-15 and is not in the record", finding.Message(DisplayUnits.Metric)));
        Assert.All(findings, finding => Assert.Contains("reconstructed", finding.Rule.Remedy, StringComparison.Ordinal));
    }

    [Fact]
    public void OpenOccurrence_ForWarranty_IsMissingFromTheDayAfter()
    {
        ServiceLog log = Log(MeterReading.Of(Due, Hours(300)));
        Assert.DoesNotContain(log.Compliance(Specification, Due).Items, item => item.Verdict == ComplianceVerdict.Missing);
        Assert.Contains(log.Compliance(Specification, Due.PlusDays(1)).Items, item => item.Verdict == ComplianceVerdict.Missing);
    }

    // Between 340 h on 1 March and 371 h on 1 April, done on 16 March without a reading: at 355 h by interpolation.
    [Fact]
    public void CompletionWithoutAReading_CannotBeShown_UntilAReadingNarrowsTheBounds()
    {
        LocalDate done = new(2024, 3, 16);
        LocalDate today = new(2024, 4, 1);
        ServiceLog log = Log(MeterReading.Of(new(2024, 3, 1), Hours(340)), Completion.Of("oil", done), MeterReading.Of(today, Hours(371)));
        ComplianceReport report = log.Compliance(Specification, today, ComplianceBasis.Planning);
        ComplianceItem item = Assert.Single(report.Unproved);
        Assert.Equal(ComplianceVerdict.KeptWithinTolerance, item.EstimateVerdict);
        Assert.Equal((-10m, 5m, 21m), (item.Occurrence.LeastHoursLate, item.Occurrence.HoursLate, item.Occurrence.MostHoursLate));
        Finding finding = Assert.Single(report.Findings, f => f.Rule == ComplianceRules.CannotBeShown);
        Assert.Equal("RECORD-001", finding.Code);
        Assert.Equal("task 'oil': done on 2024-03-16, due at 350.0 h; the readings allow 340.0 h to 371.0 h", finding.Message(DisplayUnits.Metric));
        Assert.Contains("add it as a reading", finding.Rule.Remedy, StringComparison.Ordinal);

        // The advice followed: a photograph of the dial two days later proves it kept; one that shows more proves it exceeded.
        Assert.Equal(ComplianceVerdict.KeptWithinTolerance, Second(log.With(MeterReading.Of(done.PlusDays(2), Hours(358))), ComplianceBasis.Planning).Verdict);
        Assert.Equal(ComplianceVerdict.Exceeded, Second(log.With(MeterReading.Of(done.PlusDays(-1), Hours(361))), ComplianceBasis.Planning).Verdict);
        Assert.Contains("if the estimated hours were exact", item.Explain(DisplayUnits.Metric).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void CompletionWithoutAnyReadingAround_SaysThatAnyHoursArePossible()
    {
        ServiceLog log = ServiceLog.Empty
            .With(OpeningDuePoint.Of(First, "oil", null, Hours(350)))
            .With(Completion.Of("oil", First.PlusDays(5)));
        ComplianceReport report = log.Compliance(Specification, Due, ComplianceBasis.Planning);
        Assert.Equal(
            "task 'oil': done on 2023-05-20, due at 350.0 h; the readings allow any number of hours to more",
            Assert.Single(report.Findings, f => f.Rule == ComplianceRules.CannotBeShown).Message(DisplayUnits.Metric));
    }

    [Theory]
    [InlineData(false, "the entry alone")]
    [InlineData(true, "a reconstruction")]
    public void WeakProof_IsNamed_WithTheDayAndTheGrade(bool reconstructed, string grade)
    {
        LogEntry entry = LogEntry.Of(Completion.Of("oil", First, Hours(250)));
        ComplianceReport report = ServiceLog.Empty.With(reconstructed ? entry.AsReconstructed() : entry).Compliance(Specification, First);
        Finding finding = Assert.Single(report.Findings);
        Assert.Equal("RECORD-004", finding.Code);
        Assert.Equal($"task 'oil': the completion of 2023-05-15 rests on {grade}", finding.Message(DisplayUnits.Metric));
    }

    [Fact]
    public void GoodProof_OfTheHigherService_ServesTheLowerOne()
    {
        EngineSpecification specification = Specification.With(ServiceTask.Replace("service", ServiceInterval.OfMonths(24)).Including("oil"));
        LogEntry service = LogEntry.Of(Completion.Of("service", First, Hours(250))).WithEvidence(Evidence.Of(EvidenceKind.Receipt, "yard 7"));
        ComplianceReport report = ServiceLog.Empty.With(service).Compliance(specification, First);
        Assert.All(report.Items, item => Assert.Equal(EvidenceGrade.DialAndReceipt, item.Grade));
        Assert.Empty(report.Findings);
    }

    [Fact]
    public void WorstExcess_IsTheLargestShareOfItsOwnInterval()
    {
        // 20 h over 100 h is worse than 30 h over 400 h.
        EngineSpecification specification = EngineSpecification.Named("Corrie 60P").With(
            ServiceTask.Replace("oil", ServiceInterval.OfHours(Hours(100))), ServiceTask.Replace("belt", ServiceInterval.OfHours(Hours(400))));
        ServiceLog log = ServiceLog.Empty
            .With(Completion.Of("oil", First, Hours(100))).With(Completion.Of("belt", First, Hours(100)))
            .With(Completion.Of("oil", Due, Hours(220))).With(Completion.Of("belt", Due.PlusDays(300), Hours(530)));
        Assert.Equal("oil", log.Compliance(specification, Due.PlusDays(300)).WorstExcess!.Occurrence.Task.Id);
    }

    [Fact]
    public void Report_CountsWhatWasKeptOfWhatCounts()
    {
        ServiceLog log = Log(Completion.Of("oil", Due, Hours(340)), Completion.Of("oil", Due.PlusMonths(14), Hours(400)));
        ComplianceReport report = log.Compliance(Specification, Due.PlusMonths(14), ComplianceBasis.Planning);
        Assert.Equal("1 of 2 kept", report.ToString());
    }

    private static EngineSpecification Specification { get; } =
        EngineSpecification.Named("Corrie 60P").With(ServiceTask.Replace("oil", ServiceInterval.FirstOf(Hours(100), 12)));

    private static ServiceLog Log(params ServiceFact[] more) => ServiceLog.Of(more.Prepend(Completion.Of("oil", First, Hours(250))).Select(LogEntry.Of));

    private static ComplianceItem Second(ServiceLog log, ComplianceBasis basis) =>
        log.Compliance(Specification, Due.PlusDays(40), basis).Items[1];

    private static EngineHours Hours(int hours) => EngineHours.FromHours(hours);
}
