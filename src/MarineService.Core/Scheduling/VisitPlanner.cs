using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Scheduling;

/// <summary>Asks on which days to take a boat out of service: what a visit costs, which days are blocked or paid for already, what removals cost.</summary>
/// <remarks>
/// It plans the next occurrence of each task, or some years of tasks that come round; plan again after each visit, since doing a task moves its
/// next due point. Ties go to fewer
/// visits, then to earlier dates, so that the same question has the same answer. It decides by the costs that it is given and nothing else.
/// </remarks>
public sealed partial class VisitPlanner
{
    private const decimal Grain = 1_000_000m;
    private const int FarthestDays = 3700;

    private readonly int _today;
    private readonly long _setUp;
    private readonly (int From, int To)[] _blocked;
    private readonly int[] _paid;
    private readonly (string Name, long Cost)[] _access;
    private readonly IsoDayOfWeek[] _weekdays;

    private VisitPlanner(
        int today, long setUp, (int From, int To)[] blocked, int[] paid, (string Name, long Cost)[] access, IsoDayOfWeek[] weekdays) =>
        (_today, _setUp, _blocked, _paid, _access, _weekdays) = (today, setUp, blocked, paid, access, weekdays);

    /// <summary>The first day on which a visit may be.</summary>
    public LocalDate Today => CalendarDay.ToDate(_today);

    /// <summary>The runs of days without visits, both ends included, in the order in which they were given; lay-ups among them.</summary>
    public IReadOnlyList<DateInterval> BlockedPeriods => [.. _blocked.Select(run => new DateInterval(CalendarDay.ToDate(run.From), CalendarDay.ToDate(run.To)))];

    /// <summary>A planner without blocked days and removals.</summary>
    /// <param name="today">The first day on which a visit can be, from 1900 to 2199.</param>
    /// <param name="setUpCost">What each visit costs before anything is done, from 0 to 100,000,000 of the caller's currency.</param>
    /// <returns>The planner.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static VisitPlanner From(LocalDate today, decimal setUpCost) =>
        new(
            CalendarDay.Of(Guard.Date(today)),
            Grains(Guard.InRange(setUpCost, 0m, 100_000_000m, "(currency)")),
            [],
            [],
            [],
            []);

    /// <summary>A copy with days on which no visit can be.</summary>
    /// <param name="from">The first blocked day, from 1900 to 2199.</param>
    /// <param name="to">The last blocked day, on or after <paramref name="from"/>.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A date is outside its range.</exception>
    public VisitPlanner Blocked(LocalDate from, LocalDate to)
    {
        Guard.Date(from);
        return Guard.Date(to) >= from
            ? new(_today, _setUp, [.. _blocked, (CalendarDay.Of(from), CalendarDay.Of(to))], _paid, _access, _weekdays)
            : throw new ArgumentOutOfRangeException(nameof(to), to, "Must be on or after the first day.");
    }

    /// <summary>A copy with a day whose set-up is paid for already, such as a lay-up or a commissioning.</summary>
    /// <param name="date">The day, from 1900 to 2199.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="date"/> is outside its range.</exception>
    public VisitPlanner AlreadyPaid(LocalDate date) =>
        new(_today, _setUp, _blocked, [.. _paid, CalendarDay.Of(Guard.Date(date))], _access, _weekdays);

    /// <summary>A copy with a lay-up: its first day and the day of commissioning are visits already paid, the days between are blocked.</summary>
    /// <param name="from">The first day of rest, from 1900 to 2199.</param>
    /// <param name="to">The day of commissioning, after <paramref name="from"/>.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A date is outside its range.</exception>
    public VisitPlanner LaidUp(LocalDate from, LocalDate to)
    {
        Guard.Date(from);
        if (Guard.Date(to) <= from)
        {
            throw new ArgumentOutOfRangeException(nameof(to), to, "Must be after the first day of the lay-up.");
        }

        VisitPlanner paid = AlreadyPaid(from).AlreadyPaid(to);
        return to == from.PlusDays(1) ? paid : paid.Blocked(from.PlusDays(1), to.PlusDays(-1));
    }

    /// <summary>A copy with visits on some days of the week only; days that are paid for already stand.</summary>
    /// <param name="weekdays">The days of the week; at least one.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="weekdays"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="weekdays"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A day is not one of the week.</exception>
    public VisitPlanner OnlyOn(params IsoDayOfWeek[] weekdays)
    {
        Guard.NotNull(weekdays);
        if (weekdays.Length == 0)
        {
            throw new ArgumentException("Must hold at least one day of the week.", nameof(weekdays));
        }

        foreach (IsoDayOfWeek weekday in weekdays)
        {
            Guard.InRange((int)weekday, 1, 7, "(day of the week)", nameof(weekdays));
        }

        return new(_today, _setUp, _blocked, _paid, _access, [.. weekdays]);
    }

