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

    internal FleetSummary(
        long engines,
        long refused,
        long[] tasks,
        KeyValuePair<int, long>[] tasksByDay,
        (string? Depot, int? Monday, string Part, decimal Quantity)[] demands) =>
        (Engines, Refused, _tasks, TasksByDay, Demands) = (engines, refused, tasks, tasksByDay, demands);

    /// <summary>The summary of no engine at all.</summary>
    public static FleetSummary Empty { get; } = new FleetTally().ToSummary();

    /// <summary>How many records there were, refused ones too.</summary>
    public long Engines { get; }

    /// <summary>How many records could not be judged.</summary>
    public long Refused { get; }

    /// <summary>How many tasks have which due date, earliest first.</summary>
    public IReadOnlyList<DueCount> DueDates => _dueDates ??= Array.AsReadOnly<DueCount>([.. TasksByDay
        .OrderBy(pair => pair.Key)
        .Select(pair => new DueCount(pair.Key, pair.Value))]);

    /// <summary>What the tasks will use up, by depot, week and part; what has no week last.</summary>
    public IReadOnlyList<PartDemand> Parts => _parts ??= Array.AsReadOnly<PartDemand>([.. Demands
        .OrderBy(demand => demand.Depot, StringComparer.Ordinal)
        .ThenBy(demand => demand.Monday ?? int.MaxValue)
        .ThenBy(demand => demand.Part, StringComparer.Ordinal)
        .Select(demand => new PartDemand(demand.Depot, demand.Monday, demand.Part, demand.Quantity))]);

    /// <summary>The earliest due date of any task; not known when no task has one.</summary>
    public Answer<LocalDate> EarliestDue => DueDates.Count > 0
        ? Answer.Known(DueDates[0].Date)
        : Answer.NotKnown<LocalDate>("A task with a due date.");

    /// <summary>How many tasks have a status.</summary>
    /// <param name="status">The status.</param>
    /// <returns>The number of tasks of all engines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="status"/> is not a defined value.</exception>
    public long TasksThatAre(DueStatus status) => _tasks[(int)Guard.Defined(status)];

    // In any order, and bare: most summaries are only added to others, and never looked at.
    internal KeyValuePair<int, long>[] TasksByDay { get; }

    internal (string? Depot, int? Monday, string Part, decimal Quantity)[] Demands { get; }

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
}
