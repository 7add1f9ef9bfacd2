using MarineService.Core.Internal;

namespace MarineService.Core.Scheduling;

/// <summary>The allowed use or time between two resetting completions: hours, whole months, or whichever comes first.</summary>
/// <remarks>Twelve months equal one year. Two intervals are equal when both limbs are.</remarks>
public sealed record ServiceInterval
{
    private ServiceInterval(EngineHours? hours, int? months) => (Hours, Months) = (hours, months);

    /// <summary>The hours limb, or null when there is none.</summary>
    public EngineHours? Hours { get; }

    /// <summary>The calendar limb in whole months, or null when there is none.</summary>
    public int? Months { get; }

    /// <summary>Due when the first of both limbs is reached.</summary>
    /// <param name="hours">Above 0 h, at most 100,000 h.</param>
    /// <param name="months">From 1 to 1,200 months.</param>
    /// <returns>The interval.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A limb is outside its range.</exception>
    /// <example><code>ServiceInterval.FirstOf(EngineHours.FromHours(100m), months: 12);</code></example>
    public static ServiceInterval FirstOf(EngineHours hours, int months) => new(CheckHours(hours), CheckMonths(months));

    /// <summary>Due by hours alone.</summary>
    /// <param name="hours">Above 0 h, at most 100,000 h.</param>
    /// <returns>The interval.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="hours"/> is outside its range.</exception>
    public static ServiceInterval OfHours(EngineHours hours) => new(CheckHours(hours), null);

    /// <summary>Due by the calendar alone.</summary>
    /// <param name="months">From 1 to 1,200 months.</param>
    /// <returns>The interval.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="months"/> is outside its range.</exception>
    public static ServiceInterval OfMonths(int months) => new(null, CheckMonths(months));

    /// <summary>Both limbs in words.</summary>
    /// <returns>Invariant text, such as "100.0 h or 12 months, whichever comes first".</returns>
    public override string ToString() => (Hours, Months) switch
    {
        ({ } hours, { } months) => FormattableString.Invariant($"{hours} or {months} months, whichever comes first"),
        ({ } hours, null) => hours.ToString(),
        _ => FormattableString.Invariant($"{Months} months"),
    };

    private static EngineHours CheckHours(EngineHours hours)
    {
        Guard.InRange(hours.ToHours(), 0.001m, 100_000m, "h", nameof(hours));
        return hours;
    }

    private static int CheckMonths(int months) => Guard.InRange(months, 1, 1200, "months");
}
