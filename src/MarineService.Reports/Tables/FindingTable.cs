using MarineService.Core;

namespace MarineService.Reports.Tables;

/// <summary>Findings as a table: a line for each.</summary>
internal static class FindingTable
{
    internal static readonly string[] Columns = ["code", "severity", "concerns", "finding", "remedy", "source"];

    internal static IEnumerable<CsvRow> Rows(IReadOnlyList<Finding> findings, DisplayUnits units) => findings.Select(finding => new CsvRow()
        .Text(finding.Code)
        .Text(Severity(finding.Severity))
        .Text(finding.Subject)
        .Text(finding.Message(units))
        .Text(finding.Rule.Remedy)
        .Text(finding.Rule.Citation.ToString()));

    private static string Severity(Severity severity) => severity switch
    {
        Core.Severity.Note => "note",
        Core.Severity.Advice => "advice",
        Core.Severity.Act => "act",
        _ => "stop: do not run the engine",
    };
}
