using MarineService.Core.Internal;

namespace MarineService.Core.Parts;

/// <summary>What one task takes off and has to put back: screws, clips, pins, washers.</summary>
public sealed class TaskLooseParts
{
    private TaskLooseParts(string taskId, IReadOnlyList<LooseItem> items) => (TaskId, Items) = (taskId, items);

    /// <summary>The task.</summary>
    public string TaskId { get; }

    /// <summary>What comes off, in the order given; empty when nothing does.</summary>
    public IReadOnlyList<LooseItem> Items { get; }

    /// <summary>What a task takes off.</summary>
    /// <param name="taskId">The task; not blank.</param>
    /// <param name="items">What comes off; each name at one place once; none when nothing comes off.</param>
    /// <returns>The list.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="taskId"/> is blank, an item is null, or a name at one place is there twice.</exception>
    public static TaskLooseParts Of(string taskId, params LooseItem[] items)
    {
        IReadOnlyList<LooseItem> all = Guard.Items(items);
        HashSet<(string, string)> seen = [];
        return all.FirstOrDefault(item => !seen.Add((item.Part.Name, item.Part.Place))) is LooseItem twice
            ? throw new ArgumentException($"'{twice.Part}' is named twice.", nameof(items))
            : new(Guard.NotBlank(taskId), all);
    }

    /// <summary>The task and how many kinds of parts it takes off.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{TaskId}: {Items.Count} kinds of loose parts");

    /// <summary>What several tasks of one visit take off: what two of them take off at one place comes off once, in the greater number.</summary>
    internal static IReadOnlyList<LooseItem> Together(IEnumerable<TaskLooseParts> tasks) => Array.AsReadOnly<LooseItem>(
    [
        .. tasks.SelectMany(task => task.Items).GroupBy(item => item.Part)
            .Select(same => LooseItem.Of(same.Key, same.Max(item => item.Count)))
            .OrderBy(item => item.Part.Place, StringComparer.Ordinal)
            .ThenBy(item => item.Part.Name, StringComparer.Ordinal),
    ]);
}
