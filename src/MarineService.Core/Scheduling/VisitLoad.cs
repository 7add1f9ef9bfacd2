namespace MarineService.Core.Scheduling;

/// <summary>A task as the search for visit days sees it: day numbers, and millionths of the caller's currency.</summary>
internal readonly struct VisitLoad(int due, long earlyPerDay, long latePerDay, int from, int to, int access)
{
    internal int Due { get; } = due;

    internal long EarlyPerDay { get; } = earlyPerDay;

    internal long LatePerDay { get; } = latePerDay;

    internal int From { get; } = from;

    internal int To { get; } = to;

    /// <summary>The index of the removal that it needs, or -1.</summary>
    internal int Access { get; } = access;

    /// <summary>The day of least cost inside the window.</summary>
    internal int Best { get; } = Math.Max(from, Math.Min(to, due));
}