    /// <summary>A copy that knows what a removal costs, once for each visit that needs it.</summary>
    /// <param name="access">What is removed, as tasks name it; not blank.</param>
    /// <param name="cost">From 0 to 100,000,000 of the caller's currency.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="access"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="access"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="cost"/> is outside its range.</exception>
    public VisitPlanner WithAccess(string access, decimal cost)
    {
        Guard.NotBlank(access);
        return new(_today, _setUp, _blocked, _paid, [.. _access.Where(other => other.Name != access), (access, Grains(Guard.InRange(cost, 0m, 100_000_000m, "(currency)")))], _weekdays);
    }

    /// <summary>The visits of least cost that do each task once.</summary>
    /// <param name="tasks">The tasks; removals that the planner has no cost for cost nothing.</param>
    /// <returns>The plan; not known when a task has no day on which it may be done.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tasks"/> is null.</exception>
    /// <exception cref="ArgumentException">An item is null.</exception>
    public Answer<VisitPlan> LeastCost(IEnumerable<VisitTask> tasks)
    {
        VisitTask[] all = InOrder(Guard.Items(tasks));
        VisitLoad[] loads = Array.ConvertAll(all, Load);
        if (WithoutDay(all, loads) is string[] { Length: > 0 } missing)
        {
            return Answer.NotKnown<VisitPlan>(missing);
        }

        int[] days = Candidates(loads);
        VisitSearch search = new(loads, days, Array.ConvertAll(days, SetUpOn), [.. _access.Select(access => access.Cost)]);
        (int[] chosen, long bound) = search.Run();
        return Answer.Known(Build(search.IsShared ? VisitMethod.SharedAccess : VisitMethod.ShortestPath, all, loads, search, days, chosen, bound / Grain));
    }

    /// <summary>The fewest visits that keep every window.</summary>
    /// <param name="tasks">The tasks, each with a last day on which it may be done.</param>
    /// <returns>The plan; not known when a task has no last day, or no day on which it may be done.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tasks"/> is null.</exception>
    /// <exception cref="ArgumentException">An item is null.</exception>
    public Answer<VisitPlan> FewestVisits(IEnumerable<VisitTask> tasks)
    {
        VisitTask[] all = InOrder(Guard.Items(tasks));
        VisitLoad[] loads = Array.ConvertAll(all, Load);
        string[] missing = [.. all.Where(task => task.To is null).Select(task => $"The last day on which '{task.Id}' may be done."), .. WithoutDay(all, loads)];
        if (missing.Length > 0)
        {
            return Answer.NotKnown<VisitPlan>(missing);
        }

        int[] days = [.. VisitMath.Fewest(loads.Select(load => (load.From, Last: AllowedBefore(load.To, load.From)!.Value)).OrderBy(window => window.Last))];
        VisitSearch search = new(loads, days, Array.ConvertAll(days, SetUpOn), [.. _access.Select(access => access.Cost)]);
        return Answer.Known(Build(VisitMethod.FewestVisits, all, loads, search, days, [.. Enumerable.Range(0, days.Length)], null));
    }

    internal static long Grains(decimal money) => (long)decimal.Round(money * Grain);

    private static VisitTask[] InOrder(IReadOnlyList<VisitTask> tasks) =>
        [.. tasks.OrderBy(task => LocalDate.Max(task.From ?? task.Due, LocalDate.Min(task.To ?? task.Due, task.Due))).ThenBy(task => task.Id, StringComparer.Ordinal)];

    private VisitLoad Load(VisitTask task) => new(
        CalendarDay.Of(task.Due),
        Grains(task.EarlyPerDay),
        Grains(task.LatePerDay),
        Math.Max(_today, task.From is LocalDate from ? CalendarDay.Of(from) : int.MinValue),
        task.To is LocalDate to ? CalendarDay.Of(to) : Math.Max(_today, CalendarDay.Of(task.Due)) + FarthestDays,
        Array.FindIndex(_access, access => access.Name == task.Access));

    private string[] WithoutDay(VisitTask[] tasks, VisitLoad[] loads) =>
        [.. tasks.Where((_, i) => AllowedBefore(loads[i].To, loads[i].From) is null).Select(task => $"A day that is not blocked on which '{task.Id}' may be done.")];

    private bool IsAllowed(int day) =>
        day >= _today
        && !Array.Exists(_blocked, run => run.From <= day && day <= run.To)
        && (_weekdays.Length == 0 || Array.IndexOf(_weekdays, (IsoDayOfWeek)(((((day + 3) % 7) + 7) % 7) + 1)) >= 0 || Array.IndexOf(_paid, day) >= 0);

    private long SetUpOn(int day) => Array.IndexOf(_paid, day) >= 0 ? 0 : _setUp;

