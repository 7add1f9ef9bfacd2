using MarineService.Core.Engines;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using NodaTime;

namespace MarineService.Core.Tests.Scheduling;

/// <summary>One rule for the bands around a due point: they are measured on the interval in force there, whoever asks.</summary>
public sealed class SevereDutyTest
{
    private static readonly LocalDate Done = new(2023, 5, 15);

    // 100 h and 12 months at half: 50 h and 6 months, so a tolerance of 5 h and of 18 days (10 % of 6 x 30).
    [Theory]
    [InlineData(305.0, 100, DueStatus.Due, ComplianceVerdict.KeptWithinTolerance)]
    [InlineData(305.001, 100, DueStatus.Overdue, ComplianceVerdict.Exceeded)]
    [InlineData(280.0, 184 + 18, DueStatus.Due, ComplianceVerdict.KeptWithinTolerance)]
    [InlineData(280.0, 184 + 19, DueStatus.Overdue, ComplianceVerdict.Exceeded)]
    public void Tolerance_UnderSevereDuty_IsTheSameInDueListAndCompliance(double hours, int days, DueStatus status, ComplianceVerdict verdict)
    {
        LocalDate day = Done.PlusDays(days);
        EngineHours at = EngineHours.FromHours((decimal)hours);
        ServiceLog log = Log(MeterReading.Of(day, at));
        Assert.Equal(status, log.DueList(Specification(), day)["oil"].Status);
        ComplianceItem late = log.With(Completion.Of("oil", day, at)).Compliance(Specification(), day, ComplianceBasis.Planning).Items[^1];
        Assert.Equal(verdict, late.Verdict);
    }

    [Theory]
    [InlineData(305, 350)]
    [InlineData(306, 356)]
    [InlineData(295, 350)]
    [InlineData(294, 344)]
    public void Snap_UnderSevereDuty_UsesTheShortenedWindow(int done, int next)
    {
        LocalDate day = Done.PlusDays(60);
        ServiceLog log = Log(Completion.Of("oil", day, EngineHours.FromHours(done)));
        Assert.Equal(EngineHours.FromHours(next), log.DueList(Specification(AnchorPolicy.SnapWithinWindow), day)["oil"].Due.Hours);
    }

    [Fact]
    public void Missing_UnderSevereDuty_BeginsWhereOverdueBegins()
    {
        LocalDate day = Done.PlusDays(184 + 18);
        Assert.DoesNotContain(Log().Compliance(Specification(), day, ComplianceBasis.Planning).Items, item => item.Verdict == ComplianceVerdict.Missing);
        Assert.Contains(Log().Compliance(Specification(), day.PlusDays(1), ComplianceBasis.Planning).Items, item => item.Verdict == ComplianceVerdict.Missing);
    }

    [Fact]
    public void Overdue_WhenDutyEasesAfterwards_StaysOverdue()
    {
        LocalDate day = Done.PlusDays(60);
        ServiceLog log = Log(MeterReading.Of(day, EngineHours.FromHours(306m)), DutyChange.Of(day.PlusDays(1), [], EngineHours.FromHours(306m)));
        Assert.Equal(DueStatus.Overdue, log.DueList(Specification(), day)["oil"].Status);
        Assert.Equal(DueStatus.Overdue, log.DueList(Specification(), day.PlusDays(2))["oil"].Status);
    }

    [Fact]
    public void StatedDuePoint_UnderSevereDuty_HasTheShortenedBands()
    {
        LocalDate due = new(2024, 6, 1);
        ServiceLog log = ServiceLog.Empty.With(DutyChange.Of(Done, ["towing"])).With(OpeningDuePoint.Of(Done, "oil", due, null));
        Assert.Equal(DueStatus.Due, log.DueList(Specification(), due.PlusDays(18))["oil"].Status);
        Assert.Equal(DueStatus.Overdue, log.DueList(Specification(), due.PlusDays(19))["oil"].Status);
    }

    [Fact]
    public void FixedGrid_UnderSevereDuty_KeepsItsDatesAndItsWindow()
    {
        ServiceTask survey = ServiceTask.Inspect("survey", ServiceInterval.OfMonths(12)).WithAnchorPolicy(AnchorPolicy.FixedGrid).WithSevereDuty("towing", 0.5m);
        EngineSpecification specification = EngineSpecification.Named("Corrie 60P").With(survey);
        ServiceLog log = ServiceLog.Empty.With(GridOrigin.Of(new(2021, 4, 1), "survey")).With(DutyChange.Of(new(2021, 4, 1), ["towing"]));
        LocalDate due = new(2022, 4, 1);
        Assert.Equal(due, log.DueList(specification, due)["survey"].Due.Date);
        Assert.Equal(DueStatus.DueSoon, log.DueList(specification, due.PlusDays(-30))["survey"].Status);
        Assert.Equal(DueStatus.Due, log.DueList(specification, due.PlusDays(36))["survey"].Status);
        Assert.Equal(DueStatus.Overdue, log.DueList(specification, due.PlusDays(37))["survey"].Status);
        Assert.Equal(new LocalDate(2023, 4, 1), log.With(Completion.Of("survey", due.PlusDays(-36))).DueList(specification, due)["survey"].Due.Date);
        Assert.Equal(due, log.With(Completion.Of("survey", due.PlusDays(-37))).DueList(specification, due)["survey"].Due.Date);
    }

    [Fact]
    public void Explanation_OfAShortenedInterval_NamesTheRuleAndTheInterval()
    {
        string text = Log().DueList(Specification(), Done)["oil"].Explain(DisplayUnits.Metric).ToString();
        Assert.Contains("50.0 h or 6 months", text, StringComparison.Ordinal);
        Assert.Contains(IntervalRule.SevereDuty.Code, text, StringComparison.Ordinal);
        Assert.DoesNotContain(IntervalRule.LifeUsed.Code, text, StringComparison.Ordinal);
    }

    [Fact]
    public void Explanation_OfDutyChangedInMidInterval_NamesTheShareOfLife()
    {
        LocalDate day = Done.PlusDays(60);
        ServiceLog log = Log(DutyChange.Of(day, [], EngineHours.FromHours(275m)));
        TaskDue oil = log.DueList(Specification(), day)["oil"];
        Assert.Equal(EngineHours.FromHours(325m), oil.Due.Hours);
        Assert.Contains(IntervalRule.LifeUsed, oil.Rules());
    }

    private static EngineSpecification Specification(AnchorPolicy policy = AnchorPolicy.DonePoint) => EngineSpecification.Named("Corrie 60P")
        .With(ServiceTask.Replace("oil", RandomHistory.Both(100, 12)).WithSevereDuty("towing", 0.5m).WithAnchorPolicy(policy));

    private static ServiceLog Log(params ServiceFact[] more) => ServiceLog.Of(
        new ServiceFact[] { Completion.Of("oil", Done, EngineHours.FromHours(250m)), DutyChange.Of(Done, ["towing"]) }.Concat(more).Select(LogEntry.Of));
}
