using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Tests.Internal;

/// <summary>Month addition held against the framework's own, which shares no code with it.</summary>
public sealed class CalendarDayTest
{
    private static readonly int[] Months = [1, 2, 3, 6, 11, 12, 13, 24, 48, 60, 1200];

    [Fact]
    public void PlusMonths_OverFourHundredYearsOfDays_AgreesWithDateOnly()
    {
        DateOnly epoch = new(1970, 1, 1);
        DateOnly end = new(2300, 1, 1);
        int compared = 0;
        for (DateOnly date = new(1900, 1, 1); date < end; date = date.AddDays(1))
        {
            int day = date.DayNumber - epoch.DayNumber;
            foreach (int months in Months)
            {
                if (CalendarDay.PlusMonths(day, months) != date.AddMonths(months).DayNumber - epoch.DayNumber)
                {
                    Assert.Fail($"{date:O} plus {months} months");
                }

                compared++;
            }
        }

        Assert.Equal(146_097 * Months.Length, compared);
    }

    [Fact]
    public void Of_ThenToDate_ComesBack()
    {
        for (LocalDate date = new(1900, 1, 1); date.Year < 2200; date = date.PlusDays(1))
        {
            Assert.Equal(date, CalendarDay.ToDate(CalendarDay.Of(date)));
        }
    }
}
