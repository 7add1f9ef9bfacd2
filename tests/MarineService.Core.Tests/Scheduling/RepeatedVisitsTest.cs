using MarineService.Core.Engines;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Tests.Scheduling;

/// <summary>Plans over some years: laws, every choice of days as a second opinion, and cases worked by hand.</summary>
public sealed class RepeatedVisitsTest
{
    private static readonly LocalDate Today = new(2026, 4, 1);

    /// <summary>Second method: every subset of the visit days, each task's times tried one by one on dates, not on day numbers.</summary>
    [Fact]
    public void LeastCost_OfHundredSmallCases_LiesBetweenItsBoundAndEveryChoiceOfDays()
    {
        Random random = new(20261125);
        int least = 0;
        for (int i = 0; i < 100; i++)
        {
            decimal setUp = random.Next(0, 60);
            (RepeatedTask[] tasks, LocalDate until) = Case(random, days: 10);
            VisitPlan plan = VisitPlanner.From(Today, setUp).OnlyOn(IsoDayOfWeek.Saturday).LeastCost(tasks, until).Value;
            decimal best = EveryChoice(tasks, setUp, until);
            Assert.True(plan.Cost >= best, $"case {i}: {plan} under {best}");
            Assert.True(plan.LowerBound <= best, $"case {i}: bound {plan.LowerBound} above {best}");
            Assert.Equal(plan.Cost, Recounted(plan, tasks, setUp));
            least += plan.Cost == best ? 1 : 0;
        }

        // The search need not find the least; that it nearly always does is what makes it worth having.
        Assert.InRange(least, 95, 100);
    }

    [Law(MaxTest = 40)]
    public void Plan_UsesNoBlockedDay_KeepsEachTaskComingRound_AndCostsNoMoreThanSeparateVisits(int seed)
    {
        Random random = new(seed);
        (RepeatedTask[] tasks, LocalDate until) = Case(random, days: 16);
        LocalDate from = Today.PlusDays(random.Next(10, 90));
        LocalDate to = from.PlusDays(random.Next(1, 20));
        VisitPlanner planner = VisitPlanner.From(Today, random.Next(0, 80)).Blocked(from, to);
        planner = random.Next(2) == 0 ? planner.OnlyOn(IsoDayOfWeek.Saturday, IsoDayOfWeek.Wednesday) : planner;
        VisitPlan plan = planner.LeastCost(tasks, until).Value;
        Assert.DoesNotContain(plan.Visits, visit => visit.Date >= from && visit.Date <= to);
        Assert.All(plan.Visits, visit => Assert.InRange(visit.Date, Today, until));
        Assert.True(plan.Cost <= plan.SeparateCost, $"{plan} above {plan.SeparateCost}");
        Assert.True(plan.LowerBound <= plan.Cost);
        Assert.InRange(plan.GapFraction!.Value, 0, 1);
        Assert.Equal(plan.Cost, plan.Seasons.Sum(plan.CostOfSeason));
        Assert.Equal(plan.EarlyCost, plan.Seasons.Sum(plan.EarlyCostOfSeason));
        foreach (RepeatedTask task in tasks)
        {
            LocalDate due = task.FirstDue;
            foreach (VisitItem item in plan.Visits.SelectMany(visit => visit.Items).Where(item => item.Task.Id == task.Id))
            {
                Assert.Equal(due, item.Task.Due);
                Assert.NotEqual(item.Date, item.NextBestDate);
                Assert.True(item.NextBestExtraCost is null or >= 0, item.ToString());
                due = item.Date.PlusMonths(task.Interval.Months!.Value);
            }
        }
    }

    [Law(MaxTest = 30)]
    public void Plan_OfTasksInAnyOrder_IsTheSame(int seed)
    {
        Random random = new(seed);
        (RepeatedTask[] tasks, LocalDate until) = Case(random, days: 30);
        RepeatedTask[] shuffled = [.. tasks];
        random.Shuffle(shuffled);
        VisitPlanner planner = VisitPlanner.From(Today, 40m).OnlyOn(IsoDayOfWeek.Sunday);
        Assert.Equal(
            planner.LeastCost(tasks, until).Value.Explain(DisplayUnits.Metric).ToString(),
            planner.LeastCost(shuffled, until).Value.Explain(DisplayUnits.Metric).ToString());
    }

    /// <summary>By hand: two yearly tasks ten days apart at a tenth a day come together each year for 1.00 of life and go on from there.</summary>
    [Fact]
    public void YearlyTasks_ComeTogether_AndStayTogether()
    {
        RepeatedTask[] tasks =
        [
            RepeatedTask.Every("oil", new(2026, 6, 1), 12, 36.5m, 1m),
            RepeatedTask.Every("filter", new(2026, 6, 11), 12, 36.5m, 1m),
        ];
        VisitPlan plan = VisitPlanner.From(Today, 60m).LeastCost(tasks, new(2028, 12, 31)).Value;
        Assert.Equal("2026-06-01: oil, filter; 2027-06-01: filter, oil; 2028-06-01: filter, oil", string.Join("; ", plan.Visits));
        Assert.Equal(181m, plan.Cost);
        Assert.Equal(61m, plan.CostOfSeason(2026));
        Assert.Equal(1m, plan.EarlyCostOfSeason(2026));
        Assert.Equal(60m, plan.CostOfSeason(2028));
        Assert.Equal(361m - 1m, plan.SeparateCost);
        Assert.InRange(plan.GapFraction!.Value, 0, 0.02);
        Assert.Equal(VisitMethod.RepeatedTasks, plan.Method);
    }

