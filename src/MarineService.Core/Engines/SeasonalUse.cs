using MarineService.Core.Internal;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Core.Engines;

/// <summary>An engine's use over the year, from irregular meter readings: what each month and each past season brought, and what is to be expected.</summary>
/// <remarks>
/// <para>Hours between two readings are spread evenly over the days between them that are not laid up. The expected course is the mean rate
/// of each calendar month; the range comes from repeating each past year's days in turn. Declared plans override both, and lay-up days carry
/// no hours. With less than one season of readings the mean rate stands in, and the answer says so. Nothing is drawn at random.</para>
/// <para>A calendar year stands for a season when, by the other years, at most a tenth of its hours (a choice of this project) can lie on
/// days without readings; those days count as without use. Source: the seasonal repeat is that of the R package forecast (snaive); the
/// monthly mean is common practice.</para>
/// </remarks>
public sealed class SeasonalUse
{
    private readonly MeterHistory _meter;
    private readonly YearsOfUse? _years;
    private readonly UseAhead? _ahead;
    private readonly RestDays _rest;
    private readonly int _lastDay;
    private readonly double _lastHours;
    private readonly SeasonOfUse[] _complete = [];

    private SeasonalUse(MeterHistory meter, RestDays rest, IReadOnlyList<PlannedUse> plans, double missingLimitFraction)
    {
        (_meter, _rest) = (meter, rest);
        ReadOnlySpan<MeterPoint> points = meter.Points;
        if (points.Length == 0 || points[points.Length - 1].Day == points[0].Day)
        {
            return;
        }

        MeterPoint last = points[points.Length - 1];
        (_lastDay, _lastHours, Quality) = (last.Day, last.Estimate / 1000.0, last.Quality);
        _years = new(points, rest);
        Seasons = _years.Seasons(rest, missingLimitFraction);
        _complete = [.. Seasons.Where(season => season.IsComplete)];
        Basis = _complete.Length switch { 0 => ForecastBasis.MeanRate, 1 => ForecastBasis.OneSeason, _ => ForecastBasis.PastSeasons };
        Months = _years.Months();
        HoursPerYear = _years.HoursPerYear() is double hours ? UseMath.Kept(hours) : null;
        _ahead = new(_lastDay, rest);
        foreach (PlannedUse plan in plans)
        {
            int from = CalendarDay.Of(plan.From);
            double counted = Math.Max(0, _lastHours - HoursBefore(from));
            _ahead.Declare(from, CalendarDay.Of(plan.To), Math.Max(0, (double)plan.Hours.ToHours() - counted), Expected);
        }
    }

    /// <summary>What a forecast stands on.</summary>
    public ForecastBasis Basis { get; }

    /// <summary>How well the last reading is known.</summary>
    public ReadingQuality Quality { get; }

    /// <summary>The date of the last reading, or null when there are not two readings on different days.</summary>
    public LocalDate? LastReadingDate => _years is null ? null : CalendarDay.ToDate(_lastDay);

    /// <summary>Each calendar year that the readings touch, earliest first.</summary>
    public IReadOnlyList<SeasonOfUse> Seasons { get; } = [];

    /// <summary>The mean rate of each calendar month, January first; empty when there are not two readings on different days.</summary>
    public IReadOnlyList<MonthOfUse> Months { get; } = [];

    /// <summary>The mean hours of a year, or null while the readings do not cover every month.</summary>
    public EngineHours? HoursPerYear { get; }

    internal static string TwoReadings => "Two meter readings, some weeks apart.";

    /// <summary>How often the next season falls inside the range of the past ones, from 0 to 1: (n - 1)/(n + 1) for n seasons; null below two.</summary>
    /// <remarks>It holds when seasons differ from each other by chance only, not when use grows or shrinks from year to year.</remarks>
    public double? CoverageFraction => _complete.Length < 2 ? null : UseMath.RangeCoverage(_complete.Length);

    internal IReadOnlyList<int> CompleteYears => [.. _complete.Select(season => season.Year)];

    internal IReadOnlyList<(int From, int To)> Rests => _rest.Runs;

    private double[] Expected => Basis == ForecastBasis.MeanRate ? _years!.Mean : _years!.Profile;

