using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Engines;

/// <summary>What the hour meter's dial showed on a date.</summary>
public sealed class MeterReading : ServiceFact
{
    private MeterReading(LocalDate date, EngineHours dial, ReadingSource source)
        : base(date, dial) => Source = source;

    /// <summary>What the dial showed; not the engine's hours in all when meters were changed or rolled over.</summary>
    public EngineHours Shown => Dial.GetValueOrDefault();

    /// <summary>Where the reading comes from.</summary>
    public ReadingSource Source { get; }

    /// <summary>A reading.</summary>
    /// <param name="date">The date, from 1900 to 2199.</param>
    /// <param name="dial">What the dial showed.</param>
    /// <param name="source">Where the reading comes from.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="date"/> is outside 1900 to 2199, or <paramref name="source"/> is not defined.</exception>
    public static MeterReading Of(LocalDate date, EngineHours dial, ReadingSource source = ReadingSource.Dial) =>
        new(Guard.Date(date), dial, Guard.Defined(source));
}
