using MarineService.Core.Internal;

namespace MarineService.Core.Scheduling;

/// <summary>The tasks of one engine, checked against each other once and evaluated many times.</summary>
/// <remarks>Ids are distinct; every id that a task refers to is there; no task includes itself by way of others.</remarks>
public sealed class TaskPlan
{
    private readonly ServiceTask[] _tasks;
    private readonly Dictionary<string, int> _index;
    private readonly bool[] _covers;
    private readonly int[] _failTarget;

    private TaskPlan(ServiceTask[] tasks, Dictionary<string, int> index, bool[] covers, int[] failTarget) =>
        (_tasks, _index, _covers, _failTarget, Tasks) = (tasks, index, covers, failTarget, Array.AsReadOnly(tasks));

    /// <summary>The tasks in the order given.</summary>
    public IReadOnlyList<ServiceTask> Tasks { get; }

    /// <summary>Checks tasks against each other.</summary>
    /// <param name="tasks">The tasks; ids distinct.</param>
    /// <returns>The plan.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tasks"/> or an item is null.</exception>
    /// <exception cref="ArgumentException">
    /// An id is used twice, a task refers to an id that is not there, or a task includes itself by way of others; the message names them.
    /// </exception>
    public static TaskPlan Of(IEnumerable<ServiceTask> tasks)
    {
        ServiceTask[] all = [.. Guard.Items(tasks)];
        IReadOnlyList<ListFault> faults = Check(all);
        if (faults.Count > 0)
        {
            throw new ArgumentException(faults[0].ToString(), nameof(tasks));
        }

        Dictionary<string, int> index = new(all.Length, StringComparer.Ordinal);
        for (int i = 0; i < all.Length; i++)
        {
            index.Add(all[i].Id, i);
        }

        bool[] covers = new bool[all.Length * all.Length];
        int[][] includes = Array.ConvertAll(all, task => Included(task, index));
        for (int i = 0; i < all.Length; i++)
        {
            Cover(includes, covers, i);
        }

        return new(all, index, covers, Array.ConvertAll(all, task => index[task.IfFailed ?? task.Id]));
    }

    /// <summary>Everything that is wrong with a list of tasks.</summary>
    internal static IReadOnlyList<ListFault> Check(IReadOnlyList<ServiceTask> tasks)
    {
        List<ListFault> faults = [];
        Dictionary<string, int> index = new(tasks.Count, StringComparer.Ordinal);
        for (int i = 0; i < tasks.Count; i++)
        {
            if (index.ContainsKey(tasks[i].Id))
            {
                faults.Add(new("Task", i, "id", tasks[i].Id, "an id that no other task has"));
            }
            else
            {
                index[tasks[i].Id] = i;
            }
        }

        int[] parts = InclusionLoops.Parts([.. tasks.Select(task => Included(task, index))]);
        for (int i = 0; i < tasks.Count; i++)
        {
            for (int k = 0; k < tasks[i].Includes.Count; k++)
            {
                string id = tasks[i].Includes[k];
                if (!index.TryGetValue(id, out int included))
                {
                    faults.Add(new("Task", i, FormattableString.Invariant($"includes/{k}"), id, "the id of a task in this list"));
                }
                else if (parts[included] == parts[i])
                {
                    faults.Add(new("Task", i, FormattableString.Invariant($"includes/{k}"), id, "a task that does not include this one in turn"));
                }
            }

            if (tasks[i].IfFailed is string target && !index.ContainsKey(target))
            {
                faults.Add(new("Task", i, "ifFailed", target, "the id of a task in this list"));
            }
        }

        return faults;
    }

    internal int IndexOf(string id) => _index.TryGetValue(id, out int index) ? index : -1;

    /// <summary>Whether a completion of one task is a completion of another too.</summary>
    internal bool Covers(int completed, int task) => _covers[(completed * _tasks.Length) + task];

    /// <summary>The task that a failed inspection makes due.</summary>
    internal int FailTarget(int task) => _failTarget[task];

    // Not recursive: a file may hold a chain of any length.
    private static void Cover(int[][] includes, bool[] covers, int from)
    {
        Stack<int> open = new([from]);
        covers[(from * includes.Length) + from] = true;
        while (open.Count > 0)
        {
            foreach (int included in includes[open.Pop()])
            {
                int cell = (from * includes.Length) + included;
                if (!covers[cell])
                {
                    covers[cell] = true;
                    open.Push(included);
                }
            }
        }
    }

    private static int[] Included(ServiceTask task, Dictionary<string, int> index) =>
        task.Includes.Count == 0 ? [] : [.. task.Includes.Where(index.ContainsKey).Select(id => index[id])];
}
