using MarineService.Core.Internal;

namespace MarineService.Core.Scheduling;

/// <summary>Decides how urgent a task is from where its replay left it (INTERVAL-01, -04, -05, -22, -24, -25, -30).</summary>
internal static class DueRule
{
    internal static TaskVerdict Decide(ServiceTask task, in TaskState state, ServiceHistory history)
    {
        TaskVerdict verdict = new() { Now = history.Now };
        switch (task.Occasion)
        {
            case TaskOccasion.EachUse:
                (verdict.Status, verdict.Basis) = (DueStatus.EachUse, DueBasis.EachUse);
                break;
            case TaskOccasion.LayUp:
                LayUpRules.DecideLayUp(in state, history, ref verdict);
                break;
            case TaskOccasion.Commissioning:
                LayUpRules.DecideCommissioning(in state, history, ref verdict);
                break;
            default:
                ByInterval(task, in state, history, ref verdict);
                break;
        }

        if (state.Pending is DueBasis pending)
        {
            AtOnce(ref verdict, pending, state.PendingDay, state.PendingHours, history.AsOfDay);
            verdict.Status = state.PendingSince < history.AsOfDay ? DueStatus.Overdue : verdict.Status;
        }

        return verdict;
    }

    /// <summary>Due now and without tolerance: due on the day itself, overdue from the next.</summary>
    internal static void AtOnce(ref TaskVerdict verdict, DueBasis basis, int day, long? hours, int today)
    {
        DueStatus status = day < today ? DueStatus.Overdue : DueStatus.Due;
        verdict.Status = verdict.Status > status ? verdict.Status : status;
        verdict.Basis = basis;
        verdict.Governs = basis == DueBasis.FailedInspection ? GoverningLimb.Condition : GoverningLimb.Event;
        verdict.Due = new(day, hours);
        verdict.PlanDay = null;
    }

    private static void ByInterval(ServiceTask task, in TaskState state, ServiceHistory history, ref TaskVerdict verdict)
    {
        int today = history.AsOfDay;
        DueAt due = NextDuePoint.Of(in state, task, history, today, out int suspended);
        verdict.SuspendedDays = suspended;
        ServiceInterval interval = state.Interval ?? task.Interval!;
        if (!state.HasRecord || (task.AnchorPolicy == AnchorPolicy.FixedGrid && state.GridOrigin is null))
        {
            (verdict.Status, verdict.Basis, verdict.Governs) = (DueStatus.Due, DueBasis.NoRecord, GoverningLimb.UnknownHistory);
            verdict.Due = new(today, verdict.Now?.Estimate.Thousandths);
            verdict.HoursLimb = interval.Hours is null ? LimbState.NotUsed : LimbState.Unknown;
            verdict.CalendarLimb = interval.Months is null ? LimbState.NotUsed : LimbState.Unknown;
            return;
        }

        verdict.Basis = state.Basis;
        verdict.IntervalDue = due;
        verdict.Due = due;
        DueLimits limits = DueLimits.Of(due, task.TolerancePercent);
        (DueStatus status, double used) hours = Hours(task, in state, history, due, limits, ref verdict);
        (DueStatus status, double used) calendar = Calendar(in state, history, due, limits, ref verdict);
        verdict.Status = hours.status > calendar.status ? hours.status : calendar.status;
        verdict.UsedFraction = Math.Max(hours.used, calendar.used);
        verdict.Governs = Governing(verdict.HoursLimb == LimbState.Known, hours, verdict.CalendarLimb == LimbState.Known, calendar);
        if (due.Day is int dueDay)
        {
            LayUpRules.Plan(task, dueDay, history, ref verdict);
        }
    }

    private static (DueStatus Status, double Used) Hours(
        ServiceTask task, in TaskState state, ServiceHistory history, DueAt due, DueLimits limits, ref TaskVerdict verdict)
    {
        if (due.Limb == 0 && due.Hours is null)
        {
            return default;
        }

        verdict.HoursLimb = LimbState.Unknown;
        if (due.Hours is not long at || verdict.Now is null)
        {
            return default;
        }

        long now = verdict.Now.Estimate.Thousandths;
        long left = at - now;
        DueStatus status = limits.ByHours(left);

        // INTERVAL-22: what ran since the anchor is known only from a reading after it, or on the day itself.
        // Hours never go back: what the last reading has brought near or reached already stays so.
        int since = state.LastDoneDay ?? state.AnchorDay ?? int.MinValue;
        if (status == DueStatus.NotDue && since != history.AsOfDay && !history.Meter.HasReadingAfter(since))
        {
            return default;
        }

        verdict.HoursLimb = LimbState.Known;
        verdict.HoursLeft = left;
        double used = due.Limb == 0 ? 0
            : state.AnchorHoursKnown
                ? IntervalMath.UsedHours(
                    state.AnchorHours, state.AnchorDay ?? int.MinValue, now, state.Interval!.Hours!.Value.Thousandths, task, history.DutyChanges, history.AsOfDay)
                : Math.Max(0, 1 - ((double)left / due.Limb));
        return (status, used);
    }

    private static (DueStatus Status, double Used) Calendar(
        in TaskState state, ServiceHistory history, DueAt due, DueLimits limits, ref TaskVerdict verdict)
    {
        if (due.Day is not int at)
        {
            return default;
        }

        verdict.CalendarLimb = LimbState.Known;
        int left = at - history.AsOfDay;
        verdict.DaysLeft = left;
        int start = state.GridOrigin is int origin ? CalendarDay.PlusMonths(origin, due.Months * (state.GridNext - 1))
            : state.AnchorDay ?? CalendarDay.PlusMonths(at, -Math.Max(1, due.Months));
        double used = Math.Max(0, (double)(history.AsOfDay - start) / Math.Max(1, at - start));
        return (limits.ByDay(left), used);
    }

    // Once a limb is reached, the reached one governs; before that the one with the larger used share (INTERVAL-30).
    private static GoverningLimb Governing(
        bool hoursKnown, (DueStatus Status, double Used) hours, bool calendarKnown, (DueStatus Status, double Used) calendar)
    {
        if (!hoursKnown || !calendarKnown)
        {
            return hoursKnown ? GoverningLimb.Hours : calendarKnown ? GoverningLimb.Calendar : GoverningLimb.None;
        }

        bool byHours = hours.Status >= DueStatus.Due;
        bool byCalendar = calendar.Status >= DueStatus.Due;
        int order = byHours == byCalendar
            ? byHours ? 0 : hours.Used.CompareTo(calendar.Used)
            : byHours ? 1 : -1;
        return order > 0 ? GoverningLimb.Hours : order < 0 ? GoverningLimb.Calendar : GoverningLimb.Both;
    }
}
