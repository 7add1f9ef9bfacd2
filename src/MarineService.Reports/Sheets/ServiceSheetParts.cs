using System.Xml.Linq;
using MarineService.Core;
using MarineService.Core.Engines;
using MarineService.Core.Jobs;
using MarineService.Core.Scheduling;
using MarineService.Reports.Internal;

namespace MarineService.Reports.Sheets;

/// <summary>The parts of a service sheet, from the top of the first page down.</summary>
internal sealed partial class ServiceSheetParts
{
    private readonly JobCard _card;
    private readonly IReadOnlyList<Drawing> _drawings;
    private readonly DisplayUnits _lead;
    private readonly SourceList _sources = new();

    internal ServiceSheetParts(JobCard card, IReadOnlyList<Drawing> drawings, DisplayUnits lead) => (_card, _drawings, _lead) = (card, drawings, lead);

    internal Sheet Whole(Paper paper) => SheetFrame.Of(
        "service-sheet",
        "Service sheet",
        $"{_card.Boat.Boat.Name}, {_card.Engine.Specification.Engine.Designation}",
        $"{Words.Iso(_card.Day)} \u00B7 card {_card.Id}",
        "The engine's own manual outranks this sheet. Stop where something is not as it says here.",
        paper,
        Subject(),
        Why(),
        Open(),
        Kit(),
        Amounts(),
        Belt(),
        Pictures(),
        Found(),
        Steps(),
        Loose(),
        Proof(),
        Waste(),
        Signatures(),
        _sources.Section());

    private XElement Subject()
    {
        Boat boat = _card.Boat.Boat;
        Engine engine = _card.Engine.Specification.Engine;
        return SheetFrame.Section("subject", "Boat and engine", SheetFrame.Facts("facts",
        [
            ("Boat", (object[])[Html.Words(boat.Name), $", {Words.Of(boat.Kept)}, {Words.Of(boat.Water)}, {Words.Of(boat.HasSeacock)}"]),
            ("Engine", (object[])[Html.Words($"{_card.Engine.Id}: {engine.Designation}"), $", {Words.Of(engine.Fuel)}, {Words.Of(engine.Cooling)}, {Words.Of(engine.Rotation)}, {Words.Of(engine.PumpDrive)}"]),
            ("Serial number", engine.SerialNumber is string number ? Html.Words(number) : SheetFrame.Write("not stated; write it down:")),
            ("Hours", Hours(_card.Tasks[0].Due)),
            ("Dial today", SheetFrame.Write("h")),
            ("Time by the card", FormattableString.Invariant($"about {Math.Ceiling(_card.Procedure.TotalTime().Minutes / 15) * 15 / 60:0.##} h")),
        ]));
    }

    private static object Hours(TaskDue due)
    {
        if (!due.HoursNow.IsKnown)
        {
            return SheetFrame.Missing(due.HoursNow.Missing);
        }

        EngineHours inAll = due.HoursNow.Value.Estimate;
        string dial = due.DialNow.IsKnown && due.DialNow.Value != inAll ? $" in all, {due.DialNow.Value} on the dial" : "";
        return $"{inAll}{dial}; last read {Words.Iso(due.LastReading!.Value)}";
    }

    private XElement Why() => SheetFrame.Section(
        "why",
        "What is done, and why now",
        SheetFrame.Table("tasks", ["Task", "How urgent", "Why"], _card.Tasks.Select(Task)));

    private XElement Task(JobTask task)
    {
        TaskDue due = task.Due;
        Explanation why = due.Explain(DisplayUnits.Metric);
        return SheetFrame.Row(
            SheetFrame.Head(
                Html.Words(due.Task.Title),
                Html.Tag("br"),
                Html.Tag("span", Html.Class("quiet"), Html.Words(due.TaskId), $", {Words.Of(due.Task.Action)}"),
                task.How is null ? Html.Tag("p", Html.Class("only"), "Not in the steps below: no procedure is known for it.") : null,
                task.CoveredBy is string other ? Html.Tag("p", Html.Class("only"), "Done with ", Html.Words(other), ".") : null),
            SheetFrame.Cell(Html.Tag("span", Html.Class($"state {State(due.Status)}"), Words.Of(due.Status))),
            SheetFrame.Cell(
                Html.Tag("p", Html.Words(Reason(due, why)), ".", _sources.Mark(why.Citations)),
                SheetFrame.Facts("why", [.. why.Lines.Where(line => line.Label is not ("rule" or "hours now")).Select(line => (line.Label, (object)Html.Words(line.Text)))])));
    }

    // "Title: due, 512.0 h or 2027-04-01, hours govern." Title and urgency have columns of their own.
    private static string Reason(TaskDue due, Explanation why)
    {
        string rest = why.Answer.Substring(due.Task.Title.Length);
        return rest.Substring(rest.IndexOf(", ", StringComparison.Ordinal) + 2).TrimEnd('.');
    }

    private static string State(DueStatus status) => status switch
    {
        DueStatus.Overdue => "state-bad",
        DueStatus.Due or DueStatus.DueSoon => "state-near",
        _ => "state-good",
    };

    private XElement? Open() => _card.Missing.Count == 0 ? null : SheetFrame.Section(
        "open",
        "Not known: settle this before you start",
        Html.Tag("ul", Html.Class("box"), _card.Missing.Select(missing => Html.Tag("li", Html.Words(missing), " ", SheetFrame.Write("")))));

    private XElement? Pictures() => _drawings.Count == 0 ? null : SheetFrame.Section(
        "drawings",
        "Drawings",
        Distinct.Elements(_drawings).Zip(_drawings, (svg, drawing) => Html.Tag(
            "figure",
            svg,
            Html.Tag(
                "figcaption",
                drawing.IsLargeOnPaper ? Html.Class("said-above") : null,
                Html.Tag("strong", Html.Words(drawing.Title)),
                ". ",
                Html.Words(drawing.Description)))));

    private XElement? Found()
    {
        Finding[] findings =
        [
            .. _card.Procedure.Findings,
            .. _card.Oil is { Choice.IsKnown: true } oil ? oil.Choice.Value.Findings : [],
            .. _card.Oil is { LastChange.IsKnown: true } last ? last.LastChange.Value.Findings : [],
            .. _card.Kit.Findings,
            .. _card.MovesBelt && _card.Belt.IsKnown ? _card.Belt.Value.Check().Findings : [],
        ];
        return findings.Length == 0 ? null : SheetFrame.Section("findings", "Found beforehand", FindingList.Of(findings, _lead, _sources));
    }
}
