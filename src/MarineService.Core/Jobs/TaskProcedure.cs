using MarineService.Core.Internal;
using MarineService.Core.Procedures;

namespace MarineService.Core.Jobs;

/// <summary>How a task is done: its procedure, and the steps without which it is not done.</summary>
public sealed class TaskProcedure
{
    private TaskProcedure(string taskId, Procedure procedure, IReadOnlyList<string> provedBy) =>
        (TaskId, Procedure, ProvedBy) = (taskId, procedure, provedBy);

    /// <summary>The task's id.</summary>
    public string TaskId { get; }

    /// <summary>The procedure.</summary>
    public Procedure Procedure { get; }

    /// <summary>The ids of the steps that prove it.</summary>
    public IReadOnlyList<string> ProvedBy { get; }

    /// <summary>How a task is done.</summary>
    /// <param name="taskId">The task's id; not blank.</param>
    /// <param name="procedure">A sound procedure.</param>
    /// <param name="provedBy">The steps without which the task is not done; at least one, each of the procedure, none twice.</param>
    /// <returns>The pair.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">
    /// The id is blank, the procedure has a finding at Act or Stop, or a step is not of the procedure, blank, named twice, or none is named.
    /// </exception>
    public static TaskProcedure Of(string taskId, Procedure procedure, params string[] provedBy)
    {
        Guard.NotBlank(taskId);
        Guard.NotNull(procedure).RefuseUnsound(nameof(procedure));
        IReadOnlyList<string> steps = Names.Distinct(provedBy, nameof(provedBy));
        return steps.Count == 0 ? throw new ArgumentException("Name at least one step.", nameof(provedBy))
            : steps.FirstOrDefault(step => procedure.Find(step) is null) is string strange
                ? throw new ArgumentException($"'{procedure.Id}' has no step '{strange}'.", nameof(provedBy))
            : new(taskId, procedure, steps);
    }

    /// <summary>Task and procedure.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => $"{TaskId}: {Procedure}";
}
