using System.Diagnostics;
using Google.OrTools.Sat;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Comparisons;

/// <summary>
/// The visit planner against a general solver (CP-SAT of Google OR-Tools), which is given the plain statement of the problem over every
/// allowed day: the same least cost for next occurrences, and a cost between the planner's bound and its plan for tasks that come round.
/// </summary>
internal static class VisitsByConstraintSolver
{
    // Small whole numbers help the solver: all rates of next occurrences are multiples of a twentieth; a price divided by days has six decimals.
    private const decimal Twentieth = 20m;
    private const decimal Millionth = 1_000_000m;
    private static readonly LocalDate Today = new(2026, 4, 1);

    internal static bool Run(TextWriter output)
    {
        bool agree = true;
        output.WriteLine("next occurrences, one year     tasks  planner cost  bound      solver cost  bound      planner ms  solver ms  agree");
        foreach (int count in new[] { 10, 20, 40 })
        {
            for (int seed = 1; seed <= 2; seed++)
            {
                agree &= Once(output, count, seed, shared: false);
                agree &= Once(output, count, seed, shared: true);
            }
        }

        output.WriteLine("tasks that come round, Saturdays of some months");
        foreach ((int count, int weeks) in new[] { (5, 26), (10, 26), (10, 52) })
        {
            for (int seed = 1; seed <= 2; seed++)
            {
                agree &= Repeated(output, count, weeks, seed);
            }
        }

        return agree;
    }

    private static bool Once(TextWriter output, int count, int seed, bool shared)
    {
        Random random = new(seed);
        VisitTask[] tasks = [.. Enumerable.Range(0, count).Select(i =>
        {
            VisitTask task = VisitTask.Of($"t{i}", Today.PlusDays(random.Next(0, 300)), random.Next(1, 50) / 20m, random.Next(1, 80) / 20m);
            return shared && i % 3 == 0 ? task.Behind("belt") : task;
        })];
        LocalDate blockedFrom = Today.PlusDays(100);
        LocalDate blockedTo = Today.PlusDays(130);
        VisitPlanner planner = VisitPlanner.From(Today, 60m).Blocked(blockedFrom, blockedTo).WithAccess("belt", 25m);
        Stopwatch watch = Stopwatch.StartNew();
        VisitPlan plan = planner.LeastCost(tasks).Value;
        long plannerMs = watch.ElapsedMilliseconds;
        LocalDate[] days = [.. Enumerable.Range(0, 301).Select(Today.PlusDays).Where(day => day < blockedFrom || day > blockedTo)];

        CpModel model = new();
        BoolVar[] open = [.. days.Select(day => model.NewBoolVar($"open {day}"))];
        BoolVar[] removal = [.. days.Select(day => model.NewBoolVar($"belt off {day}"))];
        LinearExprBuilder cost = LinearExpr.NewBuilder();
        for (int k = 0; k < days.Length; k++)
        {
            cost.AddTerm(open[k], Grains(60m, Twentieth)).AddTerm(removal[k], Grains(25m, Twentieth));
        }

        foreach (VisitTask task in tasks)
        {
            BoolVar[] on = [.. days.Select(day => model.NewBoolVar($"{task.Id} on {day}"))];
            model.AddExactlyOne(on);
            for (int k = 0; k < days.Length; k++)
            {
                model.Add(on[k] <= open[k]);
                cost.AddTerm(on[k], Grains(CostOf(task, days[k]), Twentieth));
                if (task.Access is not null)
                {
                    model.Add(on[k] <= removal[k]);
                }
            }
        }

        model.Minimize(cost);
        (decimal least, decimal bound, long solverMs) = Solve(model, Twentieth);

        // The planner's own bound holds; without removals its plan is the least; with them it lies between.
        bool agree = plan.LowerBound <= least && plan.Cost >= bound && (shared || plan.Cost == least || least > bound);
        Write(output, shared ? "with a shared removal" : "", count, plan, least, bound, plannerMs, solverMs, agree);
        return agree;
    }