    /// <summary>By hand: due 19 days before the lay-up ends; 185 days early at a tenth is 18.50, a visit of its own cannot be in the lay-up, 19 days late cost 1.90.</summary>
    [Fact]
    public void LayUp_IsAVisitAlreadyPaid()
    {
        RepeatedTask task = RepeatedTask.Every("oil", new(2027, 4, 1), 12, 36.5m, 0.1m);
        VisitPlan plan = VisitPlanner.From(Today, 60m).LaidUp(new(2026, 10, 20), new(2027, 4, 20)).LeastCost([task], new(2027, 12, 31)).Value;
        Assert.Equal("2027-04-20: oil", Assert.Single(plan.Visits).ToString());
        Assert.Equal(1.9m, plan.Cost);
        Assert.True(plan.IsProvenLeastCost);
    }

    /// <summary>A failed inspection is never weighed against money: late days cost nothing here, a visit a fortune, and still it comes first.</summary>
    [Fact]
    public void FailedInspection_GoesOnTheFirstDayThereIs()
    {
        ServiceTask[] tasks =
        [
            ServiceTask.Inspect("look", ServiceInterval.OfMonths(12)).IfFailedDo("impeller"),
            ServiceTask.Replace("impeller", ServiceInterval.OfMonths(24)),
        ];
        ServiceFact[] facts = [Completion.Of("impeller", new(2025, 4, 1), null), Completion.Failed("look", new(2026, 3, 30), null)];
        TaskDue due = DueList.Evaluate(TaskPlan.Of(tasks), ServiceHistory.Of(HourMeter.Plain, facts, Today))["impeller"];
        VisitPlan plan = VisitPlanner.From(Today, 5000m).OnlyOn(IsoDayOfWeek.Saturday)
            .LeastCost([RepeatedTask.Of(due, 70m, 0m).Value, RepeatedTask.Every("oil", Today.PlusDays(20), 12, 80m, 0m)], new(2027, 3, 1)).Value;
        VisitItem first = plan.Visits[0].Items.Single(item => item.Task.Id == "impeller");
        Assert.Equal(new LocalDate(2026, 4, 4), first.Date);
        Assert.True(first.IsDueAtOnce);
        Assert.Null(first.NextBestDate);
        Assert.Contains("leave the engine off", first.Reason, StringComparison.Ordinal);
    }

    /// <summary>What does not come round, or has no price in days, is not planned; a task of a second engine says whose it is.</summary>
    [Fact]
    public void TasksOfADueList_CarryTheirScope_AndAreNotKnownWithoutADate()
    {
        TaskPlan plan = TaskPlan.Of([ServiceTask.EachUse("sniff"), ServiceTask.Replace("valves", ServiceInterval.OfHours(EngineHours.FromHours(500m))), ServiceTask.Replace("oil", ServiceInterval.OfMonths(12))]);
        DueList list = DueList.Evaluate(plan, ServiceHistory.Of(HourMeter.Plain, [Completion.Of("oil", Today, null), Completion.Of("valves", Today, null)], Today), "port");
        Assert.False(RepeatedTask.Of(list["sniff"], 1m, 1m).IsKnown);
        Assert.False(RepeatedTask.Of(list["valves"], 1m, 1m).IsKnown);
        Assert.Equal("port/oil due 2027-04-01, then 12 months", RepeatedTask.Of(list["oil"], 366m, 1m).Value.ToString());
        // 1 April 2027 to 1 April 2028 has 366 days.
        Assert.Equal(1m, RepeatedTask.Of(list["oil"], 366m, 1m).Value.EarlyPerDay);
    }

