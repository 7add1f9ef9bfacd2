using MarineService.Core.Engines;
using MarineService.Core.Internal;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Core.Scheduling;

/// <summary>When to read the hour meter again, so that a forecast gains most by it, and why.</summary>
/// <remarks>
/// The later a reading, the less is left to guess, but it must come in time to act on. Days on which the engine is laid up add nothing:
/// then the first day of the lay-up is as good. The range after the reading is worked out as if it showed the expected hours.
/// </remarks>
public sealed class ReadingAdvice
{
    private ReadingAdvice(TaskDue task, LocalDate date, int? now, int? after, string reason) =>
        (Task, Date, RangeDays, RangeDaysAfter, Reason) = (task, date, now, after, reason);

    /// <summary>The task whose forecast gains by it.</summary>
    public TaskDue Task { get; }

    /// <summary>The day by which to read the meter.</summary>
    public LocalDate Date { get; }

    /// <summary>Days from the earliest to the latest date as things stand; null when no range can be stated.</summary>
    public int? RangeDays { get; }

    /// <summary>Days from the earliest to the latest date once the reading is there; null when no range can be stated.</summary>
    public int? RangeDaysAfter { get; }

    /// <summary>Why that day; invariant text.</summary>
    public string Reason { get; }

    /// <summary>What to do, and why.</summary>
    /// <returns>Invariant text, such as "read the meter again by 2027-07-01: the range shrinks from 40 to 12 days".</returns>
    public override string ToString() => $"read the meter again by {LocalDatePattern.Iso.Format(Date)}: {Reason}";

    internal static Answer<ReadingAdvice> For(DueForecast forecast, SeasonalUse use, int noticeDays)
    {
        TaskDue task = forecast.Task;
        LocalDate today = task.AsOf;
        if (forecast.MayNeedReading)
        {
            return Answer.Known(new ReadingAdvice(task, today, null, null, $"the hours are not known ({string.Join(" ", forecast.Missing).TrimEnd('.')})"));
        }

        if (forecast.HoursEarliest is not LocalDate earliest || forecast.Hours.Value.IsReached || earliest >= forecast.Calendar)
        {
            return Answer.NotKnown<ReadingAdvice>("Nothing that a reading could tell: it would not change the date.");
        }

        int now = CalendarDay.Of(today);
        int inTime = Math.Max(now, CalendarDay.Of(earliest) - noticeDays);
        if (forecast.CoverageFraction is null)
        {
            return Answer.Known(new ReadingAdvice(
                task, CalendarDay.ToDate(use.BeforeRest(inTime, now)), null, null, "too few seasons are on record to state a range; a reading shortly before leaves least to guess"));
        }

        int? Cap(int? day) => forecast.Calendar is LocalDate date ? Math.Min(day ?? int.MaxValue, CalendarDay.Of(date)) : day;
        int? before = Days(CalendarDay.Of(earliest), forecast.Latest is LocalDate latest ? CalendarDay.Of(latest) : null);
        (int Day, int? Range) best = (now, before);
        foreach (int day in new[] { now, use.BeforeRest(inTime, now) }.Distinct())
        {
            (int? from, int? to) = use.RangeAfterReading(forecast.Hours.Value.Hours, day);
            int? range = Days(Cap(from), Cap(to));
            best = range is int less && (best.Range is not int most || less < most) ? (day, range) : best;
        }

        return best.Range == before
            ? Answer.NotKnown<ReadingAdvice>("Nothing that a reading could tell: it would not change the range.")
            : Answer.Known(new ReadingAdvice(task, CalendarDay.ToDate(best.Day), before, best.Range, FormattableString.Invariant(
                $"the range shrinks from {(before is int days ? $"{days}" : "years")} to {best.Range} days if it shows what is expected")));
    }

    private static int? Days(int? from, int? to) => from is int first && to is int last ? last - first : null;
}
