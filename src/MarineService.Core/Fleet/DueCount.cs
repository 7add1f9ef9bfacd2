using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Fleet;

/// <summary>How many tasks are due by a date.</summary>
public sealed class DueCount
{
    internal DueCount(int day, long tasks) => (Day, Tasks) = (day, tasks);

    /// <summary>The due date.</summary>
    public LocalDate Date => CalendarDay.ToDate(Day);

    internal int Day { get; }

    /// <summary>How many tasks of all engines have it.</summary>
    public long Tasks { get; }
}
