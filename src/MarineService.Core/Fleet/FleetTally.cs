using MarineService.Core.Internal;
using MarineService.Core.Scheduling;

namespace MarineService.Core.Fleet;

/// <summary>Counts results as they come, and gives the summary of what was counted.</summary>
/// <remarks>
/// The order of counting does not matter, and a count can be taken back: when an engine is delivered again with another fingerprint, take the
/// former result back and add the new one; with the same fingerprint do nothing. For one thread at a time; give each its own and add them up.
/// </remarks>
public sealed class FleetTally
{
    private readonly long[] _tasks = new long[(int)DueStatus.Overdue + 1];
    private readonly Dictionary<int, long> _dueDays = [];
    private readonly Dictionary<(string? Depot, int? Monday, string Part), PartSum> _parts = [];
    private long _engines;
    private long _refused;

    /// <summary>A tally of nothing yet.</summary>
    public FleetTally()
    {
    }

    /// <summary>Adds a result.</summary>
    /// <param name="result">The result.</param>
    /// <exception cref="ArgumentNullException"><paramref name="result"/> is null.</exception>
    public void Add(FleetResult result) => Count(FleetSummary.Of([Guard.NotNull(result)]), 1);

    /// <summary>Takes a result back that was added before.</summary>
    /// <param name="result">The result.</param>
    /// <exception cref="ArgumentNullException"><paramref name="result"/> is null.</exception>
    public void TakeBack(FleetResult result) => Count(FleetSummary.Of([Guard.NotNull(result)]), -1);

    /// <summary>Adds all that another summary counted.</summary>
    /// <param name="summary">The summary of other engines.</param>
    /// <exception cref="ArgumentNullException"><paramref name="summary"/> is null.</exception>
    public void Add(FleetSummary summary) => Count(Guard.NotNull(summary), 1);

    /// <summary>What was counted so far.</summary>
    /// <returns>The summary; it does not change when more is counted.</returns>
    public FleetSummary ToSummary() => new(
        _engines,
        _refused,
        [.. _tasks],
        [.. _dueDays],
        [.. _parts.Select(pair => new PartDemand(pair.Key.Depot, pair.Key.Monday, pair.Key.Part, pair.Value.Quantity))]);

    private void Count(FleetSummary summary, int sign)
    {
        _engines += sign * summary.Engines;
        _refused += sign * summary.Refused;
        for (int i = 0; i < _tasks.Length; i++)
        {
            _tasks[i] += sign * summary.TasksThatAre((DueStatus)i);
        }

        foreach (KeyValuePair<int, long> due in summary.TasksByDay)
        {
            Add(due.Key, sign * due.Value);
        }

        foreach (PartDemand demand in summary.Demands)
        {
            Add((demand.Depot, demand.Monday, demand.Part), sign < 0 ? -demand.Quantity : demand.Quantity);
        }
    }

    private void Add(int day, long tasks)
    {
        _dueDays.TryGetValue(day, out long sum);
        if (sum + tasks == 0)
        {
            _dueDays.Remove(day);
        }
        else
        {
            _dueDays[day] = sum + tasks;
        }
    }

    private void Add((string? Depot, int? Monday, string Part) demand, decimal quantity)
    {
        if (!_parts.TryGetValue(demand, out PartSum? sum))
        {
            sum = new();
            _parts.Add(demand, sum);
        }

        sum.Quantity += quantity;
        if (sum.Quantity == 0)
        {
            _parts.Remove(demand);
        }
    }

    // Changed in its place: a part that is wanted again needs no second look at the table.
    private sealed class PartSum
    {
        internal decimal Quantity { get; set; }
    }
}
