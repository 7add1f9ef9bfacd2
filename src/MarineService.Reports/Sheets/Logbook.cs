using System.Xml.Linq;
using MarineService.Core;
using MarineService.Core.Engines;
using MarineService.Core.Internal;
using MarineService.Core.Records;
using MarineService.Core.Specifications;
using MarineService.Reports.Internal;
using NodaTime;

namespace MarineService.Reports.Sheets;

/// <summary>
/// The log of a boat as one reads it before buying her, or hands it in with a claim: every entry, also those that were corrected or
/// withdrawn, with who, what shows it, and how well.
/// </summary>
public static class Logbook
{
    /// <summary>The logbook of a boat and all her engines.</summary>
    /// <param name="boat">The boat and its engines; gives tasks their titles.</param>
    /// <param name="log">What was read and done.</param>
    /// <param name="asOf">The day on which it is written, from 1900 to 2199.</param>
    /// <param name="lead">Which units stand first; the other ones stand beside them.</param>
    /// <param name="paper">Which paper it is laid out for; whatever the printer is set to by default.</param>
    /// <returns>The logbook, of one file.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="boat"/> or <paramref name="log"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="asOf"/> is outside 1900 to 2199, or <paramref name="lead"/> or <paramref name="paper"/> is not a defined value.
    /// </exception>
    public static Sheet Of(BoatSpecification boat, ServiceLog log, LocalDate asOf, DisplayUnits lead = DisplayUnits.Metric, Paper paper = Paper.OfPrinter)
    {
        Guard.NotNull(boat);
        Guard.NotNull(log);
        Guard.Date(asOf);
        Guard.Defined(lead);
        string[] known = [.. boat.Engines.Select(engine => engine.Id), BoatSpecification.Scope];
        string[] scopes = [.. known, .. log.Entries.Select(entry => entry.Scope).Where(scope => !known.Contains(scope)).Distinct()];
        return SheetFrame.Of(
            "logbook",
            "Logbook",
            boat.Boat.Name,
            $"as of {Words.Iso(asOf)}, {log.Entries.Count} entries",
            "It says what was entered, by whom, and what shows it; no more.",
            Guard.Defined(paper),
            Subject(boat, log, asOf),
            scopes.Select((scope, i) => Entries(boat, log, scope, asOf, lead, i + 1)),
            Grades());
    }

    private static XElement Subject(BoatSpecification boat, ServiceLog log, LocalDate asOf)
    {
        int standing = log.Standing().Count();
        return SheetFrame.Section("subject", "Boat and engines", SheetFrame.Facts("facts",
        [
            ("Boat", (object[])[Html.Words(boat.Boat.Name), $", {Words.Of(boat.Boat.Kept)}, {Words.Of(boat.Boat.Water)}"]),
            .. boat.Engines.Select(engine => ("Engine", (object)new object[]
            {
                Html.Words($"{engine.Id}: {engine.Specification.Engine.Designation}"),
                engine.Specification.Engine.SerialNumber is string number ? new object[] { ", serial number ", Html.Words(number) } : ", serial number not stated",
                $"; {Hours(log.History(engine.Specification, asOf, engine.Id).Meter.HoursOn(asOf))}",
            })),
            ("Entries", $"{log.Entries.Count}, of which {standing} stand and {log.Entries.Count - standing} were corrected, withdrawn or withdraw another"),
            ("Written later", $"{log.Standing().Count(entry => entry.IsReconstructed)} of those that stand"),
        ]));
    }

