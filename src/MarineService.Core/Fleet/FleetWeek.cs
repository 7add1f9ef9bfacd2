using NodaTime;

namespace MarineService.Core.Fleet;

/// <summary>Weeks as ISO 8601 counts them: from Monday.</summary>
internal static class FleetWeek
{
    /// <summary>The Monday of a date's week.</summary>
    internal static LocalDate Of(LocalDate date) => date.PlusDays(1 - (int)date.DayOfWeek);
}
