using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Fluids;

/// <summary>An oil change in a log: the events as they were told, on a date, for a task.</summary>
/// <remarks>
/// It counts as a completion of its task by the fraction that its account shows was exchanged. The sump is not in it: a
/// stick that is calibrated later makes every old account better.
/// </remarks>
public sealed class OilChangeRecord : ServiceFact
{
    private OilChangeRecord(string taskId, LocalDate date, EngineHours? dial, IReadOnlyList<OilChangeEvent> events)
        : base(date, dial) => (TaskId, Events) = (taskId, events);

    /// <summary>The task that was done, such as "engine-oil".</summary>
    public string TaskId { get; }

    /// <summary>What was told; the opening comes first and only there.</summary>
    public IReadOnlyList<OilChangeEvent> Events { get; }

    /// <summary>A change by its events.</summary>
    /// <param name="taskId">The task's id, such as "engine-oil"; not blank.</param>
    /// <param name="date">The date, from 1900 to 2199.</param>
    /// <param name="events">The events; the first opens the account, no other does.</param>
    /// <param name="dial">What the dial showed, or null when it was not read.</param>
    /// <returns>The fact.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="taskId"/>, <paramref name="events"/> or an item is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="taskId"/> is blank, or the opening is not the first event and the only one of its kind.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="date"/> is outside 1900 to 2199.</exception>
    public static OilChangeRecord Of(string taskId, LocalDate date, IEnumerable<OilChangeEvent> events, EngineHours? dial = null) =>
        new(Guard.NotBlank(taskId), Guard.Date(date), dial, OilChange.InOrder(events));

    /// <summary>The account of the change, reckoned with a sump.</summary>
    /// <param name="sump">What the engine holds; without faults.</param>
    /// <param name="limits">The limits, or null for <see cref="OilChangeLimits.Default"/>.</param>
    /// <returns>The account.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="sump"/> is null.</exception>
    /// <exception cref="ArgumentException">The sump's figures do not fit together.</exception>
    public OilChange AccountFor(Sump sump, OilChangeLimits? limits = null) => OilChange.Of(Guard.NotNull(sump), Events, limits);

    internal override ServiceFact WithoutDial() => new OilChangeRecord(TaskId, Date, null, Events);
}
