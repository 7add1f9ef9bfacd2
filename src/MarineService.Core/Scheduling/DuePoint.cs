using MarineService.Core.Internal;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Core.Scheduling;

/// <summary>When a task is due: by date, by engine hours, or both; or neither.</summary>
/// <remarks>Two are equal when all parts are.</remarks>
public sealed record DuePoint
{
    internal DuePoint(DueAt due)
    {
        Date = due.Day is int day ? CalendarDay.ToDate(day) : null;
        Hours = due.Hours is long hours ? EngineHours.FromThousandths(hours) : null;
        SafeHours = due.SafeHours is long safe ? EngineHours.FromThousandths(safe) : null;
    }

    /// <summary>The due date, or null when no date is due.</summary>
    public LocalDate? Date { get; }

    /// <summary>The engine's hours in all at which it is due, or null when no hours are due.</summary>
    public EngineHours? Hours { get; }

    /// <summary>
    /// The earliest hours at which it may be due; less than <see cref="Hours"/> when the last completion had no reading. Null as <see cref="Hours"/> is.
    /// </summary>
    public EngineHours? SafeHours { get; }

    /// <summary>Whether there is no due point at all.</summary>
    public bool IsNone => Date is null && Hours is null;

    /// <summary>Both limbs in words.</summary>
    /// <returns>Invariant text, such as "512.0 h or 2027-04-01".</returns>
    public override string ToString() => (Hours, Date) switch
    {
        ({ } hours, { } date) => $"{hours} or {LocalDatePattern.Iso.Format(date)}",
        ({ } hours, null) => hours.ToString(),
        (null, { } date) => LocalDatePattern.Iso.Format(date),
        _ => "no due point",
    };
}
