using MarineService.Core.Internal;

namespace MarineService.Core.Fleet;

/// <summary>What a task uses up each time that it is done: so much of one part.</summary>
public sealed record PartNeed
{
    private PartNeed(string taskId, string part, decimal quantity) => (TaskId, Part, Quantity) = (taskId, part, quantity);

    /// <summary>The task.</summary>
    public string TaskId { get; }

    /// <summary>The part by the caller's own number or name.</summary>
    public string Part { get; }

    /// <summary>How much, in the part's own unit of issue; above 0, at most 1,000,000.</summary>
    public decimal Quantity { get; }

    /// <summary>A need.</summary>
    /// <param name="taskId">The task; not blank.</param>
    /// <param name="part">The part by the caller's own number or name; not blank.</param>
    /// <param name="quantity">How much, in the part's own unit of issue; above 0, at most 1,000,000.</param>
    /// <returns>The need.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="taskId"/> or <paramref name="part"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="taskId"/> or <paramref name="part"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="quantity"/> is not above 0 or is above 1,000,000.</exception>
    public static PartNeed Of(string taskId, string part, decimal quantity = 1m) =>
        new(Guard.NotBlank(taskId), Guard.NotBlank(part), Guard.InRange(quantity, 0.001m, 1_000_000m, "of the part"));
}
