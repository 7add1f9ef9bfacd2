using System.CommandLine;
using MarineService.Core;
using MarineService.Core.Exchange;
using MarineService.Core.Scheduling;
using NodaTime;

namespace RowingClub.Commands;

/// <summary>On which days to take a boat out of service in the seasons to come, for what, and what it costs.</summary>
internal static class VisitsCommand
{
    /// <summary>What the club reckons for an evening's trip, gear and waste; invented like all its data.</summary>
    private const decimal ClubSetUp = 60m;

    internal static Command Create(Page page)
    {
        LaunchOptions options = new();
        Command command = new("visits", "Example: visits Curlew\n\nThe days on which to take a boat out of service, up to the end of the year after next: what is done on each, why, what it costs, and how far from the least that can be. Exits 1 when something is due.");
        Option<string?> until = new("--until") { Description = "The last day of the plan. Default: the end of the year after next.", HelpName = "DATE" };
        Option<string?> setUp = new("--set-up") { Description = "What each visit costs before anything is done. Default: 60.", HelpName = "AMOUNT" };
        Option<string?> prices = new("--prices") { Description = "What tasks cost (CSV file: task,price,late_per_day). Default: the club's.", HelpName = "FILE" };
        Option<bool> anyDay = new("--any-day") { Description = "Visits on any day of the week, not on Saturdays and Sundays only." };
        Option<bool> why = new("--why") { Description = "Explain the forecast of each task too." };
        options.AddTo(command);
        foreach (Option option in new Option[] { until, setUp, prices, anyDay, why })
        {
            command.Options.Add(option);
        }

        command.SetAction(parsed =>
        {
            decimal cost = parsed.GetValue(setUp) is not string amount ? ClubSetUp
                : PricesFile.Amount(amount, 100_000m) ?? throw new UserFault(ExitCode.WrongUsage, $"--set-up: '{amount}' is no amount from 0 to 100000, such as 60.");
            string? file = parsed.GetValue(prices);
            IReadOnlyDictionary<string, (decimal Price, decimal LatePerDay)> known = file is null ? PricesFile.Read("prices.csv", Launch.Embedded("prices.csv")) : PricesFile.Read(file, Inputs.Read(file));
            Dictionary<int, decimal> seasons = [];
            bool anything = false;
            IReadOnlyList<Launch> launches = options.Launches(parsed);
            foreach (Launch launch in launches)
            {
                LocalDate last = LastDay(launch, Inputs.Date(parsed.GetValue(until)));
                DueList due = launch.Log.DueList(launch.Boat, launch.Today);
                anything |= due.AnythingDue;
                (_, MarineService.Core.Answer<VisitPlan> found) = Plan(launch, due, cost, known, last, parsed.GetValue(anyDay));
                VisitPlan plan = found.IsKnown ? found.Value : throw new UserFault(ExitCode.BadData, $"{launch.Boat}: not known: {string.Join(" ", found.Missing)}");
                if (options.Json(parsed))
                {
                    Console.Out.Write(VisitPlanJson.ToText(plan) + "\n");
                    continue;
                }

                Show(page, launch, due, plan, known, last, options.Units(parsed), parsed.GetValue(why));
                foreach (int year in plan.Seasons)
                {
                    seasons[year] = seasons.GetValueOrDefault(year) + plan.CostOfSeason(year);
                }
            }

            if (launches.Count > 1 && !options.Json(parsed))
            {
                page.Title("All together: " + string.Join(", ", seasons.OrderBy(season => season.Key).Select(season => FormattableString.Invariant($"{season.Key} {season.Value:0.00}"))));
            }

            return anything ? ExitCode.SomethingMustBeDone : ExitCode.Fine;
        });
        return command;
    }

    /// <summary>The plan at the club's prices, up to the end of the year after next.</summary>
    internal static (VisitPlanner Planner, MarineService.Core.Answer<VisitPlan> Plan) Plan(Launch launch, DueList due) =>
        Plan(launch, due, ClubSetUp, PricesFile.Read("prices.csv", Launch.Embedded("prices.csv")), LastDay(launch, null), anyDay: false);

    private static LocalDate LastDay(Launch launch, LocalDate? until)
    {
        LocalDate last = until ?? new LocalDate(launch.Today.Year + 2, 12, 31);
        return last >= launch.Today && last <= launch.Today.PlusYears(9)
            ? last
            : throw new UserFault(ExitCode.WrongUsage, $"--until must lie from {launch.Today:uuuu'-'MM'-'dd} on, and within nine years.");
    }

    private static (VisitPlanner Planner, MarineService.Core.Answer<VisitPlan> Plan) Plan(
        Launch launch, DueList due, decimal setUp, IReadOnlyDictionary<string, (decimal Price, decimal LatePerDay)> prices, LocalDate last, bool anyDay)
    {
        VisitPlanner planner = VisitPlanner.From(launch.Today, setUp);
        planner = anyDay ? planner : planner.OnlyOn(IsoDayOfWeek.Saturday, IsoDayOfWeek.Sunday);
        planner = launch.Boat.Engines.Aggregate(planner, (one, engine) => one.LaidUpAsIn(launch.Log.History(engine.Specification, launch.Today, engine.Id).Use));
        using Patience patience = new($"{launch.Boat}: looking for visit days ...");
        return (planner, planner.LeastCost(Priced(due, prices).Where(task => task.IsKnown).Select(task => task.Value), last));
    }

    private static IEnumerable<MarineService.Core.Answer<RepeatedTask>> Priced(DueList due, IReadOnlyDictionary<string, (decimal Price, decimal LatePerDay)> prices) =>
        from task in due.Tasks
        where task.Task.Interval is not null && prices.ContainsKey(task.TaskId)
        select RepeatedTask.Of(task, prices[task.TaskId].Price, prices[task.TaskId].LatePerDay);

    private static void Show(
        Page page, Launch launch, DueList due, VisitPlan plan, IReadOnlyDictionary<string, (decimal Price, decimal LatePerDay)> prices, LocalDate last, DisplayUnits units, bool why)
    {
        page.Title($"{launch.Boat} from {launch.Today:uuuu'-'MM'-'dd} to {last:uuuu'-'MM'-'dd}: {plan}");
        foreach (Visit visit in plan.Visits)
        {
            page.Line(FormattableString.Invariant($"  {visit.Date:uuuu'-'MM'-'dd} {visit.Date.DayOfWeek}, {visit.Cost:0.00}{(visit.SetUpCost == 0 ? ", paid for with the lay-up" : "")}"));
            foreach (VisitItem item in visit.Items)
            {
                page.Line($"    {item}");
            }
        }

        foreach (ExplanationLine line in plan.Explain(units).Lines.Where(line => line.Label is "season" or "separately" or "how sure"))
        {
            page.Line($"  {line.Label}: {line.Text}");
        }

        foreach (TaskDue task in due.Tasks.Where(task => why && prices.ContainsKey(task.TaskId)))
        {
            page.Line($"  {task.Forecast.Explain(units).Answer}");
            page.Explain(task.Forecast.Explain(units));
        }

        string[] unpriced = [.. due.Tasks.Where(task => task.Task.Interval is not null && !prices.ContainsKey(task.TaskId)).Select(task => task.TaskId)];
        if (unpriced.Length > 0)
        {
            page.Line($"  Not planned, as they have no price: {string.Join(", ", unpriced)}.");
        }

        foreach (string missing in Priced(due, prices).Where(task => !task.IsKnown).SelectMany(task => task.Missing))
        {
            page.Line($"  Not planned: {missing}");
        }

        page.Line();
    }
}
