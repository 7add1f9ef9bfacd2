using MarineService.Core.Internal;
using MarineService.Core.Procedures;

namespace MarineService.Core.Jobs;

/// <summary>Which procedure does which task.</summary>
public sealed class ProcedureBook
{
    private readonly TaskProcedure[] _tasks;

    private ProcedureBook(TaskProcedure[] tasks) => (_tasks, Tasks) = (tasks, Array.AsReadOnly(tasks));

    /// <summary>No procedures.</summary>
    public static ProcedureBook Empty { get; } = new([]);

    /// <summary>The library's own procedures for tasks under their usual ids. They are common practice; a maker's manual outranks them.</summary>
    public static ProcedureBook Usual { get; } = Empty
        .With(TaskProcedure.Of("engine-oil", ServiceProcedures.Oil, "drain-oil", "filter-on", "read-level-after", "reconcile"))
        .With(TaskProcedure.Of("impeller-inspect", ServiceProcedures.Impeller, "inspect-impeller", "pump-cover-on", "proof-start"))
        .With(TaskProcedure.Of("impeller-replace", ServiceProcedures.Impeller, "impeller-in", "pump-cover-on", "proof-start"))
        .With(TaskProcedure.Of("strainer", ServiceProcedures.Strainer, "clean-strainer", "open-seacock"))
        .With(TaskProcedure.Of("anodes", ServiceProcedures.AnodesAndHoses, "anodes-and-hoses"))
        .With(TaskProcedure.Of("hoses", ServiceProcedures.AnodesAndHoses, "anodes-and-hoses"))
        .With(TaskProcedure.Of("belt-inspect", ServiceProcedures.BeltInspection, "feel-idlers", "belt-on"))
        .With(TaskProcedure.Of("belt-replace", ServiceProcedures.BeltReplacement, "belt-on", "load-run"))
        .With(TaskProcedure.Of("fuel-filter", ServiceProcedures.FuelFilter, "fuel-filter-on", "fuel-close", "look-for-leaks"))
        .With(TaskProcedure.Of("coolant", ServiceProcedures.Coolant, "coolant-drain", "coolant-strength", "coolant-fill", "coolant-level"))
        .With(TaskProcedure.Of("raw-water-drain", ServiceProcedures.LayUp, "open-raw-drains", "close-raw-drains"))
        .With(TaskProcedure.Of("fogging", ServiceProcedures.LayUp, "fog-cylinders"))
        .With(TaskProcedure.Of("first-run", ServiceProcedures.Commissioning, "proof-start", "load-run"));

    /// <summary>The tasks that it knows.</summary>
    public IReadOnlyList<TaskProcedure> Tasks { get; }

    /// <summary>A copy with one more task; one of the same id is replaced.</summary>
    /// <param name="task">How a task is done.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="task"/> is null.</exception>
    public ProcedureBook With(TaskProcedure task)
    {
        Guard.NotNull(task);
        return new([.. _tasks.Where(one => one.TaskId != task.TaskId), task]);
    }

    /// <summary>A copy with a page more, such as the engine's own manual gives it; its tasks replace those of the same id.</summary>
    /// <param name="page">A procedure and the tasks that it does.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="page"/> is null.</exception>
    public ProcedureBook With(ProcedurePage page) => Guard.NotNull(page).Tasks.Aggregate(this, (book, task) => book.With(task));

    /// <summary>How a task is done.</summary>
    /// <param name="taskId">The task's id.</param>
    /// <returns>Null when the book does not know it.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="taskId"/> is null.</exception>
    public TaskProcedure? Find(string taskId)
    {
        Guard.NotNull(taskId);
        return Array.Find(_tasks, one => one.TaskId == taskId);
    }
}
