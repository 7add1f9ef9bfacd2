using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Engines;

/// <summary>All readings of an engine's meters, put on one scale: the hours that the engine ran since it was new.</summary>
/// <remarks>
/// <para>Hours in all = sum over the meters of (reading - initial) + unmetered hours. On the first meter the dial is the engine's own count.</para>
/// <para>A reading that falls is a rollover only when the dial stood above 90 % of its modulus, now stands below 10 %, and the gain was possible;
/// otherwise it is not counted and reported. So is a gain of more than 24 h for each day since the last good reading (one day for two readings
/// on the same day). The last good reading stays. Between readings hours are spread evenly over the days. Source: common practice; the bound of
/// 24 h a day is plain arithmetic; the 90 % and 10 % are choices of this project.</para>
/// </remarks>
public sealed class MeterHistory
{
    internal const long ThousandthsPerDay = 24_000;

    private readonly MeterPoint[] _points;
    private readonly long _dialOffset;
    private readonly long? _modulus;

    internal MeterHistory(MeterPoint[] points, long dialOffset, long? modulus, IReadOnlyList<Finding> findings) =>
        (_points, _dialOffset, _modulus, Findings) = (points, dialOffset, modulus, findings);

    /// <summary>Readings that were not counted, and why.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The date of the last accepted reading, or null when there is none.</summary>
    public LocalDate? LastReadingDate => _points.Length == 0 ? null : CalendarDay.ToDate(_points[_points.Length - 1].Day);

    /// <summary>The days with an accepted reading, earliest first; <see cref="HoursOn"/> is measured on each.</summary>
    public IReadOnlyList<LocalDate> ReadingDates => [.. _points.Select(point => point.Day).Distinct().Select(CalendarDay.ToDate)];

    internal ReadOnlySpan<MeterPoint> Points => _points;

    /// <summary>Puts readings and meter changes on one scale.</summary>
    /// <param name="meter">The meter that the engine started with.</param>
    /// <param name="readings">Dial readings in any order.</param>
    /// <param name="changes">Meter changes in any order.</param>
    /// <returns>The history.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">An item is null.</exception>
    public static MeterHistory Of(HourMeter meter, IEnumerable<MeterReading> readings, IEnumerable<MeterChange> changes)
    {
        Guard.NotNull(meter);
        IReadOnlyList<MeterChange> allChanges = Guard.Items(changes);
        IReadOnlyList<MeterReading> allReadings = Guard.Items(readings);
        MeterHistoryBuilder builder = new(meter, allReadings.Count);
        foreach (MeterChange change in allChanges)
        {
            builder.Add(change);
        }

        foreach (MeterReading reading in allReadings)
        {
            builder.Add(reading.Day, reading.Shown, reading.Source);
        }

        return builder.Build();
    }

    /// <summary>The engine's hours on a date.</summary>
    /// <param name="date">The date, from 1900 to 2199.</param>
    /// <returns>
    /// Measured on the day of a reading; interpolated between readings, with these as bounds; after the last reading that reading
    /// carried forward, the upper bound rising by 24 h a day. Not known before the first reading.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="date"/> is outside 1900 to 2199.</exception>
    public Answer<HoursEstimate> HoursOn(LocalDate date) =>
        FindHoursOn(CalendarDay.Of(Guard.Date(date))) is HoursEstimate hours
            ? Answer.Known(hours)
            : Answer.NotKnown<HoursEstimate>($"A meter reading on or before {NodaTime.Text.LocalDatePattern.Iso.Format(date)}.");

    /// <summary>What the dial of the present meter shows when the engine has run a number of hours.</summary>
    /// <param name="hours">The engine's hours in all.</param>
    /// <returns>The dial value; not known when the present meter started later than that.</returns>
    public Answer<EngineHours> DialAt(EngineHours hours) =>
        DialThousandths(hours.Thousandths) is long dial
            ? Answer.Known(EngineHours.FromThousandths(dial))
            : Answer.NotKnown<EngineHours>("The present meter started after the engine had run that long.");

    internal long? DialThousandths(long hours)
    {
        long dial = hours - _dialOffset;
        return dial < 0 ? null : _modulus is long modulus ? dial % modulus : dial;
    }

    internal HoursEstimate? FindHoursOn(int day)
    {
        int after = FirstAfter(day);
        if (after == 0)
        {
            return null;
        }

        ref readonly MeterPoint before = ref _points[after - 1];
        if (before.Day == day)
        {
            return before.ToEstimate();
        }

        if (after < _points.Length)
        {
            ref readonly MeterPoint next = ref _points[after];
            long estimate = before.Estimate
                + (long)decimal.Round((decimal)(next.Estimate - before.Estimate) * (day - before.Day) / (next.Day - before.Day));
            return new(before.Lower, estimate, next.Upper, ReadingQuality.Interpolated);
        }

        long upper = Math.Min(EngineHours.MaxThousandths, before.Upper + (ThousandthsPerDay * (day - before.Day)));
        return new(before.Lower, before.Estimate, upper, ReadingQuality.Estimated);
    }

    /// <summary>The hours of a dial value read on a day, or null when it was refused.</summary>
    internal HoursEstimate? FindReading(int day, EngineHours dial)
    {
        for (int i = FirstAfter(day) - 1; i >= 0 && _points[i].Day == day; i--)
        {
            if (_points[i].Dial == dial.Thousandths)
            {
                return _points[i].ToEstimate();
            }
        }

        return null;
    }

    /// <summary>Whether a reading was accepted on a day.</summary>
    internal bool HasReadingOn(int day) => FirstAfter(day) is > 0 and int after && _points[after - 1].Day == day;

    /// <summary>Whether a reading was accepted after a day.</summary>
    internal bool HasReadingAfter(int day) => _points.Length > 0 && _points[_points.Length - 1].Day > day;

    private int FirstAfter(int day)
    {
        int low = 0;
        int high = _points.Length;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (_points[middle].Day <= day)
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }

        return low;
    }
}
