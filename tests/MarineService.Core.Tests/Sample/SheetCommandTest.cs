using MarineService.Core.Tests.Architecture;

namespace MarineService.Core.Tests.Sample;

/// <summary>What people look at, as files in a folder; what stands in them is tested where they are made.</summary>
public sealed class SheetCommandTest : IDisposable
{
    private static readonly string[] Kinds = ["service-sheet.html", "logbook.html", "compliance-statement.html", "belt.svg", "bolt-pattern.svg", "viscosity.svg", "dipstick.svg", "use.svg", "visits.svg", "service-calendar.ics", "due-list.csv", "service-log.csv", "findings.csv", "kit-list.csv"];

    private readonly string _folder = Directory.CreateTempSubdirectory("sheets-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Sheet_OfALaunch_WritesEveryKind_AndNamesEachFile()
    {
        (string output, string errors, int exit) = SampleRun.In(_folder, "sheet Curlew --into out");
        Assert.True(exit == 0, errors);
        Assert.Empty(errors);
        Assert.Equal(Kinds.Select(kind => Path.Combine("out", kind)), output.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Skip(1));
        Assert.Equal(Kinds.Order(StringComparer.Ordinal), Directory.EnumerateFiles(Path.Combine(_folder, "out")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Contains("Service sheet: Curlew, Corrie 60P", Read("out", "service-sheet.html"), StringComparison.Ordinal);
        Assert.All(["belt.svg", "bolt-pattern.svg", "use.svg"], picture => Assert.StartsWith("<svg", Read("out", picture), StringComparison.Ordinal));
        Assert.StartsWith("BEGIN:VCALENDAR\r\n", Read("out", "service-calendar.ics"), StringComparison.Ordinal);
        Assert.Contains("BEGIN:VEVENT", Read("out", "service-calendar.ics"), StringComparison.Ordinal);

        // To make the pictures of the documents anew: RowingClub sheet Curlew --into FOLDER, and copy the drawings to docs/pictures.
        string pictures = Path.Combine(Repository.Root, "docs", "pictures");
        Assert.Equal(Kinds.Where(kind => kind.EndsWith(".svg", StringComparison.Ordinal)).Order(StringComparer.Ordinal), Directory.EnumerateFiles(pictures).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.All(Directory.EnumerateFiles(pictures), picture => Assert.Equal(File.ReadAllText(picture), Read("out", Path.GetFileName(picture))));
    }

    [Fact]
    public void Sheet_Twice_HasTheSameBytes()
    {
        string before = Written("once");
        Assert.Equal(before, Written("twice"));

        string Written(string folder)
        {
            Assert.Equal(0, SampleRun.In(_folder, $"sheet Curlew --into {folder}").Exit);
            return string.Concat(Kinds.Select(kind => Read(folder, kind)));
        }
    }

    /// <summary>A sheet for spring knows the season's oil when it is told the weather, and says so when it is not.</summary>
    [Theory]
    [InlineData("--coldest -4C --hottest 24C --units us --paper letter", "24.8", "size: letter")]
    [InlineData("", "Not known: settle this before you start", "size: A4", "--paper a4")]
    public void Sheet_HoldsWhatTheCardHolds(string weather, string expected, string paper, string more = "")
    {
        (_, string errors, int exit) = SampleRun.In(_folder, $"sheet Curlew --today 2027-06-20 --task engine-oil --into spring {weather} {more}");
        Assert.True(exit == 0, errors);
        string sheet = Read("spring", "service-sheet.html");
        Assert.Contains(expected, sheet, StringComparison.Ordinal);
        Assert.Contains(paper, sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void Sheet_WhereNothingIsDue_SaysSo_AndWritesTheRest()
    {
        (string output, string errors, int exit) = SampleRun.In(_folder, "sheet Tern");
        Assert.True(exit == 0, errors);
        Assert.StartsWith("Tern: no service sheet. A task that is due on 2026-10-12.", output, StringComparison.Ordinal);
        Assert.Contains("Logbook: Tern", Read(Path.Combine("sheets", "tern-2026-10-12"), "logbook.html"), StringComparison.Ordinal);
    }

    [Fact]
    public void Story_EndsWithTheNameOfTheSheetThatItWrote()
    {
        (string output, string errors, int exit) = SampleRun.In(_folder, "");
        Assert.True(exit == 0, errors);
        string last = output.TrimEnd().Split('\n')[^1];
        Assert.Contains("Service sheet: Curlew", File.ReadAllText(Path.Combine(_folder, last[(last.LastIndexOf(": ", StringComparison.Ordinal) + 2)..])), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("sheet --into out", 64, "Name the launch")]
    [InlineData("sheet Curlew --engine port", 64, "Curlew has no engine 'port'. It has main.")]
    [InlineData("sheet Curlew --paper a3", 64, "a3")]
    [InlineData("sheet Curlew --json", 64, "--json")]
    [InlineData("sheet Curlew --into taken", 66, "taken")]
    [InlineData("shet Curlew", 64, "Did you mean 'sheet'?")]
    public void Sheet_AskedWrongly_SaysWhat(string arguments, int expected, string word)
    {
        File.WriteAllText(Path.Combine(_folder, "taken"), "a file");
        (_, string errors, int exit) = SampleRun.In(_folder, arguments);
        Assert.Equal(expected, exit);
        Assert.Contains(word, errors, StringComparison.Ordinal);
        Assert.Equal("a file", File.ReadAllText(Path.Combine(_folder, "taken")));
    }

    private string Read(params string[] path) => File.ReadAllText(Path.Combine([_folder, .. path]));
}
