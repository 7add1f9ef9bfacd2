namespace MarineService.Core.Scheduling;

/// <summary>A task that comes round as the search for visit days of some years sees it: day numbers, and millionths of the caller's currency.</summary>
/// <param name="firstDue">The day on which it is due first.</param>
/// <param name="earlyPerDay">What each day early costs.</param>
/// <param name="latePerDay">What each day late costs.</param>
/// <param name="from">The day that the arrays begin with.</param>
/// <param name="next">The next due day if it is done on each day; the largest number when there is none.</param>
/// <param name="rested">How many days before each day do not count as late, as the engine rests.</param>
/// <param name="lateFrom">From when a task that is due on each day counts as late: the day itself, or the beginning of the lay-up that it is pulled before.</param>
/// <param name="isAtOnce">Whether the first time may not wait: it goes on the first day that there is, whatever lateness is priced at.</param>
internal sealed class RepeatedLoad(int firstDue, long earlyPerDay, long latePerDay, int from, int[] next, int[] rested, int[] lateFrom, bool isAtOnce = false)
{
    internal int FirstDue { get; } = firstDue;

    internal bool IsAtOnce { get; } = isAtOnce;

    internal int[] Next { get; } = next;

    internal int NextAfter(int day) => Next[day - from];

    /// <summary>What doing on one day what is due on another costs.</summary>
    internal long Cost(int due, int day)
    {
        if (day <= due)
        {
            return (due - day) * earlyPerDay;
        }

        int late = lateFrom[due - from];
        return Math.Max(0, day - late - (rested[day - from] - rested[late - from])) * latePerDay;
    }
}
