using MarineService.Core.Engines;
using MarineService.Core.Internal;

namespace MarineService.Core.Scheduling;

/// <summary>Where the next due point lies, counted from where the replay left a task (INTERVAL-01, -03, -09, -15, -17, -23).</summary>
internal static class NextDuePoint
{
    /// <summary>The due point that the state leads to, with what is known up to a day.</summary>
    internal static DueAt Of(in TaskState state, ServiceTask task, ServiceHistory history, int untilDay, out int suspendedDays)
    {
        suspendedDays = 0;
        if (!state.HasRecord || state.Interval is not ServiceInterval interval)
        {
            return default;
        }

        ReadOnlySpan<ServiceStep> duties = history.DutyChanges;
        int? day = state.StatedDay;
        decimal dayFactor = 1m;
        if (task.AnchorPolicy == AnchorPolicy.FixedGrid)
        {
            // INTERVAL-09: the dates belong to a third party; no duty of the engine moves them or their window.
            day ??= state.GridOrigin is int origin ? CalendarDay.PlusMonths(origin, interval.Months!.Value * state.GridNext) : null;
        }
        else if (day is int statedDay)
        {
            dayFactor = new DutyWalk(task, duties, Math.Min(untilDay, statedDay - 1)).StartByDay(untilDay);
        }
        else if (interval.Months is int months && state.AnchorDay is int dayAnchor)
        {
            day = IntervalMath.DueDay(dayAnchor, months, task, duties, untilDay, out dayFactor);
            if (task.LayUpRule == LayUpRule.Suspend)
            {
                suspendedDays = SuspendedDays(dayAnchor, day.Value, history.LayUps, untilDay);
                day += suspendedDays;
            }
        }

        long? hours = state.StatedHours;
        long? safe = hours;
        decimal hoursFactor = 1m;
        if (hours is long stated)
        {
            hoursFactor = new DutyWalk(task, duties, untilDay).StartByHours(stated - 1, int.MaxValue);
        }
        else if (interval.Hours is EngineHours limb && state.AnchorHoursKnown)
        {
            int anchorDay = state.AnchorDay ?? int.MinValue;
            hours = IntervalMath.DueHours(state.AnchorHours, anchorDay, limb.Thousandths, task, duties, untilDay, out hoursFactor);
            safe = state.AnchorLower == state.AnchorHours
                ? hours
                : IntervalMath.DueHours(state.AnchorLower, anchorDay, limb.Thousandths, task, duties, untilDay, out _);
        }

        return new(
            day,
            hours,
            safe,
            interval.Months is int whole ? IntervalMath.Scale(whole, dayFactor) : 0,
            IntervalMath.Scale(interval.Hours?.Thousandths ?? 0, hoursFactor));
    }

    // INTERVAL-23: lay-up days between the anchor and the due day push the due day out, which may bring in more of them.
    // While the end of a lay-up is not known it reaches to today.
    private static int SuspendedDays(int from, int due, IReadOnlyList<LayUpPeriod> layUps, int untilDay)
    {
        int suspended = 0;
        for (int i = 0; i < layUps.Count; i++)
        {
            int start = Math.Max(from, layUps[i].FromDay);
            int end = layUps[i].To is null ? untilDay : layUps[i].ToDay;
            if (start < due + suspended && end > start)
            {
                suspended += end - start;
            }
        }

        return suspended;
    }
}
