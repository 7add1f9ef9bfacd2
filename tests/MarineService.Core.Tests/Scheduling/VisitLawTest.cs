using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Tests.Scheduling;

/// <summary>Laws of visit plans, and the enumeration of every partition as a second opinion.</summary>
public sealed class VisitLawTest
{
    private static readonly LocalDate Today = new(2026, 4, 1);

    [Fact]
    public void LeastCost_OfFiveHundredSmallCases_IsThatOfEveryPartition()
    {
        Random random = new(20261125);
        int proven = 0;
        for (int i = 0; i < 500; i++)
        {
            RandomCase one = new(random, shared: i % 2 == 1);
            VisitPlan plan = one.Planner.LeastCost(one.Tasks).Value;
            decimal least = one.Enumerated();
            if (plan.Method == VisitMethod.ShortestPath)
            {
                Assert.Equal(least, plan.Cost);
            }

            Assert.True(plan.Cost >= least, $"case {i}: {plan} under {least}");
            Assert.True(plan.LowerBound <= least, $"case {i}: bound {plan.LowerBound} above {least}");
            proven += plan.Cost == least ? 1 : 0;
        }

        // With shared removals the search need not find the least; that it nearly always does is what makes it worth having.
        Assert.InRange(proven, 490, 500);
    }

    [Law]
    public void MoreSetUpCost_NeverMeansMoreVisits(int seed)
    {
        RandomCase one = new(new Random(seed), shared: false);
        int before = int.MaxValue;
        foreach (decimal setUp in new[] { 0m, 1m, 5m, 12.5m, 40m, 90m, 400m })
        {
            int visits = VisitPlanner.From(Today, setUp).LeastCost(one.Tasks).Value.Visits.Count;
            Assert.True(visits <= before);
            before = visits;
        }
    }

    [Law]
    public void Plan_UsesNoBlockedDay_DoesEachTaskOnce_AndCostsNoMoreThanPlainAlternatives(int seed)
    {
        RandomCase one = new(new Random(seed), shared: seed % 2 == 0);
        VisitPlan plan = one.Planner.LeastCost(one.Tasks).Value;
        Assert.DoesNotContain(plan.Visits, visit => visit.Date >= one.BlockedFrom && visit.Date <= one.BlockedTo);
        Assert.Equal(one.Tasks.Select(task => task.Id).Order(), plan.Visits.SelectMany(visit => visit.Items).Select(item => item.Task.Id).Order());
        Assert.True(plan.Cost <= plan.SeparateCost);
        Assert.True(plan.BestSingleVisit is null || plan.Cost <= plan.BestSingleVisit.Cost);
        Assert.All(plan.Visits.SelectMany(visit => visit.Items), item =>
        {
            Assert.True(item.NextBestExtraCost is null or >= 0, item.ToString());
            Assert.NotEqual(item.Date, item.NextBestDate);
            Assert.True(item.Task.To is null || (item.Date >= item.Task.From && item.Date <= item.Task.To));
        });
    }

    [Law]
    public void Plan_OfTasksInAnyOrder_IsTheSame(int seed)
    {
        Random random = new(seed);
        RandomCase one = new(random, shared: seed % 2 == 0);
        VisitTask[] shuffled = [.. one.Tasks];
        random.Shuffle(shuffled);
        Assert.Equal(
            one.Planner.LeastCost(one.Tasks).Value.Explain(DisplayUnits.Metric).ToString(),
            one.Planner.LeastCost(shuffled).Value.Explain(DisplayUnits.Metric).ToString());
    }

    private sealed class RandomCase
    {
        private readonly decimal _setUp;
        private readonly decimal _access;

        internal RandomCase(Random random, bool shared)
        {
            _setUp = random.Next(0, 120);
            _access = shared ? random.Next(1, 60) : 0;
            BlockedFrom = Today.PlusDays(random.Next(0, 80));
            BlockedTo = BlockedFrom.PlusDays(random.Next(0, 15));
            int count = 2 + random.Next(5);
            Tasks = new VisitTask[count];
            for (int i = 0; i < count; i++)
            {
                int due = random.Next(0, 90);
                VisitTask task = VisitTask.Of($"t{i}", Today.PlusDays(due), random.Next(0, 50) / 10m, random.Next(0, 50) / 10m);
                task = random.Next(4) == 0 ? task.Within(Today.PlusDays(due - random.Next(0, 20)), Today.PlusDays(due + 16 + random.Next(0, 20))) : task;
                Tasks[i] = shared && random.Next(2) == 0 ? task.Behind("belt") : task;
            }

            Planner = VisitPlanner.From(Today, _setUp).Blocked(BlockedFrom, BlockedTo);
            Planner = shared ? Planner.WithAccess("belt", _access) : Planner;
        }

        internal VisitTask[] Tasks { get; }

        internal VisitPlanner Planner { get; }

        internal LocalDate BlockedFrom { get; }

        internal LocalDate BlockedTo { get; }

        /// <summary>Every partition of the tasks, each part on its own best day of all days.</summary>
        internal decimal Enumerated() => Partitions(0, []);

        private decimal Partitions(int next, List<List<VisitTask>> parts)
        {
            if (next == Tasks.Length)
            {
                return parts.Sum(OnBestDay);
            }

            decimal best = decimal.MaxValue;
            for (int p = 0; p <= parts.Count; p++)
            {
                bool isNew = p == parts.Count;
                if (isNew)
                {
                    parts.Add([]);
                }

                parts[p].Add(Tasks[next]);
                best = Math.Min(best, Partitions(next + 1, parts));
                parts[p].RemoveAt(parts[p].Count - 1);
                if (isNew)
                {
                    parts.RemoveAt(p);
                }
            }

            return best;
        }

        private readonly Dictionary<string, decimal> _known = [];

        private decimal OnBestDay(List<VisitTask> part)
        {
            string key = string.Join(',', part.Select(task => task.Id));
            if (!_known.TryGetValue(key, out decimal best))
            {
                best = 1_000_000m;
                for (int day = 0; day <= 130; day++)
                {
                    LocalDate date = Today.PlusDays(day);
                    if ((date < BlockedFrom || date > BlockedTo) && part.All(task => task.To is null || (date >= task.From && date <= task.To)))
                    {
                        decimal cost = _setUp + (part.Exists(task => task.Access is not null) ? _access : 0)
                            + part.Sum(task => (Math.Max(0, Period.DaysBetween(task.Due, date)) * task.LatePerDay) + (Math.Max(0, Period.DaysBetween(date, task.Due)) * task.EarlyPerDay));
                        best = Math.Min(best, cost);
                    }
                }

                _known[key] = best;
            }

            return best;
        }
    }
}
