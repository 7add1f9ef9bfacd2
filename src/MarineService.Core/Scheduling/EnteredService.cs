using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Scheduling;

/// <summary>A new or rebuilt engine entered service: everything on it was new, and its first service is counted from here.</summary>
public sealed class EnteredService : ServiceFact
{
    private EnteredService(LocalDate date, EngineHours? dial, EngineHours engineZero, bool rebuilt)
        : base(date, dial) => (EngineZero, Rebuilt) = (engineZero, rebuilt);

    /// <summary>The engine's hours in all from which the first service is counted.</summary>
    public EngineHours EngineZero { get; }

    /// <summary>True for a rebuilt engine: only tasks with a first service start anew.</summary>
    public bool Rebuilt { get; }

    /// <summary>A new engine.</summary>
    /// <param name="date">The date on which it was put into service, from 1900 to 2199.</param>
    /// <param name="dial">What the dial showed, or null when it was not read.</param>
    /// <returns>The fact.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="date"/> is outside 1900 to 2199.</exception>
    public static EnteredService New(LocalDate date, EngineHours? dial = null) =>
        new(Guard.Date(date), dial, EngineHours.Zero, rebuilt: false);

    /// <summary>A rebuilt engine: break-in starts anew, the hours in all go on.</summary>
    /// <param name="date">The date on which it was put into service, from 1900 to 2199.</param>
    /// <param name="engineZero">The engine's hours in all at the rebuild.</param>
    /// <param name="dial">What the dial showed, or null when it was not read.</param>
    /// <returns>The fact.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="date"/> is outside 1900 to 2199.</exception>
    public static EnteredService AfterRebuild(LocalDate date, EngineHours engineZero, EngineHours? dial = null) =>
        new(Guard.Date(date), dial, engineZero, rebuilt: true);
}
