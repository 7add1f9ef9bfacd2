namespace MarineService.Core.Scheduling;

/// <summary>A due point on day numbers and thousandths of an hour; the default has neither limb.</summary>
internal readonly struct DueAt(int? day, long? hours, long? safeHours = null)
{
    internal int? Day { get; } = day;

    internal long? Hours { get; } = hours;

    /// <summary>The earliest hours at which it may be due, where the last completion had no reading.</summary>
    internal long? SafeHours { get; } = safeHours ?? hours;

    internal bool IsNone => Day is null && Hours is null;
}
