namespace MarineService.Core.Scheduling;

/// <summary>Looks for the visit days of least cost over some years, for tasks that come round, and for a cost that no plan can undercut.</summary>
/// <remarks>
/// Doing a task early moves all its later due days, so that the whole is hard (no quick method is known that always finds the least). Given
/// the days, each task is a shortest path by itself; the days are searched by adding, dropping and moving one until nothing helps. The
/// bound comes from sharing each day's set-up among the tasks.
/// </remarks>
internal sealed class RepeatedSearch
{
    private const int Steps = 400;

    // A day that moves goes to a day near by; farther ones are reached by dropping one and adding another.
    private const int NearDays = 60;

    private readonly RepeatedLoad[] _tasks;
    private readonly int[] _days;
    private readonly long[] _setUp;
    private readonly int _until;
    private readonly long[] _togo;
    private readonly List<int> _open = [];

    internal RepeatedSearch(RepeatedLoad[] tasks, int[] days, long[] setUp, int until) =>
        (_tasks, _days, _setUp, _until, _togo) = (tasks, days, setUp, until, new long[days.Length]);

    private int LastOfAll => _days[_days.Length - 1];

    /// <summary>The chosen days, and a cost that no choice undercuts.</summary>
    internal (int[] Chosen, long Bound, long Separate) Run()
    {
        SortedSet<int> alone = [.. Enumerable.Range(0, _days.Length).Where(k => _setUp[k] == 0)];
        int[] free = [.. alone];
        long separate = 0;
        foreach (RepeatedLoad task in _tasks)
        {
            separate += RepeatedMath.Path(task, _days, _setUp, _until, _days[0], LastOfAll, _togo, _open);
            alone.UnionWith(_open);
        }

        if (_tasks.Length == 0)
        {
            return ([], 0, 0);
        }

        (int[] best, long cost) = Improve([.. alone]);
        (long bound, int[] shared) = Bound(cost, free);
        (int[] other, long otherCost) = Improve(shared);
        (best, cost) = otherCost < cost ? (other, otherCost) : (best, cost);
        return ([.. best.Where(k => _setUp[k] > 0 || IsUsed(best, k))], Math.Min(bound, cost), separate);
    }

    /// <summary>What all tasks cost on chosen days, set-ups included, and the days of each task as indices into the chosen ones.</summary>
    internal long Assign(int[] chosen, List<int>[]? on = null)
    {
        int[] days = Array.ConvertAll(chosen, k => _days[k]);
        long[] open = new long[days.Length];
        long cost = chosen.Sum(k => _setUp[k]);
        for (int i = 0; i < _tasks.Length && cost < VisitMath.Never; i++)
        {
            cost = VisitMath.Add(cost, RepeatedMath.Path(_tasks[i], days, open, _until, _days[0], LastOfAll, _togo, _open));
            on?[i].AddRange(_open);
        }

        return cost;
    }

    private bool IsUsed(int[] chosen, int k)
    {
        List<int>[] on = Array.ConvertAll(_tasks, _ => new List<int>());
        Assign(chosen, on);
        int at = Array.IndexOf(chosen, k);
        return on.Any(days => days.Contains(at));
    }

    private (int[] Chosen, long Cost) Improve(int[] start)
    {
        (int[] best, long cost, bool better) = (start, Assign(start), true);
        while (better)
        {
            better = false;
            foreach (int[] next in Neighbours(best))
            {
                long total = Assign(next);
                if (total < cost || (total == cost && next.Length < best.Length))
                {
                    (best, cost, better) = (next, total, true);
                }
            }
        }

        return (best, cost);
    }

    private IEnumerable<int[]> Neighbours(int[] chosen)
    {
        bool[] has = new bool[_days.Length];
        Array.ForEach(chosen, k => has[k] = true);
        foreach (int k in chosen.Where(k => _setUp[k] > 0))
        {
            int[] without = [.. chosen.Where(other => other != k)];
            if (without.Length > 0)
            {
                yield return without;
            }

            for (int moved = 0; moved < has.Length; moved++)
            {
                if (!has[moved] && Math.Abs(_days[moved] - _days[k]) <= NearDays)
                {
                    yield return With(without, moved);
                }
            }
        }

        for (int added = 0; added < has.Length; added++)
        {
            if (!has[added])
            {
                yield return With(chosen, added);
            }
        }
    }

    private static int[] With(int[] chosen, int added)
    {
        int[] more = new int[chosen.Length + 1];
        int at = 0;
        while (at < chosen.Length && chosen[at] < added)
        {
            more[at] = chosen[at];
            at++;
        }

        more[at] = added;
        Array.Copy(chosen, at, more, at + 1, chosen.Length - at);
        return more;
    }

    // The bound, and the days that the tasks took where it stood highest: a good start for a search.
    private (long Bound, int[] Days) Bound(long upper, int[] free)
    {
        SetUpShares shares = new(_setUp, _tasks.Length);
        (long best, double pace, int idle) = (0, 1.0, 0);
        SortedSet<int> taken = [.. free];
        bool[][] uses = Array.ConvertAll(_tasks, _ => new bool[_days.Length]);
        for (int step = 0; step < Steps && best < upper; step++)
        {
            long bound = 0;
            for (int i = 0; i < _tasks.Length; i++)
            {
                bound += RepeatedMath.Path(_tasks[i], _days, shares.Of(i), _until, _days[0], LastOfAll, _togo, _open);
                bool[] used = uses[i];
                Array.Clear(used, 0, used.Length);
                _open.ForEach(k => used[k] = true);
            }

            if (bound > best)
            {
                (best, idle, taken) = (bound, 0, [.. free, .. Enumerable.Range(0, _days.Length).Where(k => uses.Any(used => used[k]))]);
            }
            else if (++idle > 12)
            {
                (pace, idle) = (pace / 2, 0);
            }

            shares.Move(uses, pace * Math.Max(1, upper - bound));
        }

        return (best, [.. taken]);
    }
}
