using MarineService.Core.Exchange;
using MarineService.Core.Records;

namespace MarineService.Core.Tests.Sample;

/// <summary>An exercise book on its way into a log file.</summary>
public sealed class RecordBookTest : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("book-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void GoodBook_IsAdded_BehindWhatIsThere()
    {
        File.WriteAllText(Path.Combine(_folder.FullName, "book.csv"), "date;hours;task;note\r\n18.4.2026;88,2;engine-oil, fuel-filter;\"both\r\nnew\"\r\n6.6.2026;101,4;;\r\n");
        Assert.Equal(0, Run("record --log L.json --dial 80 --date 2026-03-20").Exit);
        (string output, string errors, int exit) = Run("record --log L.json --csv book.csv --dates dmy --decimal-comma");
        Assert.True(exit == 0, errors);
        Assert.Contains("3 added, 4 entries in all", output, StringComparison.Ordinal);
        ServiceLog log = ServiceLogJson.Read(File.ReadAllBytes(Path.Combine(_folder.FullName, "L.json"))).Value;
        Assert.Equal(["1", "2", "3", "4"], log.Entries.Select(entry => entry.Id));
        Assert.Equal(EngineHours.FromHours(101.4m), log.Entries[3].Fact!.Dial);
    }

    [Theory]
    [InlineData("", 65, "line 2, date: '18.4.2026'")]
    [InlineData("--dates dmy", 65, "line 2, hours: '88,2'")]
    [InlineData("--dates xyz", 64, "'xyz' is no order of dates")]
    public void BookWithABadLine_AddsNothing(string options, int expected, string message)
    {
        File.WriteAllText(Path.Combine(_folder.FullName, "book.csv"), "date;hours\n18.4.2026;88,2\n2026-06-06;100");
        (_, string errors, int exit) = Run($"record --log L.json --csv book.csv {options}");
        Assert.Equal(expected, exit);
        Assert.Contains(message, errors, StringComparison.Ordinal);
        Assert.Equal(["book.csv"], _folder.GetFiles().Select(file => file.Name));
    }

    private (string Output, string Errors, int Exit) Run(string arguments) => SampleRun.In(_folder.FullName, arguments);
}
