using MarineService.Core.Scheduling;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Core.Tests.Scheduling;

public sealed class VisitPlannerTest
{
    private static readonly LocalDate Today = new(2024, 4, 15);

    private static readonly VisitTask[] Seven =
    [
        Task("ANODE", "2024-06-01", 0.10m, 0.8m),
        Task("IMPELLER", "2024-06-25", 0.05m, 4.0m),
        Task("GEAR", "2024-07-05", 0.20m, 0.9m),
        Task("OIL", "2024-07-20", 0.90m, 2.0m),
        Task("FUEL", "2024-08-10", 0.35m, 1.0m),
        Task("PLUGS", "2024-08-25", 0.60m, 0.5m),
        Task("BELT", "2024-09-15", 0.80m, 1.5m),
    ];

    /// <summary>Worked out independently by enumerating every partition with a program in another language; exact.</summary>
    [Theory]
    [InlineData(10, false, 55.35, "2024-06-01: ANODE, IMPELLER, GEAR; 2024-07-20: OIL, FUEL; 2024-08-25: PLUGS; 2024-09-15: BELT", 70, 172.0)]
    [InlineData(30, false, 115.85, "2024-06-01: ANODE, IMPELLER, GEAR; 2024-07-20: OIL, FUEL; 2024-09-15: PLUGS, BELT", 210, 192.0)]
    [InlineData(60, false, 190.30, "2024-06-25: ANODE, IMPELLER, GEAR, OIL, FUEL; 2024-09-15: PLUGS, BELT", 420, 222.0)]
    [InlineData(120, false, 282.00, "2024-06-25: ANODE, IMPELLER, GEAR, OIL, FUEL, PLUGS, BELT", 840, 282.0)]
    [InlineData(60, true, 202.55, "2024-06-01: ANODE, IMPELLER, GEAR; 2024-07-20: OIL, FUEL, PLUGS, BELT", 420, null)]
    public void WorkedExample_GivesItsVisitsAndCosts(int setUp, bool neverLate, double cost, string visits, int separate, double? atOnce)
    {
        VisitPlan plan = VisitPlanner.From(Today, setUp).LeastCost(neverLate ? Seven.Select(task => task.NeverLate()) : Seven).Value;
        Assert.Equal((decimal)cost, plan.Cost);
        Assert.Equal(visits, string.Join("; ", plan.Visits));
        Assert.Equal(separate, plan.SeparateCost);
        if (atOnce is double single)
        {
            Assert.Equal((decimal)single, plan.BestSingleVisit!.Cost);
            Assert.Equal("2024-06-25", LocalDatePattern.Iso.Format(plan.BestSingleVisit.Date));
        }

        Assert.True(plan.IsProvenLeastCost);
        Assert.Equal(0, plan.GapFraction);
    }

    [Fact]
    public void BlockedPeriods_SayWhatWasBlocked_LayUpsWithoutTheirEnds()
    {
        VisitPlanner planner = VisitPlanner.From(Today, 60m).Blocked(Today.PlusDays(5), Today.PlusDays(9)).LaidUp(new LocalDate(2024, 11, 1), new LocalDate(2025, 3, 31));
        Assert.Equal(Today, planner.Today);
        Assert.Equal(
            [new DateInterval(Today.PlusDays(5), Today.PlusDays(9)), new DateInterval(new LocalDate(2024, 11, 2), new LocalDate(2025, 3, 30))], planner.BlockedPeriods);
        Assert.Empty(VisitPlanner.From(Today, 60m).BlockedPeriods);
    }

