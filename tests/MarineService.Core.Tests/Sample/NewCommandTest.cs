namespace MarineService.Core.Tests.Sample;

/// <summary>A boat of one's own: asked, written with comments, and good for every other command at once.</summary>
public sealed class NewCommandTest : IDisposable
{
    private static readonly string[] Answers = ["Wren", "Corrie 24P", "petrol", "raw-water", "belt", "afloat", "yes", "100 12", "4.2", "0.4", "0.9", "412.3", "2026-04-20", "380"];

    private readonly string _folder = Directory.CreateTempSubdirectory("new-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void New_Answered_WritesFilesThatDueReads()
    {
        (string output, string errors, int exit) = SampleRun.In(_folder, "new --today 2026-10-12", Answers);
        Assert.True(exit == 0, errors);
        Assert.Contains("wren.boat.json", output, StringComparison.Ordinal);
        string sheet = File.ReadAllText(Path.Combine(_folder, "wren.boat.json"));
        Assert.Contains("// What is done when", sheet, StringComparison.Ordinal);
        Assert.Contains("\"designation\": \"Corrie 24P\"", sheet, StringComparison.Ordinal);

        (output, errors, exit) = SampleRun.In(_folder, "due --spec wren.boat.json --log wren.log.json --today 2026-10-12");
        Assert.True(exit == 1, errors);
        Assert.Contains("Engine oil and filter - 480.0 h or 2027-04-20", output, StringComparison.Ordinal);
        Assert.Contains("Raw-water pump impeller: inspect - now, no record", output, StringComparison.Ordinal);
    }

    /// <summary>Nothing known is said as nothing known: no oil account is made of figures that nobody gave.</summary>
    [Fact]
    public void New_WithNamesAlone_LeavesTheRestUnsaid()
    {
        (_, string errors, int exit) = SampleRun.In(_folder, "new", ["Wren", "Corrie 24P"]);
        Assert.True(exit == 0, errors);
        string sheet = File.ReadAllText(Path.Combine(_folder, "wren.boat.json"));
        Assert.DoesNotContain("\"fuel\":", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("\"sump\":", sheet, StringComparison.Ordinal);
        Assert.Contains("common-practice", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void New_NotUnderstood_AsksAgain()
    {
        string[] answers = [.. Answers[..2], "coal", .. Answers[2..]];
        (string output, string errors, int exit) = SampleRun.In(_folder, "new", answers);
        Assert.True(exit == 0, errors);
        Assert.Contains("'coal' was not understood", output, StringComparison.Ordinal);
        Assert.Contains("\"fuel\": \"petrol\"", File.ReadAllText(Path.Combine(_folder, "wren.boat.json")), StringComparison.Ordinal);
    }

    [Fact]
    public void New_OverAFile_IsRefusedAndWritesNothing()
    {
        string log = Path.Combine(_folder, "wren.log.json");
        File.WriteAllText(log, "precious");
        (_, string errors, int exit) = SampleRun.In(_folder, "new", Answers);
        Assert.Equal(64, exit);
        Assert.Contains("wren.log.json is there already", errors, StringComparison.Ordinal);
        Assert.Equal("precious", File.ReadAllText(log));
        Assert.False(File.Exists(Path.Combine(_folder, "wren.boat.json")));
    }

    [Theory]
    [InlineData("../../W:r*n", "w-r-n.boat.json")]
    [InlineData("Ærø", "r.boat.json")]
    [InlineData("舟", "boat.boat.json")]
    public void New_WithAnOddName_StaysInItsFolder(string name, string file)
    {
        (_, string errors, int exit) = SampleRun.In(_folder, "new", [name, "Corrie 24P"]);
        Assert.True(exit == 0, errors);
        Assert.True(File.Exists(Path.Combine(_folder, file)));
    }

    [Theory]
    [InlineData("deu Curlew", "Did you mean 'due'?")]
    [InlineData("due Curlew --uints us", "Did you mean '--units'?")]
    [InlineData("due Curlw", "Did you mean Curlew?")]
    public void Typo_GetsASuggestion(string arguments, string expected)
    {
        (_, string errors, int exit) = SampleRun.In(_folder, arguments);
        Assert.Equal(64, exit);
        Assert.Contains(expected, errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("polish")]
    [InlineData("due --colour")]
    public void Word_UnlikeAnyOther_GetsNone(string arguments)
    {
        (_, string errors, int exit) = SampleRun.In(_folder, arguments);
        Assert.Equal(64, exit);
        Assert.DoesNotContain("Did you mean", errors, StringComparison.Ordinal);
    }
}
