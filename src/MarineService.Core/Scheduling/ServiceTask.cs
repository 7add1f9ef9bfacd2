using System.Collections.ObjectModel;
using MarineService.Core.Internal;

namespace MarineService.Core.Scheduling;

/// <summary>One maintenance action on one item, with its own due rule.</summary>
/// <remarks>
/// Made by a factory that says what is done (<see cref="Replace"/>, <see cref="Inspect"/>, <see cref="Adjust"/>, <see cref="Clean"/>)
/// or when (<see cref="EachUse"/>, <see cref="AtLayUp"/>, <see cref="AtCommissioning"/>), then refined by the With methods; each returns a copy.
/// </remarks>
public sealed class ServiceTask
{
    /// <summary>The tolerance that planning uses when none is stated, in percent of the interval.</summary>
    public const decimal DefaultTolerancePercent = 10m;

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

    /// <summary>The allowed band around a due point in planning, in percent of the interval; 0 for none.</summary>
    public decimal TolerancePercent { get; private set; } = DefaultTolerancePercent;

    /// <summary>The tolerance that the maker states, in percent; null when the maker states none. Only this counts for warranty.</summary>
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

    /// <summary>A copy under a title.</summary>
    /// <param name="title">What people call it; not blank.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="title"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="title"/> is blank.</exception>
    public ServiceTask WithTitle(string title) => new(this) { Title = Guard.NotBlank(title) };

    /// <summary>A copy with a shorter first interval for a new or rebuilt engine.</summary>
    /// <param name="firstService">The first interval; its hours are counted from the engine's zero.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="firstService"/> is null.</exception>
    /// <exception cref="InvalidOperationException">The task has no interval.</exception>
    public ServiceTask WithFirstService(ServiceInterval firstService)
    {
        NeedsInterval("a first service");
        return new(this) { FirstService = Guard.NotNull(firstService) };
    }

    /// <summary>A copy with another tolerance for planning.</summary>
    /// <param name="percent">From 0 to 50 % of the interval.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="percent"/> is outside its range.</exception>
    public ServiceTask WithTolerance(decimal percent) => new(this) { TolerancePercent = Guard.InRange(percent, 0m, 50m, "%") };

    /// <summary>A copy with the tolerance that the maker states; it also replaces the one for planning.</summary>
    /// <param name="percent">From 0 to 50 % of the interval.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="percent"/> is outside its range.</exception>
    public ServiceTask WithMakerTolerance(decimal percent)
    {
        decimal checkedPercent = Guard.InRange(percent, 0m, 50m, "%");
        return new(this) { TolerancePercent = checkedPercent, MakerTolerancePercent = checkedPercent };
    }

    /// <summary>A copy with another anchor policy.</summary>
    /// <param name="policy">From where the next interval is counted.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="policy"/> is not defined.</exception>
    /// <exception cref="InvalidOperationException">The task has no interval, or <see cref="AnchorPolicy.FixedGrid"/> meets an hours limb: a grid is one of dates.</exception>
    public ServiceTask WithAnchorPolicy(AnchorPolicy policy)
    {
        NeedsInterval("an anchor policy");
        if (Guard.Defined(policy) == AnchorPolicy.FixedGrid && Interval!.Hours is not null)
        {
            throw new InvalidOperationException($"Task '{Id}' has an hours limb; a fixed grid is one of dates.");
        }

        return new(this) { AnchorPolicy = policy };
    }

    /// <summary>A copy with another rule for due dates inside a lay-up.</summary>
    /// <param name="rule">The rule.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="rule"/> is not defined.</exception>
    public ServiceTask WithLayUpRule(LayUpRule rule) => new(this) { LayUpRule = Guard.Defined(rule) };

    /// <summary>A copy with another rule for partial exchanges.</summary>
    /// <param name="rule">The rule.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="rule"/> is null.</exception>
    public ServiceTask WithPartialExchange(PartialExchange rule) => new(this) { PartialExchange = Guard.NotNull(rule) };

    /// <summary>A copy that also completes smaller tasks, and what these include in turn.</summary>
    /// <param name="taskIds">Their ids; none blank, none twice, not this task.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="taskIds"/> or an item is null.</exception>
    /// <exception cref="ArgumentException">An id is blank, named twice, or this task's own.</exception>
    public ServiceTask Including(params string[] taskIds)
    {
        IReadOnlyList<string> ids = Names.Distinct(taskIds, nameof(taskIds));
        return ids.Contains(Id)
            ? throw new ArgumentException($"Task '{Id}' cannot include itself.", nameof(taskIds))
            : new(this) { Includes = ids };
    }

    /// <summary>A copy whose failed inspection makes another task due at once.</summary>
    /// <param name="taskId">The id of that task, usually the replacement of the same part; not blank.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="taskId"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="taskId"/> is blank.</exception>
    /// <exception cref="InvalidOperationException">The task is not an inspection.</exception>
    public ServiceTask IfFailedDo(string taskId) =>
        Action == TaskAction.Inspect
            ? new(this) { IfFailed = Guard.NotBlank(taskId) }
            : throw new InvalidOperationException($"Task '{Id}' is not an inspection.");

    /// <summary>A copy that happenings make due at once; its interval goes on untouched.</summary>
    /// <param name="eventKinds">The kinds, such as "overheat"; none blank, none twice.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="eventKinds"/> or an item is null.</exception>
    /// <exception cref="ArgumentException">A kind is blank or named twice.</exception>
    public ServiceTask DueAfterEvents(params string[] eventKinds) => new(this) { DueAfter = Names.Distinct(eventKinds, nameof(eventKinds)) };

    /// <summary>A copy whose interval shrinks under a condition of severe duty.</summary>
    /// <param name="condition">The condition, such as "towing"; not blank.</param>
    /// <param name="factorRatio">What the interval is multiplied by: from 0.01 to 1.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="condition"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="condition"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="factorRatio"/> is outside its range.</exception>
    public ServiceTask WithSevereDuty(string condition, decimal factorRatio)
    {
        Dictionary<string, decimal> factors = new(StringComparer.Ordinal);
        foreach (KeyValuePair<string, decimal> factor in SevereDuty)
        {
            factors[factor.Key] = factor.Value;
        }

        factors[Guard.NotBlank(condition)] = Guard.InRange(factorRatio, 0.01m, 1m, "(ratio)");
        return new(this) { SevereDuty = new ReadOnlyDictionary<string, decimal>(factors) };
    }

    /// <summary>A copy that names where its interval comes from.</summary>
    /// <param name="source">The source.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    public ServiceTask WithSource(Citation source) => new(this) { Source = Guard.NotNull(source) };

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

    private void NeedsInterval(string what)
    {
        if (Interval is null)
        {
            throw new InvalidOperationException($"Task '{Id}' has no interval, so it cannot have {what}.");
        }
    }
}
