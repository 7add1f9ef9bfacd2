namespace MarineService.Core.Scheduling;

/// <summary>Looks for the visit days of least cost, with removals that tasks of a visit share, and for a cost that no plan can undercut.</summary>
/// <remarks>
/// Without removals to pay for it is a shortest path. With them the set of days is searched by adding, dropping and moving one day until
/// nothing helps; given the days, each removal's tasks are again a shortest path. The bound comes from sharing each day's set-up among
/// those that may use it (Lagrangian relaxation): any shares that sum to the set-up give a valid bound, subgradient steps raise it.
/// </remarks>
internal sealed class VisitSearch
{
    private const int Steps = 300;

    private readonly VisitLoad[] _tasks;
    private readonly int[] _days;
    private readonly long[] _setUp;
    private readonly long[] _access;

    // Those that open a day together: the tasks behind one removal, or a single task.
    private readonly int[][] _units;

    internal VisitSearch(VisitLoad[] tasks, int[] days, long[] setUp, long[] access)
    {
        (_tasks, _days, _setUp, _access) = (tasks, days, setUp, access);
        IsShared = tasks.Any(task => AccessCost(task.Access) > 0);
        _units =
        [
            .. tasks.Select((task, i) => (task, i)).GroupBy(pair => AccessCost(pair.task.Access) > 0 ? pair.task.Access : -1 - pair.i)
                .Select(group => group.Select(pair => pair.i).ToArray()),
        ];
    }

    internal bool IsShared { get; }

    internal long AccessCost(int access) => access < 0 ? 0 : _access[access];

    /// <summary>The chosen days, and a cost that no choice undercuts.</summary>
    internal (int[] Chosen, long Bound) Run()
    {
        List<int> chosen = [];
        if (_tasks.Length == 0)
        {
            return ([], 0);
        }

        long least = VisitMath.ShortestPath(_tasks, _days, _setUp, chosen);
        if (!IsShared)
        {
            return ([.. chosen], least);
        }

        (int[] best, long cost) = Improve([.. chosen]);
        long all = _access.Sum();
        long[] dear = Array.ConvertAll(_setUp, setUp => setUp + all);
        VisitMath.ShortestPath(_tasks, _days, dear, chosen);
        (int[] other, long otherCost) = Improve([.. chosen]);
        (best, cost) = otherCost < cost ? (other, otherCost) : (best, cost);
        return (best, Math.Min(cost, Math.Max(Bound(cost), least + (least < VisitMath.Never ? UsedAccess() : 0))));
    }

    /// <summary>On which chosen day each task is done, each removal's tasks for the least cost, and what all costs with set-ups and removals.</summary>
    internal int[] Assign(int[] chosen, out long cost)
    {
        int[] on = new int[_tasks.Length];
        int[] days = Array.ConvertAll(chosen, k => _days[k]);
        long[] opening = new long[chosen.Length];
        cost = chosen.Sum(k => _setUp[k]);
        List<int> open = [];
        foreach (int[] unit in _units)
        {
            long access = AccessCost(_tasks[unit[0]].Access);
            for (int k = 0; k < opening.Length; k++)
            {
                opening[k] = access;
            }

            cost = VisitMath.Add(cost, VisitMath.ShortestPath(Tasks(unit), days, opening, open));
            foreach (int i in unit)
            {
                int at = open.Count == 0 ? -1 : open[0];
                foreach (int k in open)
                {
                    at = VisitMath.Cost(in _tasks[i], days[k]) < VisitMath.Cost(in _tasks[i], days[at]) ? k : at;
                }

                on[i] = at < 0 ? -1 : chosen[at];
            }
        }

        return on;
    }

    private long UsedAccess() => _tasks.Select(task => task.Access).Where(access => access >= 0).Distinct().Sum(access => _access[access]);

    private VisitLoad[] Tasks(int[] unit) => Array.ConvertAll(unit, i => _tasks[i]);

    private (int[] Chosen, long Cost) Improve(int[] start)
    {
        Assign(start, out long cost);
        (int[] best, bool better) = (start, true);
        while (better)
        {
            better = false;
            int[] from = best;
            foreach (int[] next in Neighbours(from))
            {
                Assign(next, out long total);
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
        foreach (int k in chosen)
        {
            int[] without = [.. chosen.Where(other => other != k)];
            if (without.Length > 0)
            {
                yield return without;
            }

            foreach (int moved in Enumerable.Range(0, _days.Length).Where(day => !chosen.Contains(day)))
            {
                yield return [.. without.Append(moved).OrderBy(day => day)];
            }
        }

        foreach (int added in Enumerable.Range(0, _days.Length).Where(day => !chosen.Contains(day)))
        {
            yield return [.. chosen.Append(added).OrderBy(day => day)];
        }
    }

    private long Bound(long upper)
    {
        SetUpShares shares = new(_setUp, _units.Length);
        (long best, double pace, int idle) = (0, 1.5, 0);
        List<int> open = [];
        bool[][] uses = Array.ConvertAll(_units, _ => new bool[_days.Length]);
        for (int step = 0; step < Steps && best < upper; step++)
        {
            long bound = 0;
            for (int u = 0; u < _units.Length; u++)
            {
                long access = AccessCost(_tasks[_units[u][0]].Access);
                bound = VisitMath.Add(bound, VisitMath.ShortestPath(Tasks(_units[u]), _days, shares.Of(u, access), open));
                Array.Clear(uses[u], 0, uses[u].Length);
                open.ForEach(k => uses[u][k] = true);
            }

            idle = bound > best ? 0 : idle + 1;
            best = Math.Max(best, bound);
            pace = idle > 8 ? pace / 2 : pace;
            idle = idle > 8 ? 0 : idle;
            shares.Move(uses, pace * Math.Max(1, upper - bound));
        }

        return best;
    }
}