    [Fact]
    public void WorkedExample_ByHand_SaysWhyAndWhatTheNextBestDayCosts()
    {
        VisitPlan plan = VisitPlanner.From(Today, 60m).LeastCost(Seven).Value;
        VisitItem anode = plan.Visits[0].Items[0];
        Assert.Equal(19.2m, anode.Cost);
        Assert.Equal(24, anode.DaysLate);
        VisitItem oil = plan.Visits[0].Items.Single(item => item.Task.Id == "OIL");
        Assert.Equal(22.5m, oil.Cost);
        // Alone on its due day it would cost a visit of 60 and save 22.50.
        Assert.Equal(new LocalDate(2024, 7, 20), oil.NextBestDate);
        Assert.Equal(37.5m, oil.NextBestExtraCost);
        // Early: gear 10 x 0.20, oil 25 x 0.90, fuel 46 x 0.35; late: anode 24 x 0.80, plugs 21 x 0.50.
        Assert.Equal(40.6m, plan.EarlyCost);
        Assert.Equal(29.7m, plan.LateCost);
        Assert.Equal(190.30m, plan.CostOfSeason(2024));
        Assert.Equal(0m, plan.CostOfSeason(2025));
        string why = plan.Explain(DisplayUnits.Metric).ToString();
        Assert.Contains("least cost, proven", why, StringComparison.Ordinal);
        Assert.Contains("next best 2024-07-20 costs 37.50 more", why, StringComparison.Ordinal);
    }

    /// <summary>Groups of neighbours in due order would cost 131.50; worked out independently by enumerating every partition.</summary>
    [Fact]
    public void NeighboursThatPartCompany_AreFound()
    {
        VisitTask[] tasks = [Day("a", 47, 4m, 3m), Day("b", 75, 4m, 0.5m), Day("c", 77, 0.2m, 3m), Day("d", 80, 4m, 0.2m)];
        VisitPlan plan = VisitPlanner.From(Today, 60m).LeastCost(tasks).Value;
        Assert.Equal(128.5m, plan.Cost);
        Assert.Equal("2024-06-01: a, c; 2024-07-04: b, d", string.Join("; ", plan.Visits));
    }

    /// <summary>Worked out independently: no single day lies in all windows, two suffice.</summary>
    [Fact]
    public void HardWindows_TakeTwoVisits()
    {
        VisitTask[] tasks =
        [
            Window(Seven[0], "2024-05-14", "2024-06-19"), Window(Seven[1], "2024-05-20", "2024-07-31"), Window(Seven[2], "2024-05-30", "2024-08-10"),
            Window(Seven[3], "2024-06-14", "2024-08-25"), Window(Seven[4], "2024-07-05", "2024-09-15"), Window(Seven[5], "2024-08-07", "2024-09-12"),
            Window(Seven[6], "2024-08-28", "2024-10-03"),
        ];
        VisitPlan plan = VisitPlanner.From(Today, 60m).FewestVisits(tasks).Value;
        Assert.Equal("2024-06-19: ANODE, IMPELLER, GEAR, OIL; 2024-09-12: FUEL, PLUGS, BELT", string.Join("; ", plan.Visits));
        Assert.Null(plan.LowerBound);
        Assert.Null(plan.GapFraction);
    }

    [Fact]
    public void LayUp_IsAVisitAlreadyPaid_AndBlocksTheWinter()
    {
        VisitTask oil = Task("OIL", "2024-12-20", 0.1m, 0.5m);
        VisitPlan plan = VisitPlanner.From(Today, 60m).LaidUp(new(2024, 10, 20), new(2025, 4, 15)).LeastCost([oil]).Value;
        Assert.Equal(new LocalDate(2024, 10, 20), plan.Visits.Single().Date);
        Assert.Equal(0m, plan.Visits[0].SetUpCost);
        Assert.Equal(6.1m, plan.Cost);
    }

    [Fact]
    public void SharedRemoval_IsPaidOnceForAVisit_AndTheBoundIsStated()
    {
        VisitTask[] tasks = [Day("belt", 40, 0.5m, 1m).Behind("belt"), Day("pump", 60, 0.5m, 1m).Behind("belt"), Day("oil", 60, 1m, 1m)];
        VisitPlan apart = VisitPlanner.From(Today, 5m).LeastCost(tasks).Value;
        Assert.Equal(2, apart.Visits.Count);
        VisitPlan plan = VisitPlanner.From(Today, 5m).WithAccess("belt", 12m).LeastCost(tasks).Value;
        // One removal on day 40 with both (10 early) and the oil on day 60: 5 + 12 + 10 + 5 = 32; apart 5 + 12 + 5 + 12 = 34; all on day 40: 5 + 12 + 10 + 20 = 47.
        Assert.Equal(32m, plan.Cost);
        Assert.Equal(VisitMethod.SharedAccess, plan.Method);
        Assert.InRange(plan.LowerBound!.Value, 0.9m * plan.Cost, plan.Cost);
        Assert.Equal(12m, plan.Visits[0].AccessCost);
    }

