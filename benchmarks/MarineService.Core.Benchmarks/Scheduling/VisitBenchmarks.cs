using BenchmarkDotNet.Attributes;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Benchmarks.Scheduling;

/// <summary>Visits at weekends over three years for tasks that come round, against each task planned by itself, and the next occurrence of each alone.</summary>
[MemoryDiagnoser]
public class VisitBenchmarks
{
    private static readonly LocalDate Today = new(2026, 4, 1);
    private static readonly LocalDate Until = Today.PlusYears(3);

    private readonly VisitPlanner _planner = VisitPlanner.From(Today, 60m).OnlyOn(IsoDayOfWeek.Saturday, IsoDayOfWeek.Sunday)
        .LaidUp(new(2026, 10, 24), new(2027, 4, 17)).LaidUp(new(2027, 10, 23), new(2028, 4, 15)).LaidUp(new(2028, 10, 21), new(2029, 4, 14));

    private RepeatedTask[] _tasks = null!;
    private VisitTask[] _next = null!;

    [Params(10, 20, 40)]
    public int Tasks { get; set; }

    [GlobalSetup]
    public void Build()
    {
        Random random = new(20261125);
        _tasks = [.. Enumerable.Range(0, Tasks).Select(i =>
            RepeatedTask.Every($"t{i}", Today.PlusDays(random.Next(0, 360)), 6 * (1 + random.Next(6)), random.Next(15, 120), random.Next(2, 30) / 10m))];
        _next = [.. _tasks.Select(task => VisitTask.Of(task.Id, task.FirstDue, task.EarlyPerDay, task.LatePerDay))];
    }

    /// <summary>Nothing grouped: each task by itself.</summary>
    [Benchmark(Baseline = true)]
    public decimal EachByItself()
    {
        decimal cost = 0;
        foreach (RepeatedTask task in _tasks)
        {
            cost += _planner.LeastCost([task], Until).Value.Cost;
        }

        return cost;
    }

    [Benchmark]
    public VisitPlan ThreeYears() => _planner.LeastCost(_tasks, Until).Value;

    [Benchmark]
    public VisitPlan NextOccurrences() => _planner.LeastCost(_next).Value;
}
