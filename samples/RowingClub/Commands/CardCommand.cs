using System.CommandLine;
using System.Globalization;
using MarineService.Core;
using MarineService.Core.Exchange;
using MarineService.Core.Jobs;
using MarineService.Core.Parts;
using MarineService.Core.Records;
using UnitsNet;

namespace RowingClub.Commands;

/// <summary>The job card of a visit, and the verdict on a report of it.</summary>
internal sealed class CardCommand
{
    private readonly LaunchOptions _launch = new();

    private readonly Option<string[]> _tasks = new("--task") { Description = "A task to put on the card; may be given more than once. Default: all that is due.", HelpName = "ID" };

    private readonly Option<string?> _engine = new("--engine") { Description = "Which engine. Default: main.", HelpName = "ID" };

    private readonly Option<string?> _coldest = new("--coldest") { Description = "The coldest start until the next oil change: -6, -6C or 21F.", HelpName = "T" };

    private readonly Option<string?> _hottest = new("--hottest") { Description = "The hottest day until the next oil change.", HelpName = "T" };

    private readonly Option<string[]> _shelf = new("--shelf") { Description = "What the shelf holds: LV-OIL-40=5; may be given more than once. Without it everything counts as lacking.", HelpName = "PART=AMOUNT" };

    private readonly Option<string?> _done = new("--done") { Description = "A report of what was done and measured, to be held against the card (JSON file; - for standard input).", HelpName = "FILE" };

    private readonly Option<string?> _into = new("--into") { Description = "With --done: the log file that the entries are added to when the visit is proved.", HelpName = "FILE" };

    private readonly Option<bool> _form = new("--form") { Description = "A blank report to fill in, as a JSON document." };

    private CardCommand()
    {
    }

    internal static Command Create(Page page)
    {
        CardCommand options = new();
        Command command = new(
            "card",
            "Example: card Curlew --today 2027-04-20\n\nEverything for one visit: tasks, tools, oil, steps in a harmless order with their cautions and hold points. "
            + "With --done a report of the visit is held against the card; exits 1 when it is not proved.");
        options._launch.AddTo(command);
        foreach (Option option in new Option[] { options._tasks, options._engine, options._coldest, options._hottest, options._shelf, options._done, options._into, options._form })
        {
            command.Options.Add(option);
        }

        command.SetAction(parsed => options.Run(parsed, page));
        return command;
    }

    private int Run(ParseResult parsed, Page page)
    {
        string? done = parsed.GetValue(_done);
        if (parsed.GetValue(_into) is not null && done is null)
        {
            throw new UserFault(ExitCode.WrongUsage, "--into goes with --done.");
        }

        IReadOnlyList<Launch> launches = _launch.Launches(parsed);
        if (launches.Count > 1 && (done is not null || parsed.GetValue(_form)))
        {
            throw new UserFault(ExitCode.WrongUsage, "Name the launch that the report is about.");
        }

        int exit = ExitCode.Fine;
        foreach (Launch launch in launches)
        {
            Answer<JobCard> card = Prepare(parsed, launch);
            if (!card.IsKnown)
            {
                page.Title($"{launch.Boat}: no card. {string.Join(" ", card.Missing)}");
            }
            else if (done is not null)
            {
                exit = Prove(parsed, page, launch, card.Value, done);
            }
            else if (parsed.GetValue(_form))
            {
                Console.Out.Write(VisitReportJson.ToText(card.Value.BlankReport()) + "\n");
            }
            else if (_launch.Json(parsed))
            {
                Console.Out.Write(JobCardJson.ToText(card.Value) + "\n");
            }
            else
            {
                CardPage.Show(page, card.Value, _launch.Units(parsed));
            }
        }

        return exit;
    }

