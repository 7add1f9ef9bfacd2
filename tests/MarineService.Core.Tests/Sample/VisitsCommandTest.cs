using System.Text.Json;

namespace MarineService.Core.Tests.Sample;

/// <summary>The visits command, and the forecast in the due command, as the shell sees them.</summary>
public sealed class VisitsCommandTest : IDisposable
{
    private const string Specification = """
        { "format": "marine-service/engine-specification", "version": 1, "engine": { "designation": "Brae 16D" },
          "tasks": [ { "id": "oil", "action": "replace", "interval": { "months": 12 } }, { "id": "tick", "action": "clean", "interval": { "months": 1 } } ] }
        """;

    private const string Log = """
        { "format": "marine-service/service-log", "version": 1, "entries": [
            { "kind": "completion", "date": "2026-06-06", "task": "oil" }, { "kind": "completion", "date": "2026-06-06", "task": "tick" } ] }
        """;

    private const string Files = "visits --spec S.json --log L.json --today 2026-07-01 --prices P.csv";

    private readonly string _folder = Directory.CreateTempSubdirectory("rowing-club-visits-").FullName;

    public VisitsCommandTest()
    {
        Write("S.json", Specification);
        Write("L.json", Log);
        Write("P.csv", "task,price,late_per_day\noil,36.5,1\n");
        Write("bad.csv", "task,price,late_per_day\noil,-1,1\noil,cheap,1\n,1,1\nbelt,1,1\nbelt,1,1\n");
        Write("headless.csv", "oil,36.5,1\n");
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Visits_OfTheClub_PlanTwoSeasonsWithReasonsCostAndGap()
    {
        (string output, string errors, int exit) = Run("visits");
        Assert.Equal(1, exit);
        Assert.DoesNotContain("fault", errors, StringComparison.Ordinal);
        Assert.All(["Curlew from 2026-10-12 to 2028-12-31", "Dipper from 2026-10-12", "Tern from 2026-10-12", "All together: 2026 "], text => Assert.Contains(text, output, StringComparison.Ordinal));
        Assert.Contains("impeller-replace due 2026-10-12: 5 days late for 15.00 of risk; due at once: the first day there is, leave the engine off until it is done", output, StringComparison.Ordinal);
        Assert.Contains("paid for with the lay-up", output, StringComparison.Ordinal);
        Assert.Contains("how sure: least cost, proven", output, StringComparison.Ordinal);
        Assert.Contains("no plan costs less than", output, StringComparison.Ordinal);
        Assert.Contains("season: 2027:", output, StringComparison.Ordinal);
        Assert.Contains("Not planned, as they have no price: strainer", output, StringComparison.Ordinal);
    }

    /// <summary>By hand: due on Sunday 6 June 2027 and a year after that is done; whichever weekend day it takes, two days early in all at 36.50/365 a day.</summary>
    [Fact]
    public void Visits_OfFiles_AreOnWeekendsUnlessAnyDayWillDo()
    {
        (string output, _, int exit) = Run(Files + " --until 2028-12-31 --set-up 10");
        Assert.Equal(0, Run(Files.Replace("07-01", "06-10", StringComparison.Ordinal)).Exit);
        Assert.Equal(0, exit);
        Assert.Contains("2 visits, 20.20", output, StringComparison.Ordinal);
        Assert.Matches("2027-06-0[56] (Saturday|Sunday), 10[.]", output);
        Assert.Matches("2028-06-04 Sunday, 10[.]", output);
        string any = Run(Files + " --until 2028-12-31 --set-up 10 --any-day").Output;
        Assert.Contains("2028-06-06 Tuesday, 10.00", any, StringComparison.Ordinal);
        Assert.Contains("Not planned, as they have no price: tick.", any, StringComparison.Ordinal);
    }

    [Fact]
    public void Visits_Json_IsOneDocumentForEachBoat_TheSameInAllUnits()
    {
        string json = Run("visits Tern --json").Output;
        using JsonDocument document = JsonDocument.Parse(json);
        Assert.Equal("marine-service/visit-plan", document.RootElement.GetProperty("format").GetString());
        Assert.Equal(json, Run("visits Tern --json --units us").Output);
    }

    [Theory]
    [InlineData("visits Curlw", 64)]
    [InlineData("visits Curlew --set-up much", 64)]
    [InlineData("visits Curlew --set-up -1", 64)]
    [InlineData("visits Curlew --until 2026-10-11", 64)]
    [InlineData("visits Curlew --until 2040-01-01", 64)]
    [InlineData("visits Curlew --until soon", 64)]
    [InlineData("visits Curlew --prices none.csv", 66)]
    [InlineData("visits Curlew --prices bad.csv", 65)]
    [InlineData("visits Curlew --prices headless.csv", 65)]
    public void Visits_Refused_ExitsWithItsCodeAndSaysWhy(string arguments, int expected)
    {
        (string output, string errors, int exit) = Run(arguments);
        Assert.True(expected == exit, $"exit {exit}: {output}{errors}");
        Assert.NotEmpty(errors);
    }

    [Fact]
    public void Visits_BadPrices_ReportsEveryLine()
    {
        string errors = Run("visits Curlew --prices bad.csv").Errors;
        Assert.All(["line 2: price must be", "line 3: price must be", "line 4: a task is missing", "line 6: belt is there already"], text => Assert.Contains(text, errors, StringComparison.Ordinal));
    }

    [Fact]
    public void Due_SaysWhenEachTaskIsExpected_AndByWhichLimb()
    {
        string output = Run("due Dipper").Output;
        Assert.Contains("expected 2026-10-18 by calendar; by hours 2027-", output, StringComparison.Ordinal);
        Assert.Contains("seasons", Run("due Dipper --why").Output, StringComparison.Ordinal);
        using JsonDocument document = JsonDocument.Parse(Run("due Dipper --json").Output);
        Assert.All(document.RootElement.GetProperty("tasks").EnumerateArray(), task => Assert.True(task.TryGetProperty("forecast", out _)));
    }

    private void Write(string name, string text) => File.WriteAllText(Path.Combine(_folder, name), text);

    private (string Output, string Errors, int Exit) Run(string arguments) => SampleRun.In(_folder, arguments);
}
