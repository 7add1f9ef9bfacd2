namespace MarineService.Core.Tests.Documentation;

/// <summary>The documents tell the truth: every console block is run, and prints what the document says.</summary>
public sealed class ConsoleBlocksTest
{
    [Fact]
    public void EveryConsoleBlock_PrintsWhatTheDocumentSays()
    {
        // The sample is built once, for the project that tests the net10.0 build.
        string[] faults = ConsoleExample.SampleProgram is null ? [] : [.. DocumentsOfTheRepository.All.Where(IsRun).SelectMany(document => ConsoleExample.Faults(document.Blocks))];
        Assert.True(faults.Length == 0, string.Join('\n', faults));
    }

    // A stranger's sample is only asked what the hobbyist's guide asks.
    private static bool IsRun((string File, IReadOnlyList<MarkdownExample> Blocks) document) =>
        ConsoleExample.StrangersProgram is null || document.File == "docs/hobbyist.md";
}
