using MarineService.Core.Internal;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Fleet;

/// <summary>A fleet, or a part of one, in figures.</summary>
/// <remarks>Summaries of parts make the summary of the whole, in any order and any grouping: all figures are sums.</remarks>
public sealed class FleetSummary
{
    private readonly long[] _tasks;

    internal FleetSummary(long engines, long refused, long[] tasks, DueCount[] dueDates, PartDemand[] parts) =>
        (Engines, Refused, _tasks, DueDates, Parts) = (engines, refused, tasks, Array.AsReadOnly(dueDates), Array.AsReadOnly(parts));

    /// <summary>The summary of no engine at all.</summary>
    public static FleetSummary Empty { get; } = new FleetTally().ToSummary();

    /// <summary>How many records there were, refused ones too.</summary>
    public long Engines { get; }

    /// <summary>How many records could not be judged.</summary>
    public long Refused { get; }

    /// <summary>How many tasks have which due date, earliest first.</summary>
    public IReadOnlyList<DueCount> DueDates { get; }

    /// <summary>What the tasks will use up, by depot, week and part; what has no week last.</summary>
    public IReadOnlyList<PartDemand> Parts { get; }

    /// <summary>The earliest due date of any task; not known when no task has one.</summary>
    public Answer<LocalDate> EarliestDue => DueDates.Count > 0
        ? Answer.Known(DueDates[0].Date)
        : Answer.NotKnown<LocalDate>("A task with a due date.");

    /// <summary>How many tasks have a status.</summary>
    /// <param name="status">The status.</param>
    /// <returns>The number of tasks of all engines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="status"/> is not a defined value.</exception>
    public long TasksThatAre(DueStatus status) => _tasks[(int)Guard.Defined(status)];

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
