using MarineService.Core.Internal;

namespace MarineService.Core.Engines;

/// <summary>The days on which the engine is laid up, past and to come, as runs of day numbers.</summary>
/// <remarks>
/// Where the record ends, the last lay-up is taken to come again each year; a lay-up whose end is not known ends on the day of the year
/// on which the one before it ended. Both are assumptions of this project, and are said in the answer.
/// </remarks>
internal sealed class RestDays
{
    private readonly List<(int From, int To)> _runs = [];

    private RestDays()
    {
    }

    /// <summary>The first day from which lay-ups are assumed and not on record; none when there are none.</summary>
    internal int AssumedFrom { get; private set; } = int.MaxValue;

    /// <summary>The runs, earliest first; the end does not belong to a run.</summary>
    internal IReadOnlyList<(int From, int To)> Runs => _runs;

    internal static RestDays Of(IReadOnlyList<LayUpPeriod> layUps, int lastReadingDay, int asOfDay, int untilDay)
    {
        RestDays rest = new();
        int earlierEnd = int.MinValue;
        foreach (LayUpPeriod layUp in layUps.OrderBy(period => period.FromDay))
        {
            int from = Math.Max(layUp.FromDay, rest._runs.Count == 0 ? int.MinValue : rest._runs[rest._runs.Count - 1].To);
            int to = layUp.To is null ? rest.OpenEnd(layUp.FromDay, earlierEnd, Math.Max(asOfDay, lastReadingDay)) : layUp.ToDay;
            if (to > from)
            {
                rest._runs.Add((from, to));
                earlierEnd = to;
            }
        }

        rest.RepeatLast(lastReadingDay, untilDay);
        return rest;
    }

    internal bool Holds(int day)
    {
        int low = 0;
        int high = _runs.Count;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (_runs[middle].To <= day)
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }

        return low < _runs.Count && _runs[low].From <= day;
    }

    private int OpenEnd(int from, int earlierEnd, int knownUntil)
    {
        if (earlierEnd == int.MinValue)
        {
            return knownUntil + 1;
        }

        int end = earlierEnd;
        for (int years = 1; end <= Math.Max(from, knownUntil); years++)
        {
            end = CalendarDay.PlusMonths(earlierEnd, 12 * years);
        }

        AssumedFrom = Math.Min(AssumedFrom, knownUntil + 1);
        return end;
    }

    private void RepeatLast(int lastReadingDay, int untilDay)
    {
        if (_runs.Count == 0)
        {
            return;
        }

        // A boat that was not laid up last winter is not taken to be laid up in the next; one that is never back has no season.
        (int from, int to) = _runs[_runs.Count - 1];
        if (to < lastReadingDay - 366 || to - from >= 365)
        {
            return;
        }

        for (int years = 1; CalendarDay.PlusMonths(from, 12 * years) <= untilDay; years++)
        {
            int next = CalendarDay.PlusMonths(from, 12 * years);
            _runs.Add((next, CalendarDay.PlusMonths(to, 12 * years)));
            AssumedFrom = Math.Min(AssumedFrom, next);
        }
    }
}