    private int? AllowedBefore(int day, int notBefore)
    {
        int at = day;
        while (at >= notBefore && !IsAllowed(at))
        {
            at--;
        }

        return at >= notBefore ? at : null;
    }

    private int? AllowedAfter(int day, int notAfter)
    {
        int at = day;
        while (at <= notAfter && !IsAllowed(at))
        {
            at++;
        }

        return at <= notAfter ? at : null;
    }

    // The sum of costs that rise on both sides of a due day is least at a due day or at an edge of a window, or on the allowed day next to one.
    private int[] Candidates(VisitLoad[] loads)
    {
        SortedSet<int> days = [.. _paid.Where(IsAllowed)];
        int last = loads.Length == 0 ? _today : loads.Max(load => load.To);
        foreach (int day in loads.SelectMany(load => new[] { load.Due, load.From, load.To - load.Best < FarthestDays ? load.To : load.Best, load.Best }))
        {
            foreach (int? near in new[] { AllowedBefore(day, _today), AllowedAfter(Math.Max(day, _today), last) })
            {
                if (near is int found)
                {
                    days.Add(found);
                }
            }
        }

        return [.. days];
    }

    private VisitPlan Build(VisitMethod method, VisitTask[] tasks, VisitLoad[] loads, VisitSearch search, int[] days, int[] chosen, decimal? bound)
    {
        int[] on = search.Assign(chosen, out _);
        Visit[] visits = [.. chosen.Where(k => on.Contains(k)).Select(VisitOn)];
        (int best, long cost) single = (-1, VisitMath.Never);
        for (int k = 0; k < days.Length && tasks.Length > 0; k++)
        {
            search.Assign([k], out long total);
            single = total < single.cost ? (k, total) : single;
        }

        decimal separate = loads.Sum(load => Enumerable.Range(0, days.Length).Min(k =>
            VisitMath.Add(VisitMath.Cost(in load, days[k]), SetUpOn(days[k]) + search.AccessCost(load.Access)) / Grain));
        Visit? atOnce = single.best < 0 ? null : new Visit(
            CalendarDay.ToDate(days[single.best]), [.. tasks.Select((task, i) => Plain(task, loads[i], days[single.best]))], SetUpOn(days[single.best]) / Grain, AccessOn(Enumerable.Range(0, tasks.Length)));
        return new(method, visits, bound, separate, atOnce);

        Visit VisitOn(int k)
        {
            int[] here = [.. Enumerable.Range(0, tasks.Length).Where(i => on[i] == k)];
            return new(CalendarDay.ToDate(days[k]), [.. here.OrderBy(i => tasks[i].Due).Select(Item)], SetUpOn(days[k]) / Grain, AccessOn(here));
        }

        VisitItem Item(int i)
        {
            (int? next, long extra) = NextBest(i, loads, days, on, search);
            return new(tasks[i], CalendarDay.ToDate(days[on[i]]), VisitMath.Cost(in loads[i], days[on[i]]) / Grain, next is int day ? CalendarDay.ToDate(day) : null, next is null ? null : extra / Grain);
        }

        decimal AccessOn(IEnumerable<int> here) =>
            here.Select(i => loads[i].Access).Where(access => access >= 0).Distinct().Sum(access => search.AccessCost(access)) / Grain;
    }

    private static VisitItem Plain(VisitTask task, VisitLoad load, int day) =>
        new(task, CalendarDay.ToDate(day), VisitMath.Cost(in load, day) / Grain, null, null);

    // The cheapest other day for one task while all others stay: what it costs there, less what its leaving saves.
    private (int? Day, long Extra) NextBest(int task, VisitLoad[] loads, int[] days, int[] on, VisitSearch search)
    {
        VisitLoad load = loads[task];
        int here = on[task];
        bool isAlone = !on.Where((k, i) => i != task && k == here).Any();
        bool isAloneBehind = !on.Where((k, i) => i != task && k == here && loads[i].Access == load.Access).Any();
        long saved = VisitMath.Cost(in load, days[here]) + (isAlone ? SetUpOn(days[here]) : 0) + (isAloneBehind ? search.AccessCost(load.Access) : 0);
        (int? Day, long Extra) best = (null, VisitMath.Never);
        int last = Math.Min(load.To, Math.Max(days[days.Length - 1], load.Best) + 31);
        for (int day = load.From; day <= last; day++)
        {
            if (day == days[here] || !IsAllowed(day))
            {
                continue;
            }

            bool isVisit = on.Where((k, i) => i != task && days[k] == day).Any();
            bool isOpen = on.Where((k, i) => i != task && days[k] == day && loads[i].Access == load.Access).Any();
            long extra = VisitMath.Cost(in load, day) + (isVisit ? 0 : SetUpOn(day)) + (isOpen ? 0 : search.AccessCost(load.Access)) - saved;
            best = extra < best.Extra ? (day, extra) : best;
        }

        return best;
    }
}
