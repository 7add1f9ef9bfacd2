using MarineService.Core.Internal;
using MarineService.Core.Procedures;

namespace MarineService.Core.Jobs;

/// <summary>A page of a procedure book: one procedure, such as the engine's own manual gives it, and the tasks that it does.</summary>
/// <remarks>Immutable. A procedure that could do harm in some order finds no place in a book.</remarks>
public sealed class ProcedurePage
{
    private readonly TaskProcedure[] _tasks;

    private ProcedurePage(Procedure procedure, TaskProcedure[] tasks) => (Procedure, _tasks, Tasks) = (procedure, tasks, Array.AsReadOnly(tasks));

    /// <summary>The procedure.</summary>
    public Procedure Procedure { get; }

    /// <summary>The tasks that it does, each with the steps that prove it.</summary>
    public IReadOnlyList<TaskProcedure> Tasks { get; }

    /// <summary>A page that names no task yet.</summary>
    /// <param name="procedure">A sound procedure.</param>
    /// <returns>The page.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="procedure"/> is null.</exception>
    /// <exception cref="ArgumentException">The procedure has a finding at Act or Stop.</exception>
    public static ProcedurePage Of(Procedure procedure)
    {
        Guard.NotNull(procedure).RefuseUnsound(nameof(procedure));
        return new(procedure, []);
    }

    /// <summary>A copy that does one more task.</summary>
    /// <param name="taskId">The task's id; not blank, and not named before.</param>
    /// <param name="provedBy">The steps without which the task is not done; at least one, each of the procedure, none twice.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The id is blank or named before, or a step is not of the procedure, blank, named twice, or none is named.</exception>
    public ProcedurePage Doing(string taskId, params string[] provedBy)
    {
        TaskProcedure task = TaskProcedure.Of(taskId, Procedure, provedBy);
        return Array.Exists(_tasks, one => one.TaskId == taskId)
            ? throw new ArgumentException($"'{taskId}' is named twice.", nameof(taskId))
            : new(Procedure, [.. _tasks, task]);
    }

    /// <summary>The procedure and its tasks.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => _tasks.Length == 0 ? $"{Procedure}" : $"{Procedure}: {string.Join(", ", _tasks.Select(task => task.TaskId))}";
}
