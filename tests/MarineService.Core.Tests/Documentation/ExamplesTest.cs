namespace MarineService.Core.Tests.Documentation;

/// <summary>The checks on documents find what is wrong with them.</summary>
[Collection(nameof(OneAtATime))]
public sealed class ExamplesTest
{
    private const string Good = """
        # A document

        ```csharp
        using MarineService.Core;

        // A remark, not an output.
        EngineHours due = EngineHours.FromHours(412m).Plus(EngineHours.FromHours(100m));
        Console.WriteLine(due);   // 512.0 h
        foreach (int i in new[] { 1, 2 })
            Console.WriteLine(i);
        // 1
        // 2

        // Another remark.
        ```

        Then it prints:

        <!-- continues -->
        ```cs
        using System.Globalization;
        Console.WriteLine(due.ToString("0.00", CultureInfo.InvariantCulture));
        ```

        ```text
        512.00 h
        ```
        """;

    [Fact]
    public void Document_ThatIsTrue_HasNoFault() => Assert.Empty(CSharpFaults(Good));

    [Theory]
    [InlineData("// 512.0 h", "// 513.0 h", "prints")]
    [InlineData("// 512.0 h", "", "prints")]
    [InlineData("// 2\n", "", "prints")]
    [InlineData("512.00 h", "512.000 h", "prints")]
    [InlineData("FromHours(412m)", "FromHours(-1m)", "threw System.ArgumentOutOfRangeException")]
    [InlineData("EngineHours due", "EngineHour due", "does not compile")]
    [InlineData("using MarineService.Core;", "", "does not compile")]
    public void Document_ThatIsNotTrue_HasAFault(string part, string changed, string expected)
    {
        Assert.Contains(part, Good.ReplaceLineEndings("\n"), StringComparison.Ordinal);
        Assert.Contains(expected, string.Join('\n', CSharpFaults(Good.ReplaceLineEndings("\n").Replace(part, changed, StringComparison.Ordinal))), StringComparison.Ordinal);
    }

    [Fact]
    public void Block_MarkedNotRun_IsLeftAlone_AndCounted()
    {
        const string Text = "<!-- not run: needs a feed -->\n```csharp\nnonsense\n```\n";
        Assert.Empty(CSharpFaults(Text));
        Assert.Equal("needs a feed", Assert.Single(MarkdownExample.In("a.md", Text)).NotRun);
    }

    [Theory]
    [InlineData("$ dotnet run --project samples/RowingClub -- due Curlew\ndue Curlew\nlast\n$ echo $?\n1", "")]
    [InlineData("$ dotnet run --project samples/RowingClub -- due Curlew\n...\nlast", "")]
    [InlineData("$ dotnet run --project samples/RowingClub -- due Curlew\ndue Curlew", "prints")]
    [InlineData("$ dotnet run --project samples/RowingClub -- due Curlew\n...\nmore", "prints")]
    [InlineData("$ dotnet run --project samples/RowingClub -- due Curlew\n...\n$ echo $?\n0", "prints")]
    [InlineData("$ dotnet run --project samples/RowingClub\n\nlast", "")]
    [InlineData("$ rm -r /", "mark the block")]
    [InlineData("dotnet test", "mark the block")]
    public void ConsoleBlock_IsComparedLineByLine(string block, string expected)
    {
        IReadOnlyList<MarkdownExample> document = MarkdownExample.In("a.md", $"```console\n{block}\n```\n");
        string found = string.Join('\n', ConsoleExample.Faults(document, (_, arguments) => (arguments + "\nlast\n", 1)));
        Assert.True(expected.Length == 0 ? found.Length == 0 : found.Contains(expected, StringComparison.Ordinal), found);
    }

    [Fact]
    public void JsonBlock_WithAName_IsThereForTheCommands()
    {
        IReadOnlyList<MarkdownExample> document = MarkdownExample.In(
            "a.md", "```json spec.json\n{ \"a\": 1 }\n```\n\n```console\n$ dotnet run --project samples/RowingClub -- due --spec spec.json\n{ \"a\": 1 }\n```\n");
        Assert.Empty(ConsoleExample.Faults(document, (folder, _) => (File.ReadAllText(Path.Combine(folder, "spec.json")), 0)));
    }

    private static IEnumerable<string> CSharpFaults(string markdown) => CSharpExample.Faults(MarkdownExample.In("a.md", markdown));
}
