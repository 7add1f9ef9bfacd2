using MarineService.Core;
using MarineService.Core.Internal;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Reports.Charts;

/// <summary>The engine's hours over the years: each reading, the forecast with its range, lay-ups, and where tasks come due.</summary>
public static class UseChart
{
    /// <summary>Draws the hours of one engine.</summary>
    /// <param name="history">The engine's readings, lay-ups and use.</param>
    /// <param name="due">The engine's due list, to mark its due points; null for none.</param>
    /// <param name="until">The last day shown, from 1900 to 2199 and after today; null for two years after today.</param>
    /// <param name="units">Which units to write; hours are the same in all.</param>
    /// <returns>The picture; without two readings it says what is missing.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="history"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="until"/> is outside its range, or <paramref name="units"/> is not a defined value.</exception>
    public static Drawing Of(ServiceHistory history, DueList? due = null, LocalDate? until = null, DisplayUnits units = DisplayUnits.Metric)
    {
        Guard.NotNull(history);
        LocalDate last = Guard.Date(until ?? history.AsOf.PlusYears(2), nameof(until));
        return last > history.AsOf
            ? new UseScene(history, due?.MostUrgentFirst ?? [], last, Guard.Defined(units)).Draw()
            : throw new ArgumentOutOfRangeException(nameof(until), until, "Must lie after the day of the history.");
    }
}
