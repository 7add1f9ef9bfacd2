using System.Xml.Linq;
using MarineService.Core.Jobs;
using MarineService.Core.Procedures;
using MarineService.Reports.Internal;

namespace MarineService.Reports.Sheets;

/// <content>What has to be proved, where the waste goes, who signs.</content>
internal sealed partial class ServiceSheetParts
{
    private XElement Proof() => SheetFrame.Section(
        "proof",
        "What has to be proved",
        Html.Tag("p", "Nothing is entered in the log as done that is not proved here and at the hold points."),
        SheetFrame.Table("proof", ["What", "Proved by", "Value"], [.. _card.Tasks.Where(task => task.How is not null).Select(ProofOf), .. Measured()]));

    private XElement ProofOf(JobTask task)
    {
        string[] steps =
        [
            .. task.How!.ProvedBy.Select(_card.Procedure.Find).Where(step => step is not null).Select(step => Number(step!)).Distinct().OrderBy(number => number)
                .Select(number => FormattableString.Invariant($"{number}")),
        ];
        return SheetFrame.Row(
            SheetFrame.Head("Task ", Html.Words(task.TaskId)),
            SheetFrame.Cell(steps.Length == 0 ? "no step of this card" : $"step{(steps.Length == 1 ? "" : "s")} {string.Join(", ", steps)}"),
            SheetFrame.Cell(
                task.NeedsVerdict
                    ? new object[] { SheetFrame.Tick("passed"), " ", SheetFrame.Tick("failed") }
                    : SheetFrame.Tick("done"),
                " ",
                SheetFrame.Write("initials", "write-short")));
    }

    private int Number(ProcedureStep step) => 1 + Enumerable.Range(0, _card.Steps.Count).First(i => _card.Steps[i].Id == step.Id);

    private IEnumerable<XElement> Measured()
    {
        yield return Value("Hour meter", "what the dial shows", "h");
        if (_card.ChangesOil)
        {
            yield return Value("Oil level before", "stick, level, settled; share of the range between the marks", "%");
            yield return Value("Oil that came out", "measured, with the old filter's if it was emptied into the measure", "L or US qt");
            yield return Value("At a temperature of", "oil that came out", "°C or °F");
            yield return Value("Oil poured in", "all pours together", "L or US qt");
            yield return Value("Oil level after the run", "stick, settled; not above full", "%");
        }

        if (_card.MovesBelt)
        {
            yield return SheetFrame.Row(
                SheetFrame.Head("Belt as it lies"),
                SheetFrame.Cell("every pulley that it passes, in order; mark those that its back runs on"),
                SheetFrame.Cell(Enumerable.Range(1, _card.Belt.IsKnown ? _card.Belt.Value.Stops.Count : 8).Select(number => SheetFrame.Write(FormattableString.Invariant($"{number}")))));
        }

        if (_card.Steps.Any(step => step.Acts.Contains(StepAct.Start)))
        {
            yield return Value("Start", "from the start to oil pressure", "s");
            yield return Value("Start", "from the start to water at the exhaust", "s");
        }
    }

    private static XElement Value(string what, string how, string unit) => SheetFrame.Row(
        SheetFrame.Head(what), SheetFrame.Cell(how), SheetFrame.Cell(Html.Tag("span", Html.Class("write")), " ", unit));

    private XElement Waste()
    {
        bool Does(StepAct act) => _card.Steps.Any(step => step.Acts.Contains(act));
        IEnumerable<XElement?> rows =
        [
            _card.Oil is JobOil oil
                ? Landed("Old oil", "sound container marked \"Used Oil\"; collection point", oil.Sump.IsKnown ? $"up to {Words.InBoth(oil.Sump.Value.ServiceFill, _lead)}" : null)
                : null,
            Does(StepAct.TakeFilterOff) ? Landed("Old oil filter", "drained hot, upside down; collection point", null) : null,
            Does(StepAct.OpenFuel) ? Landed("Fuel, water from it, old fuel filter", "closed container fit for fuel; collection point for hazardous waste", null) : null,
            Landed("Coolant and antifreeze, if any ran out", "caught, in a marked container, never mixed with oil; collection point", null),
            Landed("Oily pads and rags", "hazardous waste; not in the bin", null),
        ];
        return SheetFrame.Section(
            "waste",
            "Waste: nothing overboard, nothing into the bilge",
            SheetFrame.Table("waste", ["What", "Where it goes", "Landed"], rows.Where(row => row is not null)!),
            Html.Tag("p", Html.Class("quiet"), "Common practice; local rules say which collection point takes what."));
    }

    private static XElement Landed(string what, string where, string? amount) => SheetFrame.Row(
        SheetFrame.Head(what, amount is null ? null : Html.Tag("p", Html.Class("quiet"), amount)),
        SheetFrame.Cell(where),
        SheetFrame.Cell(SheetFrame.Write("how much", "write-short"), SheetFrame.Write("place")));

    private static XElement Signatures() => SheetFrame.Section(
        "signatures",
        "Signed",
        SheetFrame.Signatures("Done by", "Date", "Checked by", "Date"),
        Html.Tag("p", Html.Class("quiet"), "Keep the receipts for oil and filters and a photograph of the dial with this sheet."));
}