    /// <summary>Reads the use over the year off a meter's history.</summary>
    /// <param name="meter">The readings on one scale.</param>
    /// <param name="layUps">Lay-ups, done and planned; the last one is taken to come again each year.</param>
    /// <param name="plans">Declared plans; of two that overlap the later in the list counts.</param>
    /// <param name="asOf">The day up to which the record is known, from 1900 to 2199.</param>
    /// <param name="missingLimitFraction">The share of a year's hours, from 0 to 0.5, that may fall on days without readings for the year to count as a season.</param>
    /// <returns>The use over the year.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">An item is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="asOf"/> or <paramref name="missingLimitFraction"/> is outside its range.</exception>
    public static SeasonalUse Of(
        MeterHistory meter, IEnumerable<LayUpPeriod> layUps, IEnumerable<PlannedUse> plans, LocalDate asOf, double missingLimitFraction = 0.1)
    {
        Guard.NotNull(meter);
        IReadOnlyList<LayUpPeriod> rests = Guard.Items(layUps);
        IReadOnlyList<PlannedUse> planned = Guard.Items(plans);
        int today = CalendarDay.Of(Guard.Date(asOf));
        Guard.InRange(missingLimitFraction, 0, 0.5, "(fraction)");
        int last = meter.LastReadingDate is LocalDate date ? CalendarDay.Of(date) : today;
        return new(meter, RestDays.Of(rests, last, today, last + UseAhead.HorizonDays), planned, missingLimitFraction);
    }

    /// <summary>The engine's hours on a date, past or to come.</summary>
    /// <param name="date">From the first reading to ten years after the last.</param>
    /// <returns>The hours with their range; not known before the first reading, beyond ten years, or without two readings.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="date"/> is outside 1900 to 2199.</exception>
    public Answer<HoursForecast> HoursOn(LocalDate date)
    {
        int day = CalendarDay.Of(Guard.Date(date));
        if (_years is null || _meter.FindHoursOn(day) is not HoursEstimate read)
        {
            return Answer.NotKnown<HoursForecast>(_years is null ? TwoReadings : $"A meter reading on or before {LocalDatePattern.Iso.Format(date)}.");
        }

        if (day <= _lastDay)
        {
            double hours = read.Quality == ReadingQuality.Interpolated ? HoursBefore(day + 1) : (double)read.Estimate.ToHours();
            return Answer.Known(new HoursForecast(this, date, hours, (double)read.Lower.ToHours(), (double)read.Upper.ToHours(), []));
        }

        int days = day - _lastDay;
        if (days > UseAhead.HorizonDays)
        {
            return Answer.NotKnown<HoursForecast>("A date within ten years of the last reading.");
        }

        double expected = _lastHours + _ahead!.HoursAfter(Expected, days);
        SeasonHours[] seasons = [.. _complete.Select(season => new SeasonHours(season.Year, _lastHours + _ahead.HoursAfter(_years.DaysOf(season.Year), days)))];
        double[] all = [.. seasons.Select(season => (double)season.Hours.ToHours()), expected];
        return Answer.Known(new HoursForecast(this, date, expected, all.Min(), all.Max(), seasons));
    }

    /// <summary>When the engine reaches a number of hours.</summary>
    /// <param name="hours">The engine's hours in all.</param>
    /// <returns>The date with its range; the last reading's own date when that already shows them; not known without two readings.</returns>
    public Answer<DateForecast> DateReaching(EngineHours hours)
    {
        if (_years is null)
        {
            return Answer.NotKnown<DateForecast>(TwoReadings);
        }

        double need = (double)hours.ToHours() - _lastHours;
        if (need <= 0)
        {
            return Answer.Known(new DateForecast(this, hours, 0, []));
        }

        int? expected = Basis == ForecastBasis.MeanRate ? _ahead!.DaysBefore(Expected, need) : _ahead!.DaysToReach(Expected, need);
        SeasonDate[] seasons = [.. _complete.Select(season => new SeasonDate(season.Year, DateAfter(_ahead.DaysToReach(_years.DaysOf(season.Year), need))))];
        return Answer.Known(new DateForecast(this, hours, expected, seasons));
    }

