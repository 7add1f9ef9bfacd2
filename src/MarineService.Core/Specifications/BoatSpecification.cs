using MarineService.Core.Engines;
using MarineService.Core.Internal;
using MarineService.Core.Scheduling;

namespace MarineService.Core.Specifications;

/// <summary>A boat with its engines and the tasks of the boat itself, such as bilge pump, alarms and battery.</summary>
/// <remarks>Tasks of the boat are counted once, however many engines it has. They go by the calendar: a boat has no hour meter.</remarks>
public sealed class BoatSpecification
{
    /// <summary>The scope of the boat's own tasks and entries; no engine may bear it as its id.</summary>
    public const string Scope = "boat";

    private TaskPlan? _plan;

    private BoatSpecification(Boat boat, IReadOnlyList<FittedEngine> engines, IReadOnlyList<ServiceTask> tasks) =>
        (Boat, Engines, Tasks) = (boat, engines, tasks);

    /// <summary>The boat.</summary>
    public Boat Boat { get; }

    /// <summary>Its engines.</summary>
    public IReadOnlyList<FittedEngine> Engines { get; }

    /// <summary>The tasks of the boat itself.</summary>
    public IReadOnlyList<ServiceTask> Tasks { get; }

    /// <summary>The boat's own tasks, checked against each other.</summary>
    /// <exception cref="ArgumentException">A task refers to an id that is not there, or includes itself by way of others.</exception>
    public TaskPlan Plan => _plan ??= TaskPlan.Of(Tasks);

    /// <summary>A boat without engines and tasks yet.</summary>
    /// <param name="boat">The boat.</param>
    /// <returns>The specification.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="boat"/> is null.</exception>
    public static BoatSpecification Of(Boat boat) => new(Guard.NotNull(boat), [], []);

    /// <summary>A copy with one more engine.</summary>
    /// <param name="id">The id by which entries name it; not blank, not "boat", not used yet.</param>
    /// <param name="specification">What it is and needs.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="id"/> is blank, "boat", or used already.</exception>
    public BoatSpecification WithEngine(string id, EngineSpecification specification)
    {
        if (id == Scope)
        {
            throw new ArgumentException("'boat' stands for the boat itself.", nameof(id));
        }

        BoatSpecification more = WithEngines([FittedEngine.Of(id, specification)]);
        Names.Distinct(more.Engines.Select(engine => engine.Id), nameof(id));
        return more;
    }

    /// <summary>All engines at once, so that a long list is copied once; the caller checked the ids.</summary>
    internal BoatSpecification WithEngines(IEnumerable<FittedEngine> engines) =>
        new(Boat, Array.AsReadOnly<FittedEngine>([.. Engines, .. engines]), Tasks);

    /// <summary>A copy with more tasks of the boat itself.</summary>
    /// <param name="tasks">The tasks; ids distinct from each other and from those already there; no hours limb.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tasks"/> or an item is null.</exception>
    /// <exception cref="ArgumentException">An id is used twice, or a task has an hours limb.</exception>
    public BoatSpecification With(params ServiceTask[] tasks)
    {
        IReadOnlyList<ServiceTask> all = Array.AsReadOnly<ServiceTask>([.. Tasks, .. Guard.Items(tasks)]);
        Names.Distinct(all.Select(task => task.Id), nameof(tasks));
        return all.FirstOrDefault(HasHours) is ServiceTask task
            ? throw new ArgumentException($"Task '{task.Id}' has an hours limb, but a boat has no hour meter.", nameof(tasks))
            : new(Boat, Engines, all);
    }

    /// <summary>The boat's name.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Boat.Name;

    internal static bool HasHours(ServiceTask task) => task.Interval?.Hours is not null || task.FirstService?.Hours is not null;
}
