using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Engines;

/// <summary>The boat came out of lay-up on this date.</summary>
public sealed class Commissioned : ServiceFact
{
    private Commissioned(LocalDate date, EngineHours? dial)
        : base(date, dial)
    {
    }

    internal override ServiceFact WithoutDial() => new Commissioned(Date, null);

    /// <summary>The end of a lay-up.</summary>
    /// <param name="date">The first day back in commission, from 1900 to 2199.</param>
    /// <param name="dial">What the dial showed, or null when it was not read.</param>
    /// <returns>The fact.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="date"/> is outside 1900 to 2199.</exception>
    public static Commissioned On(LocalDate date, EngineHours? dial = null) => new(Guard.Date(date), dial);
}