    /// <summary>When the engine reaches a number of hours by one method, for comparison; declared plans and lay-ups do not count for straight lines.</summary>
    /// <param name="hours">The engine's hours in all.</param>
    /// <param name="method">The method. <see cref="UseMethod.PairwiseSlopes"/> looks at every pair of readings.</param>
    /// <returns>The date; not known when the method has too little to go by, or does not get there within ten years.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="method"/> is not defined.</exception>
    public Answer<LocalDate> DateReaching(EngineHours hours, UseMethod method)
    {
        Guard.Defined(method);
        if (_years is null)
        {
            return Answer.NotKnown<LocalDate>(TwoReadings);
        }

        double need = Math.Max(0, (double)hours.ToHours() - _lastHours);
        LocalDate? date = need == 0 ? LastReadingDate : method switch
        {
            UseMethod.RepeatedSeasons => DateReaching(hours).Value.MedianOfSeasons,
            UseMethod.SeasonalProfile => DateAfter(_ahead!.DaysToReach(_years.Profile, need)),
            _ => DateAfter(SlopePerDay(method) is double slope ? UseMath.DaysAt(slope, need, UseAhead.HorizonDays) : null),
        };
        return date is LocalDate known ? Answer.Known(known) : Answer.NotKnown<LocalDate>("More seasons of readings, or more use: the hours are not reached within ten years.");
    }

    /// <summary>The slope of a straight-line method.</summary>
    /// <param name="method">A straight-line method.</param>
    /// <returns>Hours a day; null when the method is no straight line.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="method"/> is not defined.</exception>
    internal double? SlopePerDay(UseMethod method)
    {
        List<(int Day, double Hours)> points = [];
        foreach (MeterPoint point in _meter.Points)
        {
            if (points.Count > 0 && points[points.Count - 1].Day == point.Day)
            {
                points.RemoveAt(points.Count - 1);
            }

            points.Add((point.Day, point.Estimate / 1000.0));
        }

        (int Day, double Hours) last = points[points.Count - 1];
        (int Day, double Hours) before = method == UseMethod.LastInterval ? points[points.Count - 2] : points[0];
        return method switch
        {
            UseMethod.MeanRate or UseMethod.LastInterval => (last.Hours - before.Hours) / (last.Day - before.Day),
            UseMethod.PairwiseSlopes => UseMath.MedianOfPairwiseSlopes(points),
            _ => null,
        };
    }

    internal bool RestsOnPlan(int days) => _ahead!.RestsOnPlan(days);

    internal bool RestsOnAssumedLayUp(int days) => _rest.AssumedFrom <= _lastDay + days;

    internal LocalDate? DateAfter(int? days) => days is int some ? CalendarDay.ToDate(_lastDay + some) : null;

    /// <summary>The expected hours at the end of each day from a day on, for a number of days; null without two readings.</summary>
    internal double[]? ExpectedFrom(int day, int days)
    {
        if (_years is null)
        {
            return null;
        }

        double[] total = _ahead!.RunningTotal(Expected, Math.Max(0, day + days - _lastDay));
        double[] hours = new double[days + 1];
        for (int i = 0; i <= days; i++)
        {
            hours[i] = day + i <= _lastDay ? HoursBefore(day + i + 1) : _lastHours + total[day + i - _lastDay];
        }

        return hours;
    }

    /// <summary>The earliest and the latest day on which hours are reached, by the expected course and each season, once a reading on a day shows the expected hours.</summary>
    internal (int? Earliest, int? Latest) RangeAfterReading(EngineHours hours, int day)
    {
        int from = Math.Max(0, day - _lastDay);
        double need = (double)hours.ToHours() - _lastHours - _ahead!.HoursAfter(Expected, from);
        int?[] days = [_ahead.DaysToReach(Expected, need, from), .. _complete.Select(season => _ahead.DaysToReach(_years!.DaysOf(season.Year), need, from))];
        return (_lastDay + days.Min(), Array.TrueForAll(days, one => one is not null) ? _lastDay + days.Max() : null);
    }

    /// <summary>The first day of the lay-up that holds a day, as nothing is run in it; the day itself when none does; never before another day.</summary>
    internal int BeforeRest(int day, int notBefore) =>
        Rests.Where(run => run.From <= day && day < run.To).Select(run => Math.Max(notBefore, run.From)).DefaultIfEmpty(day).First();

    // The hours at the end of the day before.
    private double HoursBefore(int day)
    {
        ReadOnlySpan<MeterPoint> points = _meter.Points;
        return day > _lastDay ? _lastHours
            : day <= points[0].Day ? points[0].Estimate / 1000.0
            : (points[0].Estimate / 1000.0) + _years!.HoursUpTo(day - 1);
    }
}
