using MarineService.Core.Internal;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Fleet;

/// <summary>A fleet, or a part of one, in figures.</summary>
/// <remarks>Summaries of parts make the summary of the whole, in any order and any grouping: all figures are sums.</remarks>
public sealed class FleetSummary
{
    private readonly long[] _tasks;
    private IReadOnlyList<DueCount>? _dueDates;
    private IReadOnlyList<PartDemand>? _parts;

    internal FleetSummary(long engines, long refused, long[] tasks, KeyValuePair<int, long>[] tasksByDay, PartDemand[] demands) =>
        (Engines, Refused, _tasks, TasksByDay, Demands) = (engines, refused, tasks, tasksByDay, demands);

    /// <summary>The summary of no engine at all.</summary>
    public static FleetSummary Empty { get; } = new FleetTally().ToSummary();

    /// <summary>How many records there were, refused ones too.</summary>
    public long Engines { get; }

    /// <summary>How many records could not be judged.</summary>
    public long Refused { get; }

    /// <summary>How many tasks have which due date, earliest first.</summary>
    public IReadOnlyList<DueCount> DueDates => _dueDates ??= Array.AsReadOnly<DueCount>([.. TasksByDay
        .GroupBy(pair => pair.Key, pair => pair.Value)
        .OrderBy(day => day.Key)
        .Select(day => new DueCount(day.Key, day.Sum()))]);

    /// <summary>What the tasks will use up, by depot, week and part; what has no week last.</summary>
    public IReadOnlyList<PartDemand> Parts => _parts ??= Array.AsReadOnly<PartDemand>([.. Demands
        .GroupBy(demand => (demand.Depot, demand.Monday, demand.Part), demand => demand.Quantity)
        .OrderBy(demand => demand.Key.Depot, StringComparer.Ordinal)
        .ThenBy(demand => demand.Key.Monday ?? int.MaxValue)
        .ThenBy(demand => demand.Key.Part, StringComparer.Ordinal)
        .Select(demand => new PartDemand(demand.Key.Depot, demand.Key.Monday, demand.Key.Part, demand.Sum()))]);

    /// <summary>The earliest due date of any task; not known when no task has one.</summary>
    public Answer<LocalDate> EarliestDue => DueDates.Count > 0
        ? Answer.Known(DueDates[0].Date)
        : Answer.NotKnown<LocalDate>("A task with a due date.");

    /// <summary>How many tasks have a status.</summary>
    /// <param name="status">The status.</param>
    /// <returns>The number of tasks of all engines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="status"/> is not a defined value.</exception>
    public long TasksThatAre(DueStatus status) => _tasks[(int)Guard.Defined(status)];

    // As they came, a day or a demand perhaps more than once: most summaries are only added to others, and never looked at.
    internal KeyValuePair<int, long>[] TasksByDay { get; }

    internal PartDemand[] Demands { get; }

    /// <summary>The summary of both.</summary>
    /// <param name="other">The summary of other engines.</param>
    /// <returns>The sum.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="other"/> is null.</exception>
    public FleetSummary Merge(FleetSummary other)
    {
        FleetTally tally = new();
        tally.Add(this);
        tally.Add(Guard.NotNull(other));
        return tally.ToSummary();
    }

    /// <summary>What a few results say.</summary>
    internal static FleetSummary Of(IReadOnlyList<FleetResult> results)
    {
        long refused = 0;
        long[] tasks = new long[(int)DueStatus.Overdue + 1];
        List<KeyValuePair<int, long>> dueDays = new(8 * results.Count);
        List<PartDemand> demands = new(8 * results.Count);
        for (int i = 0; i < results.Count; i++)
        {
            refused += results[i].IsEvaluated ? 0 : 1;
            demands.AddRange(results[i].Parts);
            for (int j = 0; j < results[i].Tasks.Count; j++)
            {
                FleetTask task = results[i].Tasks[j];
                tasks[(int)task.Status]++;
                if (task.DueDay is int day)
                {
                    dueDays.Add(new(day, 1));
                }
            }
        }

        return new(results.Count, refused, tasks, [.. dueDays], [.. demands]);
    }
}
