using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Scheduling;

/// <summary>From this date on the engine works under other conditions, such as "towing" or "short-runs"; an empty list is normal duty.</summary>
public sealed class DutyChange : ServiceFact
{
    private DutyChange(LocalDate date, IReadOnlyList<string> conditions, EngineHours? dial)
        : base(date, dial) => Conditions = conditions;

    /// <summary>The conditions in force from here on, in the words that the tasks use.</summary>
    public IReadOnlyList<string> Conditions { get; }

    internal override ServiceFact WithoutDial() => new DutyChange(Date, Conditions, null);

    /// <summary>A change of duty.</summary>
    /// <param name="date">The first day of the new duty, from 1900 to 2199.</param>
    /// <param name="conditions">All conditions in force from here on; empty for normal duty; none blank.</param>
    /// <param name="dial">What the dial showed, or null when it was not read.</param>
    /// <returns>The fact.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="conditions"/> or an item is null.</exception>
    /// <exception cref="ArgumentException">A condition is blank or named twice.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="date"/> is outside 1900 to 2199.</exception>
    public static DutyChange Of(LocalDate date, IEnumerable<string> conditions, EngineHours? dial = null) =>
        new(Guard.Date(date), Names.Distinct(conditions, nameof(conditions)), dial);
}
