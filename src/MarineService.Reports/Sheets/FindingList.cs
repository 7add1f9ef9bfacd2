using System.Xml.Linq;
using MarineService.Core;
using MarineService.Reports.Internal;

namespace MarineService.Reports.Sheets;

/// <summary>What was found, the gravest first: code, how grave, what, and what to do.</summary>
internal static class FindingList
{
    internal static XElement Of(IEnumerable<Finding> findings, DisplayUnits lead, SourceList sources) => SheetFrame.Table(
        "findings",
        ["Rule", "How grave", "What, and what to do"],
        findings.OrderByDescending(finding => finding.Severity).Select(finding => SheetFrame.Row(
            SheetFrame.Head(finding.Code),
            SheetFrame.Cell(Html.Tag("span", Html.Class($"state {State(finding.Severity)}"), Words.Of(finding.Severity))),
            SheetFrame.Cell(
                Html.Tag("p", Html.Words(Words.InBoth(finding, lead)), ".", sources.Mark(finding.Rule.Citation)),
                Words.Remedy(finding, lead) is string remedy ? Html.Tag("p", Html.Tag("strong", "Do: "), Html.Words(remedy)) : null))));

    private static string State(Severity severity) => severity switch
    {
        Severity.Stop => "state-bad",
        Severity.Act or Severity.Advice => "state-near",
        _ => "",
    };
}
