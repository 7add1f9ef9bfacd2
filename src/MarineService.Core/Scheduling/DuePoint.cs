using MarineService.Core.Internal;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Core.Scheduling;

/// <summary>When a task is due: by date, by engine hours, or both.</summary>
/// <remarks>The default value has neither: no due point. Two are equal when all parts are.</remarks>
public readonly record struct DuePoint
{
    // The day number and thousandths are shifted by one, so that zero stands for "none".
    private readonly int _day;
    private readonly long _hours;
    private readonly long _safeHours;

    internal DuePoint(int? day, long? hours, long? safeHours = null) =>
        (_day, _hours, _safeHours) = (day is int d ? Shift(d) : 0, (hours + 1) ?? 0, ((safeHours ?? hours) + 1) ?? 0);

    /// <summary>The due date, or null when no date is due.</summary>
    public LocalDate? Date => _day == 0 ? null : CalendarDay.ToDate(Unshift(_day));

    /// <summary>The engine's hours in all at which it is due, or null when no hours are due.</summary>
    public EngineHours? Hours => _hours == 0 ? null : EngineHours.FromThousandths(_hours - 1);

    /// <summary>
    /// The earliest hours at which it may be due; less than <see cref="Hours"/> when the last completion had no reading. Null as <see cref="Hours"/> is.
    /// </summary>
    public EngineHours? SafeHours => _safeHours == 0 ? null : EngineHours.FromThousandths(_safeHours - 1);

    /// <summary>Both limbs in words.</summary>
    /// <returns>Invariant text, such as "512.0 h or 2027-04-01".</returns>
    public override string ToString() => (Hours, Date) switch
    {
        ({ } hours, { } date) => $"{hours} or {LocalDatePattern.Iso.Format(date)}",
        ({ } hours, null) => hours.ToString(),
        (null, { } date) => LocalDatePattern.Iso.Format(date),
        _ => "no due point",
    };

    // Service dates lie within some 84,000 days of 1970, so a shift by a million keeps zero free.
    private static int Shift(int day) => day + 1_000_000;

    private static int Unshift(int day) => day - 1_000_000;
}