    private static XElement Entries(BoatSpecification boat, ServiceLog log, string scope, LocalDate asOf, DisplayUnits lead, int number)
    {
        FittedEngine? engine = boat.Engines.FirstOrDefault(one => one.Id == scope);
        FactWords words = new([.. engine?.Specification.Tasks ?? [], .. boat.Tasks]);
        MeterHistory? meter = engine is null ? null : log.History(engine.Specification, asOf, scope).Meter;
        Dictionary<string, LogEntry> correctedBy = log.Entries.Where(entry => entry.Corrects is not null).ToDictionary(entry => entry.Corrects!, StringComparer.Ordinal);
        XElement[] rows =
        [
            .. log.Entries.Where(entry => entry.Scope == scope).OrderBy(entry => entry.Date)
                .Select(entry => Entry(entry, words, meter, correctedBy.TryGetValue(entry.Id!, out LogEntry? by) ? by : null, lead)),
        ];
        string heading = scope == BoatSpecification.Scope ? "The boat" : engine is null ? $"Engine {scope}, not in the data sheet" : $"Engine {scope}, {engine.Specification}";
        return SheetFrame.Section(
            FormattableString.Invariant($"entries-{number}"),
            heading,
            rows.Length == 0
                ? Html.Tag("p", "No entry.")
                : SheetFrame.Table("log", ["No.", "Date", "Hours", "What", "By", "What shows it"], rows));
    }

    private static XElement Entry(LogEntry entry, FactWords words, MeterHistory? meter, LogEntry? correctedBy, DisplayUnits lead) => SheetFrame.Row(
        SheetFrame.Head(Html.Words(entry.Id!)),
        SheetFrame.Cell(Html.Class("date"), Words.Iso(entry.Date)),
        SheetFrame.Cell(HoursOf(entry, meter, correctedBy)),
        SheetFrame.Cell(
            Html.Tag(correctedBy is null ? "span" : "s", Html.Words(words.Of(entry, lead))),
            correctedBy is null ? null : Html.Tag(
                "p",
                Html.Class("only"),
                correctedBy.Fact is null ? "Withdrawn by entry " : "Corrected by entry ",
                Html.Words(correctedBy.Id!),
                "."),
            entry.Corrects is string other && entry.Fact is not null ? Html.Tag("p", "Corrects entry ", Html.Words(other), ".") : null,
            entry.Note is string note ? Html.Tag("p", Html.Class("quiet"), Html.Words(note)) : null),
        SheetFrame.Cell(
            entry.By is string by ? Html.Words(by) : "not stated",
            entry.CheckedBy is string checkedBy ? new object[] { Html.Tag("br"), "checked by ", Html.Words(checkedBy) } : null),
        SheetFrame.Cell(
            Words.Of(entry.Grade),
            entry.Evidence.Select(proof => Html.Tag(
                "p",
                Html.Class("quiet"),
                $"{Words.Of(proof.Kind)}: ",
                Html.Words(proof.Reference),
                proof.Sha256 is string hash ? new object[] { ", SHA-256 ", Html.Words(hash) } : null))));

    // What stands counts for the hours in all; what was corrected shows its dial only.
    private static object HoursOf(LogEntry entry, MeterHistory? meter, LogEntry? correctedBy)
    {
        EngineHours? dial = entry.Fact?.Dial;
        if (correctedBy is not null || meter is null || entry.Fact is null)
        {
            return dial is EngineHours shown ? $"{shown} on the dial" : "no reading";
        }

        Answer<HoursEstimate> inAll = meter.HoursOn(entry.Date);
        return dial is not EngineHours read ? new object[] { "no reading", Html.Tag("p", Html.Class("quiet"), Hours(inAll)) }
            : inAll.IsKnown && inAll.Value.Estimate != read ? new object[] { $"{read} on the dial", Html.Tag("p", Html.Class("quiet"), Hours(inAll)) }
            : $"{read}";
    }

    private static string Hours(Answer<HoursEstimate> hours) => hours.IsKnown ? $"{hours.Value} in all" : $"hours not known: {string.Join(" ", hours.Missing)}";

    private static XElement Grades() => SheetFrame.Section(
        "grades",
        "What shows it, from the strongest to the weakest",
        Html.Tag(
            "ol",
            new[] { EvidenceGrade.PhotoReceiptAndChecker, EvidenceGrade.DialAndReceipt, EvidenceGrade.EntryOnly, EvidenceGrade.Reconstructed }
                .Select(grade => Html.Tag("li", Words.Of(grade)))),
        Html.Tag("p", "A corrected entry is struck out and stays legible. Nothing was taken out of this log."));
}
