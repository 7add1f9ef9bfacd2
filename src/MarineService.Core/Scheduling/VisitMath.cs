namespace MarineService.Core.Scheduling;

/// <summary>Least-cost visit days on day numbers and millionths of the caller's currency.</summary>
internal static class VisitMath
{
    /// <summary>What cannot be; sums of it still fit.</summary>
    internal const long Never = long.MaxValue / 4;

    /// <summary>What a task costs on a day: early and late days at their rates, never outside its window. Source: the statement of the problem.</summary>
    internal static long Cost(in VisitLoad task, int day) =>
        day < task.From || day > task.To ? Never
        : day <= task.Due ? (task.Due - day) * task.EarlyPerDay
        : (day - task.Due) * task.LatePerDay;

    /// <summary>
    /// The days of a least-cost set of visits that serves all tasks, where opening day k costs opening[k]; ties go to fewer visits, then to
    /// earlier days. Each task takes the nearer of the two visits around its best day, since its cost rises on both sides; so this is a
    /// shortest path over the days. Source: derived; checked against the enumeration of all partitions and against CP-SAT.
    /// </summary>
    /// <param name="tasks">The tasks in the order of their best days.</param>
    /// <param name="days">Candidate days, earliest first.</param>
    /// <param name="opening">What a visit on each candidate day costs; <see cref="Never"/> for one that is not to be had.</param>
    /// <param name="chosen">Indices of the chosen days.</param>
    /// <returns>The cost; <see cref="Never"/> or more when a task has no day.</returns>
    internal static long ShortestPath(VisitLoad[] tasks, int[] days, long[] opening, List<int> chosen)
    {
        if (tasks.Length == 1)
        {
            return Cheapest(in tasks[0], days, opening, chosen);
        }

        int count = days.Length;
        long[] cost = new long[count];
        int[] visits = new int[count];
        int[] next = new int[count];
        int[] firstAfter = new int[count];
        for (int k = 0, i = 0; k < count; k++)
        {
            while (i < tasks.Length && tasks[i].Best <= days[k])
            {
                i++;
            }

            firstAfter[k] = i;
        }

        for (int v = count - 1; v >= 0; v--)
        {
            // Stop here: all later tasks come back to this day.
            (cost[v], visits[v], next[v]) = (Range(tasks, firstAfter[v], tasks.Length, days[v], days[v]), 0, -1);
            for (int w = v + 1; w < count; w++)
            {
                if (opening[w] < Never)
                {
                    long total = Add(Add(cost[w], opening[w]), Range(tasks, firstAfter[v], firstAfter[w], days[v], days[w]));
                    if (total < cost[v] || (total == cost[v] && visits[w] + 1 < visits[v]))
                    {
                        (cost[v], visits[v], next[v]) = (total, visits[w] + 1, w);
                    }
                }
            }
        }

        (long best, int fewest, int first) = (Never, int.MaxValue, -1);
        for (int w = 0; w < count; w++)
        {
            if (opening[w] < Never)
            {
                long total = Add(Add(cost[w], opening[w]), Range(tasks, 0, firstAfter[w], days[w], days[w]));
                if (total < best || (total == best && visits[w] + 1 < fewest && total < Never))
                {
                    (best, fewest, first) = (total, visits[w] + 1, w);
                }
            }
        }

        chosen.Clear();
        for (int at = first; at >= 0; at = next[at])
        {
            chosen.Add(at);
        }

        return best;
    }

    /// <summary>The fewest days that hit every window: the last allowed day of the window that ends first, again and again. Source: derived, see <see cref="VisitSources"/>.</summary>
    /// <param name="windows">First day and last allowed day of each window, the earliest last day first.</param>
    internal static List<int> Fewest(IEnumerable<(int From, int LastAllowed)> windows)
    {
        List<int> days = [];
        foreach ((int from, int last) in windows)
        {
            if (days.Count == 0 || days[days.Count - 1] < from)
            {
                days.Add(last);
            }
        }

        return days;
    }

    /// <summary>A sum that stays at <see cref="Never"/> once it is there. Source: plain arithmetic.</summary>
    internal static long Add(long left, long right) => left >= Never || right >= Never ? Never : left + right;

    // The cheapest day of a single task.
    private static long Cheapest(in VisitLoad task, int[] days, long[] opening, List<int> chosen)
    {
        (long best, int first) = (Never, -1);
        for (int k = 0; k < days.Length; k++)
        {
            long total = Add(Cost(in task, days[k]), opening[k]);
            (best, first) = total < best ? (total, k) : (best, first);
        }

        chosen.Clear();
        if (first >= 0)
        {
            chosen.Add(first);
        }

        return best;
    }

    // The tasks from one to another, each on the cheaper of two days.
    private static long Range(VisitLoad[] tasks, int from, int to, int left, int right)
    {
        long sum = 0;
        for (int i = from; i < to && sum < Never; i++)
        {
            sum = Add(sum, Math.Min(Cost(in tasks[i], left), Cost(in tasks[i], right)));
        }

        return sum;
    }
}
