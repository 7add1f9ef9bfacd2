using MarineService.Core.Engines;

namespace MarineService.Core.Scheduling;

/// <summary>What a lay-up does to due dates, and when its own tasks are due (INTERVAL-23 to -25).</summary>
internal static class LayUpRules
{
    /// <summary>INTERVAL-24: a due date inside a lay-up is pulled forward or deferred, never into the past.</summary>
    internal static void Plan(ServiceTask task, int dueDay, ServiceHistory history, ref TaskVerdict verdict)
    {
        if (task.LayUpRule is LayUpRule.AsIs or LayUpRule.Suspend || Holding(history, dueDay) is not LayUpPeriod layUp)
        {
            return;
        }

        if (task.LayUpRule == LayUpRule.PullForward)
        {
            verdict.PlanDay = Math.Max(layUp.FromDay, history.AsOfDay);
        }
        else if (layUp.To is not null)
        {
            verdict.PlanDay = Math.Max(layUp.ToDay, history.AsOfDay);
            verdict.OverrunDays = verdict.PlanDay.Value - dueDay;
            verdict.OverrunExcused = !RanSince(history, layUp.FromDay, HoursAt(history, layUp.FromDay), out _);
        }
    }

    internal static void DecideLayUp(in TaskState state, ServiceHistory history, ref TaskVerdict verdict)
    {
        verdict.Basis = DueBasis.LayUp;
        if (Holding(history, history.AsOfDay) is LayUpPeriod layUp)
        {
            bool done = state.LastDoneDay >= StartOfSeason(history, layUp);
            int since = done ? state.LastDoneDay!.Value : layUp.FromDay;
            long? hours = done ? state.LastDoneAt?.Estimate.Thousandths ?? HoursAt(history, since) : HoursAt(history, since);
            if (RanSince(history, since, hours, out MeterPoint ran))
            {
                DueRule.AtOnce(ref verdict, DueBasis.LayUpVoided, ran.Day, ran.Estimate, history.AsOfDay);
            }
            else if (!done)
            {
                DueRule.AtOnce(ref verdict, DueBasis.LayUp, layUp.FromDay, hours, history.AsOfDay);
            }

            return;
        }

        // Not laid up: due at the next planned lay-up, unless done for it already.
        LayUpPeriod? next = Next(history);
        if (next is not null && !(state.LastDoneDay >= StartOfSeason(history, next)))
        {
            DueOn(next.FromDay, history, ref verdict);
        }
    }

    internal static void DecideCommissioning(in TaskState state, ServiceHistory history, ref TaskVerdict verdict)
    {
        verdict.Basis = DueBasis.Commissioning;
        if (Holding(history, history.AsOfDay) is LayUpPeriod layUp)
        {
            if (layUp.To is not null && !IsDoneFor(layUp, in state))
            {
                DueOn(layUp.ToDay, history, ref verdict);
            }

            return;
        }

        if (Last(history) is LayUpPeriod last && !IsDoneFor(last, in state))
        {
            DueRule.AtOnce(ref verdict, DueBasis.Commissioning, last.ToDay, null, history.AsOfDay);
        }
    }

    /// <summary>Whether the engine ran in the lay-up of the history's day: from which hours, and the reading that shows it.</summary>
    internal static bool IsVoided(ServiceHistory history, out long laidUpAt, out MeterPoint ran)
    {
        (laidUpAt, ran) = (0, default);
        if (Holding(history, history.AsOfDay) is not LayUpPeriod layUp)
        {
            return false;
        }

        long? hours = HoursAt(history, layUp.FromDay);
        laidUpAt = hours ?? 0;
        return RanSince(history, layUp.FromDay, hours, out ran);
    }

    // Work of the lay-up day itself put the boat to rest; it did not bring her out.
    private static bool IsDoneFor(LayUpPeriod layUp, in TaskState state) =>
        state.LastDoneDay > layUp.FromDay || state.LastDoneDay >= layUp.ToDay;

    // A planned day ahead: due soon within the 30 days of INTERVAL-05.
    private static void DueOn(int day, ServiceHistory history, ref TaskVerdict verdict)
    {
        int left = day - history.AsOfDay;
        verdict.Due = new(day, null);
        verdict.IntervalDue = verdict.Due;
        verdict.CalendarLimb = LimbState.Known;
        verdict.DaysLeft = left;
        verdict.Governs = GoverningLimb.Calendar;
        verdict.Status = left <= 30 ? DueStatus.DueSoon : DueStatus.NotDue;
    }

    private static bool RanSince(ServiceHistory history, int day, long? hours, out MeterPoint ran)
    {
        foreach (MeterPoint point in history.Meter.Points)
        {
            if (point.Day > day && hours is long before && point.Estimate > before)
            {
                ran = point;
                return true;
            }
        }

        ran = default;
        return false;
    }

    // The hours at the lay-up are what the last reading up to that day shows; hours run between that reading and the
    // lay-up are not held against it, since the next reading would count them as run since.
    private static long? HoursAt(ServiceHistory history, int day) =>
        LaidUpReading(history, day) ?? (history.Meter.FindHoursOn(day) is { Quality: ReadingQuality.Measured } hours
            ? hours.Estimate.Thousandths
            : null);

    private static long? LaidUpReading(ServiceHistory history, int day)
    {
        foreach (ServiceStep step in history.Steps)
        {
            if (step.Fact is LaidUp && step.Day == day && step.Hours is not null && step.Fact.Dial is not null)
            {
                return step.Hours.Estimate.Thousandths;
            }
        }

        return null;
    }

    private static LayUpPeriod? Holding(ServiceHistory history, int day)
    {
        for (int i = 0; i < history.LayUps.Count; i++)
        {
            if (history.LayUps[i].Holds(day))
            {
                return history.LayUps[i];
            }
        }

        return null;
    }

    private static LayUpPeriod? Next(ServiceHistory history)
    {
        for (int i = 0; i < history.LayUps.Count; i++)
        {
            if (history.LayUps[i].FromDay > history.AsOfDay)
            {
                return history.LayUps[i];
            }
        }

        return null;
    }

    private static LayUpPeriod? Last(ServiceHistory history)
    {
        for (int i = history.LayUps.Count - 1; i >= 0; i--)
        {
            if (history.LayUps[i].ToDay <= history.AsOfDay)
            {
                return history.LayUps[i];
            }
        }

        return null;
    }

    // Lay-up work counts for a lay-up when it was done since the boat last came out of the one before.
    private static int StartOfSeason(ServiceHistory history, LayUpPeriod layUp)
    {
        int start = int.MinValue;
        for (int i = 0; i < history.LayUps.Count && history.LayUps[i].FromDay < layUp.FromDay; i++)
        {
            start = history.LayUps[i].ToDay;
        }

        // Without a former lay-up, work of the last half year before this one is meant for it.
        return Math.Max(start, layUp.FromDay - 183);
    }
}
