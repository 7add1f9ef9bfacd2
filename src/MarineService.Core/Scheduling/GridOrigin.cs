using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Scheduling;

/// <summary>The origin of a fixed grid of dates, such as the day of a first survey: occurrences fall on origin + k intervals, k from 1.</summary>
public sealed class GridOrigin : ServiceFact
{
    private GridOrigin(LocalDate origin, string taskId)
        : base(origin) => TaskId = taskId;

    /// <summary>The task.</summary>
    public string TaskId { get; }

    /// <summary>An origin.</summary>
    /// <param name="origin">The date that the grid is counted from, from 1900 to 2199.</param>
    /// <param name="taskId">The task's id; not blank.</param>
    /// <returns>The fact.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="taskId"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="taskId"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="origin"/> is outside 1900 to 2199.</exception>
    public static GridOrigin Of(LocalDate origin, string taskId) => new(Guard.Date(origin), Guard.NotBlank(taskId));
}
