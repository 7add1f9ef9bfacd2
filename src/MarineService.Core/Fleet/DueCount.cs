using NodaTime;

namespace MarineService.Core.Fleet;

/// <summary>How many tasks are due by a date.</summary>
public sealed class DueCount
{
    internal DueCount(LocalDate date, long tasks) => (Date, Tasks) = (date, tasks);

    /// <summary>The due date.</summary>
    public LocalDate Date { get; }

    /// <summary>How many tasks of all engines have it.</summary>
    public long Tasks { get; }
}
