using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Scheduling;

/// <summary>What was stated as due when the record was opened, such as in the papers of a bought boat.</summary>
public sealed class OpeningDuePoint : ServiceFact
{
    private OpeningDuePoint(LocalDate statedOn, string taskId, LocalDate? dueDate, EngineHours? dueHours)
        : base(statedOn) => (TaskId, DueDate, DueHours) = (taskId, dueDate, dueHours);

    /// <summary>The task.</summary>
    public string TaskId { get; }

    /// <summary>The date on which it was said to be due, or null.</summary>
    public LocalDate? DueDate { get; }

    /// <summary>The engine's hours in all at which it was said to be due, or null.</summary>
    public EngineHours? DueHours { get; }

    /// <summary>A stated due point; at least one limb.</summary>
    /// <param name="statedOn">The date of the statement, from 1900 to 2199; earlier completions are superseded by it.</param>
    /// <param name="taskId">The task's id; not blank.</param>
    /// <param name="dueDate">The due date, or null.</param>
    /// <param name="dueHours">The engine's hours in all at which it is due, or null.</param>
    /// <returns>The fact.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="taskId"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="taskId"/> is blank, or both limbs are null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A date is outside 1900 to 2199.</exception>
    public static OpeningDuePoint Of(LocalDate statedOn, string taskId, LocalDate? dueDate, EngineHours? dueHours)
    {
        if (dueDate is null && dueHours is null)
        {
            throw new ArgumentException("Must state a due date, due hours, or both.", nameof(dueDate));
        }

        return new(
            Guard.Date(statedOn),
            Guard.NotBlank(taskId),
            dueDate is LocalDate date ? Guard.Date(date, nameof(dueDate)) : null,
            dueHours);
    }
}
