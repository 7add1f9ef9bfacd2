using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Engines;

/// <summary>Hours that the owner means to run between two dates: a declared plan, which overrides what past seasons suggest.</summary>
/// <remarks>
/// What the meter already counted of it is taken off; the rest is spread over the days that are left as past use falls in the year, or
/// evenly where nothing is known of that. Lay-up days carry none of it. Like a planned lay-up it may lie in the future.
/// </remarks>
public sealed class PlannedUse : ServiceFact
{
    private PlannedUse(LocalDate from, LocalDate to, EngineHours hours)
        : base(from) => (To, Hours) = (to, hours);

    /// <summary>The first day of the plan; the same as the date of the fact.</summary>
    public LocalDate From => Date;

    /// <summary>The last day of the plan.</summary>
    public LocalDate To { get; }

    /// <summary>The hours to be run from the first day to the last, both included.</summary>
    public EngineHours Hours { get; }

    /// <summary>A plan by hours.</summary>
    /// <param name="from">The first day, from 1900 to 2199.</param>
    /// <param name="to">The last day, on or after <paramref name="from"/> and within ten years of it.</param>
    /// <param name="hours">The hours to be run, at most 24 h for each day.</param>
    /// <returns>The plan.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A date or the hours are outside their range.</exception>
    /// <example><code>PlannedUse.Between(new LocalDate(2027, 4, 17), new LocalDate(2027, 10, 23), EngineHours.FromHours(140m));</code></example>
    public static PlannedUse Between(LocalDate from, LocalDate to, EngineHours hours)
    {
        Guard.Date(from);
        if (Guard.Date(to) < from || to > from.PlusYears(10))
        {
            throw new ArgumentOutOfRangeException(nameof(to), to, "Must be on or after the first day, and within ten years of it.");
        }

        Guard.InRange(hours.ToHours(), 0m, (CalendarDay.Of(to) - CalendarDay.Of(from) + 1) * 24m, "h", nameof(hours));
        return new(from, to, hours);
    }

    /// <summary>A plan by outings.</summary>
    /// <param name="from">The first day, from 1900 to 2199.</param>
    /// <param name="to">The last day, on or after <paramref name="from"/> and within ten years of it.</param>
    /// <param name="outings">How many outings, from 0 to 10,000.</param>
    /// <param name="hoursEach">The engine hours of one outing, at most 24 h for each day in all.</param>
    /// <returns>The plan.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static PlannedUse OfOutings(LocalDate from, LocalDate to, int outings, EngineHours hoursEach)
    {
        Guard.InRange(outings, 0, 10_000, "outings");
        Guard.InRange(hoursEach.ToHours(), 0m, 240m, "h", nameof(hoursEach));
        return Between(from, to, EngineHours.FromThousandths(hoursEach.Thousandths * outings));
    }
}
