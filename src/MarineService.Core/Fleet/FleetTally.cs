using MarineService.Core.Internal;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Fleet;

/// <summary>Counts results as they come, and gives the summary of what was counted.</summary>
/// <remarks>
/// The order of counting does not matter, and a count can be taken back: when an engine is delivered again with another fingerprint, take the
/// former result back and add the new one; with the same fingerprint do nothing. For one thread at a time; give each its own and add them up.
/// </remarks>
public sealed class FleetTally
{
    private readonly long[] _tasks = new long[(int)DueStatus.Overdue + 1];
    private readonly Dictionary<LocalDate, long> _dueDates = [];
    private readonly Dictionary<(string? Depot, LocalDate? Week, string Part), decimal> _parts = [];
    private long _engines;
    private long _refused;

    /// <summary>A tally of nothing yet.</summary>
    public FleetTally()
    {
    }

    /// <summary>Adds a result.</summary>
    /// <param name="result">The result.</param>
    /// <exception cref="ArgumentNullException"><paramref name="result"/> is null.</exception>
    public void Add(FleetResult result) => Count(Guard.NotNull(result), 1);

    /// <summary>Takes a result back that was added before.</summary>
    /// <param name="result">The result.</param>
    /// <exception cref="ArgumentNullException"><paramref name="result"/> is null.</exception>
    public void TakeBack(FleetResult result) => Count(Guard.NotNull(result), -1);

    /// <summary>Adds all that another summary counted.</summary>
    /// <param name="summary">The summary of other engines.</param>
    /// <exception cref="ArgumentNullException"><paramref name="summary"/> is null.</exception>
    public void Add(FleetSummary summary)
    {
        Guard.NotNull(summary);
        _engines += summary.Engines;
        _refused += summary.Refused;
        for (int i = 0; i < _tasks.Length; i++)
        {
            _tasks[i] += summary.TasksThatAre((DueStatus)i);
        }

        foreach (DueCount due in summary.DueDates)
        {
            Add(due.Date, due.Tasks);
        }

        foreach (PartDemand demand in summary.Parts)
        {
            Add(demand, 1);
        }
    }

    /// <summary>What was counted so far.</summary>
    /// <returns>The summary; it does not change when more is counted.</returns>
    public FleetSummary ToSummary() => new(
        _engines,
        _refused,
        [.. _tasks],
        [.. _dueDates.OrderBy(pair => pair.Key).Select(pair => new DueCount(pair.Key, pair.Value))],
        [.. _parts
            .OrderBy(pair => pair.Key.Depot, StringComparer.Ordinal)
            .ThenBy(pair => pair.Key.Week ?? Guard.LatestDate)
            .ThenBy(pair => pair.Key.Part, StringComparer.Ordinal)
            .Select(pair => new PartDemand(pair.Key.Depot, pair.Key.Week, pair.Key.Part, pair.Value))]);

    private void Count(FleetResult result, int sign)
    {
        _engines += sign;
        _refused += result.IsEvaluated ? 0 : sign;
        for (int i = 0; i < result.Tasks.Count; i++)
        {
            FleetTask task = result.Tasks[i];
            _tasks[(int)task.Status] += sign;
            if (task.DueDate is LocalDate date)
            {
                Add(date, sign);
            }
        }

        for (int i = 0; i < result.Parts.Count; i++)
        {
            Add(result.Parts[i], sign);
        }
    }

    private void Add(LocalDate date, long tasks)
    {
        _dueDates.TryGetValue(date, out long sum);
        if (sum + tasks == 0)
        {
            _dueDates.Remove(date);
        }
        else
        {
            _dueDates[date] = sum + tasks;
        }
    }

    private void Add(PartDemand demand, int sign)
    {
        (string?, LocalDate?, string) key = (demand.Depot, demand.Week, demand.Part);
        _parts.TryGetValue(key, out decimal sum);
        sum += sign * demand.Quantity;
        if (sum == 0)
        {
            _parts.Remove(key);
        }
        else
        {
            _parts[key] = sum;
        }
    }
}
