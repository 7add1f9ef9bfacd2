using MarineService.Core.Engines;
using MarineService.Core.Internal;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Core.Scheduling;

/// <content>Several years with tasks that come round.</content>
public sealed partial class VisitPlanner
{
    /// <summary>A copy with an engine's lay-ups: on record, planned, and by assumption the last one again each year.</summary>
    /// <param name="use">The engine's use over the year.</param>
    /// <returns>The copy; the days from the first of each lay-up to its end are as in <see cref="LaidUp"/>.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="use"/> is null.</exception>
    public VisitPlanner LaidUpAsIn(SeasonalUse use) =>
        Guard.NotNull(use).Rests.Where(run => run.To > _today)
            .Aggregate(this, (planner, run) => planner.LaidUp(CalendarDay.ToDate(run.From), CalendarDay.ToDate(run.To)));

    /// <summary>Visits for some years, with each task as often as it comes round: each time counts from the time before.</summary>
    /// <remarks>
    /// Every time that falls due on or before the last day is done on a visit; what falls due when no day is left is not. Plan again after
    /// each visit and each reading: the first visit is what the plan is for, the later ones show what it leads to.
    /// </remarks>
    /// <param name="tasks">The tasks; ids distinct.</param>
    /// <param name="until">The last day, on or after the planner's first and within ten years of it.</param>
    /// <returns>The plan with its cost and a cost that none can undercut; not known when every day is blocked.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tasks"/> is null.</exception>
    /// <exception cref="ArgumentException">An item is null, or an id is used twice.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="until"/> is outside its range.</exception>
    public Answer<VisitPlan> LeastCost(IEnumerable<RepeatedTask> tasks, LocalDate until)
    {
        RepeatedTask[] all = [.. Guard.Items(tasks).OrderBy(task => task.FirstDue).ThenBy(task => task.Id, StringComparer.Ordinal)];
        Names.Distinct(all.Select(task => task.Id), nameof(tasks));
        int last = CalendarDay.Of(Guard.Date(until));
        if (last < _today || last - _today > UseAhead.HorizonDays)
        {
            throw new ArgumentOutOfRangeException(nameof(until), until, "Must be on or after the planner's first day, and within ten years of it.");
        }

        int[] days = [.. Enumerable.Range(_today, last - _today + 1).Where(IsAllowed)];
        if (days.Length == 0)
        {
            return Answer.NotKnown<VisitPlan>($"A day that is not blocked on or before {LocalDatePattern.Iso.Format(until)}.");
        }

        RepeatedLoad[] loads = Array.ConvertAll(all, task => task.Load(_today, Math.Max(_today, CalendarDay.Of(task.FirstDue)), last));
        long[] setUp = Array.ConvertAll(days, SetUpOn);
        RepeatedSearch search = new(loads, days, setUp, last);
        (int[] chosen, long bound, long separate) = search.Run();
        List<int>[] on = Array.ConvertAll(all, _ => new List<int>());
        search.Assign(chosen, on);
        List<VisitItem>[] items = Array.ConvertAll(chosen, _ => new List<VisitItem>());
        for (int i = 0; i < all.Length; i++)
        {
            Place(all[i], loads[i], days, setUp, chosen, on, i, last, items);
        }

        return Answer.Known(new VisitPlan(
            VisitMethod.RepeatedTasks,
            [.. chosen.Select((k, at) => new Visit(CalendarDay.ToDate(days[k]), [.. items[at].OrderBy(item => item.Task.Due).ThenBy(item => item.Task.Id, StringComparer.Ordinal)], setUp[k] / Grain, 0m))],
            bound / Grain,
            separate / Grain,
            null));
    }

    // Each time of one task on its visit, with the next best day: there, what follows goes over the visits of the plan.
    private static void Place(
        RepeatedTask task, RepeatedLoad load, int[] days, long[] setUp, int[] chosen, List<int>[] on, int i, int last, List<VisitItem>[] items)
    {
        int[] visits = Array.ConvertAll(chosen, k => days[k]);
        long[] free = new long[visits.Length];
        long[] togo = new long[visits.Length];
        int due = load.FirstDue;
        int done = int.MinValue;
        foreach (int at in on[i])
        {
            // A visit for this task alone would be saved, unless what follows takes it after all.
            bool isAlone = !on.Where((others, j) => j != i && others.Contains(at)).Any();
            Array.Clear(free, 0, free.Length);
            free[at] = isAlone ? setUp[chosen[at]] : 0;
            RepeatedMath.Path(load, visits, free, last, days[0], days[days.Length - 1], togo, []);
            long here = load.Cost(due, visits[at]) + togo[at] + free[at];
            (int? next, long extra) = (null, VisitMath.Never);
            for (int k = 0; k < days.Length; k++)
            {
                if (days[k] > done && k != chosen[at] && !(load.IsAtOnce && done == int.MinValue))
                {
                    int visit = Array.IndexOf(chosen, k);
                    int later = Array.FindIndex(visits, day => day > days[k]);
                    long after = RepeatedMath.After(load, load.NextAfter(days[k]), later < 0 ? visits.Length : later, visits, free, last, int.MaxValue, days[days.Length - 1], days[k], togo).Cost;
                    long total = VisitMath.Add(after, load.Cost(due, days[k]) + (visit < 0 ? setUp[k] : 0)) - here;
                    (next, extra) = total < extra && after < VisitMath.Never ? (days[k], total) : (next, extra);
                }
            }

            VisitTask asDue = VisitTask.Of(task.Id, CalendarDay.ToDate(due), task.EarlyPerDay, task.LatePerDay);
            items[at].Add(new(asDue, CalendarDay.ToDate(visits[at]), load.Cost(due, visits[at]) / Grain, next is int day ? CalendarDay.ToDate(day) : null, next is null ? null : extra / Grain, load.IsAtOnce && done == int.MinValue));
            (done, due) = (visits[at], load.NextAfter(visits[at]));
        }
    }
}
