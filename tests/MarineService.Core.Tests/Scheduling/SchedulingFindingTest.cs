using MarineService.Core.Engines;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Tests.Scheduling;

/// <summary>Each finding of the due list, at its limit: the last case that is silent and the first that speaks.</summary>
public sealed class SchedulingFindingTest
{
    private static readonly LocalDate Day = new(2024, 5, 1);

    private static readonly TaskPlan Plan = TaskPlan.Of(
    [
        ServiceTask.Replace("oil", RandomHistory.Both(100, 12)),
        ServiceTask.Inspect("impeller", RandomHistory.Both(100, 12)).DueAfterEvents("overheat"),
        ServiceTask.AtLayUp("drain"),
    ]);

    [Theory]
    [InlineData(0, false)]
    [InlineData(1, true)]
    public void AfterToday_SpeaksOfEntriesFromTomorrowOn(int days, bool speaks)
    {
        Finding? finding = Find(SchedulingRules.AfterToday, Day, MeterReading.Of(Day.PlusDays(days), Hours(500)), PlannedLayUp.Between(Day.PlusDays(9), Day.PlusDays(99)));
        Assert.Equal(speaks, finding is not null);
        Assert.Equal(speaks ? "DUE-001 Note: log: 1 entries are dated after 2024-05-01 and are left out" : null, finding?.ToString());
    }

    [Theory]
    [InlineData(500, true)]
    [InlineData(501, false)]
    public void EnteredTwice_SpeaksOfIdenticalCompletionsOnly(int dial, bool speaks) => Speaks(
        speaks, SchedulingRules.EnteredTwice, "task 'oil': the completion of 2024-05-01 was entered twice and counts once", Day,
        Completion.Of("oil", Day, Hours(500)), Completion.Of("oil", Day, Hours(dial)));

    [Theory]
    [InlineData("oil", false)]
    [InlineData("Oil", true)]
    public void UnknownTask_SpeaksOfIdsThatAreNotThere(string id, bool speaks) => Speaks(
        speaks, SchedulingRules.UnknownTask, "task 'Oil': the entry of 2024-05-01 names a task that the specification does not have", Day, Completion.Of(id, Day));

    [Theory]
    [InlineData("overheat", false)]
    [InlineData("flooding", true)]
    public void UnansweredEvent_SpeaksOfHappeningsThatNoTaskAnswers(string kind, bool speaks) => Speaks(
        speaks, SchedulingRules.UnansweredEvent, "log: flooding on 2024-05-01 makes no task due", Day, ServiceEvent.Of(kind, Day));

    [Theory]
    [InlineData(0, false)]
    [InlineData(1, true)]
    public void ReadingWanted_SpeaksFromTheDayAfterTheCompletion(int days, bool speaks) => Speaks(
        speaks, SchedulingRules.ReadingWanted, "task 'oil': no reading since 2024-05-01; whether it is due by hours is not known", Day.PlusDays(days),
        Completion.Of("oil", Day, Hours(500)));

    [Fact]
    public void ReadingWanted_IsSilentOnceTheDialIsRead() => Speaks(
        false, SchedulingRules.ReadingWanted, "", Day.PlusDays(1), Completion.Of("oil", Day, Hours(500)), MeterReading.Of(Day.PlusDays(1), Hours(500)));

    [Theory]
    [InlineData(60, false, false)]
    [InlineData(61, false, true)]
    [InlineData(61, true, false)]
    public void OldReading_SpeaksAfterSixtyDays_ButNotInLayUp(int days, bool laidUp, bool speaks)
    {
        ServiceFact[] facts = [MeterReading.Of(Day, Hours(500))];
        Speaks(
            speaks, SchedulingRules.OldReading, "hour meter: last read on 2024-05-01, 61 d ago; what ran since is not counted", Day.PlusDays(days),
            laidUp ? [.. facts, LaidUp.On(Day)] : facts);
    }

