namespace MarineService.Core.Scheduling;

/// <summary>The days of one task that comes round, when opening each day has a price.</summary>
internal static class RepeatedMath
{
    /// <summary>
    /// The cheapest days for one task up to the end of the days: a shortest path from one time to the next, since when it is due again depends
    /// on the last time only. What falls due when no day is left counts no more. Source: derived; checked against every choice of days.
    /// </summary>
    /// <param name="task">The task.</param>
    /// <param name="days">The days that may be used, earliest first.</param>
    /// <param name="opening">What each of them costs to open.</param>
    /// <param name="until">The last day of the plan.</param>
    /// <param name="firstOfAll">The first day on which any visit can be.</param>
    /// <param name="lastOfAll">The last day on which any visit can be.</param>
    /// <param name="togo">Filled with what follows after doing it on each day.</param>
    /// <param name="chosen">The indices of the days taken.</param>
    /// <returns>The cost; <see cref="VisitMath.Never"/> when the days do not do.</returns>
    internal static long Path(RepeatedLoad task, int[] days, long[] opening, int until, int firstOfAll, int lastOfAll, long[] togo, List<int> chosen)
    {
        chosen.Clear();
        int count = days.Length;
        int[] then = new int[count];
        for (int k = count - 1; k >= 0; k--)
        {
            (togo[k], then[k]) = After(task, task.NextAfter(days[k]), k + 1, days, opening, until, int.MaxValue, lastOfAll, days[k], togo);
        }

        (long cost, int at) = After(task, task.FirstDue, 0, days, opening, until, task.IsAtOnce ? firstOfAll : int.MaxValue, lastOfAll, int.MinValue, togo);
        while (at >= 0)
        {
            chosen.Add(at);
            at = then[at];
        }

        return cost;
    }

    /// <summary>The cheapest way on from a due day, over the days from an index on: its cost and the index of the first of them. Source: the shortest path of <see cref="Path"/>.</summary>
    internal static (long Cost, int First) After(
        RepeatedLoad task, int due, int fromIndex, int[] days, long[] opening, int until, int by, int lastOfAll, int done, long[] togo)
    {
        if (due > until || done >= lastOfAll)
        {
            return (0, -1);
        }

        (long best, int first) = (VisitMath.Never, -1);
        for (int k = fromIndex; k < days.Length && days[k] <= by; k++)
        {
            long total = opening[k] + togo[k];
            if (total < best)
            {
                total += task.Cost(due, days[k]);
                (best, first) = total < best ? (total, k) : (best, first);
            }
        }

        return (best, first);
    }
}
