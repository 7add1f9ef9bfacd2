using MarineService.Core.Scheduling;

namespace MarineService.Core.Jobs;

/// <summary>A task of a visit, why it is on the card, and how it is done.</summary>
public sealed class JobTask
{
    internal JobTask(TaskDue due, TaskProcedure? how, string? coveredBy) => (Due, How, CoveredBy) = (due, how, coveredBy);

    /// <summary>The task's id.</summary>
    public string TaskId => Due.TaskId;

    /// <summary>When and why it is due.</summary>
    public TaskDue Due { get; }

    /// <summary>How it is done; null when no procedure is known for it, so that it is not done by this card.</summary>
    public TaskProcedure? How { get; }

    /// <summary>The task of the card that includes it, or null.</summary>
    public string? CoveredBy { get; }

    /// <summary>Whether somebody has to say if it passed: an inspection that nothing on the card covers.</summary>
    public bool NeedsVerdict => Due.Task.Action == TaskAction.Inspect && CoveredBy is null && How is not null;

    /// <summary>The title and why.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => $"{Due.Task.Title}: {Due.Status}";
}
