using MarineService.Core.Engines;
using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Scheduling;

/// <summary>An engine's tasks, replayed once to their due points and then judged on many days and at many hours.</summary>
/// <remarks>
/// <para>Good until something new is recorded. A meter reading alone needs no new preparation, unless it says more than the hours now: it may
/// place a completion that was entered without hours, or show that a laid-up engine ran. <see cref="IsGoodFor(LocalDate, EngineHours?)"/> tells.</para>
/// <para>Says how urgent each task is, as a <see cref="DueList"/> does; for the reasons make a due list. Judging allocates nothing.</para>
/// </remarks>
public sealed class PreparedDue
{
    private readonly DueLimitTable _limits;
    private readonly ushort[] _codes;
    private readonly int[] _dueDays;

    private readonly int[] _dueHours;
    private readonly int[] _eachUse;
    private readonly int _firstDay;
    private readonly int _lastDay;
    private readonly int? _now;
    private readonly bool _readingsBear;

    private PreparedDue(DueLimitTable limits, TaskPlan plan, ServiceHistory history)
    {
        int count = plan.Tasks.Count;
        (_limits, Plan) = (limits, plan);
        (_codes, _dueDays, _dueHours) = (new ushort[count], new int[count], new int[count]);
        _firstDay = history.AsOfDay;
        _now = (int?)history.Now?.Estimate.Thousandths;
        _eachUse = [.. Enumerable.Range(0, count).Where(i => plan.Tasks[i].Occasion == TaskOccasion.EachUse)];
        _lastDay = LastDay(plan, history);
        _readingsBear = HasHoursToCome(history) || (LayUpRules.IsLaidUp(history) && plan.Tasks.Any(task => task.Occasion == TaskOccasion.LayUp));
        DueList.Decide(plan, history, findings: null, (int i, in TaskState state, in TaskVerdict verdict) => Prepare(i, in state, in verdict, history));
    }

    /// <summary>The tasks, in whose order statuses are given.</summary>
    public TaskPlan Plan { get; }

    /// <summary>Replays the facts for each task.</summary>
    /// <param name="plan">The tasks.</param>
    /// <param name="history">The facts up to a day.</param>
    /// <param name="limits">Where limits are kept; one table for a whole fleet.</param>
    /// <returns>The prepared form.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static PreparedDue Of(TaskPlan plan, ServiceHistory history, DueLimitTable limits) =>
        new(Guard.NotNull(limits), Guard.NotNull(plan), Guard.NotNull(history));

    /// <summary>Whether it can judge a day: not before the history's day, not past the start or end of a lay-up that bears on a task.</summary>
    /// <param name="today">The day, from 1900 to 2199.</param>
    /// <param name="reading">The engine's hours in all by a reading of that day, or null when there is none since the history's.</param>
    /// <returns>False when the facts must be replayed.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="today"/> is outside 1900 to 2199.</exception>
    public bool IsGoodFor(LocalDate today, EngineHours? reading) => IsGoodFor(CalendarDay.Of(Guard.Date(today)), reading);

    /// <summary>How urgent each task is.</summary>
    /// <param name="today">The day, from 1900 to 2199.</param>
    /// <param name="reading">The engine's hours in all by a reading of that day, or null when there is none since the history's.</param>
    /// <param name="statuses">Takes the status of each task in the order of the plan; as long as the plan or longer.</param>
    /// <exception cref="ArgumentException"><paramref name="statuses"/> is too short.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="today"/> is outside 1900 to 2199, or it is not good for that day and reading.</exception>
    public void Evaluate(LocalDate today, EngineHours? reading, Span<DueStatus> statuses)
    {
        int day = CalendarDay.Of(Guard.Date(today));
        if (!IsGoodFor(day, reading))
        {
            throw new ArgumentOutOfRangeException(nameof(today), today, "Must be a day and a reading that it was prepared for; replay the facts.");
        }

        if (statuses.Length < _codes.Length)
        {
            throw new ArgumentException(FormattableString.Invariant($"Must hold {_codes.Length} tasks or more, holds {statuses.Length}."), nameof(statuses));
        }

        ReadOnlySpan<DueLimits> table = _limits.Limits;

        // Without any reading nothing is known of hours, and no limb of hours counts.
        int? now = reading is EngineHours read ? (int)read.Thousandths : _now;
        for (int i = 0; i < _codes.Length; i++)
        {
            statuses[i] = DueColumns.Status(in table[_codes[i]], _dueDays[i], now is null ? DueColumns.NoThousandths : _dueHours[i], day, now ?? 0);
        }

        foreach (int task in _eachUse)
        {
            statuses[task] = DueStatus.EachUse;
        }
    }

