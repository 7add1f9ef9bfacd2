using MarineService.Core.Internal;

namespace MarineService.Core.Parts;

/// <summary>What one task takes: parts, consumables and tools.</summary>
public sealed class TaskKit
{
    private TaskKit(string taskId, IReadOnlyList<KitItem> items) => (TaskId, Items) = (taskId, items);

    /// <summary>The task.</summary>
    public string TaskId { get; }

    /// <summary>What it takes, in the order given.</summary>
    public IReadOnlyList<KitItem> Items { get; }

    /// <summary>The kit of a task.</summary>
    /// <param name="taskId">The task; not blank.</param>
    /// <param name="items">What it takes; each part once.</param>
    /// <returns>The kit.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="taskId"/> is blank, an item is null, or a part is named twice.</exception>
    public static TaskKit Of(string taskId, params KitItem[] items)
    {
        IReadOnlyList<KitItem> all = Guard.Items(items);
        Names.Distinct(all.Select(item => item.Part), nameof(items));
        return new(Guard.NotBlank(taskId), all);
    }

    /// <summary>The task and how many parts it takes.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{TaskId}: {Items.Count} items");
}
