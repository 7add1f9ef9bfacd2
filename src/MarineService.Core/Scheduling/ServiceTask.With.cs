using MarineService.Core.Internal;

namespace MarineService.Core.Scheduling;

public sealed partial class ServiceTask
{
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
    public ServiceTask WithSevereDuty(string condition, decimal factorRatio) =>
        new(this) { SevereDuty = FactorsOf(SevereDuty.Append(new(Guard.NotBlank(condition), Guard.InRange(factorRatio, 0.01m, 1m, "(ratio)")))) };

    /// <summary>A copy that names where its interval comes from.</summary>
    /// <param name="source">The source.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    public ServiceTask WithSource(Citation source) => new(this) { Source = Guard.NotNull(source) };

    private void NeedsInterval(string what)
    {
        if (Interval is null)
        {
            throw new InvalidOperationException($"Task '{Id}' has no interval, so it cannot have {what}.");
        }
    }
}
