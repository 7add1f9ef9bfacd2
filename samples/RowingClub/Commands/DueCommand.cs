using System.CommandLine;
using MarineService.Core;
using MarineService.Core.Exchange;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;

namespace RowingClub.Commands;

/// <summary>What is due, when, and why.</summary>
internal static class DueCommand
{
    internal static Command Create(Page page)
    {
        LaunchOptions options = new();
        Command command = new("due", "Example: due Curlew\n\nWhat is due on a boat, when, which limb governs, and why. Exits 1 when something is due.");
        Option<bool> why = new("--why") { Description = "Explain every task, not only those that are due." };
        options.AddTo(command);
        command.Options.Add(why);
        command.SetAction(parsed =>
        {
            DisplayUnits units = options.Units(parsed);
            bool anything = false;
            foreach (Launch launch in options.Launches(parsed))
            {
                DueList due = launch.Log.DueList(launch.Boat, launch.Today);
                anything |= due.AnythingDue;
                if (options.Json(parsed))
                {
                    Console.Out.Write(DueListJson.ToText(due, units) + "\n");
                }
                else
                {
                    Show(page, launch, due, units, parsed.GetValue(why));
                }
            }

            return anything ? ExitCode.SomethingMustBeDone : ExitCode.Fine;
        });
        return command;
    }

    private static void Show(Page page, Launch launch, DueList due, DisplayUnits units, bool why)
    {
        page.Title($"{launch.Boat} on {launch.Today:uuuu'-'MM'-'dd}: {Summary(due)}");
        foreach (TaskDue task in due.MostUrgentFirst)
        {
            page.Task(task);
            page.Forecast(task, units, why);
            if (why || task.Status >= DueStatus.Due)
            {
                page.Explain(task.Explain(units));
            }
        }

        if (due.ReadAgain() is { IsKnown: true } reading)
        {
            page.Line($"  For {reading.Value.Task.TaskId}, {reading.Value}.");
        }

        ShowFindings(page, "Noted", due.Findings, units);
        ShowFindings(page, "The record", Unproved(launch), units);
        page.Line();
    }

    internal static string Summary(DueList due)
    {
        string[] counts =
        [
            .. new[] { DueStatus.Overdue, DueStatus.Due, DueStatus.DueSoon }
                .Select(status => (status, count: due.Tasks.Count(task => task.Status == status)))
                .Where(pair => pair.count > 0)
                .Select(pair => $"{pair.count} {Page.Word(pair.status)}"),
        ];
        return counts.Length == 0 ? "nothing due" : string.Join(", ", counts);
    }

    // Services whose time cannot be shown: what a buyer or a warranty desk would ask about.
    private static IReadOnlyList<Finding> Unproved(Launch launch) =>
    [
        .. from engine in launch.Boat.Engines
           from finding in launch.Log.Compliance(engine.Specification, launch.Today, ComplianceBasis.Planning, engine.Id).Findings
           where finding.Rule == ComplianceRules.CannotBeShown
           select finding,
    ];

    private static void ShowFindings(Page page, string title, IReadOnlyList<Finding> findings, DisplayUnits units)
    {
        if (findings.Count == 0)
        {
            return;
        }

        page.Title(title);
        foreach (Finding finding in findings)
        {
            page.Finding(finding, units);
        }
    }
}