    [Fact]
    public void Ties_GoToFewerVisits_ThenEarlierDays()
    {
        // Two tasks 10 days apart at 1 a day: one visit of 10 costs as much together on any day between as two visits apart.
        VisitPlan plan = VisitPlanner.From(Today, 10m).LeastCost([Day("b", 20, 1m, 1m), Day("a", 10, 1m, 1m)]).Value;
        Assert.Equal(20m, plan.Cost);
        Assert.Equal(Today.PlusDays(10), plan.Visits.Single().Date);
    }

    [Fact]
    public void OnlyOn_KeepsToItsDaysOfTheWeek()
    {
        VisitPlan plan = VisitPlanner.From(Today, 10m).OnlyOn(IsoDayOfWeek.Saturday).LeastCost(Seven).Value;
        Assert.All(plan.Visits, visit => Assert.Equal(IsoDayOfWeek.Saturday, visit.Date.DayOfWeek));
    }

    [Fact]
    public void TaskWithoutADay_IsSaidToBeMissing()
    {
        VisitPlanner planner = VisitPlanner.From(Today, 10m).Blocked(new(2024, 5, 1), new(2024, 7, 1));
        Answer<VisitPlan> answer = planner.LeastCost([Window(Seven[0], "2024-05-14", "2024-06-19")]);
        Assert.Contains("'ANODE'", Assert.Single(answer.Missing), StringComparison.Ordinal);
        Assert.False(planner.FewestVisits(Seven).IsKnown);
    }

    [Fact]
    public void NothingToDo_IsNoVisit() => Assert.Equal("0 visits, 0.00", VisitPlanner.From(Today, 10m).AlreadyPaid(Today).LeastCost([]).Value.ToString());

    [Fact]
    public void BadArguments_AreRefusedByName()
    {
        VisitPlanner planner = VisitPlanner.From(Today, 10m);
        Assert.Throws<ArgumentOutOfRangeException>("setUpCost", () => VisitPlanner.From(Today, -1m));
        Assert.Throws<ArgumentOutOfRangeException>("earlyPerDay", () => Day("a", 1, -0.01m, 0m));
        Assert.Throws<ArgumentOutOfRangeException>("latePerDay", () => Day("a", 1, 0m, decimal.MaxValue));
        Assert.Throws<ArgumentOutOfRangeException>("to", () => planner.LaidUp(Today, Today));
        Assert.Throws<ArgumentOutOfRangeException>("to", () => planner.Blocked(Today, Today.PlusDays(-1)));
        Assert.Throws<ArgumentException>("weekdays", () => planner.OnlyOn());
        Assert.Throws<ArgumentOutOfRangeException>("weekdays", () => planner.OnlyOn(IsoDayOfWeek.None));
        Assert.Throws<ArgumentException>("tasks", () => planner.LeastCost([null!]));
    }

    internal static IReadOnlyList<VisitTask> WorkedExample => Seven;

    internal static VisitTask Day(string id, int day, decimal early, decimal late) => VisitTask.Of(id, Today.PlusDays(day), early, late);

    private static VisitTask Task(string id, string due, decimal early, decimal late) => VisitTask.Of(id, LocalDatePattern.Iso.Parse(due).Value, early, late);

    private static VisitTask Window(VisitTask task, string from, string to) =>
        task.Within(LocalDatePattern.Iso.Parse(from).Value, LocalDatePattern.Iso.Parse(to).Value);
}
