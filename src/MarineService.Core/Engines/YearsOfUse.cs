using MarineService.Core.Internal;

namespace MarineService.Core.Engines;

/// <summary>What the readings show of the use over the year: each month's rate, and each past year's days.</summary>
internal sealed class YearsOfUse
{
    private readonly double[] _monthHours = new double[12];
    private readonly int[] _monthDaysInUse = new int[12];
    private readonly int[] _monthDays = new int[12];
    private readonly SortedDictionary<int, double[]> _years = [];
    private readonly double[] _hoursPerDay;
    private readonly int _firstDay;

    internal YearsOfUse(ReadOnlySpan<MeterPoint> points, RestDays rest)
    {
        _firstDay = points[0].Day;
        _hoursPerDay = UseMath.Spread(points, rest);
        YearDay at = new(_firstDay + 1);
        int daysInUse = 0;
        double[]? year = null;
        for (int i = 0; i < _hoursPerDay.Length; i++, at.Next())
        {
            if (year is null || at.Index == 0)
            {
                _years[at.Year] = year = new double[YearDay.DaysOfLeapYear];
            }

            year[at.Index] = _hoursPerDay[i];
            int inUse = rest.Holds(_firstDay + 1 + i) ? 0 : 1;
            daysInUse += inUse;
            _monthHours[at.Month - 1] += _hoursPerDay[i];
            _monthDays[at.Month - 1]++;
            _monthDaysInUse[at.Month - 1] += inUse;
        }

        // The year that ends with the last reading has no 29 February where it is a common one: then that of the day before stands.
        foreach (KeyValuePair<int, double[]> one in _years.Where(one => !NodaTime.CalendarSystem.Iso.IsLeapYear(one.Key)))
        {
            one.Value[YearDay.LeapDay] = one.Value[YearDay.LeapDay - 1];
        }

        MeanPerDayInUse = _hoursPerDay.Sum() / Math.Max(1, daysInUse);
        for (int i = 0; i < YearDay.DaysOfLeapYear; i++)
        {
            Profile[i] = RateInUse(YearDay.MonthOf(i) - 1);
            Mean[i] = MeanPerDayInUse;
        }
    }

    /// <summary>The mean rate of each calendar month on its days.</summary>
    internal double[] Profile { get; } = new double[YearDay.DaysOfLeapYear];

    /// <summary>The mean rate of all days in commission on every day.</summary>
    internal double[] Mean { get; } = new double[YearDay.DaysOfLeapYear];

    internal double MeanPerDayInUse { get; }

    internal double[] DaysOf(int year) => _years[year];

    internal IReadOnlyList<MonthOfUse> Months() =>
        [.. Enumerable.Range(0, 12).Select(month => new MonthOfUse(month + 1, RateInUse(month), _monthDaysInUse[month]))];

    /// <summary>The hours of a common year by the monthly means over all days; null unless every month is covered.</summary>
    internal double? HoursPerYear()
    {
        double hours = 0;
        for (int month = 0; month < 12; month++)
        {
            if (_monthDays[month] == 0)
            {
                return null;
            }

            hours += _monthHours[month] / _monthDays[month] * NodaTime.CalendarSystem.Iso.GetDaysInMonth(2023, month + 1);
        }

        return hours;
    }

    /// <summary>Each calendar year with what is missing of it: days without readings count at their month's rate, or at the mean rate where no year covers that month.</summary>
    internal IReadOnlyList<SeasonOfUse> Seasons(RestDays rest, double missingLimitFraction)
    {
        List<SeasonOfUse> seasons = [];
        int lastDay = _firstDay + _hoursPerDay.Length;
        foreach (int year in _years.Keys)
        {
            double hours = 0;
            double missing = 0;
            int end = CalendarDay.Of(new NodaTime.LocalDate(year, 12, 31));
            int day = CalendarDay.Of(new NodaTime.LocalDate(year, 1, 1));
            for (YearDay at = new(day); day <= end; day++, at.Next())
            {
                bool isRead = day > _firstDay && day <= lastDay;
                hours += isRead ? _hoursPerDay[day - _firstDay - 1] : 0;
                missing += isRead || rest.Holds(day) ? 0 : MissingRate(at.Month - 1);
            }

            double share = missing > 0 ? missing / (hours + missing) : 0;
            seasons.Add(new(year, hours, share, share <= missingLimitFraction));
        }

        return seasons.AsReadOnly();
    }

    /// <summary>The hours since the first reading at the end of a day.</summary>
    internal double HoursUpTo(int day)
    {
        double hours = 0;
        for (int i = 0; i < day - _firstDay; i++)
        {
            hours += _hoursPerDay[i];
        }

        return hours;
    }

    private double RateInUse(int month) => _monthDaysInUse[month] == 0 ? 0 : _monthHours[month] / _monthDaysInUse[month];

    private double MissingRate(int month) => _monthDays[month] == 0 ? MeanPerDayInUse : _monthHours[month] / _monthDays[month];
}
