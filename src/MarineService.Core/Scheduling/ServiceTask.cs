using System.Collections.ObjectModel;
using MarineService.Core.Internal;

namespace MarineService.Core.Scheduling;

/// <summary>One maintenance action on one item, with its own due rule.</summary>
/// <remarks>
/// Made by a factory that says what is done (<see cref="Replace"/>, <see cref="Inspect"/>, <see cref="Adjust"/>, <see cref="Clean"/>)
/// or when (<see cref="EachUse"/>, <see cref="AtLayUp"/>, <see cref="AtCommissioning"/>), then refined by the With methods; each returns a copy.
/// </remarks>
public sealed partial class ServiceTask
{
    // The band that one army's practice allows; see INTERVAL-04.
    internal const decimal DefaultTolerancePercent = 10m;

    private static readonly ReadOnlyDictionary<string, decimal> NoConditions = new(new Dictionary<string, decimal>());

    private ServiceTask(string id, TaskAction action, TaskOccasion occasion, ServiceInterval? interval)
    {
        Id = Guard.NotBlank(id);
        Title = Id;
        Action = action;
        Occasion = occasion;
        Interval = interval;
    }

    private ServiceTask(ServiceTask other)
    {
        Id = other.Id;
        Title = other.Title;
        Action = other.Action;
        Occasion = other.Occasion;
        Interval = other.Interval;
        FirstService = other.FirstService;
        TolerancePercent = other.TolerancePercent;
        MakerTolerancePercent = other.MakerTolerancePercent;
        AnchorPolicy = other.AnchorPolicy;
        LayUpRule = other.LayUpRule;
        PartialExchange = other.PartialExchange;
        Includes = other.Includes;
        IfFailed = other.IfFailed;
        DueAfter = other.DueAfter;
        SevereDuty = other.SevereDuty;
        Source = other.Source;
    }

    /// <summary>The id by which entries name the task, such as "engine-oil".</summary>
    public string Id { get; }

    /// <summary>What people call it; the id when nothing else was given.</summary>
    public string Title { get; private set; }

    /// <summary>What is done.</summary>
    public TaskAction Action { get; }

    /// <summary>What makes it come round.</summary>
    public TaskOccasion Occasion { get; }

    /// <summary>The interval; null unless <see cref="Occasion"/> is <see cref="TaskOccasion.Interval"/>.</summary>
    public ServiceInterval? Interval { get; }

    /// <summary>The shorter first interval of a new or rebuilt engine, or null.</summary>
    public ServiceInterval? FirstService { get; private set; }

    /// <summary>The allowed band around a due point in planning, from 0 to 50 % of the interval; 10 % unless stated, 0 for none.</summary>
    public decimal TolerancePercent { get; private set; } = DefaultTolerancePercent;

    /// <summary>The tolerance that the maker states, from 0 to 50 % of the interval; null when the maker states none. Only this counts for warranty.</summary>
    public decimal? MakerTolerancePercent { get; private set; }

    /// <summary>From where the next interval is counted.</summary>
    public AnchorPolicy AnchorPolicy { get; private set; }

    /// <summary>What happens to a due date that falls into a lay-up.</summary>
    public LayUpRule LayUpRule { get; private set; }

    /// <summary>What a change of only part of a fluid is worth.</summary>
    public PartialExchange PartialExchange { get; private set; } = PartialExchange.Default;

    /// <summary>Ids of smaller tasks that a completion of this one also completes.</summary>
    public IReadOnlyList<string> Includes { get; private set; } = [];

    /// <summary>The id of the task that a failed inspection makes due at once; null when it is this one itself.</summary>
    public string? IfFailed { get; private set; }

    /// <summary>Happenings that make the task due at once.</summary>
    public IReadOnlyList<string> DueAfter { get; private set; } = [];

    /// <summary>Conditions of severe duty, each with its factor on the interval, above 0 and at most 1.</summary>
    public IReadOnlyDictionary<string, decimal> SevereDuty { get; private set; } = NoConditions;

    /// <summary>Where the interval comes from.</summary>
    public Citation Source { get; private set; } = Citation.GivenByCaller;

    /// <summary>A part or fluid that is renewed.</summary>
    /// <param name="id">The task's id; not blank.</param>
    /// <param name="interval">The interval.</param>
    /// <returns>The task.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="id"/> is blank.</exception>
    public static ServiceTask Replace(string id, ServiceInterval interval) =>
        new(id, TaskAction.Replace, TaskOccasion.Interval, Guard.NotNull(interval));

    /// <summary>A part that is looked at, measured or tested.</summary>
    /// <param name="id">The task's id; not blank.</param>
    /// <param name="interval">The interval.</param>
    /// <returns>The task.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="id"/> is blank.</exception>
    public static ServiceTask Inspect(string id, ServiceInterval interval) =>
        new(id, TaskAction.Inspect, TaskOccasion.Interval, Guard.NotNull(interval));

    /// <summary>A setting that is restored.</summary>
    /// <param name="id">The task's id; not blank.</param>
    /// <param name="interval">The interval.</param>
    /// <returns>The task.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="id"/> is blank.</exception>
    public static ServiceTask Adjust(string id, ServiceInterval interval) =>
        new(id, TaskAction.Adjust, TaskOccasion.Interval, Guard.NotNull(interval));

    /// <summary>A surface that is restored.</summary>
    /// <param name="id">The task's id; not blank.</param>
    /// <param name="interval">The interval.</param>
    /// <returns>The task.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="id"/> is blank.</exception>
    public static ServiceTask Clean(string id, ServiceInterval interval) =>
        new(id, TaskAction.Clean, TaskOccasion.Interval, Guard.NotNull(interval));

    /// <summary>Something to do at every use of the boat; it never has a due date.</summary>
    /// <param name="id">The task's id; not blank.</param>
    /// <param name="action">What is done.</param>
    /// <returns>The task.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="id"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="id"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="action"/> is not defined.</exception>
    public static ServiceTask EachUse(string id, TaskAction action = TaskAction.Inspect) =>
        new(id, Guard.Defined(action), TaskOccasion.EachUse, null);

    /// <summary>Something to do at each lay-up; any running afterwards makes it due again at once.</summary>
    /// <param name="id">The task's id; not blank.</param>
    /// <param name="action">What is done.</param>
    /// <returns>The task.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="id"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="id"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="action"/> is not defined.</exception>
    public static ServiceTask AtLayUp(string id, TaskAction action = TaskAction.Replace) =>
        new(id, Guard.Defined(action), TaskOccasion.LayUp, null);

    /// <summary>Something to do each time the boat comes out of lay-up.</summary>
    /// <param name="id">The task's id; not blank.</param>
    /// <param name="action">What is done.</param>
    /// <returns>The task.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="id"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="id"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="action"/> is not defined.</exception>
    public static ServiceTask AtCommissioning(string id, TaskAction action = TaskAction.Inspect) =>
        new(id, Guard.Defined(action), TaskOccasion.Commissioning, null);

    /// <summary>The title.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Title;

    /// <summary>The factor on the interval under a set of conditions: the smallest one, never the product.</summary>
    internal decimal FactorUnder(IReadOnlyList<string> conditions)
    {
        decimal factor = 1m;
        for (int i = 0; i < conditions.Count; i++)
        {
            if (SevereDuty.TryGetValue(conditions[i], out decimal own) && own < factor)
            {
                factor = own;
            }
        }

        return factor;
    }
}
