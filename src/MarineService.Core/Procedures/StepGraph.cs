namespace MarineService.Core.Procedures;

/// <summary>Steps by number, who waits for whom, and who comes before whom at any distance.</summary>
/// <remarks>
/// Ids are looked up once, when it is made. Ancestors are rows of bits, so that a question costs one look, and an edge more costs one pass.
/// </remarks>
internal sealed class StepGraph
{
    private readonly Dictionary<string, int> _index;
    private readonly int[][] _predecessors;
    private readonly ulong[] _ancestors;
    private readonly int _words;
    private bool[]? _changed;

    internal StepGraph(IReadOnlyList<ProcedureStep> steps)
    {
        Steps = steps;
        Count = steps.Count;
        _words = (Count + 63) / 64;
        _index = new(Count, StringComparer.Ordinal);
        for (int i = 0; i < Count; i++)
        {
            _index[steps[i].Id] = i;
        }

        _predecessors = new int[Count][];
        for (int i = 0; i < Count; i++)
        {
            _predecessors[i] = Numbers(steps[i].Predecessors);
        }

        Sorted = new StepOrder(this).Sort();
        _ancestors = new ulong[Count * _words];
        for (int i = 0; i < Sorted.Count; i++)
        {
            int step = Sorted[i];
            foreach (int before in _predecessors[step])
            {
                Join(step, before);
            }
        }
    }

    internal IReadOnlyList<ProcedureStep> Steps { get; }

    internal int Count { get; }

    /// <summary>The steps that can ever be done, as listed where the edges leave it open; all of them when nothing is wrong. Edges added later do not change it.</summary>
    internal IReadOnlyList<int> Sorted { get; }

    internal int IndexOf(string id) => _index.TryGetValue(id, out int index) ? index : -1;

    internal ReadOnlySpan<int> PredecessorsOf(int step) => _predecessors[step];

    internal bool HasUnknown(int step) => _predecessors[step].Length < Steps[step].Predecessors.Count;

    internal bool IsDirect(int first, int then) => Array.IndexOf(_predecessors[then], first) >= 0;

    internal bool Precedes(int first, int then) => (_ancestors[(then * _words) + (first / 64)] & (1UL << (first % 64))) != 0;

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

        _predecessors[then] = [.. _predecessors[then], first];
        (_changed ??= new bool[Count])[then] = true;
        for (int step = 0; step < Count; step++)
        {
            if (step == then || Precedes(then, step))
            {
                Join(step, first);
            }
        }

        return true;
    }

    /// <summary>The steps with the edges that were added, in an order that keeps them all.</summary>
    internal IReadOnlyList<ProcedureStep> InOrder()
    {
        IReadOnlyList<int> order = _changed is null ? Sorted : new StepOrder(this).Sort();
        ProcedureStep[] steps = new ProcedureStep[order.Count];
        for (int i = 0; i < steps.Length; i++)
        {
            ProcedureStep step = Steps[order[i]];
            steps[i] = _changed is not null && _changed[order[i]] ? step.AfterOnly(Array.ConvertAll(_predecessors[order[i]], before => Steps[before].Id)) : step;
        }

        return Array.AsReadOnly(steps);
    }

    /// <summary>One circle of steps that wait for each other, or none.</summary>
    internal IReadOnlyList<string> Circle()
    {
        if (Sorted.Count == Count)
        {
            return [];
        }

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

    /// <summary>The numbers of the ids that are there.</summary>
    private int[] Numbers(IReadOnlyList<string> ids)
    {
        int[] numbers = new int[ids.Count];
        int known = 0;
        for (int i = 0; i < numbers.Length; i++)
        {
            if (_index.TryGetValue(ids[i], out int number))
            {
                numbers[known++] = number;
            }
        }

        if (known < numbers.Length)
        {
            Array.Resize(ref numbers, known);
        }

        return numbers;
    }

    private void Join(int step, int before)
    {
        int to = step * _words;
        int from = before * _words;
        for (int word = 0; word < _words; word++)
        {
            _ancestors[to + word] |= _ancestors[from + word];
        }

        _ancestors[to + (before / 64)] |= 1UL << (before % 64);
    }
}