    /// <summary>The rows of a table of due points, for <see cref="DueColumns"/>; a task of each use has a row that is never due.</summary>
    /// <param name="codes">Takes the numbers of the limits.</param>
    /// <param name="dueDays">Takes the due days, counted from 1 January 1970.</param>
    /// <param name="dueThousandths">Takes the due hours by a reading of the day, in thousandths of an hour.</param>
    /// <exception cref="ArgumentException">A span is shorter than the plan.</exception>
    public void CopyTo(Span<ushort> codes, Span<int> dueDays, Span<int> dueThousandths)
    {
        if (Math.Min(codes.Length, Math.Min(dueDays.Length, dueThousandths.Length)) < _codes.Length)
        {
            throw new ArgumentException(FormattableString.Invariant($"Must hold {_codes.Length} tasks or more."), nameof(codes));
        }

        _codes.CopyTo(codes);
        _dueDays.CopyTo(dueDays);
        _dueHours.CopyTo(dueThousandths);
    }

    private bool IsGoodFor(int day, EngineHours? reading) =>
        day >= _firstDay && day <= _lastDay && (!_readingsBear || reading is null || reading.Value.Thousandths == _now);

    private void Prepare(int i, in TaskState state, in TaskVerdict verdict, ServiceHistory history)
    {
        ServiceTask task = Plan.Tasks[i];
        (_dueDays[i], _dueHours[i]) = (DueColumns.NoDay, DueColumns.NoThousandths);
        DueLimits limits = DueLimits.AtOnce;
        if (task.Occasion == TaskOccasion.Interval && verdict.Governs != GoverningLimb.UnknownHistory)
        {
            DueAt due = NextDuePoint.Of(in state, task, history, history.AsOfDay, out _);
            limits = DueLimits.Of(due, task.TolerancePercent);
            _dueDays[i] = due.Day ?? DueColumns.NoDay;
            _dueHours[i] = (int?)due.Hours ?? DueColumns.NoThousandths;
        }
        else if (verdict.Basis == DueBasis.NoRecord)
        {
            (_dueDays[i], limits) = (DueColumns.EveryDay, DueLimits.NeverOverdue);
        }
        else if (verdict.Due.Day is int day)
        {
            // Work for a lay-up or for the end of one: soon within 30 days, due on the day, overdue from the next.
            (_dueDays[i], limits) = (day, DueLimits.AtOnce with { SoonDays = LayUpRules.SoonDays });
        }

        if (state.Pending is not null)
        {
            // What has already passed its tolerance stays overdue; else it is due on the day that called for it and overdue from the next.
            _dueDays[i] = verdict.Status == DueStatus.Overdue ? history.AsOfDay - 1 : state.PendingSince;
            limits = limits with { SoonDays = 0, ToleranceDays = 0 };
        }

        _codes[i] = _limits.CodeOf(limits);
    }

    // A completion after the last reading: where it stood in hours is told by the next one.
    private static bool HasHoursToCome(ServiceHistory history)
    {
        foreach (ServiceStep step in history.Steps)
        {
            if (step.Hours is not { Quality: ReadingQuality.Measured } && !history.Meter.HasReadingAfter(step.Day))
            {
                return true;
            }
        }

        return false;
    }

    // Lay-ups bear on their own work and on limbs that they suspend; of an open one nobody knows the end.
    private static int LastDay(TaskPlan plan, ServiceHistory history)
    {
        if (plan.Tasks.All(task => task.Occasion is TaskOccasion.Interval or TaskOccasion.EachUse && task.LayUpRule != LayUpRule.Suspend))
        {
            return CalendarDay.Of(Guard.LatestDate);
        }

        int last = CalendarDay.Of(Guard.LatestDate);
        foreach (LayUpPeriod layUp in history.LayUps)
        {
            if (layUp.Holds(history.AsOfDay) && layUp.To is null)
            {
                return history.AsOfDay;
            }

            last = layUp.FromDay > history.AsOfDay ? Math.Min(last, layUp.FromDay - 1) : last;
            last = layUp.ToDay > history.AsOfDay ? Math.Min(last, layUp.ToDay - 1) : last;
        }

        return last;
    }
}
