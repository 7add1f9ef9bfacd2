using MarineService.Core.Engines;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Tests.Scheduling;

/// <summary>Published rules of late and early work, and what must not bend them.</summary>
public sealed class AnchorPolicyTest
{
    private static readonly LocalDate Start = new(2024, 1, 10);

    // 14 CFR 91.409(b): up to 10 h over is allowed, and the excess is included in computing the next 100 hours.
    [Theory]
    [InlineData(1095, 1100, 1195)]
    [InlineData(1100, 1100, 1200)]
    [InlineData(1104, 1100, 1200)]
    [InlineData(1110, 1100, 1200)]
    public void ChargeLateExcess_OfAHundredHourInspection_CountsTheExcessInTheNext(int doneAt, int wasDue, int nextDue)
    {
        TaskDue due = Charged(
            OpeningDuePoint.Of(Start, "task", null, Hours(wasDue)), Completion.Passed("task", Start.PlusDays(60), Hours(doneAt)));
        Assert.Equal(Hours(nextDue), due.Due.Hours);
    }

    // PS Magazine TB 43-PS: 17 April 2006 with 18 days runs from 30 March to 5 May. 15 May 2000 less 36 days is 9 April;
    // the article prints 10 April, a day off its own rule.
    [Theory]
    [InlineData(2006, 4, 17, 6, "2006-03-30", "2006-05-05")]
    [InlineData(2000, 5, 15, 12, "2000-04-09", "2000-06-20")]
    public void Window_OfTenPercent_HasThePublishedDates(int year, int month, int day, int months, string from, string to)
    {
        ServiceTask task = ServiceTask.Replace("task", ServiceInterval.OfMonths(months));
        LocalDate due = new(year, month, day);
        ServiceHistory history = ServiceHistory.Of(
            HourMeter.Plain, [OpeningDuePoint.Of(due.PlusDays(-90), "task", due, null), Completion.Of("task", due)], due);
        (LocalDate From, LocalDate To) window = Assert.Single(DueList.Occurrences(TaskPlan.Of([task]), history, "task")).Window(10m)!.Value;
        Assert.Equal((from, to), (window.From.ToString("uuuu-MM-dd", null), window.To.ToString("uuuu-MM-dd", null)));
    }

    [Theory]
    [InlineData(AnchorPolicy.ChargeLateExcess)]
    [InlineData(AnchorPolicy.SnapWithinWindow)]
    public void Service_EnteredBesideTheHigherOneThatIncludesIt_CountsOnce(AnchorPolicy policy)
    {
        TaskPlan plan = TaskPlan.Of(
        [
            ServiceTask.Replace("task", RandomHistory.Both(100, 12)).WithAnchorPolicy(policy),
            ServiceTask.Replace("higher", RandomHistory.Both(200, 24)).WithAnchorPolicy(policy).Including("task"),
        ]);
        ServiceFact[] facts = [OpeningDuePoint.Of(Start, "task", null, Hours(400)), Completion.Of("higher", Start.PlusDays(30), Hours(408))];
        ServiceHistory once = ServiceHistory.Of(HourMeter.Plain, facts, Start.PlusDays(30));
        ServiceHistory twice = ServiceHistory.Of(HourMeter.Plain, [.. facts, Completion.Of("task", Start.PlusDays(30))], Start.PlusDays(30));
        Assert.Equal(Hours(500), DueList.Evaluate(plan, once)["task"].Due.Hours);
        Assert.Equal(Hours(500), DueList.Evaluate(plan, twice)["task"].Due.Hours);
        Assert.Single(DueList.Occurrences(plan, twice, "task"));
    }

    [Fact]
    public void ChargeLateExcess_LaterThanAWholeInterval_StaysDueWithoutAnotherReading()
    {
        ServiceFact[] facts = [OpeningDuePoint.Of(Start, "task", null, Hours(350)), Completion.Passed("task", Start.PlusDays(30), Hours(470))];
        Assert.Equal(DueStatus.Overdue, Charged(Start.PlusDays(30), facts).Status);
        Assert.Equal(DueStatus.Overdue, Charged(Start.PlusDays(31), facts).Status);
    }

