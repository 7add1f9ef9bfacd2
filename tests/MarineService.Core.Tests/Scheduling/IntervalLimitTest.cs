using MarineService.Core.Engines;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Tests.Scheduling;

/// <summary>Rules of intervals at their limits: the last case on one side and the first on the other.</summary>
public sealed class IntervalLimitTest
{
    private static readonly LocalDate Done = new(2023, 5, 15);

    // INTERVAL-01, -04, -05 by hours: 100 h from 250 h; a tenth of it either side.
    [Theory]
    [InlineData("339.999", DueStatus.NotDue)]
    [InlineData("340.0", DueStatus.DueSoon)]
    [InlineData("349.999", DueStatus.DueSoon)]
    [InlineData("350.0", DueStatus.Due)]
    [InlineData("360.0", DueStatus.Due)]
    [InlineData("360.001", DueStatus.Overdue)]
    public void Hours_AtEachLimit(string now, DueStatus status) =>
        Assert.Equal(status, Oil(Done.PlusDays(90), MeterReading.Of(Done.PlusDays(90), Hours(now))).Status);

    // By date: due on 2024-05-15; soon from 30 days before, overdue after 36.
    [Theory]
    [InlineData(-31, DueStatus.NotDue)]
    [InlineData(-30, DueStatus.DueSoon)]
    [InlineData(-1, DueStatus.DueSoon)]
    [InlineData(0, DueStatus.Due)]
    [InlineData(36, DueStatus.Due)]
    [InlineData(37, DueStatus.Overdue)]
    public void Calendar_AtEachLimit(int days, DueStatus status) => Assert.Equal(status, Oil(new LocalDate(2024, 5, 15).PlusDays(days)).Status);

    // A monthly task is soon due three days before, and three days late at most.
    [Theory]
    [InlineData(-4, DueStatus.NotDue)]
    [InlineData(-3, DueStatus.DueSoon)]
    [InlineData(3, DueStatus.Due)]
    [InlineData(4, DueStatus.Overdue)]
    public void ShortCalendar_AtEachLimit(int days, DueStatus status) => Assert.Equal(
        status, One(ServiceTask.Clean("oil", ServiceInterval.OfMonths(1)), new LocalDate(2023, 6, 15).PlusDays(days), Completion.Of("oil", Done)).Status);

    [Theory]
    [InlineData("0.9", true)]
    [InlineData("0.899999", false)]
    public void PartialExchange_AtItsThreshold(string fraction, bool counts)
    {
        decimal exchanged = decimal.Parse(fraction, System.Globalization.CultureInfo.InvariantCulture);
        TaskDue oil = Oil(Done.PlusDays(90), Completion.Partial("oil", Done.PlusDays(90), Hours("330"), exchanged));
        Assert.Equal(Hours(counts ? "430" : "350"), oil.Due.Hours);
    }

