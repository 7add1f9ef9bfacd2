using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Engines;

/// <summary>A time of rest: from its first day up to, not including, the first day back in commission.</summary>
public sealed record LayUpPeriod
{
    private LayUpPeriod(LocalDate from, LocalDate? to) => (From, To) = (from, to);

    /// <summary>The first day of rest.</summary>
    public LocalDate From { get; }

    /// <summary>The first day back in commission, or null while the end is not known.</summary>
    public LocalDate? To { get; }

    internal int FromDay => CalendarDay.Of(From);

    internal int ToDay => To is LocalDate to ? CalendarDay.Of(to) : int.MaxValue;

    internal static LayUpPeriod Of(LocalDate from, LocalDate? to) => new(from, to);

    internal bool Holds(int day) => FromDay <= day && day < ToDay;
}