    [Fact]
    public void ChargeLateExcess_NearItsNextDuePoint_StaysDueSoonWithoutAnotherReading()
    {
        ServiceFact[] facts = [OpeningDuePoint.Of(Start, "task", null, Hours(350)), Completion.Passed("task", Start.PlusDays(30), Hours(440))];
        Assert.Equal(DueStatus.DueSoon, Charged(Start.PlusDays(30), facts).Status);
        Assert.Equal(DueStatus.DueSoon, Charged(Start.PlusDays(31), facts).Status);
    }

    // Due at 350 h, 60 % exchanged at 358 h, and the rest the same day after all: the 8 h are charged once.
    [Theory]
    [InlineData(358, 450)]
    [InlineData(359, 450)]
    public void FullChange_OnTheDayOfAPartialOne_ChargesWhatWasLate(int fullAt, int next)
    {
        ServiceTask oil = ServiceTask.Replace("oil", ServiceInterval.OfHours(Hours(100)))
            .WithAnchorPolicy(AnchorPolicy.ChargeLateExcess).WithPartialExchange(PartialExchange.ProRata);
        LocalDate day = Start.PlusDays(100);
        ServiceHistory history = ServiceHistory.Of(
            HourMeter.Plain,
            [Completion.Of("oil", Start, Hours(250)), Completion.Partial("oil", day, Hours(358), 0.6m), Completion.Of("oil", day, Hours(fullAt))],
            day);
        Assert.Equal(Hours(next), DueList.Evaluate(TaskPlan.Of([oil]), history)["oil"].Due.Hours);
        Assert.Equal([null, Hours(350)], DueList.Occurrences(TaskPlan.Of([oil]), history, "oil").Select(occurrence => occurrence.Due.Hours));
    }

    // Due at 350 h with a window of 10 h; done on a day without a reading, halfway between the last reading and the next.
    [Theory]
    [InlineData(338)]
    [InlineData(345)]
    [InlineData(359)]
    public void SnapWithinWindow_WithInterpolatedHours_LeavesFewerHoursTheMoreAreRead(int before)
    {
        TaskPlan plan = TaskPlan.Of([ServiceTask.Replace("task", ServiceInterval.OfHours(Hours(100))).WithAnchorPolicy(AnchorPolicy.SnapWithinWindow)]);
        decimal last = decimal.MaxValue;
        for (int after = before; after < before + 80; after++)
        {
            ServiceFact[] facts =
            [
                OpeningDuePoint.Of(Start, "task", null, Hours(350)),
                MeterReading.Of(Start.PlusDays(10), Hours(before)),
                Completion.Of("task", Start.PlusDays(20)),
                MeterReading.Of(Start.PlusDays(30), Hours(after)),
            ];
            decimal left = DueList.Evaluate(plan, ServiceHistory.Of(HourMeter.Plain, facts, Start.PlusDays(30)))["task"].HoursLeft!.Value;
            Assert.True(left <= last, $"{after} h read: {left} h left, {last} h before");
            last = left;
        }
    }

    [Fact]
    public void FailedInspection_AfterAnEvent_IsStillReportedAsFailed()
    {
        TaskPlan plan = TaskPlan.Of([ServiceTask.Inspect("task", RandomHistory.Both(100, 12)).DueAfterEvents("overheat")]);
        ServiceHistory history = ServiceHistory.Of(
            HourMeter.Plain, [ServiceEvent.Of("overheat", Start), Completion.Failed("task", Start.PlusDays(3))], Start.PlusDays(3));
        DueList list = DueList.Evaluate(plan, history);
        Assert.Equal(DueBasis.FailedInspection, list["task"].Basis);
        Finding finding = Assert.Single(list.Findings, finding => finding.Rule == SchedulingRules.FailedInspection);
        Assert.Contains("2024-01-13", finding.ToString(), StringComparison.Ordinal);
    }

    private static EngineHours Hours(int hours) => EngineHours.FromHours(hours);

    private static TaskDue Charged(params ServiceFact[] facts) => Charged(Start.PlusDays(60), facts);

    private static TaskDue Charged(LocalDate today, params ServiceFact[] facts) => DueList.Evaluate(
        TaskPlan.Of([ServiceTask.Inspect("task", ServiceInterval.OfHours(Hours(100))).WithAnchorPolicy(AnchorPolicy.ChargeLateExcess)]),
        ServiceHistory.Of(HourMeter.Plain, facts, today))["task"];
}
