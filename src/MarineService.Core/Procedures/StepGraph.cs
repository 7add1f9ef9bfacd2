namespace MarineService.Core.Procedures;

/// <summary>Steps by number, who waits for whom, and who comes before whom at any distance.</summary>
/// <remarks>Ancestors are rows of bits, so that a question costs one look, and an edge more costs one pass.</remarks>
internal sealed class StepGraph
{
    private readonly Dictionary<string, int> _index = new(StringComparer.Ordinal);
    private readonly List<int>[] _predecessors;
    private readonly List<int>[] _successors;
    private readonly ulong[][] _ancestors;

    internal StepGraph(IReadOnlyList<ProcedureStep> steps)
    {
        Steps = steps;
        int count = steps.Count;
        for (int i = 0; i < count; i++)
        {
            _index[steps[i].Id] = i;
        }

        _predecessors = [.. steps.Select(_ => new List<int>())];
        _successors = [.. steps.Select(_ => new List<int>())];
        for (int i = 0; i < count; i++)
        {
            foreach (string id in steps[i].Predecessors)
            {
                if (_index.TryGetValue(id, out int before))
                {
                    _predecessors[i].Add(before);
                    _successors[before].Add(i);
                }
            }
        }

        Sorted = Sort();
        _ancestors = [.. steps.Select(_ => new ulong[(count + 63) / 64])];
        foreach (int step in Sorted)
        {
            foreach (int before in _predecessors[step])
            {
                Join(_ancestors[step], before);
            }
        }
    }

    internal IReadOnlyList<ProcedureStep> Steps { get; }

    /// <summary>The steps that can ever be done, as listed where the edges leave it open; all of them when nothing is wrong.</summary>
    internal IReadOnlyList<int> Sorted { get; }

    internal int Count => Steps.Count;

    internal int IndexOf(string id) => _index.TryGetValue(id, out int index) ? index : -1;

    internal IReadOnlyList<int> PredecessorsOf(int step) => _predecessors[step];

    internal IReadOnlyList<int> SuccessorsOf(int step) => _successors[step];

    internal bool Precedes(int first, int then) => (_ancestors[then][first / 64] & (1UL << (first % 64))) != 0;

    /// <summary>Adds an edge; false, and nothing is changed, when it would close a circle.</summary>
    internal bool TryAdd(int first, int then)
    {
        if (first == then || Precedes(then, first))
        {
            return false;
        }

        if (Precedes(first, then))
        {
            return true;
        }

        _predecessors[then].Add(first);
        _successors[first].Add(then);
        for (int step = 0; step < Count; step++)
        {
            if (step == then || Precedes(then, step))
            {
                Join(_ancestors[step], first);
            }
        }

        return true;
    }

    /// <summary>One circle of steps that wait for each other, or none.</summary>
    internal IReadOnlyList<string> Circle()
    {
        HashSet<int> stuck = [.. Enumerable.Range(0, Count).Except(Sorted)];

        // What is stuck only behind an unknown step is no part of a circle.
        while (stuck.RemoveWhere(step => StuckBefore(step, stuck) < 0) > 0)
        {
        }

        // From any step that is left, a walk back along such steps must meet itself.
        List<int> walk = [];
        for (int step = stuck.Count == 0 ? -1 : stuck.Min(); step >= 0; step = StuckBefore(step, stuck))
        {
            int met = walk.IndexOf(step);
            if (met >= 0)
            {
                walk.RemoveRange(0, met);
                walk.Reverse();
                int least = walk.IndexOf(walk.Min());
                return [.. walk.Skip(least).Concat(walk.Take(least)).Append(walk[least]).Select(one => Steps[one].Id)];
            }

            walk.Add(step);
        }

        return [];
    }

    private int StuckBefore(int step, HashSet<int> stuck) => _predecessors[step].Where(stuck.Contains).Append(-1).First();

    private bool HasUnknown(int step) => Steps[step].Predecessors.Any(id => !_index.ContainsKey(id));

    private void Join(ulong[] row, int step)
    {
        ulong[] other = _ancestors[step];
        for (int word = 0; word < row.Length; word++)
        {
            row[word] |= other[word];
        }

        row[step / 64] |= 1UL << (step % 64);
    }

    private List<int> Sort()
    {
        int[] waiting = [.. Enumerable.Range(0, Count).Select(step => HasUnknown(step) ? int.MaxValue : _predecessors[step].Count)];
        SortedSet<int> ready = [.. Enumerable.Range(0, Count).Where(step => waiting[step] == 0)];
        List<string> open = [];
        List<int> sorted = [];
        while (ready.Count > 0)
        {
            int next = Next(ready, open);
            ready.Remove(next);
            sorted.Add(next);
            Note(Steps[next], open);
            foreach (int after in _successors[next])
            {
                if (waiting[after] != int.MaxValue && --waiting[after] == 0)
                {
                    ready.Add(after);
                }
            }
        }

        return sorted;
    }

    /// <summary>The first as listed, but what was opened last is closed first wherever the edges leave the choice.</summary>
    private int Next(SortedSet<int> ready, List<string> open)
    {
        foreach (int step in ready)
        {
            if (Steps[step].Closes is not string access || open.LastIndexOf(access) is int at && (at < 0 || at == open.Count - 1))
            {
                return step;
            }
        }

        return ready.Min;
    }

    private static void Note(ProcedureStep step, List<string> open)
    {
        if (step.Opens is string opened)
        {
            open.Add(opened);
        }

        if (step.Closes is string closed)
        {
            open.Remove(closed);
        }
    }
}