    /// <summary>After an event on a new engine the first service by hours alone is not taken for the interval to come.</summary>
    [Fact]
    public void TaskDueAtOnceBeforeItsFirstService_ComesRoundByItsOwnInterval()
    {
        ServiceTask oil = ServiceTask.Replace("oil", ServiceInterval.FirstOf(EngineHours.FromHours(200m), 12))
            .WithFirstService(ServiceInterval.OfHours(EngineHours.FromHours(50m))).DueAfterEvents("overheat").WithSevereDuty("towing", 0.5m);
        ServiceFact[] facts =
        [
            EnteredService.New(new(2026, 1, 10), EngineHours.Zero), MeterReading.Of(new(2026, 3, 1), EngineHours.FromHours(20m)),
            ServiceEvent.Of("overheat", new(2026, 3, 30), null),
        ];
        TaskDue due = DueList.Evaluate(TaskPlan.Of([oil]), ServiceHistory.Of(HourMeter.Plain, facts, Today))["oil"];
        Assert.Equal(DueBasis.Event, due.Basis);
        Assert.Equal(oil.Interval, RepeatedTask.Of(due, 85m, 1m).Value.Interval);
        ServiceFact[] towing = [Completion.Of("oil", new(2026, 3, 1), EngineHours.FromHours(20m)), DutyChange.Of(new(2026, 3, 1), ["towing"], null)];
        TaskDue severe = DueList.Evaluate(TaskPlan.Of([oil]), ServiceHistory.Of(HourMeter.Plain, towing, Today))["oil"];
        Assert.Equal(ServiceInterval.FirstOf(EngineHours.FromHours(100m), 6), RepeatedTask.Of(severe, 85m, 1m).Value.Interval);
    }

    [Fact]
    public void NoDay_IsSaidToBeMissing_AndBadArgumentsAreRefusedByName()
    {
        VisitPlanner planner = VisitPlanner.From(Today, 10m);
        RepeatedTask task = RepeatedTask.Every("oil", Today, 12, 1m, 1m);
        Assert.False(planner.Blocked(Today, Today.PlusDays(9)).LeastCost([task], Today.PlusDays(9)).IsKnown);
        Assert.Empty(planner.LeastCost(Array.Empty<RepeatedTask>(), Today).Value.Visits);
        Assert.Throws<ArgumentOutOfRangeException>("until", () => planner.LeastCost([task], Today.PlusDays(-1)));
        Assert.Throws<ArgumentOutOfRangeException>("until", () => planner.LeastCost([task], Today.PlusYears(11)));
        Assert.Throws<ArgumentException>("tasks", () => planner.LeastCost([task, task], Today));
        Assert.Throws<ArgumentOutOfRangeException>("price", () => RepeatedTask.Every("oil", Today, 12, -1m, 1m));
        Assert.Throws<ArgumentOutOfRangeException>("latePerDay", () => RepeatedTask.Every("oil", Today, 12, 1m, -1m));
        Assert.Throws<ArgumentOutOfRangeException>("months", () => RepeatedTask.Every("oil", Today, 0, 1m, 1m));
        Assert.Throws<ArgumentOutOfRangeException>("firstDue", () => RepeatedTask.Every("oil", default, 12, 1m, 1m));
    }

    private static (RepeatedTask[] Tasks, LocalDate Until) Case(Random random, int days)
    {
        RepeatedTask[] tasks = new RepeatedTask[1 + random.Next(4)];
        for (int i = 0; i < tasks.Length; i++)
        {
            tasks[i] = RepeatedTask.Every($"t{i}", Today.PlusDays(random.Next(0, 60)), 1 + random.Next(3), random.Next(0, 90), random.Next(0, 40) / 10m);
        }

        return (tasks, Today.PlusDays(7 * days));
    }

    private static decimal CostOf(RepeatedTask task, LocalDate due, LocalDate day) =>
        decimal.Round(day <= due ? task.EarlyPerDay : task.LatePerDay, 6) * Math.Abs(Period.DaysBetween(due, day));

    // The visits of the plan priced again from its days alone.
    private static decimal Recounted(VisitPlan plan, RepeatedTask[] tasks, decimal setUp) =>
        (plan.Visits.Count * setUp) + plan.Visits.SelectMany(visit => visit.Items).Sum(item => CostOf(tasks.Single(task => task.Id == item.Task.Id), item.Task.Due, item.Date));

    private static decimal EveryChoice(RepeatedTask[] tasks, decimal setUp, LocalDate until)
    {
        LocalDate[] days = [.. Enumerable.Range(0, Period.DaysBetween(Today, until) + 1).Select(Today.PlusDays).Where(day => day.DayOfWeek == IsoDayOfWeek.Saturday)];
        decimal best = 1_000_000m;
        for (int choice = 0; choice < 1 << days.Length; choice++)
        {
            LocalDate[] open = [.. days.Where((_, k) => (choice & (1 << k)) != 0)];
            decimal total = setUp * open.Length;
            foreach (RepeatedTask task in tasks)
            {
                total = total >= best ? best : total + Times(task, task.FirstDue, open, until, days[^1], best - total);
            }

            best = Math.Min(best, total);
        }

        return best;
    }

    private static decimal Times(RepeatedTask task, LocalDate due, ReadOnlySpan<LocalDate> open, LocalDate until, LocalDate last, decimal limit)
    {
        if (due > until)
        {
            return 0;
        }

        decimal best = limit;
        for (int k = 0; k < open.Length; k++)
        {
            decimal cost = CostOf(task, due, open[k]);
            if (cost < best)
            {
                best = Math.Min(best, cost + (open[k] == last ? 0 : Times(task, open[k].PlusMonths(task.Interval.Months!.Value), open[(k + 1)..], until, last, best - cost)));
            }
        }

        return best;
    }
}
