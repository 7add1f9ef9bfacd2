using Markdig;
using Markdig.Syntax;

namespace MarineService.Core.Tests.Documentation;

/// <summary>A fenced block of a document, with what stands round it.</summary>
internal sealed record MarkdownExample(string File, int Line, string Language, string FileName, string Code)
{
    /// <summary>Why it is not run, when a comment before it says so: &lt;!-- not run: reason --&gt;.</summary>
    internal string? NotRun { get; private init; }

    /// <summary>Whether it goes on where the block before it ended: &lt;!-- continues --&gt;.</summary>
    internal bool Continues { get; private init; }

    /// <summary>The block of plain text that follows it, or null: what it prints.</summary>
    internal string? TextAfter { get; private init; }

    internal string Place => $"{File}:{Line}";

    /// <summary>All fenced blocks of a document, in order.</summary>
    internal static IReadOnlyList<MarkdownExample> In(string file, string markdown)
    {
        Block[] blocks = [.. Markdown.Parse(markdown.ReplaceLineEndings("\n")).Descendants<Block>().Where(block => block is LeafBlock)];
        List<MarkdownExample> examples = [];
        for (int i = 0; i < blocks.Length; i++)
        {
            if (blocks[i] is not FencedCodeBlock block)
            {
                continue;
            }

            string comment = i > 0 && blocks[i - 1] is HtmlBlock html ? html.Lines.ToString() : "";
            examples.Add(new MarkdownExample(file, block.Line + 1, LanguageOf(block), block.Arguments?.Trim() ?? "", CodeOf(block))
            {
                NotRun = Between(comment, "<!-- not run:", "-->"),
                Continues = comment.Contains("<!-- continues -->", StringComparison.Ordinal),
                TextAfter = Following(blocks, i) is FencedCodeBlock { Info: "text" } text ? CodeOf(text) : null,
            });
        }

        return examples;
    }

    // A sentence may stand between a block and what it prints; a heading or another block may not.
    private static Block? Following(Block[] blocks, int i) =>
        blocks.Skip(i + 1).SkipWhile((block, j) => j == 0 && block is ParagraphBlock).FirstOrDefault();

    private static string LanguageOf(FencedCodeBlock block) => block.Info switch
    {
        null or "" => "",
        "cs" or "c#" or "C#" => "csharp",
        "sh" or "bash" or "shell" => "console",
        string info => info,
    };

    private static string CodeOf(FencedCodeBlock block) => block.Lines.ToString().TrimEnd('\n');

    private static string? Between(string text, string start, string end)
    {
        int from = text.IndexOf(start, StringComparison.Ordinal);
        int to = from < 0 ? -1 : text.IndexOf(end, from, StringComparison.Ordinal);
        return to < 0 ? null : text.Substring(from + start.Length, to - from - start.Length).Trim();
    }
}
