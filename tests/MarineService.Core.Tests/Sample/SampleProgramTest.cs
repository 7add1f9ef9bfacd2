using System.Diagnostics;
using System.Text.Json;
using MarineService.Core.Exchange;

namespace MarineService.Core.Tests.Sample;

/// <summary>The sample program as the shell sees it: what it prints where, and its exit codes (64 and up as BSD's sysexits has them).</summary>
public sealed class SampleProgramTest : IDisposable
{
    private const string Specification = """
        { "format": "marine-service/engine-specification", "version": 1, "engine": { "designation": "Corrie 60P" },
          "tasks": [ { "id": "engine-oil", "action": "replace", "interval": { "hours": 100, "months": 12 } } ] }
        """;

    private const string Log = """
        { "format": "marine-service/service-log", "version": 1,
          "entries": [ { "kind": "completion", "date": "2026-04-01", "dial": 412, "task": "engine-oil" } ] }
        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("rowing-club-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Story_WithoutArguments_TellsOfEachLaunch_AndExitsFine()
    {
        (string output, string errors, int exit) = Run("");
        Assert.Equal(0, exit);
        Assert.Empty(errors);
        Assert.All(["Curlew:", "Dipper:", "Tern:"], name => Assert.Contains(name, output, StringComparison.Ordinal));
        Assert.DoesNotContain('\u001b', output);
    }

    [Fact]
    public void Due_Curlew_ShowsSwappedMeter_FailedImpeller_AndAServiceThatCannotBeShown()
    {
        (string output, _, int exit) = Run("due Curlew");
        Assert.Equal(1, exit);
        Assert.Contains("were run without a meter before the meter was changed on 2026-05-30", output, StringComparison.Ordinal);
        Assert.Contains("on the dial)", output, StringComparison.Ordinal);
        Assert.Contains("inspection failed", output, StringComparison.Ordinal);
        Assert.Contains("done on 2025-08-10, due at 803.5 h; the readings allow 788.0 h to 842.0 h", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("due --spec S.json --log L.json --today 2026-05-01", 0)]
    [InlineData("due --spec S.json --log L.json --today 2027-04-01", 1)]
    [InlineData("due --spec none.json --log L.json", 66)]
    [InlineData("due --spec S.json --log bad.json", 65)]
    [InlineData("due --spec S.json", 64)]
    [InlineData("due Curlw", 64)]
    [InlineData("due --spec S.json --log L.json --today 2026-02-30", 64)]
    [InlineData("due Curlew --units imperial", 64)]
    [InlineData("nonsense", 64)]
    [InlineData("record --log L.json --task engine-oil --event overheat", 64)]
    public void Command_Exits_WithItsCode(string arguments, int expected)
    {
        WriteFiles();
        (string output, string errors, int exit) = Run(arguments);
        Assert.True(expected == exit, $"exit {exit}: {output}{errors}");
        Assert.Equal(expected >= 64, errors.Length > 0);
    }

    [Fact]
    public void Due_OfBadData_ReportsEveryFault_OnStandardError()
    {
        WriteFiles();
        (string output, string errors, _) = Run("due --spec S.json --log bad.json");
        Assert.Empty(output);
        Assert.Contains("bad.json: /entries/0/date: '2026-13-01'", errors, StringComparison.Ordinal);
        Assert.Contains("bad.json: /entries/0/dial: -1", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Due_InUsUnits_DecidesTheSame()
    {
        static string[] Statuses(string json) =>
            [.. JsonDocument.Parse(json).RootElement.GetProperty("tasks").EnumerateArray().Select(task => $"{task.GetProperty("id")} {task.GetProperty("status")}")];
        string[] metric = Statuses(Run("due Curlew --json").Output);
        Assert.Equal(metric, Statuses(Run("due Curlew --json --units us").Output));
        Assert.Contains("impeller-replace overdue", metric);
    }

    [Fact]
    public void Record_AddsAnEntry_ThatTheDueListCounts()
    {
        WriteFiles();
        Assert.Equal(0, Run("record --log L.json --task engine-oil --date 2027-03-20 --dial 498.2 --by MK").Exit);
        Assert.Equal(2, ServiceLogJson.Read(File.ReadAllBytes(PathOf("L.json"))).Value.Entries.Count);
        Assert.Equal(0, Run("due --spec S.json --log L.json --today 2027-04-01").Exit);
    }

    [Theory]
    [InlineData("record --log L.json --task engine-oil --corrects nobody", 65)]
    [InlineData("record --log L.json --spec S.json --task engine-oli", 65)]
    [InlineData("record --log L.json --spec S.json --task engine-oil --engine port", 65)]
    [InlineData("record --log L.json --spec none.json --task engine-oil", 66)]
    [InlineData("record --log L.json --dial -5", 65)]
    [InlineData("record --log L.json --task engine-oil --json", 64)]
    [InlineData("record --log L.json --add bad.json", 65)]
    public void Record_ThatIsRefused_LeavesTheFileAlone(string arguments, int expected)
    {
        WriteFiles();
        (_, string errors, int exit) = Run(arguments);
        Assert.True(expected == exit, $"exit {exit}: {errors}");
        Assert.Equal(Log, File.ReadAllText(PathOf("L.json")));
        Assert.Equal(["L.json", "S.json", "bad.json"], Directory.GetFiles(_folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Record_WithJson_WritesTheDueList()
    {
        WriteFiles();
        (string output, _, int exit) = Run("record --log L.json --spec S.json --task engine-oil --date 2027-03-20 --dial 498.2 --json");
        Assert.Equal(0, exit);
        Assert.Equal("2028-03-20", JsonDocument.Parse(output).RootElement.GetProperty("tasks")[0].GetProperty("dueDate").GetString());
    }

    /// <summary>A kill at any moment leaves the old file or the new one, whole.</summary>
    [Fact]
    public void Record_KilledAtAnyMoment_LeavesAWholeFile()
    {
        WriteFiles();
        int entries = 1;
        for (int delay = 0; delay < 240; delay += 20)
        {
            using Process process = SampleRun.Start(_folder, "record --log L.json --dial 498.2 --date 2027-03-20");
            if (!process.WaitForExit(delay))
            {
                process.Kill();
                process.WaitForExit();
            }

            ReadResult<MarineService.Core.Records.ServiceLog> read = ServiceLogJson.Read(File.ReadAllBytes(PathOf("L.json")));
            Assert.Empty(read.Faults);
            Assert.InRange(read.Value.Entries.Count, entries, entries + 1);
            entries = read.Value.Entries.Count;
        }
    }

    private string PathOf(string name) => Path.Combine(_folder, name);

    private void WriteFiles()
    {
        File.WriteAllText(PathOf("S.json"), Specification);
        File.WriteAllText(PathOf("L.json"), Log);
        File.WriteAllText(PathOf("bad.json"), Log.Replace("2026-04-01", "2026-13-01", StringComparison.Ordinal).Replace("412", "-1", StringComparison.Ordinal));
    }

    private (string Output, string Errors, int Exit) Run(string arguments) => SampleRun.In(_folder, arguments);
}