    // The threshold is 90 %; two standard uncertainties of 1 % reach from 88 % to 92 %.
    [Theory]
    [InlineData("0.88", false)]
    [InlineData("0.881", true)]
    [InlineData("0.919", true)]
    [InlineData("0.92", false)]
    public void FractionInsideNoise_SpeaksWithinTwoStandardUncertainties(string fraction, bool speaks)
    {
        decimal exchanged = decimal.Parse(fraction, System.Globalization.CultureInfo.InvariantCulture);
        Finding? finding = Find(SchedulingRules.FractionInsideNoise, Day, Completion.Partial("oil", Day, Hours(500), exchanged, 0.01m));
        Assert.Equal(speaks, finding is not null);
        Assert.Equal(speaks ? (double)exchanged : null, finding?["fraction"]!.Number);
        Assert.Equal(speaks ? 0.9 : null, finding?["threshold"]!.Number);
    }

    [Theory]
    [InlineData("impeller", false)]
    [InlineData("oil", true)]
    public void ResultWithoutInspection_SpeaksOfTasksThatAreNone(string id, bool speaks) => Speaks(
        speaks, SchedulingRules.ResultWithoutInspection, "task 'oil': the entry of 2024-05-01 gives an inspection result, but the task is no inspection; it is not counted", Day,
        Completion.Passed(id, Day));

    [Fact]
    public void ResultWithoutInspection_ResetsNothing() => Assert.Equal(DueBasis.NoRecord, List(Day, Completion.Passed("oil", Day))["oil"].Basis);

    [Fact]
    public void LayUpVoided_SaysFromWhichHoursAndHowMany() => Speaks(
        true, SchedulingRules.LayUpVoided,
        "lay-up: laid up at 455.0 h, but the engine had run 1.5 h more by 2024-06-01; drain, antifreeze and fogging no longer stand", Day.PlusDays(31),
        LaidUp.On(Day, Hours(455)), MeterReading.Of(Day.PlusDays(31), EngineHours.FromHours(456.5m)));

    [Fact]
    public void FailedInspection_SpeaksUntilItIsPutRight()
    {
        Completion failed = Completion.Failed("impeller", Day, Hours(500));
        Speaks(true, SchedulingRules.FailedInspection, "task 'impeller': failed its inspection on 2024-05-01 and was not put right since", Day.PlusDays(3), failed);
        Speaks(false, SchedulingRules.FailedInspection, "", Day.PlusDays(3), failed, Completion.Passed("impeller", Day.PlusDays(3), Hours(501)));
    }

    [Fact]
    public void GridWithoutOrigin_SpeaksUntilTheOriginIsThere()
    {
        TaskPlan plan = TaskPlan.Of([ServiceTask.Inspect("survey", ServiceInterval.OfMonths(12)).WithAnchorPolicy(AnchorPolicy.FixedGrid)]);
        Completion done = Completion.Passed("survey", Day);
        DueList without = DueList.Evaluate(plan, ServiceHistory.Of(HourMeter.Plain, [done], Day));
        Assert.Single(without.Findings, finding => finding.Rule == SchedulingRules.GridWithoutOrigin);
        Assert.Equal(DueStatus.Due, without["survey"].Status);
        Assert.Empty(DueList.Evaluate(plan, ServiceHistory.Of(HourMeter.Plain, [done, GridOrigin.Of(Day.PlusYears(-1), "survey")], Day)).Findings);
    }

    private static void Speaks(bool speaks, FindingRule rule, string message, LocalDate today, params ServiceFact[] facts) =>
        Assert.Equal(speaks ? message : null, Find(rule, today, facts)?.Message(DisplayUnits.Metric));

    private static Finding? Find(FindingRule rule, LocalDate today, params ServiceFact[] facts) =>
        List(today, facts).Findings.SingleOrDefault(finding => finding.Rule == rule);

    private static DueList List(LocalDate today, params ServiceFact[] facts) => DueList.Evaluate(Plan, ServiceHistory.Of(HourMeter.Plain, facts, today));

    private static EngineHours Hours(int hours) => EngineHours.FromHours(hours);
}
