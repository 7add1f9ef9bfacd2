using System.Text.Json;
using MarineService.Core.Tests.Architecture;

namespace MarineService.Core.Tests.Documentation;

/// <summary>The documents tell the truth: every C# block is run, and prints what the document says.</summary>
/// <remarks>Examples write to the console, which is one for the whole process: nothing else may run meanwhile.</remarks>
[Collection(nameof(OneAtATime))]
public sealed class DocumentsTest
{
    /// <summary>Blocks that cannot be run, with the reason that stands before them; a new one must be added here.</summary>
    private static readonly string[] MarkedNotRun = [];

    [Fact]
    public void EveryCSharpBlock_PrintsWhatTheDocumentSays()
    {
        string[] faults =
        [
            .. DocumentsOfTheRepository.All.Where(document => !IsOfARoom(document.File)).SelectMany(document => CSharpExample.Faults(document.Blocks)),
            .. DocumentsOfTheRepository.All.Where(document => IsOfARoom(document.File)).SelectMany(document => CSharpExample.Faults(document.Blocks, RoomUsings())),
        ];
        Assert.True(faults.Length == 0, string.Join('\n', faults));
    }

    /// <summary>A block of a language that nobody looks at would be a promise that nobody keeps.</summary>
    [Fact]
    public void EveryBlock_IsOfALanguageThatIsLookedAt()
    {
        string[] faults =
        [
            .. DocumentsOfTheRepository.All.SelectMany(document => document.Blocks).Where(block => block.NotRun is null && block.Language is not ("csharp" or "console" or "json" or "text") && (block.Language != "csv" || block.FileName.Length == 0))
                .Select(block => $"{block.Place}: a block of '{block.Language}'; mark it with <!-- not run: reason -->"),
        ];
        Assert.True(faults.Length == 0, string.Join('\n', faults));
    }

    /// <summary>The blocks are found at all: the front page has both kinds, and each guide that is there was read.</summary>
    [Fact]
    public void Documents_HaveTheirBlocksFound()
    {
        IReadOnlyList<MarkdownExample> frontPage = DocumentsOfTheRepository.All.Single(document => document.File == "README.md").Blocks;
        Assert.Contains(frontPage, block => block.Language == "csharp");
        Assert.Contains(frontPage, block => block.Language == "console");
        foreach ((string file, IReadOnlyList<MarkdownExample> blocks) in DocumentsOfTheRepository.All)
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
            .. DocumentsOfTheRepository.All.SelectMany(document => document.Blocks).Where(block => block.Language == "json" && block.NotRun is null)
                .Select(block => (block.Place, Fault: JsonFault(block.Code))).Where(block => block.Fault is not null).Select(block => $"{block.Place}: {block.Fault}"),
        ];
        Assert.True(faults.Length == 0, string.Join('\n', faults));
    }

    [Fact]
    public void BlocksThatAreNotRun_AreTheKnownOnes() =>
        Assert.Equal(
            MarkedNotRun,
            DocumentsOfTheRepository.All.SelectMany(document => document.Blocks).Where(block => block.NotRun is not null).Select(block => $"{block.File}: {block.NotRun}"));

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
