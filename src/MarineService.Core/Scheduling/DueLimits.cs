namespace MarineService.Core.Scheduling;

/// <summary>How near a due point is soon, and how far past it is within tolerance, for both limbs (INTERVAL-04, -05, -15).</summary>
/// <remarks>Days, and thousandths of an hour. The one place where a status comes from what is left, for one task and for many.</remarks>
internal readonly record struct DueLimits(int SoonDays, int ToleranceDays, int SoonThousandths, int ToleranceThousandths)
{
    /// <summary>Due from the day itself, overdue from the next.</summary>
    internal static DueLimits AtOnce => default;

    /// <summary>Due for as long as it takes.</summary>
    internal static DueLimits NeverOverdue => new(0, int.MaxValue, 0, int.MaxValue);

    /// <summary>The limits at a due point, measured on the interval that is in force there.</summary>
    internal static DueLimits Of(DueAt due, decimal tolerancePercent) => new(
        IntervalMath.SoonDays(due.Months),
        due.ToleranceDays(tolerancePercent),
        (int)IntervalMath.SoonHours(due.Limb),
        (int)due.ToleranceHours(tolerancePercent));

    internal DueStatus ByDay(long daysLeft) => IntervalMath.Status(daysLeft, SoonDays, ToleranceDays);

    internal DueStatus ByHours(long thousandthsLeft) => IntervalMath.Status(thousandthsLeft, SoonThousandths, ToleranceThousandths);
}
