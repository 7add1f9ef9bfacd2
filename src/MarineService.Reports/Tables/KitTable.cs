using MarineService.Core.Parts;

namespace MarineService.Reports.Tables;

/// <summary>The kit list as a table: a line for each part.</summary>
internal static class KitTable
{
    internal static readonly string[] Columns =
        ["part", "title", "unit", "tool", "for the tasks", "reserve", "spare aboard", "total", "on shelf", "off the shelf", "to buy", "wanted by"];

    internal static IEnumerable<CsvRow> Rows(KitList kit) => kit.Lines.Select(line => new CsvRow()
        .Text(line.Part.Number)
        .Text(line.Part.Title)
        .Text(line.Part.Unit ?? "piece")
        .YesOrNo(line.Part.IsTool)
        .Number(line.Wanted)
        .Number(line.Reserve)
        .Number(line.Aboard)
        .Number(line.Total)
        .Number(line.OnShelf)
        .Number(line.FromShelf)
        .Number(line.ToBuy)
        .Text(string.Join(", ", line.WantedBy)));
}
