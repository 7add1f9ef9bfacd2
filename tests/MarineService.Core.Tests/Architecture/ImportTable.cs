using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace MarineService.Core.Tests.Architecture;

/// <summary>Who may import whom, as the contributor guide says it.</summary>
internal sealed class ImportTable
{
    internal const string Base = "base";

    private readonly Dictionary<string, HashSet<string>> _allowed;

    private ImportTable(Dictionary<string, HashSet<string>> allowed) => _allowed = allowed;

    internal IReadOnlyCollection<string> Rooms => _allowed.Keys;

    internal static ImportTable OfDevelopersGuide()
    {
        using Stream stream = typeof(ImportTable).Assembly.GetManifestResourceStream("DEVELOPERS.md")!;
        using StreamReader reader = new(stream);
        return Parse(reader.ReadToEnd());
    }

    /// <summary>Reads the one table whose header ends with "may import".</summary>
    internal static ImportTable Parse(string markdown)
    {
        MarkdownPipeline pipeline = new MarkdownPipelineBuilder().UsePipeTables().Build();
        Table table = Markdown.Parse(markdown, pipeline).Descendants<Table>()
            .Single(candidate => Cells((TableRow)candidate[0])[^1] == "may import");
        Dictionary<string, HashSet<string>> allowed = new(StringComparer.Ordinal) { [Base] = [Base] };
        foreach (TableRow row in table.Skip(1).Cast<TableRow>())
        {
            string[] cells = Cells(row);
            HashSet<string> imports = cells[^1] == "all above"
                ? [.. allowed.Keys]
                : [.. cells[^1].Split(',', StringSplitOptions.TrimEntries)];
            string? unknown = imports.FirstOrDefault(import => !allowed.ContainsKey(import));
            if (unknown is not null)
            {
                throw new InvalidOperationException($"Row '{cells[0]}' imports '{unknown}', which is no row above it.");
            }

            allowed.Add(cells[0], [.. imports, cells[0]]);
        }

        return new ImportTable(allowed);
    }

    /// <summary>The room of a namespace: its first part below the root, or base.</summary>
    internal static string RoomOf(string space, string root)
    {
        string[] parts = space.Length == root.Length ? [] : space.Substring(root.Length + 1).Split('.');
        return parts.Length == 0 || parts[0] == "Internal" ? Base : parts[0];
    }

    internal bool Knows(string room) => _allowed.ContainsKey(room);

    internal bool Allows(string from, string to) => _allowed[from].Contains(to);

    private static string[] Cells(TableRow row) =>
        [.. row.Cast<TableCell>().Select(cell =>
            string.Concat(cell.Descendants<LeafInline>().Select(inline => inline switch
            {
                LiteralInline literal => literal.Content.ToString(),
                CodeInline code => code.Content,
                _ => " ",
            })).Trim())];
}