    private Answer<JobCard> Prepare(ParseResult parsed, Launch launch)
    {
        DisplayUnits units = _launch.Units(parsed);
        Temperature? coldest = Inputs.AirTemperature("--coldest", parsed.GetValue(_coldest), units);
        Temperature? hottest = Inputs.AirTemperature("--hottest", parsed.GetValue(_hottest), units);
        if (coldest is null != hottest is null || coldest?.DegreesCelsius > hottest?.DegreesCelsius)
        {
            throw new UserFault(ExitCode.WrongUsage, "--coldest and --hottest go together, and the coldest is not above the hottest.");
        }

        JobConditions conditions = coldest is Temperature low ? JobConditions.NotStated.WithWeather(low, hottest!.Value) : JobConditions.NotStated;
        conditions = parsed.GetValue(_shelf) is { Length: > 0 } shelf ? conditions.WithShelf([.. Shelf(launch, shelf)]) : conditions;
        string engine = parsed.GetValue(_engine) ?? LogEntry.MainEngine;
        if (!launch.Boat.Engines.Any(one => one.Id == engine))
        {
            throw new UserFault(ExitCode.WrongUsage, $"{launch.Boat} has no engine '{engine}'. It has {string.Join(", ", launch.Boat.Engines.Select(one => one.Id))}.");
        }

        string[] tasks = parsed.GetValue(_tasks) ?? [];
        try
        {
            return tasks.Length == 0
                ? JobCard.Prepare(launch.Boat, launch.Log, launch.Today, conditions, engine: engine)
                : JobCard.PrepareFor(launch.Boat, launch.Log, launch.Today, tasks, conditions, engine: engine);
        }
        catch (ArgumentException fault)
        {
            throw new UserFault(ExitCode.WrongUsage, fault.Message);
        }
    }

    // A part that no engine of the launch knows is a slip of the pen, not a part of another boat.
    private static IEnumerable<KitItem> Shelf(Launch launch, string[] given)
    {
        HashSet<string> known = [.. launch.Boat.Engines.SelectMany(engine => engine.Specification.PartsSheet?.Catalogue.Parts ?? []).Select(part => part.Number)];
        HashSet<string> seen = [];
        foreach (string one in given)
        {
            string[] sides = one.Split('=');
            if (sides.Length != 2 || !decimal.TryParse(sides[1], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal amount) || amount is < 0.001m or > 100_000m)
            {
                throw new UserFault(ExitCode.WrongUsage, $"--shelf takes a part and an amount above 0, such as LV-OIL-40=5, not '{one}'.");
            }

            if (!known.Contains(sides[0]) || !seen.Add(sides[0]))
            {
                throw new UserFault(ExitCode.WrongUsage, known.Contains(sides[0]) ? $"--shelf names {sides[0]} twice." : $"{launch.Boat} has no part '{sides[0]}'. It has {(known.Count == 0 ? "no parts sheet" : string.Join(", ", known))}.");
            }

            yield return KitItem.Of(sides[0], amount);
        }
    }

    private int Prove(ParseResult parsed, Page page, Launch launch, JobCard card, string done)
    {
        ReadResult<VisitReport> report = VisitReportJson.Read(Inputs.Read(done));
        if (!report.IsRead)
        {
            throw new UserFault(ExitCode.BadData, report.Faults.Select(fault => $"{done}: {fault}").Prepend($"{done} cannot be read:"));
        }

        DisplayUnits units = _launch.Units(parsed);
        JobProof proof = card.Prove(report.Value);
        JobCompletion completion = proof.Complete(launch.Log);
        if (proof.IsProved && parsed.GetValue(_into) is string into)
        {
            LogFile.Change(into, before =>
            {
                completion = proof.Complete(before is null ? ServiceLog.Empty : Launch.ReadLog(into, before));
                return ServiceLogJson.ToText(completion.Log);
            });
        }

        if (_launch.Json(parsed))
        {
            Console.Out.Write(ServiceLogJson.ToText(ServiceLog.Of(completion.Entries)) + "\n");
            foreach (Finding finding in proof.Findings)
            {
                Console.Error.WriteLine(finding.Message(units));
            }
        }
        else
        {
            CardPage.Show(page, completion, units);
        }

        return proof.IsProved ? ExitCode.Fine : ExitCode.SomethingMustBeDone;
    }
}
