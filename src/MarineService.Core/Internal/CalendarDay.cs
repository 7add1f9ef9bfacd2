using NodaTime;

namespace MarineService.Core.Internal;

/// <summary>Dates as day numbers, counted from 1 January 1970: what the calculation runs on.</summary>
internal static class CalendarDay
{
    private static readonly LocalDate Epoch = new(1970, 1, 1);

    internal static int Of(LocalDate date) => Period.DaysBetween(Epoch, date);

    internal static LocalDate ToDate(int day) => Epoch.PlusDays(day);

    internal static LocalDate? ToDate(int? day) => day is int known ? ToDate(known) : null;

    /// <summary>Adds whole months; the last day of a short month stands for a day that it does not have.</summary>
    internal static int PlusMonths(int day, int months) => Of(ToDate(day).PlusMonths(months));
}
