namespace MarineService.Core.Engines;

/// <summary>How much an engine runs in one month of the year, over all years that the readings cover.</summary>
public sealed class MonthOfUse
{
    internal MonthOfUse(int month, double hoursPerDay, int days) =>
        (Month, HoursPerDay, Days) = (month, UseMath.Kept(hoursPerDay), days);

    /// <summary>The month, from 1 to 12.</summary>
    public int Month { get; }

    /// <summary>The mean hours of a day in commission, to a thousandth of an hour.</summary>
    public EngineHours HoursPerDay { get; }

    /// <summary>How many days in commission the readings cover; 0 when nothing is known of this month.</summary>
    public int Days { get; }

    /// <summary>The month and its rate.</summary>
    /// <returns>Invariant text, such as "month 7: 0.75 h a day".</returns>
    public override string ToString() => FormattableString.Invariant($"month {Month}: {HoursPerDay} a day");
}
