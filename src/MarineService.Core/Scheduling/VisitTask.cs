using MarineService.Core.Internal;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Core.Scheduling;

/// <summary>A task to be put on a day: when it is due, what a day early and a day late cost, and when it may be done at all.</summary>
/// <remarks>
/// A day early throws away a day of life: price of part and labour divided by the days of the interval. A day late is a risk that the
/// caller prices. Money is in the caller's currency, kept to a millionth.
/// </remarks>
public sealed class VisitTask
{
    private VisitTask(string id, LocalDate due, decimal earlyPerDay, decimal latePerDay, LocalDate? from, LocalDate? to, string? access) =>
        (Id, Due, EarlyPerDay, LatePerDay, From, To, Access) = (id, due, earlyPerDay, latePerDay, from, to, access);

    /// <summary>What names the task, such as "engine-oil".</summary>
    public string Id { get; }

    /// <summary>The day on which it is due.</summary>
    public LocalDate Due { get; }

    /// <summary>What each day before the due day costs.</summary>
    public decimal EarlyPerDay { get; }

    /// <summary>What each day after the due day costs.</summary>
    public decimal LatePerDay { get; }

    /// <summary>The first day on which it may be done, or null.</summary>
    public LocalDate? From { get; }

    /// <summary>The last day on which it may be done, or null.</summary>
    public LocalDate? To { get; }

    /// <summary>What must be removed to reach it, shared with other tasks, or null.</summary>
    public string? Access { get; }

    /// <summary>A task to be put on a day.</summary>
    /// <param name="id">What names it; not blank.</param>
    /// <param name="due">The day on which it is due, from 1900 to 2199.</param>
    /// <param name="earlyPerDay">What each day early costs, from 0 to 1,000,000 of the caller's currency.</param>
    /// <param name="latePerDay">What each day late costs, from 0 to 1,000,000 of the caller's currency.</param>
    /// <returns>The task.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="id"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="id"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A date or a cost is outside its range.</exception>
    public static VisitTask Of(string id, LocalDate due, decimal earlyPerDay, decimal latePerDay) =>
        new(
            Guard.NotBlank(id),
            Guard.Date(due),
            Guard.InRange(earlyPerDay, 0m, 1_000_000m, "(currency a day)"),
            Guard.InRange(latePerDay, 0m, 1_000_000m, "(currency a day)"),
            null,
            null,
            null);

    /// <summary>A copy that may be done within hard limits only.</summary>
    /// <param name="from">The first day, from 1900 to 2199.</param>
    /// <param name="to">The last day, on or after <paramref name="from"/>.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A date is outside its range.</exception>
    public VisitTask Within(LocalDate from, LocalDate to)
    {
        Guard.Date(from);
        return Guard.Date(to) >= from
            ? new(Id, Due, EarlyPerDay, LatePerDay, from, to, Access)
            : throw new ArgumentOutOfRangeException(nameof(to), to, "Must be on or after the first day.");
    }

    /// <summary>A copy that may not be done late.</summary>
    /// <returns>The copy.</returns>
    public VisitTask NeverLate() => new(Id, Due, EarlyPerDay, LatePerDay, From, To is LocalDate to ? LocalDate.Min(to, Due) : Due, Access);

    /// <summary>A copy that needs something removed first, once for all tasks of a visit that need it.</summary>
    /// <param name="access">What is removed, such as "serpentine belt"; not blank.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="access"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="access"/> is blank.</exception>
    public VisitTask Behind(string access) => new(Id, Due, EarlyPerDay, LatePerDay, From, To, Guard.NotBlank(access));

    /// <summary>The task and its due day.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => $"{Id} due {LocalDatePattern.Iso.Format(Due)}";
}
