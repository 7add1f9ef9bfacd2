using System.CommandLine;
using System.Globalization;
using MarineService.Core;
using MarineService.Core.Exchange;
using MarineService.Core.Jobs;
using MarineService.Core.Parts;
using MarineService.Core.Records;
using MarineService.Core.Specifications;
using UnitsNet;

namespace RowingClub.Commands;

/// <summary>What decides over a job card: which tasks of which engine, the weather, the shelf, and the engine's own procedures.</summary>
internal sealed class CardOptions
{
    private readonly Option<string[]> _tasks = new("--task") { Description = "A task to put on the card; may be given more than once. Default: all that is due.", HelpName = "ID" };

    private readonly Option<string?> _engine = new("--engine") { Description = "Which engine. Default: main.", HelpName = "ID" };

    private readonly Option<string?> _coldest = new("--coldest") { Description = "The coldest start until the next oil change: -6, -6C or 21F.", HelpName = "T" };

    private readonly Option<string?> _hottest = new("--hottest") { Description = "The hottest day until the next oil change.", HelpName = "T" };

    private readonly Option<string[]> _procedures = new("--procedure") { Description = "How the engine's own manual does a task (JSON file of a procedure with its tasks); replaces the usual one. May be given more than once.", HelpName = "FILE" };

    private readonly Option<string[]> _shelf = new("--shelf") { Description = "What the shelf holds: LV-OIL-40=5; may be given more than once. Without it everything counts as lacking.", HelpName = "PART=AMOUNT" };

    internal void AddTo(Command command)
    {
        foreach (Option option in new Option[] { _tasks, _engine, _coldest, _hottest, _procedures, _shelf })
        {
            command.Options.Add(option);
        }
    }

    /// <summary>The engine of a launch that the user means.</summary>
    internal FittedEngine Engine(ParseResult parsed, Launch launch)
    {
        string id = parsed.GetValue(_engine) ?? LogEntry.MainEngine;
        return launch.Boat.Engines.FirstOrDefault(one => one.Id == id)
            ?? throw new UserFault(ExitCode.WrongUsage, $"{launch.Boat} has no engine '{id}'. It has {string.Join(", ", launch.Boat.Engines.Select(one => one.Id))}.");
    }

    /// <summary>The card of a launch; the one of the report where a report names it.</summary>
    /// <param name="parsed">What the user gave.</param>
    /// <param name="launch">The launch.</param>
    /// <param name="units">The units of a temperature without a letter.</param>
    /// <param name="report">The report that is to be held against the card, if there is one.</param>
    /// <param name="weather">The weather where the user gives none; not stated when null.</param>
    internal Answer<JobCard> Prepare(ParseResult parsed, Launch launch, DisplayUnits units, VisitReport? report = null, JobConditions? weather = null)
    {
        Temperature? coldest = Inputs.AirTemperature("--coldest", parsed.GetValue(_coldest), units);
        Temperature? hottest = Inputs.AirTemperature("--hottest", parsed.GetValue(_hottest), units);
        if (coldest is null != hottest is null || coldest?.DegreesCelsius > hottest?.DegreesCelsius)
        {
            throw new UserFault(ExitCode.WrongUsage, "--coldest and --hottest go together, and the coldest is not above the hottest.");
        }

        JobConditions conditions = coldest is Temperature low ? JobConditions.NotStated.WithWeather(low, hottest!.Value) : weather ?? JobConditions.NotStated;
        conditions = parsed.GetValue(_shelf) is { Length: > 0 } shelf ? conditions.WithShelf([.. Shelf(launch, shelf)]) : conditions;
        string engine = Engine(parsed, launch).Id;
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
}