    // 12 x 0.17 = 2.04, 12 x 0.16 = 1.92, 12 x 0.01 = 0.12: rounded down, but to one month at least.
    [Theory]
    [InlineData("0.17", 2)]
    [InlineData("0.16", 1)]
    [InlineData("0.01", 1)]
    public void SevereDuty_LeavesOneMonthAtLeast(string factor, int months)
    {
        ServiceTask oil = ServiceTask.Replace("oil", ServiceInterval.OfMonths(12))
            .WithSevereDuty("towing", decimal.Parse(factor, System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal(Done.PlusMonths(months), One(oil, Done, Completion.Of("oil", Done), DutyChange.Of(Done, ["towing"])).Due.Date);
    }

    [Fact]
    public void SevereDuty_OfSeveralConditions_TakesTheSmallestFactor_WhenTheyBeginTogetherOrApart()
    {
        ServiceTask oil = ServiceTask.Replace("oil", ServiceInterval.OfMonths(12)).WithSevereDuty("towing", 0.5m).WithSevereDuty("salt", 0.75m);
        Assert.Equal(Done.PlusMonths(6), One(oil, Done, Completion.Of("oil", Done), DutyChange.Of(Done, ["towing", "salt"])).Due.Date);
        Assert.Equal(Done.PlusMonths(6), One(oil, Done, Completion.Of("oil", Done), DutyChange.Of(Done, ["towing"]), DutyChange.Of(Done, ["salt"])).Due.Date);
    }

    // A dial of 1,000 h: from above 900 h to below 100 h, and no more hours than the clock allows.
    [Theory]
    [InlineData("900.001", "99.999", 30, true)]
    [InlineData("900.0", "99.999", 30, false)]
    [InlineData("900.001", "100.0", 30, false)]
    [InlineData("990.0", "14.0", 1, true)]
    [InlineData("990.0", "14.001", 1, false)]
    public void Rollover_AtEachLimit(string before, string after, int days, bool accepted)
    {
        MeterHistory meter = MeterHistory.Of(
            HourMeter.Of(Hours("1000")), [MeterReading.Of(Done, Hours(before)), MeterReading.Of(Done.PlusDays(days), Hours(after))], []);
        Assert.Equal(accepted, meter.Findings.Count == 0);
        Assert.Equal(
            accepted ? Hours("1000").Plus(Hours(after)) : Hours(before),
            meter.HoursOn(Done.PlusDays(days)).Value.Estimate);
    }

    [Theory]
    [InlineData("448.0", true)]
    [InlineData("448.001", false)]
    public void Reading_AtTheClocksLimit(string after, bool accepted) => Assert.Equal(
        accepted,
        MeterHistory.Of(HourMeter.Plain, [MeterReading.Of(Done, Hours("400")), MeterReading.Of(Done.PlusDays(2), Hours(after))], []).Findings.Count == 0);

    [Theory]
    [InlineData("999.999", true)]
    [InlineData("1000.0", false)]
    public void Reading_AtTheEndOfTheDial(string shown, bool accepted) => Assert.Equal(
        accepted, MeterHistory.Of(HourMeter.Of(Hours("1000")), [MeterReading.Of(Done, Hours(shown))], []).Findings.Count == 0);

    // INTERVAL-10: closed by the calendar at 40 h, the hours run from 40 h.
    [Theory]
    [InlineData(AnchorPolicy.DonePoint)]
    [InlineData(AnchorPolicy.ChargeLateExcess)]
    [InlineData(AnchorPolicy.SnapWithinWindow)]
    public void HoursLimb_IsNeverAnchoredAtADuePointThatItWasFarFrom(AnchorPolicy policy)
    {
        ServiceTask oil = ServiceTask.Replace("oil", RandomHistory.Both(100, 12)).WithAnchorPolicy(policy);
        LocalDate due = Done.PlusMonths(12);
        Assert.Equal(Hours("140"), One(oil, due, Completion.Of("oil", Done, Hours("0")), Completion.Of("oil", due, Hours("40"))).Due.Hours);
    }

    // Each rule that can decide where one task stands is named where it does.
    [Fact]
    public void Rules_ThatBearOnATask_AreNamedByIt()
    {
        LocalDate later = Done.PlusDays(90);
        IEnumerable<IntervalRule> named = new[]
        {
            Oil(Done),
            Oil(later, MeterReading.Of(later, Hours("355"))),
            Oil(later, MeterReading.Of(later, Hours("345"))),
            Oil(later, Completion.Partial("oil", later, Hours("330"), 0.6m), MeterReading.Of(later, Hours("330"))),
            One(ServiceTask.Replace("oil", RandomHistory.Both(100, 12)).WithPartialExchange(PartialExchange.ProRata), later, Completion.Of("oil", Done, Hours("250")), Completion.Partial("oil", later, Hours("330"), 0.6m)),
            Oil(later, MeterChange.Of(later, Hours("300"))),
            One(ServiceTask.Replace("oil", RandomHistory.Both(100, 12)).WithAnchorPolicy(AnchorPolicy.ChargeLateExcess), later, Completion.Of("oil", Done, Hours("250"))),
            One(ServiceTask.Replace("oil", RandomHistory.Both(100, 12)).WithAnchorPolicy(AnchorPolicy.SnapWithinWindow), later, Completion.Of("oil", Done, Hours("250"))),
            One(ServiceTask.Replace("oil", ServiceInterval.OfMonths(12)).WithAnchorPolicy(AnchorPolicy.FixedGrid), later, GridOrigin.Of(Done, "oil")),
            One(ServiceTask.Inspect("oil", RandomHistory.Both(100, 12)), later, Completion.Failed("oil", Done)),
            One(ServiceTask.Inspect("oil", RandomHistory.Both(100, 12)).DueAfterEvents("overheat"), later, ServiceEvent.Of("overheat", Done)),
            One(ServiceTask.Replace("oil", RandomHistory.Both(100, 12)).WithFirstService(RandomHistory.Both(20, 12)), later, EnteredService.New(Done, Hours("0"))),
            One(ServiceTask.Replace("oil", RandomHistory.Both(100, 12)).WithSevereDuty("towing", 0.5m), later, Completion.Of("oil", Done, Hours("250")), DutyChange.Of(later, ["towing"], Hours("290"))),
            One(ServiceTask.Replace("oil", ServiceInterval.OfMonths(6)).WithLayUpRule(LayUpRule.Suspend), later, Completion.Of("oil", Done), PlannedLayUp.Between(Done.PlusDays(20), later)),
            One(ServiceTask.Replace("oil", ServiceInterval.OfMonths(6)).WithLayUpRule(LayUpRule.PullForward), later, Completion.Of("oil", Done), PlannedLayUp.Between(later, Done.PlusMonths(9))),
            One(ServiceTask.AtLayUp("oil"), later.PlusDays(9), LaidUp.On(later, Hours("455")), MeterReading.Of(later.PlusDays(9), Hours("456"))),
            Oil(later, MeterReading.Of(Done.PlusDays(10), Hours("300")), Completion.Of("oil", Done.PlusDays(20)), MeterReading.Of(Done.PlusDays(30), Hours("331"))),
            Oil(Done.PlusDays(1)),
            One(ServiceTask.Replace("oil", RandomHistory.Both(100, 12)), Done),
        }.SelectMany(task => task.Rules()).Distinct();

        // The others speak of entries, of readings and of compliance, where they are tested; one of two tasks of a list.
        IntervalRule[] elsewhere =
        [
            IntervalRule.MonthEnd, IntervalRule.NoDrift, IntervalRule.LimbsApart, IntervalRule.OwnTaskOnly, IntervalRule.SmallestFactor, IntervalRule.ReadingsThatFall,
            IntervalRule.CannotBeShown, IntervalRule.HigherIncludesLower, IntervalRule.TogetherOnce, IntervalRule.Recompute, IntervalRule.CountedOnce,
        ];
        Assert.Equal(IntervalRule.All.Except(elsewhere).Select(rule => rule.Code), named.Select(rule => rule.Code).Order(StringComparer.Ordinal));
    }

    private static TaskDue Oil(LocalDate today, params ServiceFact[] facts) =>
        One(ServiceTask.Replace("oil", RandomHistory.Both(100, 12)), today, [Completion.Of("oil", Done, Hours("250")), .. facts]);

    private static TaskDue One(ServiceTask task, LocalDate today, params ServiceFact[] facts) =>
        DueList.Evaluate(TaskPlan.Of([task]), ServiceHistory.Of(HourMeter.Plain, facts, today))[task.Id];

    private static EngineHours Hours(string hours) => EngineHours.FromHours(decimal.Parse(hours, System.Globalization.CultureInfo.InvariantCulture));
}
