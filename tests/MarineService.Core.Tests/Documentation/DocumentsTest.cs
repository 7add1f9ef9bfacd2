using System.Text.Json;
using MarineService.Core.Tests.Architecture;

namespace MarineService.Core.Tests.Documentation;

/// <summary>The documents tell the truth: every C# block and every console block is run, and prints what the document says.</summary>
/// <remarks>Examples write to the console, which is one for the whole process: nothing else may run meanwhile.</remarks>
[Collection(nameof(OneAtATime))]
public sealed class DocumentsTest
{
    /// <summary>Blocks that cannot be run, with the reason that stands before them; a new one must be added here.</summary>
    private static readonly string[] MarkedNotRun = [];

    private static readonly (string File, IReadOnlyList<MarkdownExample> Blocks)[] Documents =
    [
        .. new[] { Path.Combine(Repository.Root, "README.md") }
            .Concat(Directory.Exists(Path.Combine(Repository.Root, "docs")) ? Repository.Files(Path.Combine(Repository.Root, "docs"), "*.md") : [])
            .Concat(Repository.LibrarySources.SelectMany(library => Repository.Files(library, "*.md")))
            .Append(Path.Combine(Repository.Root, "DEVELOPERS.md"))
            .Select(Repository.Relative)
            .Select(file => (file, MarkdownExample.In(file, File.ReadAllText(Path.Combine(Repository.Root, file))))),
    ];

    [Fact]
    public void EveryCSharpBlock_PrintsWhatTheDocumentSays()
    {
        string[] faults =
        [
            .. Documents.Where(document => !IsOfARoom(document.File)).SelectMany(document => CSharpExample.Faults(document.Blocks)),
            .. Documents.Where(document => IsOfARoom(document.File)).SelectMany(document => CSharpExample.Faults(document.Blocks, RoomUsings())),
        ];
        Assert.True(faults.Length == 0, string.Join('\n', faults));
    }

    [Fact]
    public void EveryConsoleBlock_PrintsWhatTheDocumentSays()
    {
        // The sample is built once, for the project that tests the net10.0 build.
        string[] faults = ConsoleExample.SampleProgram is null ? [] : [.. Documents.Where(IsRun).SelectMany(document => ConsoleExample.Faults(document.Blocks))];
        Assert.True(faults.Length == 0, string.Join('\n', faults));
    }

    /// <summary>A block of a language that nobody looks at would be a promise that nobody keeps.</summary>
    [Fact]
    public void EveryBlock_IsOfALanguageThatIsLookedAt()
    {
        string[] faults =
        [
            .. Documents.SelectMany(document => document.Blocks).Where(block => block.NotRun is null && block.Language is not ("csharp" or "console" or "json" or "text") && (block.Language != "csv" || block.FileName.Length == 0))
                .Select(block => $"{block.Place}: a block of '{block.Language}'; mark it with <!-- not run: reason -->"),
        ];
        Assert.True(faults.Length == 0, string.Join('\n', faults));
    }

    /// <summary>The blocks are found at all: the front page has both kinds, and each guide that is there was read.</summary>
    [Fact]
    public void Documents_HaveTheirBlocksFound()
    {
        IReadOnlyList<MarkdownExample> frontPage = Documents.Single(document => document.File == "README.md").Blocks;
        Assert.Contains(frontPage, block => block.Language == "csharp");
        Assert.Contains(frontPage, block => block.Language == "console");
        foreach ((string file, IReadOnlyList<MarkdownExample> blocks) in Documents)
        {
            int fences = File.ReadLines(Path.Combine(Repository.Root, file)).Count(line => line.TrimStart().StartsWith("```", StringComparison.Ordinal));
            Assert.True(fences == 2 * blocks.Count, $"{file}: {fences} fences, but {blocks.Count} blocks found");
        }
    }

    [Fact]
    public void EveryJsonBlock_IsJson()
    {
        string[] faults =
        [
            .. Documents.SelectMany(document => document.Blocks).Where(block => block.Language == "json" && block.NotRun is null)
                .Select(block => (block.Place, Fault: JsonFault(block.Code))).Where(block => block.Fault is not null).Select(block => $"{block.Place}: {block.Fault}"),
        ];
        Assert.True(faults.Length == 0, string.Join('\n', faults));
    }

    [Fact]
    public void BlocksThatAreNotRun_AreTheKnownOnes() =>
        Assert.Equal(
            MarkedNotRun,
            Documents.SelectMany(document => document.Blocks).Where(block => block.NotRun is not null).Select(block => $"{block.File}: {block.NotRun}"));

    // A stranger's sample is only asked what the hobbyist's guide asks.
    private static bool IsRun((string File, IReadOnlyList<MarkdownExample> Blocks) document) =>
        ConsoleExample.StrangersProgram is null || document.File == "docs/hobbyist.md";

    // A room's readme is read beside its sources: the library's own namespaces need no saying there.
    private static bool IsOfARoom(string file) => file.StartsWith("src/", StringComparison.Ordinal);

    private static string RoomUsings() =>
        string.Concat(Library.PublicTypes.Select(type => type.Namespace!).Append("NodaTime").Append("UnitsNet").Distinct()
            .Select(space => $"\nglobal using {space};")) + "\nglobal using Duration = UnitsNet.Duration;";

    private static string? JsonFault(string text)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(text);
            return null;
        }
        catch (JsonException fault)
        {
            return fault.Message;
        }
    }
}
