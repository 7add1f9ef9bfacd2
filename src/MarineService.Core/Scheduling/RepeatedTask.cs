using MarineService.Core.Engines;
using MarineService.Core.Internal;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Core.Scheduling;

/// <summary>A task that comes round again and again, to be put on the visits of some years: when it is due first, how soon again after each time, and what early and late days cost.</summary>
/// <remarks>
/// After each time it is due again when the calendar limb has passed or, by the expected course of use, the hours limb is run, whichever
/// comes first. A day early throws away a day of life: the price of part and labour divided by the days of one interval. A day late is a
/// risk that the caller prices. After a failed inspection, an event such as an overheat, or a run after lay-up the first time is not weighed
/// against anything: it goes on the first day that there is. Money is in the caller's currency, kept to a millionth.
/// </remarks>
public sealed class RepeatedTask
{
    private readonly SeasonalUse? _use;
    private readonly LayUpRule _layUpRule;
    private readonly int? _gridToleranceDays;
    private readonly bool _isAtOnce;

    private RepeatedTask(
        string id, LocalDate firstDue, ServiceInterval interval, decimal earlyPerDay, decimal latePerDay, SeasonalUse? use, LayUpRule layUpRule, int? gridToleranceDays, bool isAtOnce)
    {
        (Id, FirstDue, Interval, EarlyPerDay, LatePerDay) = (id, firstDue, interval, earlyPerDay, latePerDay);
        (_use, _layUpRule, _gridToleranceDays, _isAtOnce) = (use, layUpRule, gridToleranceDays, isAtOnce);
    }

    /// <summary>What names the task, such as "engine-oil".</summary>
    public string Id { get; }

    /// <summary>The day on which it is due first.</summary>
    public LocalDate FirstDue { get; }

    /// <summary>How soon it comes round again.</summary>
    public ServiceInterval Interval { get; }

    /// <summary>What each day before a due day costs: life thrown away.</summary>
    public decimal EarlyPerDay { get; }

    /// <summary>What each day after a due day costs.</summary>
    public decimal LatePerDay { get; }

    /// <summary>A task that comes round by the calendar.</summary>
    /// <param name="id">What names it; not blank.</param>
    /// <param name="firstDue">The day on which it is due first, from 1900 to 2199.</param>
    /// <param name="months">The interval, from 1 to 1200 months.</param>
    /// <param name="price">What part and labour of one time cost, from 0 to 100,000 of the caller's currency.</param>
    /// <param name="latePerDay">What each day late costs, from 0 to 1,000,000 of the caller's currency.</param>
    /// <returns>The task.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="id"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="id"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A date, the interval or a cost is outside its range.</exception>
    /// <example><code>RepeatedTask.Every("fuel-filter", new LocalDate(2027, 6, 1), months: 12, price: 48m, latePerDay: 0.5m);</code></example>
    public static RepeatedTask Every(string id, LocalDate firstDue, int months, decimal price, decimal latePerDay)
    {
        Guard.NotBlank(id);
        int first = CalendarDay.Of(Guard.Date(firstDue));
        ServiceInterval interval = ServiceInterval.OfMonths(months);
        Guard.InRange(price, 0m, 100_000m, "(currency)");
        Guard.InRange(latePerDay, 0m, 1_000_000m, "(currency a day)");
        return new(id, firstDue, interval, price / (CalendarDay.PlusMonths(first, months) - first), latePerDay, null, LayUpRule.AsIs, null, false);
    }

