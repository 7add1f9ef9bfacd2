using MarineService.Core;
using MarineService.Core.Engines;
using MarineService.Core.Procedures;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using NodaTime;
using NodaTime.Text;
using UnitsNet;

namespace MarineService.Reports.Internal;

/// <summary>Values in the words and figures of a page.</summary>
internal static class Words
{
    internal static string Iso(LocalDate date) => LocalDatePattern.Iso.Format(date);

    /// <summary>A text in the leading units, with the words that the other units change beside them: "holds 6.00 L (6.34 US qt) in all".</summary>
    internal static string InBoth(Func<DisplayUnits, string> text, DisplayUnits lead)
    {
        (string first, string second) = (text(lead), text(lead == DisplayUnits.Metric ? DisplayUnits.UsCustomary : DisplayUnits.Metric));
        if (first == second)
        {
            return first;
        }

        int least = Math.Min(first.Length, second.Length);
        int before = 0;
        while (before < least && first[before] == second[before])
        {
            before++;
        }

        // Whole words only, and never a unit without its number.
        before = WordBegins(first, before);
        while (before > 1 && first[before - 2] is >= '0' and <= '9')
        {
            before = WordBegins(first, before - 1);
        }

        int after = 0;
        while (after < least - before && first[first.Length - 1 - after] == second[second.Length - 1 - after])
        {
            after++;
        }

        int from = first.IndexOf(' ', first.Length - after);
        after = from >= 0 ? first.Length - from : after > 0 && first[first.Length - 1] == '.' ? 1 : 0;
        return $"{first.Substring(0, first.Length - after)} ({second.Substring(before, second.Length - after - before)}){first.Substring(first.Length - after)}";
    }

    internal static string InBoth(Volume volume, DisplayUnits lead) =>
        InBoth(Figure.Of("volume", volume.Liters, FigureUnit.Liter).ToString, lead);

    internal static string InBoth(Finding finding, DisplayUnits lead) => InBoth(finding.Message, lead);

    /// <summary>What to do about it; null when there is nothing to do.</summary>
    internal static string? Remedy(Finding finding, DisplayUnits lead) => finding.Rule.Remedy is null
        ? null
        : InBoth(units => finding.Explain(units).Lines.Last(line => line.Label == "do").Text, lead);

    internal static string Of(Severity severity) => severity switch
    {
        Severity.Stop => "Stop: do not run the engine",
        Severity.Act => "Act",
        Severity.Advice => "Advice",
        _ => "Note",
    };

    internal static string Of(DueStatus status) => status switch
    {
        DueStatus.Overdue => "Overdue",
        DueStatus.Due => "Due",
        DueStatus.DueSoon => "Due soon",
        DueStatus.EachUse => "Each use",
        _ => "Not due yet",
    };

    internal static string Of(TaskAction action) => action switch
    {
        TaskAction.Replace => "replace",
        TaskAction.Inspect => "inspect",
        TaskAction.Adjust => "adjust",
        _ => "clean",
    };

    internal static string Of(Circumstance circumstance, bool holds) => circumstance switch
    {
        Circumstance.Petrol => holds ? "petrol is aboard" : "no petrol is aboard",
        Circumstance.BeltBeforePump => holds ? "a belt lies in front of the pump's cover" : "no belt lies in front of the pump's cover",
        Circumstance.Seacock => holds ? "there is a seacock" : "there is no seacock",
        Circumstance.PiecesMissing => holds ? "pieces of the impeller are missing" : "no piece of the impeller is missing",
        Circumstance.OilUnfit => holds ? "the oil was found unfit" : "the oil was found fit",
        _ => holds ? "raw water runs through the block" : "no raw water runs through the block",
    };

    internal static string Of(KeptWhere kept) => kept switch
    {
        KeptWhere.Afloat => "kept afloat",
        KeptWhere.OnTrailer => "kept on a trailer",
        KeptWhere.Ashore => "kept ashore",
        _ => "where she is kept is not stated",
    };

    internal static string Of(WaterKind water) => water switch
    {
        WaterKind.Fresh => "fresh water",
        WaterKind.Brackish => "brackish water",
        WaterKind.Salt => "salt water",
        _ => "water not stated",
    };

    internal static string Of(Fuel fuel) => fuel switch
    {
        Fuel.Petrol => "petrol",
        Fuel.Diesel => "diesel",
        _ => "fuel not stated",
    };

    internal static string Of(CoolingKind cooling) => cooling switch
    {
        CoolingKind.RawWater => "raw-water cooled",
        CoolingKind.FreshWater => "fresh-water cooled",
        _ => "cooling not stated",
    };

    internal static string Of(HandOfRotation hand) => hand switch
    {
        HandOfRotation.Right => "right-hand rotation",
        HandOfRotation.Left => "left-hand rotation",
        _ => "hand of rotation not stated",
    };

    internal static string Of(RawWaterPumpDrive drive) => drive switch
    {
        RawWaterPumpDrive.Belt => "raw-water pump driven by a belt",
        RawWaterPumpDrive.Gear => "raw-water pump driven by gears",
        _ => "drive of the raw-water pump not stated",
    };

    internal static string Of(bool? hasSeacock) => hasSeacock switch
    {
        true => "seacock",
        false => "no seacock",
        _ => "seacock not stated",
    };

    internal static string Of(EvidenceGrade grade) => grade switch
    {
        EvidenceGrade.PhotoReceiptAndChecker => "photograph of the dial, receipt and second signature",
        EvidenceGrade.DialAndReceipt => "dial reading and receipt",
        EvidenceGrade.EntryOnly => "the entry alone",
        _ => "written later",
    };

    internal static string Of(EvidenceKind kind) => kind switch
    {
        EvidenceKind.DialPhoto => "photograph of the dial",
        EvidenceKind.Photo => "photograph",
        EvidenceKind.Receipt => "receipt",
        _ => "document",
    };

    internal static string Of(ComplianceVerdict verdict) => verdict switch
    {
        ComplianceVerdict.Kept => "Kept",
        ComplianceVerdict.KeptWithinTolerance => "Kept within tolerance",
        ComplianceVerdict.Exceeded => "Exceeded",
        ComplianceVerdict.CannotBeShown => "Cannot be shown",
        ComplianceVerdict.Missing => "Missing",
        _ => "First on record",
    };

    private static int WordBegins(string text, int before) => before == 0 ? 0 : text.LastIndexOf(' ', before - 1, before) + 1;
}
