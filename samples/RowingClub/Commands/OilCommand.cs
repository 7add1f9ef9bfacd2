using System.CommandLine;
using MarineService.Core;
using MarineService.Core.Engines;
using MarineService.Core.Exchange;
using MarineService.Core.Oils;
using MarineService.Core.Specifications;
using NodaTime;
using UnitsNet;

namespace RowingClub.Commands;

/// <summary>Which permitted oil fits the nights ahead, and how long the fitted one will do.</summary>
internal static class OilCommand
{
    internal static Command Create(Page page)
    {
        LaunchOptions options = new();
        Command command = new(
            "oil", "Example: oil Curlew --temperature -6\n\nWhich of the permitted oils fit the coldest start expected, by what margin and why, and how long the fitted oil will do. Exits 1 when something must be done.");
        Option<string?> temperature = new("--temperature")
        {
            Description = "The lowest air temperature at a start: -6, -6C or 21F. Without a letter in the units of --units.",
            HelpName = "T",
        };
        Option<string?> nights = new("--nights")
        {
            Description = "A CSV file with the columns date and minimum_celsius or minimum_fahrenheit (- for standard input). Default for the club: the coming winter.",
            HelpName = "FILE",
        };
        Option<string?> hottest = new("--hottest") { Description = "The hottest ambient expected, written like --temperature.", HelpName = "T" };
        Option<bool> why = new("--why") { Description = "Show every limit of each grade with its source." };
        options.AddTo(command);
        command.Options.Add(why);
        command.Options.Add(temperature);
        command.Options.Add(nights);
        command.Options.Add(hottest);
        command.SetAction(parsed =>
        {
            DisplayUnits units = options.Units(parsed);
            Temperature? coldest = Inputs.AirTemperature("--temperature", parsed.GetValue(temperature), units);
            Temperature? warmest = Inputs.AirTemperature("--hottest", parsed.GetValue(hottest), units);
            string? file = parsed.GetValue(nights);
            if (coldest is not null && file is not null)
            {
                throw new UserFault(ExitCode.WrongUsage, "Give either --temperature or --nights.");
            }

            IReadOnlyList<Launch> launches = options.Launches(parsed);
            IReadOnlyList<NightMinimum> forecast = coldest is not null ? []
                : file is not null ? NightsFile.Read(file, Inputs.Read(file))
                : options.AreFiles(parsed) ? throw new UserFault(ExitCode.WrongUsage, "For a boat of your own give --temperature or --nights.")
                : NightsFile.Read("nights.csv", Launch.Embedded("nights.csv"));
            bool mustAct = false;
            foreach (Launch launch in launches)
            {
                foreach (FittedEngine engine in launch.Boat.Engines)
                {
                    mustAct |= Answer(page, launch, engine, coldest, warmest, forecast, units, options.Json(parsed), parsed.GetValue(why));
                }
            }

            return mustAct ? ExitCode.SomethingMustBeDone : ExitCode.Fine;
        });
        return command;
    }

    /// <summary>The season ahead of one engine: the nights from today on, its lay-ups, and its fitted oil.</summary>
    internal static OilSeason? Season(Launch launch, FittedEngine engine, Temperature? hottest, IReadOnlyList<NightMinimum> forecast)
    {
        NightMinimum[] ahead = [.. forecast.Where(night => night.Date >= launch.Today)];
        return ahead.Length == 0
            ? throw new UserFault(ExitCode.BadData, $"No night in the forecast is on or after {launch.Today:uuuu'-'MM'-'dd}.")
            : Question(launch, engine, hottest)?.ForNights(ahead);
    }

    /// <summary>The same where the forecast may have no night ahead, or be empty: null then.</summary>
    internal static OilSeason? SeasonAhead(Launch launch, FittedEngine engine, IReadOnlyList<NightMinimum> forecast) =>
        forecast.Any(night => night.Date >= launch.Today) ? Season(launch, engine, hottest: null, forecast) : null;

    private static bool Answer(
        Page page, Launch launch, FittedEngine engine, Temperature? coldest, Temperature? hottest, IReadOnlyList<NightMinimum> forecast, DisplayUnits units, bool json, bool why)
    {
        OilSeason? season = coldest is null ? Season(launch, engine, hottest, forecast) : null;
        OilSelection? selection = coldest is Temperature start ? Selection(launch, engine, start, hottest) : season?.Selection;
        if (json)
        {
            Console.Out.Write(
                (season is not null ? OilSelectionJson.ToText(season, units)
                    : selection is not null ? OilSelectionJson.ToText(selection, units)
                    : throw new UserFault(ExitCode.BadData, $"{launch.Boat}: not known: {string.Join(" ", engine.Specification.ChooseOil().Missing)}")) + "\n");
        }
        else
        {
            Show(page, launch, engine, season, selection, units, why);
        }

        return selection?.Findings.Any(finding => finding.Severity >= Severity.Act) ?? false;
    }

    private static OilChoice? Question(Launch launch, FittedEngine engine, Temperature? hottest)
    {
        MarineService.Core.Answer<OilChoice> asked = engine.Specification.ChooseOil();
        if (!asked.IsKnown)
        {
            return null;
        }

        OilChoice choice = asked.Value.WithClaimsAsOf(launch.Today);
        choice = hottest is Temperature hot ? choice.WithHottestAmbient(hot) : choice;
        return LayUps(launch, engine).Aggregate(choice, (question, layUp) => question.LaidUpBetween(layUp.From, LastDay(layUp)));
    }

    private static OilSelection? Selection(Launch launch, FittedEngine engine, Temperature coldest, Temperature? hottest)
    {
        bool isLaidUp = LayUps(launch, engine).Any(layUp => launch.Today >= layUp.From && launch.Today <= LastDay(layUp));
        OilChoice? choice = Question(launch, engine, hottest);
        return isLaidUp ? choice?.WhileLaidUp(coldest) : choice?.ForColdestStart(coldest);
    }

    private static IReadOnlyList<LayUpPeriod> LayUps(Launch launch, FittedEngine engine) =>
        launch.Log.History(engine.Specification, launch.Today, engine.Id).LayUps;

    // A lay-up ends on the day on which the engine is put back into use: that day it may be started.
    private static LocalDate LastDay(LayUpPeriod layUp) =>
        layUp.To is LocalDate to ? LocalDate.Max(layUp.From, to.PlusDays(-1)) : new LocalDate(2199, 12, 31);

    private static void Show(Page page, Launch launch, FittedEngine engine, OilSeason? season, OilSelection? selection, DisplayUnits units, bool why)
    {
        page.Title($"{launch.Boat} on {launch.Today:uuuu'-'MM'-'dd}, {engine.Specification}: {(selection is null ? engine.Specification.ChooseOil().ToString() : selection.Explain(units).Answer)}");
        if (selection is null)
        {
            return;
        }

        if (season is not null)
        {
            page.Line($"  {season.Nights} nights, {season.NightsWithStart} with a possible start; the coldest of {(season.NightsWithStart > 0 ? "these" : "all")} is {season.Coldest.Date:uuuu'-'MM'-'dd}.");
        }

        foreach (GradeVerdict verdict in selection.Ranked)
        {
            page.Line($"  {verdict.Explain(units).Answer}");
            if (why)
            {
                page.Explain(verdict.Explain(units));
            }
        }

        if (season?.FittedSeason is GradeSeason fitted)
        {
            page.Line($"  In the sump: {fitted}.");
        }

        foreach (Finding finding in selection.Findings)
        {
            page.Finding(finding, units);
        }

        page.Line();
    }
}
