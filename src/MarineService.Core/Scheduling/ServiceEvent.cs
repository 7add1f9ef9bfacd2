using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Scheduling;

/// <summary>A happening that may make tasks due at once, such as "overheat", "dry-run", "grounding" or "flooding".</summary>
public sealed class ServiceEvent : ServiceFact
{
    private ServiceEvent(string kind, LocalDate date, EngineHours? dial)
        : base(date, dial) => Kind = kind;

    /// <summary>What happened, in the word that the tasks use.</summary>
    public string Kind { get; }

    internal override ServiceFact WithoutDial() => new ServiceEvent(Kind, Date, null);

    /// <summary>A happening.</summary>
    /// <param name="kind">What happened, in the word that the tasks use; not blank.</param>
    /// <param name="date">The date, from 1900 to 2199.</param>
    /// <param name="dial">What the dial showed, or null when it was not read.</param>
    /// <returns>The fact.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="kind"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="kind"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="date"/> is outside 1900 to 2199.</exception>
    public static ServiceEvent Of(string kind, LocalDate date, EngineHours? dial = null) =>
        new(Guard.NotBlank(kind), Guard.Date(date), dial);
}
