namespace MarineService.Core.Fleet;

/// <summary>Weeks as ISO 8601 counts them: from Monday.</summary>
internal static class FleetWeek
{
    // Day 0, 1 January 1970, was a Thursday.
    private const int ThursdayInWeek = 3;

    /// <summary>The Monday of a day's week, both as day numbers.</summary>
    internal static int Of(int day)
    {
        int inWeek = (day + ThursdayInWeek) % 7;
        return day - (inWeek < 0 ? inWeek + 7 : inWeek);
    }
}
