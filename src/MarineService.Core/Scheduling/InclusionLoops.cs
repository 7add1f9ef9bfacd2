namespace MarineService.Core.Scheduling;

/// <summary>Finds the tasks that include themselves by way of others: the strongly connected parts of the graph of inclusions.</summary>
/// <remarks>
/// Method: Tarjan, "Depth-first search and linear graph algorithms", SIAM Journal on Computing 1 (1972). It keeps its own stack, so that
/// a long chain of tasks in a file cannot use up the program's.
/// </remarks>
internal sealed class InclusionLoops
{
    private readonly int[][] _includes;
    private readonly int[] _part;
    private readonly int[] _number;
    private readonly int[] _low;
    private readonly Stack<int> _open = new();
    private int _numbers;

    private InclusionLoops(int[][] includes)
    {
        _includes = includes;
        _part = new int[includes.Length];
        _number = new int[includes.Length];
        _low = new int[includes.Length];
    }

    /// <summary>For each task the number of its part: two tasks include each other when they are in the same one.</summary>
    internal static int[] Parts(int[][] includes)
    {
        InclusionLoops loops = new(includes);
        for (int task = 0; task < includes.Length; task++)
        {
            if (loops._number[task] == 0)
            {
                loops.Visit(task);
            }
        }

        return loops._part;
    }

    private void Visit(int root)
    {
        Stack<(int Task, int Next)> path = new();
        path.Push((root, 0));
        while (path.Count > 0)
        {
            (int task, int next) = path.Pop();
            if (next == 0)
            {
                _number[task] = _low[task] = ++_numbers;
                _open.Push(task);
            }
            else
            {
                _low[task] = Math.Min(_low[task], _low[_includes[task][next - 1]]);
            }

            if (Descend(path, task, next))
            {
                continue;
            }

            if (_low[task] == _number[task])
            {
                Close(task);
            }
        }
    }

    // Goes on to the next included task that was not seen yet; those that are still open are on the way back to themselves.
    private bool Descend(Stack<(int Task, int Next)> path, int task, int next)
    {
        for (int i = next; i < _includes[task].Length; i++)
        {
            int included = _includes[task][i];
            if (_number[included] == 0)
            {
                path.Push((task, i + 1));
                path.Push((included, 0));
                return true;
            }

            if (_part[included] == 0)
            {
                _low[task] = Math.Min(_low[task], _number[included]);
            }
        }

        return false;
    }

    private void Close(int task)
    {
        int member;
        do
        {
            member = _open.Pop();
            _part[member] = task + 1;
        }
        while (member != task);
    }
}
