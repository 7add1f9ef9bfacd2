using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Engines;

/// <summary>Walks through days and tells for each its year, its month, and its place in a year of 366 days.</summary>
internal struct YearDay
{
    internal const int DaysOfLeapYear = 366;
    internal const int LeapDay = 59;

    private static readonly int[] LastOfMonth = [30, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365];

    private bool _isLeap;

    internal YearDay(int day)
    {
        LocalDate date = CalendarDay.ToDate(day);
        Year = date.Year;
        _isLeap = IsLeap(Year);
        Index = date.DayOfYear - 1 + (!_isLeap && date.DayOfYear > LeapDay ? 1 : 0);
        Month = date.Month;
    }

    internal int Year { get; private set; }

    internal int Month { get; private set; }

    /// <summary>From 0 for 1 January to 365 for 31 December; 59 for 29 February, which a common year leaves out.</summary>
    internal int Index { get; private set; }

    internal void Next()
    {
        Index++;
        if (Index == LeapDay && !_isLeap)
        {
            Index++;
        }

        if (Index == DaysOfLeapYear)
        {
            (Index, Month) = (0, 1);
            Year++;
            _isLeap = IsLeap(Year);
        }
        else if (Index > LastOfMonth[Month - 1])
        {
            Month++;
        }
    }

    internal static int MonthOf(int index)
    {
        int month = 0;
        while (index > LastOfMonth[month])
        {
            month++;
        }

        return month + 1;
    }

    private static bool IsLeap(int year) => CalendarSystem.Iso.IsLeapYear(year);
}
