using System.CommandLine;
using MarineService.Core;
using MarineService.Core.Engines;
using MarineService.Core.Exchange;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using NodaTime;

namespace RowingClub.Commands;

/// <summary>Adds entries to a log file. The file is always the old one or the new one, never half of it.</summary>
internal sealed class RecordCommand
{
    private readonly Option<string> _log = new("--log") { Description = "The log file to add to; it is made when there is none.", HelpName = "FILE", Required = true };

    private readonly Option<string?> _specification = new("--spec") { Description = "The data sheet, to check the task's id and to show the next due points.", HelpName = "FILE" };

    private readonly Option<string?> _task = new("--task") { Description = "The task that was done.", HelpName = "ID" };

    private readonly Option<bool> _passed = new("--passed") { Description = "The inspection passed." };

    private readonly Option<bool> _failed = new("--failed") { Description = "The inspection failed." };

    private readonly Option<string?> _event = new("--event") { Description = "What happened, such as overheat.", HelpName = "KIND" };

    private readonly Option<string?> _add = new("--add") { Description = "A log document whose entries are added (JSON file; - for standard input).", HelpName = "FILE" };

    private readonly Option<string?> _csv = new("--csv") { Description = "An exercise book typed into a spreadsheet, whose lines are added (CSV file; - for standard input).", HelpName = "FILE" };

    private readonly Option<DateOrder?> _dates = new("--dates")
    {
        Description = "How the book's dates go: ymd (2026-03-31, the default), dmy (31.3.2026) or mdy (3/31/2026).",
        HelpName = "ORDER",
        CustomParser = result => Order(result),
    };

    private readonly Option<bool> _decimalComma = new("--decimal-comma") { Description = "The book's numbers have a decimal comma." };

    private readonly Option<string?> _date = new("--date") { Description = "The day it was done. Default: the machine's date.", HelpName = "DATE" };

    private readonly Option<decimal?> _dial = new("--dial") { Description = "What the hour meter's dial showed. Alone: a reading.", HelpName = "HOURS" };

    private readonly Option<string?> _engine = new("--engine") { Description = "Which engine, or boat. Default: main.", HelpName = "ID" };

    private readonly Option<string?> _by = new("--by") { Description = "Who did it.", HelpName = "NAME" };

    private readonly Option<string?> _note = new("--note") { Description = "A remark.", HelpName = "TEXT" };

    private readonly Option<string?> _corrects = new("--corrects") { Description = "The id of the entry that this one takes the place of.", HelpName = "ID" };

    private readonly Option<bool> _json = new("--json") { Description = "The due list as the library's own JSON document on standard output; needs --spec." };

    private RecordCommand()
    {
    }

    internal static Command Create(Page page)
    {
        RecordCommand options = new();
        Command command = new(
            "record",
            "Example: record --log L.json --task engine-oil --date 2026-10-24 --dial 95.1 --by \"M. Kerr\"\n\n"
            + "Adds an entry to a log file: a task done (--task), a happening (--event), a reading (--dial alone), the entries of another log (--add),\n"
            + "or the lines of an exercise book (--csv). A book with a bad line adds nothing; each bad line is named.");
        foreach (Option option in new Option[]
        {
            options._log, options._specification, options._task, options._passed, options._failed, options._event, options._add,
            options._csv, options._dates, options._decimalComma, options._date, options._dial, options._engine, options._by, options._note, options._corrects, options._json,
        })
        {
            command.Options.Add(option);
        }

        command.SetAction(parsed => options.Run(parsed, page));
        return command;
    }

    private int Run(ParseResult parsed, Page page)
    {
        string path = parsed.GetValue(_log)!;
        if (path == "-")
        {
            throw new UserFault(ExitCode.WrongUsage, "--log names the file that is added to; it cannot be standard input.");
        }

        // All that can be refused is refused before the file is touched.
        BoatSpecification? boat = parsed.GetValue(_specification) is string sheet ? Launch.ReadBoat(sheet, Inputs.Read(sheet)) : null;
        if (parsed.GetValue(_json) && boat is null)
        {
            throw new UserFault(ExitCode.WrongUsage, "--json writes the due list, for which --spec is needed.");
        }

        ServiceLog log = ServiceLog.Empty;
        int count = 0;
        LogFile.Change(path, before =>
        {
            ServiceLog shorter = before is null ? ServiceLog.Empty : Launch.ReadLog(path, before);
            count = shorter.Entries.Count;
            log = Add(shorter, parsed, boat);
            return ServiceLogJson.ToText(log);
        });
        string report = $"{path}: {log.Entries.Count - count} added, {log.Entries.Count} entries in all.";
        if (parsed.GetValue(_json))
        {
            Console.Error.WriteLine(report);
            Console.Out.Write(DueListJson.ToText(After(boat!, log, count)) + "\n");
            return ExitCode.Fine;
        }

        page.Line(report);
        if (boat is not null)
        {
            Show(page, After(boat, log, count));
        }

        return ExitCode.Fine;
    }

    // What is due on the day of the last entry that was added.
    private static DueList After(BoatSpecification boat, ServiceLog log, int count) =>
        log.DueList(boat, log.Entries.Skip(count).Select(entry => entry.Date).DefaultIfEmpty(Inputs.Today()).Max());

