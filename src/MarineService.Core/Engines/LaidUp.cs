using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Engines;

/// <summary>The boat was laid up on this date: the engine is at rest from here on.</summary>
public sealed class LaidUp : ServiceFact
{
    private LaidUp(LocalDate date, EngineHours? dial)
        : base(date, dial)
    {
    }

    internal override ServiceFact WithoutDial() => new LaidUp(Date, null);

    /// <summary>A lay-up as it was done.</summary>
    /// <param name="date">The first day of rest, from 1900 to 2199.</param>
    /// <param name="dial">What the dial showed, or null when it was not read.</param>
    /// <returns>The fact.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="date"/> is outside 1900 to 2199.</exception>
    public static LaidUp On(LocalDate date, EngineHours? dial = null) => new(Guard.Date(date), dial);
}
