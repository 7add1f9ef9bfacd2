namespace MarineService.Core.Scheduling;

/// <summary>A due point on day numbers and thousandths of an hour, with the interval in force there; the default has neither limb.</summary>
internal readonly struct DueAt(int? day, long? hours, long? safeHours = null, int months = 0, long limb = 0)
{
    internal int? Day { get; } = day;

    internal long? Hours { get; } = hours;

    /// <summary>The earliest hours at which it may be due, where the last completion had no reading.</summary>
    internal long? SafeHours { get; } = safeHours ?? hours;

    /// <summary>INTERVAL-15: the calendar limb under the duty in force at the due point; 0 when the interval has none. Bands are measured on it.</summary>
    internal int Months { get; } = months;

    /// <summary>INTERVAL-15: the hours limb under the duty in force at the due point; 0 when the interval has none. Bands are measured on it.</summary>
    internal long Limb { get; } = limb;

    internal bool IsNone => Day is null && Hours is null;

    /// <summary>INTERVAL-04: the tolerance in days.</summary>
    internal int ToleranceDays(decimal percent) => IntervalMath.ToleranceDays(Months, percent);

    /// <summary>INTERVAL-04: the tolerance in thousandths of an hour.</summary>
    internal long ToleranceHours(decimal percent) => IntervalMath.ToleranceHours(Limb, percent);
}
