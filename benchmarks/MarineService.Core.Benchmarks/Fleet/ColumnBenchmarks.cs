using BenchmarkDotNet.Attributes;
using MarineService.Core.Engines;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Benchmarks.Fleet;

/// <summary>
/// A million due points judged: as bare arithmetic with limits known beforehand, by columns, and from prepared engines of the object model.
/// Every row has both limbs; all three count the same statuses.
/// </summary>
[MemoryDiagnoser]
public class ColumnBenchmarks
{
    internal const int Rows = 1_000_000;
    private const int TasksOfEach = 40;
    private static readonly LocalDate Today = new(2026, 10, 12);

    private readonly ushort[] _codes = new ushort[Rows];
    private readonly int[] _days = new int[Rows];
    private readonly int[] _hours = new int[Rows];
    private readonly int[] _now = new int[Rows];
    private readonly DueStatus[] _statuses = new DueStatus[Rows];
    private readonly PreparedDue[] _engines = new PreparedDue[Rows / TasksOfEach];
    private DueLimitTable _limits = null!;

    [GlobalSetup]
    public void Build()
    {
        _limits = new();
        Random random = new(20261012);
        ServiceInterval interval = ServiceInterval.FirstOf(EngineHours.FromHours(100m), 12);
        ServiceTask[] tasks = [.. Enumerable.Range(0, TasksOfEach).Select(i => ServiceTask.Replace($"t{i}", interval))];
        TaskPlan plan = TaskPlan.Of(tasks);
        int today = Period.Between(new LocalDate(1970, 1, 1), Today, PeriodUnits.Days).Days;
        for (int engine = 0; engine < _engines.Length; engine++)
        {
            int now = random.Next(200_000, 900_000);
            List<ServiceFact> facts = [MeterReading.Of(Today, EngineHours.FromThousandths(now))];
            foreach (ServiceTask task in tasks)
            {
                facts.Add(OpeningDuePoint.Of(
                    Today.PlusDays(-1), task.Id, Today.PlusDays(random.Next(-60, 300)), EngineHours.FromThousandths(now + random.Next(-20_000, 90_000))));
            }

            _engines[engine] = PreparedDue.Of(plan, ServiceHistory.Of(HourMeter.Plain, facts, Today), _limits);
            Range rows = (engine * TasksOfEach)..((engine + 1) * TasksOfEach);
            _engines[engine].CopyTo(_codes.AsSpan(rows), _days.AsSpan(rows), _hours.AsSpan(rows));
            _now.AsSpan(rows).Fill(now);
        }

        int[] expected = Counts(() => BareLoop(today, 30, 36, 10_000, 10_000));
        if (!expected.SequenceEqual(Counts(() => Columns())) || !expected.SequenceEqual(Counts(() => Prepared())))
        {
            throw new InvalidOperationException($"The three do not say the same: {string.Join(' ', expected)}; {string.Join(' ', Counts(() => Columns()))}; {string.Join(' ', Counts(() => Prepared()))}.");
        }
    }

    [Benchmark(Baseline = true, OperationsPerInvoke = Rows)]
    public DueStatus Bare() => BareLoop(20_738, 30, 36, 10_000, 10_000);

    [Benchmark(OperationsPerInvoke = Rows)]
    public DueStatus Columns()
    {
        DueColumns.Evaluate(_limits, _codes, _days, _hours, _now, Today, _statuses);
        return _statuses[Rows - 1];
    }

    [Benchmark(OperationsPerInvoke = Rows)]
    public DueStatus Prepared()
    {
        for (int engine = 0; engine < _engines.Length; engine++)
        {
            _engines[engine].Evaluate(Today, null, _statuses.AsSpan(engine * TasksOfEach, TasksOfEach));
        }

        return _statuses[Rows - 1];
    }

    // What anybody would write who knows that all tasks have one interval.
    private DueStatus BareLoop(int today, int soonDays, int toleranceDays, int soonHours, int toleranceHours)
    {
        int[] days = _days;
        int[] hours = _hours;
        int[] now = _now;
        DueStatus[] statuses = _statuses;
        for (int i = 0; i < days.Length; i++)
        {
            int daysLeft = days[i] - today;
            int hoursLeft = hours[i] - now[i];
            int byDay = (daysLeft <= soonDays ? 2 : 0) + (daysLeft <= 0 ? 1 : 0) + (daysLeft < -toleranceDays ? 1 : 0);
            int byHours = (hoursLeft <= soonHours ? 2 : 0) + (hoursLeft <= 0 ? 1 : 0) + (hoursLeft < -toleranceHours ? 1 : 0);
            statuses[i] = (DueStatus)Math.Max(byDay, byHours);
        }

        return statuses[days.Length - 1];
    }

    private int[] Counts(Action judge)
    {
        judge();
        int[] counts = new int[5];
        foreach (DueStatus status in _statuses)
        {
            counts[(int)status]++;
        }

        return counts;
    }
}
