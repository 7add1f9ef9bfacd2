namespace MarineService.Core.Procedures;

/// <summary>Puts the steps of a graph in an order: as listed where the edges leave it open, what was opened last closed first.</summary>
internal sealed class StepOrder
{
    private readonly StepGraph _graph;
    private readonly int[] _waiting;
    private readonly int[] _firstAfter;
    private readonly int[] _after;
    private readonly List<int> _ready = [];
    private readonly List<string> _open = [];

    internal StepOrder(StepGraph graph)
    {
        _graph = graph;
        int count = graph.Count;
        _waiting = new int[count];
        _firstAfter = new int[count + 1];
        for (int step = 0; step < count; step++)
        {
            ReadOnlySpan<int> before = graph.PredecessorsOf(step);
            _waiting[step] = graph.HasUnknown(step) ? int.MaxValue : before.Length;
            foreach (int one in before)
            {
                _firstAfter[one + 1]++;
            }
        }

        for (int step = 0; step < count; step++)
        {
            _firstAfter[step + 1] += _firstAfter[step];
        }

        // Those that wait for one step lie side by side, so that each edge is looked at once.
        _after = new int[_firstAfter[count]];
        int[] next = [.. _firstAfter];
        for (int step = 0; step < count; step++)
        {
            foreach (int one in graph.PredecessorsOf(step))
            {
                _after[next[one]++] = step;
            }

            if (_waiting[step] == 0)
            {
                _ready.Add(step);
            }
        }
    }

    /// <summary>Every step that can ever be done.</summary>
    internal IReadOnlyList<int> Sort()
    {
        List<int> sorted = new(_graph.Count);
        while (_ready.Count > 0)
        {
            int at = Next();
            int step = _ready[at];
            _ready.RemoveAt(at);
            sorted.Add(step);
            Note(_graph.Steps[step]);
            for (int i = _firstAfter[step]; i < _firstAfter[step + 1]; i++)
            {
                int after = _after[i];
                if (_waiting[after] != int.MaxValue && --_waiting[after] == 0)
                {
                    _ready.Insert(~_ready.BinarySearch(after), after);
                }
            }
        }

        return sorted;
    }

    /// <summary>The first as listed, but what was opened last is closed first wherever the edges leave the choice.</summary>
    private int Next()
    {
        for (int i = 0; i < _ready.Count; i++)
        {
            if (_graph.Steps[_ready[i]].Closes is not string access || _open.LastIndexOf(access) is int at && (at < 0 || at == _open.Count - 1))
            {
                return i;
            }
        }

        return 0;
    }

    private void Note(ProcedureStep step)
    {
        if (step.Opens is string opened)
        {
            _open.Add(opened);
        }

        if (step.Closes is string closed)
        {
            _open.Remove(closed);
        }
    }
}