    /// <summary>A task as a due list forecasts it.</summary>
    /// <param name="due">Where it stands.</param>
    /// <param name="price">What part and labour of one time cost, from 0 to 100,000 of the caller's currency.</param>
    /// <param name="latePerDay">What each day late costs, from 0 to 1,000,000 of the caller's currency.</param>
    /// <returns>The task under its id, behind the scope and a slash unless that is "main"; not known when it does not come round by an interval, or no date is known on which it falls due.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="due"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A cost is outside its range.</exception>
    public static Answer<RepeatedTask> Of(TaskDue due, decimal price, decimal latePerDay)
    {
        Guard.NotNull(due);
        Guard.InRange(price, 0m, 100_000m, "(currency)");
        Guard.InRange(latePerDay, 0m, 1_000_000m, "(currency a day)");
        if (due.Task.Interval is null || due.Forecast.Expected is not LocalDate first)
        {
            return Answer.NotKnown<RepeatedTask>([.. due.Forecast.Missing.DefaultIfEmpty($"A date on which '{due.TaskId}' falls due.")]);
        }

        // What is due already cannot be done before today, and what its lateness cost so far cannot be helped.
        first = LocalDate.Max(first, due.AsOf);
        ServiceInterval interval = due.IntervalInForce;
        RepeatedTask task = new(
            due.VisitId, first, interval, 0m, latePerDay, due.Use, due.Task.LayUpRule,
            due.Task.AnchorPolicy == AnchorPolicy.FixedGrid ? IntervalMath.ToleranceDays(interval.Months!.Value, due.Task.TolerancePercent) : null,
            due.Basis is DueBasis.FailedInspection or DueBasis.Event or DueBasis.LayUpVoided);
        int from = CalendarDay.Of(first);
        int next = task.Load(from, from, from).Next[0];
        return Answer.Known(task.Pricing(next == int.MaxValue ? 0m : price / Math.Max(1, next - from)));
    }

    /// <summary>The task, its first due day and its interval.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => $"{Id} due {LocalDatePattern.Iso.Format(FirstDue)}, then {Interval}";

    /// <summary>The task on day numbers, for visits from one day to another.</summary>
    internal RepeatedLoad Load(int from, int firstDue, int until)
    {
        // Far enough that the due day after the last visit day is known: ten years, or the calendar limb.
        int days = until - from + 1;
        int reach = days + UseAhead.HorizonDays;
        int[] rested = new int[reach + 1];
        int[] lateFrom = new int[reach];
        IReadOnlyList<(int From, int To)> rests = _use?.Rests ?? [];
        for (int i = 0; i < reach; i++)
        {
            int day = from + i;
            (int From, int To)? rest = rests.Where(run => run.From <= day && day < run.To).Select(run => ((int, int)?)run).FirstOrDefault();
            rested[i + 1] = rested[i] + (rest is null || _layUpRule is not (LayUpRule.DeferToCommissioning or LayUpRule.Suspend) ? 0 : 1);
            lateFrom[i] = rest is (int start, int) && _layUpRule == LayUpRule.PullForward ? Math.Max(from, start) : day;
        }

        return new(firstDue, VisitPlanner.Grains(EarlyPerDay), VisitPlanner.Grains(LatePerDay), from, NextDue(from, days, rested), rested, lateFrom, _isAtOnce);
    }

    private RepeatedTask Pricing(decimal earlyPerDay) =>
        new(Id, FirstDue, Interval, decimal.Round(earlyPerDay, 6), LatePerDay, _use, _layUpRule, _gridToleranceDays, _isAtOnce);

    // The next due day if the task is done on each day; the largest number when it is not within ten years.
    private int[] NextDue(int from, int days, int[] rested)
    {
        int[] next = new int[days];
        double[]? hours = Interval.Hours is null ? null : _use?.ExpectedFrom(from, days + UseAhead.HorizonDays);
        double limb = (double)(Interval.Hours?.ToHours() ?? 0m);
        for (int i = 0, k = 0; i < days; i++)
        {
            next[i] = Interval.Months is int months ? ByCalendar(from + i, months, from, rested) : int.MaxValue;
            if (hours is not null)
            {
                k = Math.Max(k, i);
                while (k < hours.Length && hours[k] < hours[i] + limb - UseMath.GrainHours)
                {
                    k++;
                }

                next[i] = k < hours.Length ? Math.Min(next[i], from + k) : next[i];
            }
        }

        return next;
    }

    private int ByCalendar(int done, int months, int from, int[] rested)
    {
        if (_gridToleranceDays is int tolerance)
        {
            // The dates belong to a third party: the first one that this time does not close.
            int first = CalendarDay.Of(FirstDue);
            int at = 0;
            while (CalendarDay.PlusMonths(first, months * at) <= done + tolerance)
            {
                at++;
            }

            return CalendarDay.PlusMonths(first, months * at);
        }

        int due = CalendarDay.PlusMonths(done, months);
        if (_layUpRule != LayUpRule.Suspend)
        {
            return due;
        }

        int moved = due;
        for (int last = -1; moved != last && moved - from < rested.Length;)
        {
            (last, moved) = (moved, due + rested[moved - from] - rested[done - from]);
        }

        return moved;
    }
}