    private static void Show(Page page, DueList due)
    {
        foreach (TaskDue task in due.MostUrgentFirst.Where(task => task.Status != DueStatus.EachUse))
        {
            page.Task(task);
        }

        foreach (Finding finding in due.Findings.Where(finding => finding.Severity >= Severity.Advice))
        {
            page.Finding(finding, DisplayUnits.Metric);
        }
    }

    private ServiceLog Add(ServiceLog log, ParseResult parsed, BoatSpecification? boat)
    {
        try
        {
            if (parsed.GetValue(_add) is string file)
            {
                // Entries of another log get numbers of this one unless they were given ids by hand.
                ServiceLog other = Launch.ReadLog(file, Inputs.Read(file));
                return ServiceLog.Of([.. log.Entries, .. other.Entries]);
            }

            if (parsed.GetValue(_csv) is string book)
            {
                return ServiceLog.Of([.. log.Entries, .. ReadBook(book, parsed, boat)]);
            }

            LogEntry entry = Entry(parsed);
            if (boat is not null && parsed.GetValue(_task) is string task)
            {
                CheckTask(boat, entry.Scope, task);
            }

            return log.With(entry);
        }
        catch (ArgumentException fault)
        {
            throw new UserFault(ExitCode.BadData, $"Nothing was added. {fault.Message}");
        }
    }

    // All or nothing: who puts the bad lines right and runs it again must not add the good ones twice.
    private IReadOnlyList<LogEntry> ReadBook(string book, ParseResult parsed, BoatSpecification? boat)
    {
        ExerciseBookForm form = ExerciseBookForm.Default.WithDates(parsed.GetValue(_dates) ?? DateOrder.YearMonthDay);
        form = parsed.GetValue(_decimalComma) ? form.WithDecimalComma() : form;
        form = boat is null ? form : form.For(boat);
        ExerciseBookResult read = ExerciseBookCsv.Read(Inputs.Read(book), form);
        return read.IsComplete
            ? read.Entries
            : throw new UserFault(ExitCode.BadData, read.Faults.Select(fault => $"{book}: {fault}").Prepend($"Nothing was added. {book} has {read.Entries.Count} good entries, and bad lines:"));
    }

    private static DateOrder? Order(System.CommandLine.Parsing.ArgumentResult result)
    {
        string word = result.Tokens[0].Value;
        DateOrder? order = word switch
        {
            "ymd" => DateOrder.YearMonthDay,
            "dmy" => DateOrder.DayMonthYear,
            "mdy" => DateOrder.MonthDayYear,
            _ => null,
        };
        if (order is null)
        {
            result.AddError($"'{word}' is no order of dates; say ymd, dmy or mdy.");
        }

        return order;
    }

    // A slip in a task's id would count for no task at all.
    private static void CheckTask(BoatSpecification boat, string scope, string task)
    {
        IReadOnlyList<ServiceTask> tasks = scope == BoatSpecification.Scope ? boat.Tasks
            : boat.Engines.FirstOrDefault(engine => engine.Id == scope)?.Specification.Tasks
                ?? throw new UserFault(ExitCode.BadData, $"{boat} has no engine '{scope}'. Nothing was added. There is {string.Join(", ", boat.Engines.Select(engine => engine.Id).Append(BoatSpecification.Scope))}.");
        if (!tasks.Any(known => known.Id == task))
        {
            throw new UserFault(ExitCode.BadData, $"{boat} has no task '{task}' for '{scope}'. Nothing was added. There is {string.Join(", ", tasks.Select(known => known.Id))}.");
        }
    }

    private LogEntry Entry(ParseResult parsed)
    {
        LogEntry entry = LogEntry.Of(Fact(parsed));
        entry = parsed.GetValue(_engine) is string engine ? entry.For(engine) : entry;
        entry = parsed.GetValue(_by) is string by ? entry.DoneBy(by) : entry;
        entry = parsed.GetValue(_note) is string note ? entry.WithNote(note) : entry;
        return parsed.GetValue(_corrects) is string corrects ? entry.Correcting(corrects) : entry;
    }

    private ServiceFact Fact(ParseResult parsed)
    {
        LocalDate date = Inputs.Date(parsed.GetValue(_date)) ?? Inputs.Today();
        EngineHours? dial = parsed.GetValue(_dial) is decimal hours ? EngineHours.FromHours(hours) : null;
        return (parsed.GetValue(_task), parsed.GetValue(_event), parsed.GetValue(_passed), parsed.GetValue(_failed)) switch
        {
            (string task, null, true, false) => Completion.Passed(task, date, dial),
            (string task, null, false, true) => Completion.Failed(task, date, dial),
            (string task, null, false, false) => Completion.Of(task, date, dial),
            (null, string kind, false, false) => ServiceEvent.Of(kind, date, dial),
            (null, null, false, false) when dial is EngineHours read => MeterReading.Of(date, read),
            _ => throw new UserFault(ExitCode.WrongUsage, "Say one thing: --task (with --passed or --failed for an inspection), --event, --dial alone, --add, or --csv."),
        };
    }
}
