using MarineService.Core.Engines;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using NodaTime;

namespace MarineService.Core.Tests.Records;

/// <summary>Winters as they happen: voided by an outing, without a known end, two of them in one interval.</summary>
public sealed class LayUpRecordTest
{
    private static readonly LocalDate LaidUpOn = new(2023, 10, 20);

    private static readonly EngineSpecification Specification = EngineSpecification.Named("Corrie 24P").With(
        ServiceTask.AtLayUp("drain"),
        ServiceTask.AtCommissioning("first-run"),
        ServiceTask.Replace("impeller", ServiceInterval.OfMonths(12)).WithLayUpRule(LayUpRule.DeferToCommissioning),
        ServiceTask.Replace("oil", ServiceInterval.OfMonths(12)).WithLayUpRule(LayUpRule.PullForward),
        ServiceTask.Adjust("grease", ServiceInterval.OfMonths(12)).WithLayUpRule(LayUpRule.Suspend));

    private static readonly ServiceLog LaidUpLog = ServiceLog.Empty
        .With(Completion.Of("drain", LaidUpOn, Hours(455m)))
        .With(LaidUp.On(LaidUpOn, Hours(455m)));

    [Theory]
    [InlineData("455.0", DueStatus.NotDue)]
    [InlineData("455.001", DueStatus.Due)]
    public void LayUp_IsVoided_ByAnyRunning(string shown, DueStatus drain)
    {
        LocalDate read = new(2024, 2, 11);
        DueList list = LaidUpLog.With(MeterReading.Of(read, Hours(decimal.Parse(shown, System.Globalization.CultureInfo.InvariantCulture)))).DueList(Specification, read);
        Assert.Equal(drain, list["drain"].Status);
        Assert.Equal(drain == DueStatus.Due, list.Findings.Any(finding => finding.Rule == SchedulingRules.LayUpVoided));
    }

    [Fact]
    public void VoidedLayUp_DrainedAgain_StandsAgain()
    {
        LocalDate again = new(2024, 2, 12);
        ServiceLog log = LaidUpLog.With(MeterReading.Of(new(2024, 2, 11), Hours(456.5m))).With(Completion.Of("drain", again, Hours(456.5m)));
        Assert.Equal(DueStatus.NotDue, log.DueList(Specification, again)["drain"].Status);
        Assert.Equal(DueBasis.LayUpVoided, log.With(MeterReading.Of(again.PlusDays(8), Hours(457m))).DueList(Specification, again.PlusDays(8))["drain"].Basis);
    }

    [Fact]
    public void OpenEndedLayUp_AsksForNoCommissioning_UntilItEnds()
    {
        Assert.Equal(DueStatus.NotDue, LaidUpLog.DueList(Specification, new(2024, 6, 1))["first-run"].Status);
        ServiceLog planned = LaidUpLog.With(PlannedLayUp.Between(LaidUpOn, new(2024, 4, 15)));
        Assert.Equal(new LocalDate(2024, 4, 15), planned.DueList(Specification, new(2024, 3, 1))["first-run"].Due.Date);
        ServiceLog ended = LaidUpLog.With(Commissioned.On(new(2024, 4, 20)));
        Assert.Equal(DueStatus.Due, ended.DueList(Specification, new(2024, 4, 20))["first-run"].Status);
    }

    [Fact]
    public void DueInAnOpenEndedLayUp_IsDeferredOnlyOnceTheEndIsKnown()
    {
        ServiceLog log = LaidUpLog.With(Completion.Of("impeller", new(2023, 2, 1), Hours(400m)));
        Assert.Null(log.DueList(Specification, new(2024, 1, 1))["impeller"].PlanDate);
        TaskDue deferred = log.With(PlannedLayUp.Between(LaidUpOn, new(2024, 4, 15))).DueList(Specification, new(2024, 1, 1))["impeller"];
        Assert.Equal((new LocalDate(2024, 4, 15), 74, true), (deferred.PlanDate, deferred.OverrunDays, deferred.OverrunExcused));
        TaskDue ran = log.With(PlannedLayUp.Between(LaidUpOn, new(2024, 4, 15))).With(MeterReading.Of(new(2023, 12, 1), Hours(456m)))
            .DueList(Specification, new(2024, 1, 1))["impeller"];
        Assert.False(ran.OverrunExcused);
    }

    [Fact]
    public void DueInALayUp_IsPulledForward_NeverIntoThePast()
    {
        ServiceLog log = ServiceLog.Empty.With(Completion.Of("oil", new(2023, 1, 20))).With(PlannedLayUp.Between(LaidUpOn, new(2024, 4, 15)));
        Assert.Equal(LaidUpOn, log.DueList(Specification, new(2023, 9, 1))["oil"].PlanDate);
        Assert.Equal(new LocalDate(2023, 11, 5), log.DueList(Specification, new(2023, 11, 5))["oil"].PlanDate);
    }

    // Twelve months from 2023-09-01 are 2024-09-01. The first winter of 178 days (20 October to 15 April, 2024 is a leap year) makes it
    // 2025-02-26; that reaches into the second one, of 177 days, which makes it 2025-08-22.
    [Fact]
    public void Suspend_OverTwoWinters_SkipsBoth()
    {
        ServiceLog log = ServiceLog.Empty.With(Completion.Of("grease", new(2023, 9, 1)))
            .With(PlannedLayUp.Between(new(2023, 10, 20), new(2024, 4, 15)))
            .With(PlannedLayUp.Between(new(2024, 10, 20), new(2025, 4, 15)));
        TaskDue grease = log.DueList(Specification, new(2024, 5, 1))["grease"];
        Assert.Equal((new LocalDate(2025, 8, 22), 355), (grease.Due.Date, grease.SuspendedDays));
    }

    [Fact]
    public void Suspend_InAnOpenEndedLayUp_LeavesTheSameDaysEveryDay()
    {
        ServiceLog log = LaidUpLog.With(Completion.Of("grease", new(2023, 9, 1)));
        Assert.Equal(
            log.DueList(Specification, LaidUpOn)["grease"].DaysLeft,
            log.DueList(Specification, LaidUpOn.PlusDays(100))["grease"].DaysLeft);
    }

    private static EngineHours Hours(decimal hours) => EngineHours.FromHours(hours);
}