    private static bool Repeated(TextWriter output, int count, int weeks, int seed)
    {
        Random random = new(seed);
        LocalDate until = Today.PlusDays(7 * weeks);
        RepeatedTask[] tasks = [.. Enumerable.Range(0, count).Select(i =>
            RepeatedTask.Every($"t{i}", Today.PlusDays(random.Next(0, 90)), 2 + random.Next(5), random.Next(10, 90), random.Next(1, 40) / 10m))];
        Stopwatch watch = Stopwatch.StartNew();
        VisitPlan plan = VisitPlanner.From(Today, 40m).OnlyOn(IsoDayOfWeek.Saturday).LeastCost(tasks, until).Value;
        long plannerMs = watch.ElapsedMilliseconds;
        LocalDate[] days = [.. Enumerable.Range(0, (7 * weeks) + 1).Select(Today.PlusDays).Where(day => day.DayOfWeek == IsoDayOfWeek.Saturday)];

        // From one time to the next is an arc; each task is a way through its arcs; a day that any arc ends on is open.
        CpModel model = new();
        BoolVar[] open = [.. days.Select(day => model.NewBoolVar($"open {day}"))];
        LinearExprBuilder cost = LinearExpr.NewBuilder();
        foreach (BoolVar day in open)
        {
            cost.AddTerm(day, Grains(40m, Millionth));
        }

        foreach (RepeatedTask task in tasks)
        {
            List<ILiteral>[] into = [.. days.Select(_ => new List<ILiteral>())];
            List<ILiteral>[] outOf = [.. days.Select(_ => new List<ILiteral>())];
            List<ILiteral> first = [];
            for (int from = -1; from < days.Length; from++)
            {
                LocalDate due = from < 0 ? task.FirstDue : days[from].PlusMonths(task.Interval.Months!.Value);
                if (from >= 0 && (due > until || from == days.Length - 1))
                {
                    outOf[from].Add(model.NewBoolVar($"{task.Id} ends after {days[from]}"));
                    continue;
                }

                for (int to = from + 1; to < days.Length; to++)
                {
                    BoolVar arc = model.NewBoolVar($"{task.Id} {from} to {to}");
                    (from < 0 ? first : outOf[from]).Add(arc);
                    into[to].Add(arc);
                    model.Add(arc <= open[to]);
                    int late = Period.DaysBetween(due, days[to]);
                    cost.AddTerm(arc, Grains(late > 0 ? late * task.LatePerDay : -late * decimal.Round(task.EarlyPerDay, 6), Millionth));
                }
            }

            model.AddExactlyOne(first);
            for (int k = 0; k < days.Length; k++)
            {
                model.Add(LinearExpr.Sum(into[k].Cast<BoolVar>()) == LinearExpr.Sum(outOf[k].Cast<BoolVar>()));
            }
        }

        model.Minimize(cost);
        (decimal least, decimal bound, long solverMs) = Solve(model, Millionth);
        bool agree = plan.LowerBound <= least && plan.Cost >= bound;
        Write(output, $"{weeks} weeks", count, plan, least, bound, plannerMs, solverMs, agree);
        return agree;
    }

    private static (decimal Least, decimal Bound, long Ms) Solve(CpModel model, decimal grains)
    {
        using CpSolver solver = new() { StringParameters = "max_time_in_seconds:30,num_workers:1,linearization_level:2,cp_model_probing_level:0,symmetry_level:0,random_seed:1" };
        Stopwatch watch = Stopwatch.StartNew();
        CpSolverStatus status = solver.Solve(model);
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? (Math.Round((decimal)solver.ObjectiveValue) / grains, Math.Round((decimal)solver.BestObjectiveBound) / grains, watch.ElapsedMilliseconds)
            : throw new InvalidOperationException($"The solver says {status}.");
    }

    private static decimal CostOf(VisitTask task, LocalDate day)
    {
        int late = Period.DaysBetween(task.Due, day);
        return late > 0 ? late * task.LatePerDay : -late * task.EarlyPerDay;
    }

    private static long Grains(decimal money, decimal grains) => (long)decimal.Round(money * grains);

    private static void Write(TextWriter output, string what, int count, VisitPlan plan, decimal least, decimal bound, long plannerMs, long solverMs, bool agree) =>
        output.WriteLine(FormattableString.Invariant(
            $"  {what,-28} {count,5} {plan.Cost,13:0.00} {plan.LowerBound,10:0.00} {least,12:0.00} {bound,10:0.00} {plannerMs,11} {solverMs,10}  {(agree ? "yes" : "NO")}"));
}
