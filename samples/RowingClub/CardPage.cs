using System.Globalization;
using MarineService.Core;
using MarineService.Core.Jobs;
using MarineService.Core.Parts;
using MarineService.Core.Procedures;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using UnitsNet;

namespace RowingClub;

/// <summary>A job card on paper, and the verdict on a visit.</summary>
internal static class CardPage
{
    internal static void Show(Page page, JobCard card, DisplayUnits units)
    {
        page.Title($"Job card {card.Id}");
        page.Line("  The engine's own manual outranks this card. Stop where something is not as the card says.");
        page.Line();
        foreach (JobTask task in card.Tasks.Where(task => task.How is not null))
        {
            page.Task(task.Due);
        }

        List(page, "Not known", card.Missing);
        Oil(page, card, units);
        if (card.MovesBelt && card.Belt.IsKnown)
        {
            page.Line($"  Belt         {card.Belt.Value}");
        }

        Kit(page, card.Kit, units);
        List(page, "Tools", [.. card.Tools.Select(tool => tool.ToString())]);
        List(page, "Uses up", card.Consumables);
        page.Line();
        int number = 0;
        foreach (ProcedureStep step in card.Steps)
        {
            Show(page, step, ++number);
        }

        page.Line();
    }

    internal static void Show(Page page, JobCompletion completion, DisplayUnits units)
    {
        page.Title($"{completion.Proof.Card.Id}: {completion.Proof}");
        foreach (Finding finding in completion.Proof.Findings)
        {
            page.Finding(finding, units);
        }

        if (!completion.IsEntered)
        {
            page.Line("  Nothing was entered.");
            return;
        }

        page.Line($"  Entered, evidence {completion.Grade}:");
        foreach (LogEntry entry in completion.Entries)
        {
            page.Line($"    {entry.Id} {entry.Fact}");
        }

        page.Line("  Next due:");
        HashSet<string> done = [.. completion.Proof.Card.Tasks.Where(task => task.How is not null).Select(task => task.TaskId)];
        foreach (TaskDue task in completion.NextDue.MostUrgentFirst.Where(task => done.Contains(task.TaskId)))
        {
            page.Task(task);
        }
    }

    private static void Show(Page page, ProcedureStep step, int number)
    {
        string time = step.Time is Duration minutes ? string.Format(CultureInfo.InvariantCulture, " ({0:0} min)", minutes.Minutes) : "";
        string only = step.Condition is Circumstance condition ? $" [only if {(step.ConditionHolds ? "" : "not: ")}{InWords(condition)}]" : "";
        page.Line(string.Format(CultureInfo.InvariantCulture, "  {0,2} [ ] {1}{2}{3}  ({4})", number, step.Text, time, only, step.Id));
        foreach (Caution caution in step.Cautions)
        {
            page.Line($"         {caution} [{caution.Citation}]");
        }

        if (step.Tools.Count + step.Consumables.Count > 0)
        {
            page.Line($"         with: {string.Join("; ", step.Tools.Select(tool => tool.ToString()).Concat(step.Consumables))}");
        }

        foreach (HoldPoint point in step.HoldPoints)
        {
            page.Line($"         HOLD {point.Id}: {point}");
        }
    }

    private static void Oil(Page page, JobCard card, DisplayUnits units)
    {
        if (card.Oil is not JobOil oil)
        {
            return;
        }

        string grade = oil.Choice.IsKnown
            ? oil.Choice.Value.Best is { IsKnown: true } best ? best.Value.Designation : $"none fits: {string.Join(" ", oil.Choice.Value.Best.Missing)}"
            : "not known";
        page.Line($"  Oil          {grade}, to have {Volume(oil.ToHave, units)}, first pour {Volume(oil.FirstPour, units)}, last time {Volume(oil.PouredLastTime, units)}");
    }

    // What is not known of the kit stands under "Not known".
    private static void Kit(Page page, JobKit kit, DisplayUnits units)
    {
        if (kit.List.IsKnown)
        {
            List(page, "Kit", [.. kit.List.Value.Lines.Select(InWords)]);
            List(page, "To buy", [.. kit.Purchases.Select(one => one.ToString()), .. kit is { Purchases.Count: > 1, Price.IsKnown: true } ? [string.Format(CultureInfo.InvariantCulture, "{0:0.00##} in all", kit.Price.Value)] : Array.Empty<string>()]);
        }

        List(page, "Filter", [.. kit.Filters.Select(one => (one.Comparison.IsKnown ? one.Comparison.Value.ToString() : $"{one.Part}: not known") + (one.Need.MayBePrefilled ? ", may be filled first" : ", not filled first"))]);
        foreach (Finding finding in kit.Findings)
        {
            page.Finding(finding, units);
        }

        if (kit.ComesOff.IsKnown)
        {
            List(page, "Comes off", kit.Tally.IsZero ? ["nothing that is counted"] : [.. kit.ComesOff.Value.Select(item => item.ToString())]);
        }
    }

    private static string InWords(KitLine line)
    {
        string much = string.Format(CultureInfo.InvariantCulture, "{0:0.###}{1}", line.Total, line.Part.Unit is null ? "" : " " + line.Part.Unit);
        string shelf = line.FromShelf > 0 ? string.Format(CultureInfo.InvariantCulture, ", {0:0.###} off the shelf", line.FromShelf) : "";
        string lacking = line.ToBuy > 0 ? string.Format(CultureInfo.InvariantCulture, ", {0:0.###} to buy", line.ToBuy)
            : line.ToGather > 0 ? string.Format(CultureInfo.InvariantCulture, ", {0:0.###} to gather", line.ToGather) : "";
        return $"{much} of {line.Part}{shelf}{lacking}; for {string.Join(", ", line.WantedBy)}";
    }

    private static string InWords(Circumstance circumstance) => circumstance switch
    {
        Circumstance.Petrol => "petrol is aboard",
        Circumstance.BeltBeforePump => "a belt lies in front of the pump's cover",
        Circumstance.Seacock => "there is a seacock",
        Circumstance.PiecesMissing => "pieces of the impeller are missing",
        Circumstance.OilUnfit => "the oil was found unfit",
        _ => "raw water runs through the block",
    };

    private static string Volume(Answer<Volume> volume, DisplayUnits units) => !volume.IsKnown ? "not known"
        : units == DisplayUnits.UsCustomary ? string.Format(CultureInfo.InvariantCulture, "{0:0.0} US qt", volume.Value.UsQuarts)
        : string.Format(CultureInfo.InvariantCulture, "{0:0.0} L", volume.Value.Liters);

    private static void List(Page page, string title, IReadOnlyList<string> lines)
    {
        for (int i = 0; i < lines.Count; i++)
        {
            page.Line($"  {(i == 0 ? title : ""),-12} {lines[i]}");
        }
    }
}
