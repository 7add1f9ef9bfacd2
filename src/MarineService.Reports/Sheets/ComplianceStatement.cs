using System.Xml.Linq;
using MarineService.Core;
using MarineService.Core.Internal;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using MarineService.Reports.Internal;

namespace MarineService.Reports.Sheets;

/// <summary>What the record shows of the intervals that were to be kept: each service that fell due, whether it was kept, by what that is shown, and what would mend the rest.</summary>
public static class ComplianceStatement
{
    /// <summary>The statement about one engine.</summary>
    /// <param name="boat">The boat and its engines.</param>
    /// <param name="report">What was found of the engine's log.</param>
    /// <param name="lead">Which units stand first; the other ones stand beside them.</param>
    /// <param name="paper">Which paper it is laid out for; whatever the printer is set to by default.</param>
    /// <param name="engine">The engine's id in the boat.</param>
    /// <returns>The statement, of one file.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="boat"/>, <paramref name="report"/> or <paramref name="engine"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="lead"/> or <paramref name="paper"/> is not a defined value.</exception>
    /// <exception cref="KeyNotFoundException">The boat has no such engine.</exception>
    public static Sheet Of(
        BoatSpecification boat, ComplianceReport report, DisplayUnits lead = DisplayUnits.Metric, Paper paper = Paper.OfPrinter, string engine = LogEntry.MainEngine)
    {
        Guard.NotNull(boat);
        Guard.NotNull(report);
        Guard.NotNull(engine);
        Guard.Defined(lead);
        FittedEngine fitted = boat.Engines.FirstOrDefault(one => one.Id == engine) ?? throw new KeyNotFoundException($"{boat} has no engine '{engine}'.");
        SourceList sources = new();
        return SheetFrame.Of(
            "compliance-statement",
            "Compliance statement",
            $"{boat.Boat.Name}, {fitted.Specification.Engine.Designation}",
            $"as of {Words.Iso(report.AsOf)}, {Basis(report.Basis)}",
            "It says what the record shows on that day; where the record is silent, so is this.",
            Guard.Defined(paper),
            Summary(fitted, report),
            Items(report, sources),
            Mending(report, lead, sources),
            Signed(),
            sources.Section());
    }

    private static string Basis(ComplianceBasis basis) => basis == ComplianceBasis.Warranty
        ? "for warranty: with the tolerance that the maker grants, none where none is stated"
        : "for planning: with the tolerance of each task";

    private static XElement Summary(FittedEngine engine, ComplianceReport report) => SheetFrame.Section("summary", "In short", SheetFrame.Facts("facts",
    [
        ("Engine", (object[])[Html.Words($"{engine.Id}: {engine.Specification.Engine.Designation}"), ", serial number ", engine.Specification.Engine.SerialNumber is string number ? Html.Words(number) : "not stated"]),
        ("Kept in all", $"{report.Kept} of {report.Of} that fell due"),
        .. new[] { ComplianceVerdict.Kept, ComplianceVerdict.KeptWithinTolerance, ComplianceVerdict.Exceeded, ComplianceVerdict.CannotBeShown, ComplianceVerdict.Missing, ComplianceVerdict.FirstOnRecord }
            .Select(verdict => (Words.Of(verdict), (object)FormattableString.Invariant($"{report.Items.Count(item => item.Verdict == verdict)}"))),
        ("Exceeded most", report.WorstExcess is ComplianceItem worst ? Html.Words($"{worst.Occurrence.Task.Title}, due {worst.Occurrence.Due}") : "none was exceeded"),
    ]));

    private static XElement Items(ComplianceReport report, SourceList sources) => SheetFrame.Section(
        "items",
        "Each service that fell due",
        report.Items.Count == 0
            ? Html.Tag("p", "Nothing fell due, or nothing is on record.")
            : SheetFrame.Table("items", ["Task", "Verdict", "Due, done, and why the verdict"], report.Items.Select(Item)),
        Html.Tag(
            "ul",
            Html.Class("quiet"),
            report.Items.Select(item => item.Explain(DisplayUnits.Metric)).SelectMany(why => why.Lines.Where(line => line.Label == "rule").Select(line => (line.Text, why.Citations)))
                .GroupBy(rule => rule.Text, StringComparer.Ordinal).Select(rule => Html.Tag("li", rule.Key, sources.Mark(rule.First().Citations)))));

    private static XElement Item(ComplianceItem item)
    {
        ServiceOccurrence occurrence = item.Occurrence;
        Explanation why = item.Explain(DisplayUnits.Metric);
        return SheetFrame.Row(
            SheetFrame.Head(
                Html.Words(occurrence.Task.Title),
                Html.Tag("br"),
                Html.Tag("span", Html.Class("quiet"), Html.Words(occurrence.Task.Id), occurrence.IsFirstService ? ", first service" : null)),
            SheetFrame.Cell(Html.Tag("span", Html.Class($"state {State(item.Verdict)}"), Words.Of(item.Verdict))),
            SheetFrame.Cell(SheetFrame.Facts("why",
            [
                .. why.Lines.Where(line => line.Label is not ("evidence" or "rule")).Select(line => (line.Label, (object)Html.Words(line.Text))),
                ("shown by", item.Grade is EvidenceGrade grade ? Words.Of(grade) : "no entry"),
                .. item.Window is { } window && window.From < window.To ? [("window", (object)$"{Words.Iso(window.From)} to {Words.Iso(window.To)}")] : Array.Empty<(string, object)>(),
            ])));
    }

    private static string State(ComplianceVerdict verdict) => verdict switch
    {
        ComplianceVerdict.Kept or ComplianceVerdict.KeptWithinTolerance => "state-good",
        ComplianceVerdict.Exceeded or ComplianceVerdict.Missing => "state-bad",
        ComplianceVerdict.CannotBeShown => "state-near",
        _ => "",
    };

    // One rule, one advice; below it everything that it was found of.
    private static XElement Mending(ComplianceReport report, DisplayUnits lead, SourceList sources) => SheetFrame.Section(
        "mending",
        "What stands against it, and what would mend it",
        report.Findings.Count == 0
            ? Html.Tag("p", "Nothing stands against it.")
            : report.Findings.GroupBy(finding => finding.Rule).OrderByDescending(rule => rule.Key.Severity).Select(rule => Html.Tag(
                "div",
                Html.Class("rule"),
                Html.Tag("h3", $"{rule.Key.Code}, {Words.Of(rule.Key.Severity)}: {rule.Key.Title}", sources.Mark(rule.Key.Citation)),
                rule.GroupBy(finding => Words.Remedy(finding, lead)).Select(advice => new object[]
                {
                    Html.Tag("p", Html.Tag("strong", "Do: "), advice.Key is string remedy ? Html.Words(remedy) : "Nothing mends it afterwards; it stays on record."),
                    Html.Tag("ul", advice.Select(finding => Html.Tag("li", Html.Words(Words.InBoth(finding, lead))))),
                }))));

    private static XElement Signed() => SheetFrame.Section(
        "signatures",
        "Stated by",
        SheetFrame.Signatures("Name", "Date"));
}
