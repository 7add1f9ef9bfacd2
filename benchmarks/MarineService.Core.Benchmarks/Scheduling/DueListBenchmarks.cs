using BenchmarkDotNet.Attributes;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Benchmarks.Scheduling;

/// <summary>One due list of forty tasks from three hundred entries, against the bare "last done plus interval" on dates and decimals.</summary>
[MemoryDiagnoser]
public class DueListBenchmarks
{
    private (string Task, LocalDate Date, decimal Hours)[] _done = null!;
    private (string Task, decimal Hours, int Months)[] _tasks = null!;
    private ServiceHistory _history = null!;

    [GlobalSetup]
    public void Build()
    {
        _history = ClubRecord.Log.History(ClubRecord.Specification, ClubRecord.Today);
        _done = [.. ClubRecord.Log.Entries.Select(entry => entry.Fact).OfType<Completion>().Select(fact => (fact.TaskId, fact.Date, fact.Dial?.ToHours() ?? 0))];
        _tasks = [.. ClubRecord.Specification.Tasks.Select(task => (task.Id, task.Interval!.Hours!.Value.ToHours(), task.Interval.Months!.Value))];
    }

    /// <summary>What a page of a spreadsheet does: the last completion of each task, no readings, no policies, no reasons.</summary>
    [Benchmark(Baseline = true)]
    public int LastDonePlusInterval()
    {
        int due = 0;
        foreach ((string task, decimal hours, int months) in _tasks)
        {
            (LocalDate date, decimal at) = (new LocalDate(1900, 1, 1), 0m);
            foreach ((string done, LocalDate on, decimal shown) in _done)
            {
                if (done == task && on > date)
                {
                    (date, at) = (on, shown);
                }
            }

            due += date.PlusMonths(months) <= ClubRecord.Today || at + hours <= 730m ? 1 : 0;
        }

        return due;
    }

    [Benchmark]
    public DueList FromTheLog() => ClubRecord.Log.DueList(ClubRecord.Specification, ClubRecord.Today);

    [Benchmark]
    public DueList FromAHistory() => DueList.Evaluate(ClubRecord.Specification.Plan, _history);

    [Benchmark]
    public ComplianceReport Compliance() => ClubRecord.Log.Compliance(ClubRecord.Specification, ClubRecord.Today);
}
