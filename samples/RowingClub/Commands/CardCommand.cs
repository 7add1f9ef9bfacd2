using System.CommandLine;
using MarineService.Core;
using MarineService.Core.Exchange;
using MarineService.Core.Jobs;
using MarineService.Core.Records;

namespace RowingClub.Commands;

/// <summary>The job card of a visit, and the verdict on a report of it.</summary>
internal sealed class CardCommand
{
    private readonly LaunchOptions _launch = new();

    private readonly CardOptions _card = new();

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
        options._card.AddTo(command);
        foreach (Option option in new Option[] { options._done, options._into, options._form })
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
            Answer<JobCard> card = _card.Prepare(parsed, launch, _launch.Units(parsed), report);
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
