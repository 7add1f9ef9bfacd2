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

    private readonly Option<string[]> _procedures = new("--procedure") { Description = "How the engine's own manual does a task (JSON file of a procedure with its tasks); replaces the usual one. May be given more than once.", HelpName = "FILE" };

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
        foreach (Option option in new Option[] { options._tasks, options._engine, options._coldest, options._hottest, options._procedures, options._shelf, options._done, options._into, options._form })
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
        VisitReport? report = done is null ? null : Report(done);
        foreach (Launch launch in launches)
        {
            Answer<JobCard> card = Prepare(parsed, launch, report);
            if (!card.IsKnown)
            {
                page.Title($"{launch.Boat}: no card. {string.Join(" ", card.Missing)}");
            }
            else if (report is not null)
            {
                exit = Prove(parsed, page, launch, card.Value, report);
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

    private Answer<JobCard> Prepare(ParseResult parsed, Launch launch, VisitReport? report)
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
        ProcedureBook book = Book(parsed.GetValue(_procedures) ?? []);
        try
        {
            // Half of a visit that was entered is due no more, and belongs to its card all the same.
            if (tasks.Length == 0 && report?.Day == launch.Today
                && JobCard.PrepareAgain(launch.Boat, launch.Log, report!, conditions, book) is { IsKnown: true } again && again.Value.Engine.Id == engine)
            {
                return again;
            }

            return tasks.Length == 0
                ? JobCard.Prepare(launch.Boat, launch.Log, launch.Today, conditions, book, engine)
                : JobCard.PrepareFor(launch.Boat, launch.Log, launch.Today, tasks, conditions, book, engine);
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

    /// <summary>The usual procedures, with those of the files in their place.</summary>
    private static ProcedureBook Book(string[] files)
    {
        ProcedureBook book = ProcedureBook.Usual;
        Dictionary<string, string> given = [];
        foreach (string file in files)
        {
            ReadResult<ProcedurePage> page = ProcedureJson.Read(Inputs.Read(file));
            if (!page.IsRead)
            {
                throw new UserFault(ExitCode.BadData, page.Faults.Select(fault => $"{file}: {fault}").Prepend($"{file} cannot be read:"));
            }

            if (page.Value.Tasks.Count == 0)
            {
                throw new UserFault(ExitCode.BadData, $"{file} names no task that its procedure does.");
            }

            foreach (TaskProcedure task in page.Value.Tasks)
            {
                if (!given.TryAdd(task.TaskId, file))
                {
                    throw new UserFault(ExitCode.BadData, $"{given[task.TaskId]} and {file} both do '{task.TaskId}'.");
                }
            }

            book = book.With(page.Value);
        }

        return book;
    }

    private static VisitReport Report(string file)
    {
        ReadResult<VisitReport> report = VisitReportJson.Read(Inputs.Read(file));
        return report.IsRead ? report.Value : throw new UserFault(ExitCode.BadData, report.Faults.Select(fault => $"{file}: {fault}").Prepend($"{file} cannot be read:"));
    }

    private int Prove(ParseResult parsed, Page page, Launch launch, JobCard card, VisitReport report)
    {
        DisplayUnits units = _launch.Units(parsed);
        JobProof proof = card.Prove(report);
        JobCompletion completion = proof.Complete(launch.Log);
        if (proof.ProvedTasks.Count > 0 && parsed.GetValue(_into) is string into)
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
