using System.CommandLine;
using MarineService.Core;
using MarineService.Core.Fluids;
using MarineService.Core.Jobs;
using MarineService.Core.Oils;
using MarineService.Core.Specifications;
using MarineService.Reports.Sheets;
using UnitsNet;

namespace RowingClub.Commands;

/// <summary>Everything of a launch to look at, written into a folder.</summary>
internal sealed class SheetCommand
{
    /// <summary>The warmest day that the club's launches see; invented like all its data.</summary>
    private static readonly Temperature ClubWarmest = Temperature.FromDegreesCelsius(24);

    private readonly LaunchOptions _launch = new();

    private readonly CardOptions _card = new();

    private readonly Option<string?> _into = new("--into") { Description = "The folder to write into, made when there is none; files of the same names are written anew. Default: sheets, and below it a folder of the boat and the day.", HelpName = "FOLDER" };

    private readonly Option<string> _paper = new("--paper") { Description = "The paper: a4, letter, or whatever the printer is set to.", DefaultValueFactory = _ => "printer", HelpName = "PAPER" };

    private SheetCommand() => _paper.AcceptOnlyFromAmong("a4", "letter", "printer");

    internal static Command Create(Page page)
    {
        SheetCommand options = new();
        Command command = new(
            "sheet",
            "Example: sheet Curlew --into curlew\n\nWrites what people look at: the service sheet of what is due, the logbook, the compliance statement, drawings, a calendar and tables. "
            + "Open the sheets in a browser and print them there.");
        options._launch.AddTo(command, hasDocument: false);
        options._card.AddTo(command);
        command.Options.Add(options._into);
        command.Options.Add(options._paper);
        command.SetAction(parsed => options.Run(parsed, page));
        return command;
    }

    /// <summary>The weather until the next oil change as the club knows it: the nights ahead on which a start is possible, and its warmest day.</summary>
    internal static JobConditions? ClubWeather(OilSeason? season) =>
        season is null ? null : JobConditions.NotStated.WithWeather(season.Selection.Start, ClubWarmest);

    private int Run(ParseResult parsed, Page page)
    {
        IReadOnlyList<Launch> launches = _launch.Launches(parsed);
        string? into = parsed.GetValue(_into);
        if (launches.Count > 1 && into is not null)
        {
            throw new UserFault(ExitCode.WrongUsage, "Name the launch whose sheets go into that folder.");
        }

        IReadOnlyList<NightMinimum> nights = _launch.AreFiles(parsed) ? [] : NightsFile.Read("nights.csv", Launch.Embedded("nights.csv"));
        foreach (Launch launch in launches)
        {
            FittedEngine engine = _card.Engine(parsed, launch);
            DisplayUnits units = _launch.Units(parsed);
            OilSeason? season = OilCommand.SeasonAhead(launch, engine, nights);
            Answer<JobCard> card = _card.Prepare(parsed, launch, units, weather: ClubWeather(season));
            SheetFolder folder = new(into ?? SheetFolder.Usual(launch), units, PaperOf(parsed));
            if (card.IsKnown)
            {
                folder.Card(card.Value, nights);
            }
            else
            {
                page.Line($"{launch.Boat}: no service sheet. {string.Join(" ", card.Missing)}");
            }

            Launch told = _launch.AreFiles(parsed) ? launch : BalanceCommand.WithChangeOfTheDay(launch);
            Answer<IReadOnlyList<FluidBalance>> changes = BalanceCommand.Balances(told, engine);
            folder.Rest(launch, engine, card.IsKnown ? card.Value : null, nights, season, changes is { IsKnown: true, Value: [.., FluidBalance latest] } ? latest : null);
            page.Title($"{launch.Boat}: {folder.Written.Count} files");
            foreach (string file in folder.Written)
            {
                page.Line($"  {file}");
            }
        }

        return ExitCode.Fine;
    }

    private Paper PaperOf(ParseResult parsed) => parsed.GetValue(_paper) switch
    {
        "a4" => Paper.A4,
        "letter" => Paper.Letter,
        _ => Paper.OfPrinter,
    };
}
