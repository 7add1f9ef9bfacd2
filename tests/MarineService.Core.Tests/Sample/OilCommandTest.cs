using System.Text.Json;

namespace MarineService.Core.Tests.Sample;

/// <summary>The oil command as the shell sees it: the club's three launches, a temperature, a forecast file, bad data.</summary>
public sealed class OilCommandTest : IDisposable
{
    private const string Specification = """
        { "format": "marine-service/engine-specification", "version": 1, "engine": { "designation": "Brae 16D" }, "tasks": [],
          "permittedOils": { "grades": [ { "grade": "15W-40" }, { "grade": "10W-30" } ] }, "fittedOil": { "grade": "15W-40" } }
        """;

    private const string Log = """
        { "format": "marine-service/service-log", "version": 1,
          "entries": [ { "kind": "planned-lay-up", "date": "2026-12-01", "until": "2027-03-01" } ] }
        """;

    private const string Files = "oil --spec S.json --log L.json --today 2026-11-01";

    private readonly string _folder = Directory.CreateTempSubdirectory("rowing-club-oil-").FullName;

    public OilCommandTest()
    {
        Write("S.json", Specification);
        Write("bare.json", "{ \"format\": \"marine-service/engine-specification\", \"version\": 1, \"engine\": { \"designation\": \"Brae 16D\" }, \"tasks\": [] }");
        Write("L.json", Log);
        Write("nights.csv", "date,minimum_celsius\n2026-11-07,-4\n2026-11-28,-16\n2027-01-15,-28\n2026-10-01,-40\n");
        Write("us.csv", "minimum_fahrenheit,date\n24.8,2026-11-07\n3.2,2026-11-28\n-18.4,2027-01-15\n-40,2026-10-01\n");
        Write("bad.csv", "date,minimum_celsius\n2026-13-01,-4\n2026-11-07,cold\n2026-11-08,-4\n2026-11-08,-5\n2026-11-09\n2026-11-10,-90\n");
        Write("headless.csv", "2026-11-07,-4\n");
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Oil_OfTheClub_AnswersForEachLaunchWithItsReason()
    {
        (string output, string errors, int exit) = Run("oil");
        Assert.Equal(1, exit);
        Assert.Empty(errors);
        Assert.All(["Curlew on 2026-10-12", "Dipper on 2026-10-12", "Tern on 2026-10-12"], name => Assert.Contains(name, output, StringComparison.Ordinal));
        Assert.Contains("15W-40 refused: 4 K outside maker's coldest 0 °C.", output, StringComparison.Ordinal);
        Assert.Contains("30 refused: 8 K outside customary 4 °C (no W grade", output, StringComparison.Ordinal);
        Assert.Contains("In the sump: 30: accepted on 12 nights, marginal on 0, refused on 14; first not accepted 2026-10-13.", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("oil")]
    [InlineData("oil --temperature -17C")]
    [InlineData("oil --temperature -17C --hottest 31C")]
    public void Oil_InUsUnits_DecidesTheSame(string arguments)
    {
        string[] metric = Decisions(Run(arguments + " --json").Output);
        Assert.Equal(metric, Decisions(Run(arguments + " --json --units us").Output));
        Assert.NotEmpty(metric);
        (string us, _, int exit) = Run(arguments + " --units us");
        Assert.Equal(Run(arguments).Exit, exit);
        Assert.Contains("°F", us, StringComparison.Ordinal);
        Assert.DoesNotContain("°C", us, StringComparison.Ordinal);
    }

    [Fact]
    public void Oil_OfNights_CountsFromTodayAndLeavesOutTheLayUp()
    {
        // 2026-10-01 is past, 2027-01-15 in the lay-up: two nights with a start, the coldest -16 °C, 15W-40 from -15 °C.
        (string output, _, int exit) = Run(Files + " --nights nights.csv");
        Assert.Equal(0, exit);
        Assert.Contains("10W-30 for a start at -16 °C, 4 K to spare.", output, StringComparison.Ordinal);
        Assert.Contains("3 nights, 2 with a possible start; the coldest of these is 2026-11-28.", output, StringComparison.Ordinal);
        Assert.Contains("15W-40 marginal: 1 K outside floor -15 °C = SAE J300 cranking -20 °C + 5 K.", output, StringComparison.Ordinal);
        Assert.Contains("first not accepted 2026-11-28", output, StringComparison.Ordinal);
        Assert.Contains("ADVICE", output, StringComparison.Ordinal);
        Assert.Equal(output, Run(Files + " --nights us.csv").Output);
    }

    [Theory]
    [InlineData("2026-12-15", "Laid up: -28 °C asks for no change of oil.", 0)]
    [InlineData("2026-11-15", "No permitted grade is accepted for a start at -28 °C.", 1)]
    public void Oil_InALayUp_AsksForNoChange(string today, string expected, int exitCode)
    {
        (string output, _, int exit) = Run($"oil --spec S.json --log L.json --today {today} --temperature -28");
        Assert.Contains(expected, output, StringComparison.Ordinal);
        Assert.Equal(exitCode, exit);
    }

    [Fact]
    public void Oil_TooColdForAll_SaysToWarmTheOil()
    {
        (string output, _, int exit) = Run(Files + " --temperature -28");
        Assert.Equal(1, exit);
        Assert.Contains("Warm the oil to at least -20 °C before cranking", output, StringComparison.Ordinal);
        Assert.Contains("STOP", Run(Files + " --temperature -31").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Oil_Why_ShowsEveryLimitWithItsSource()
    {
        string output = Run(Files + " --temperature -12 --why").Output;
        Assert.Contains("warmest published figure -10 °C", output, StringComparison.Ordinal);
        Assert.Contains("SAE J300, J300_202405", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Oil_PermittedNotStated_IsNotKnown()
    {
        (string output, _, int exit) = Run("oil --spec bare.json --log L.json --temperature 0");
        Assert.Equal(0, exit);
        Assert.Contains("not known: The oil grades that the maker of 'Brae 16D' permits.", output, StringComparison.Ordinal);
        Assert.Equal(65, Run("oil --spec bare.json --log L.json --temperature 0 --json").Exit);
    }

    [Theory]
    [InlineData("oil Curlw", 64)]
    [InlineData("oil Curlew --temperature warm", 64)]
    [InlineData("oil Curlew --temperature -90", 64)]
    [InlineData("oil Curlew --temperature 10CF", 64)]
    [InlineData("oil Curlew --temperature -6 --hottest NaN", 64)]
    [InlineData("oil Curlew --temperature -6 --nights nights.csv", 64)]
    [InlineData("oil --spec S.json --log L.json", 64)]
    [InlineData(Files + " --nights none.csv", 66)]
    [InlineData(Files + " --nights bad.csv", 65)]
    [InlineData(Files + " --nights headless.csv", 65)]
    [InlineData("oil --spec S.json --log L.json --today 2028-01-01 --nights nights.csv", 65)]
    public void Oil_Refused_ExitsWithItsCodeAndSaysWhy(string arguments, int expected)
    {
        (string output, string errors, int exit) = Run(arguments);
        Assert.True(expected == exit, $"exit {exit}: {output}{errors}");
        Assert.NotEmpty(errors);
    }

    [Fact]
    public void Oil_BadNights_ReportsEveryLine()
    {
        string errors = Run(Files + " --nights bad.csv").Errors;
        Assert.Contains("bad.csv, line 2: '2026-13-01' is no date", errors, StringComparison.Ordinal);
        Assert.Contains("bad.csv, line 3: 'cold' is no air temperature", errors, StringComparison.Ordinal);
        Assert.Contains("bad.csv, line 5: 2026-11-08 is there already.", errors, StringComparison.Ordinal);
        Assert.Contains("bad.csv, line 6: '' is no air temperature", errors, StringComparison.Ordinal);
        Assert.Contains("bad.csv, line 7: '-90' is no air temperature", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Oil_Json_IsOneDocumentForEachEngine()
    {
        string json = Run("oil Tern --json").Output;
        using JsonDocument document = JsonDocument.Parse(json);
        Assert.Equal("marine-service/oil-selection", document.RootElement.GetProperty("format").GetString());
        Assert.Equal(201, document.RootElement.GetProperty("nights").GetProperty("given").GetInt32());
    }

    private static string[] Decisions(string documents)
    {
        List<string> decisions = [];
        foreach (string text in documents.Split("}\n{").Select((part, i) => (i == 0 ? "" : "{") + part).Select(part => part.TrimEnd().EndsWith("\n}", StringComparison.Ordinal) ? part : part + "}"))
        {
            using JsonDocument document = JsonDocument.Parse(text);
            decisions.Add(document.RootElement.GetProperty("advice").GetString()!);
            decisions.AddRange(document.RootElement.GetProperty("grades").EnumerateArray()
                .Select(grade => $"{grade.GetProperty("grade")} {grade.GetProperty("suitability")} {grade.GetProperty("coldMargin").GetProperty("value")}"));
            decisions.AddRange(document.RootElement.GetProperty("findings").EnumerateArray().Select(finding => finding.GetProperty("code").GetString()!));
        }

        return [.. decisions];
    }

    private void Write(string name, string text) => File.WriteAllText(Path.Combine(_folder, name), text);

    private (string Output, string Errors, int Exit) Run(string arguments) => SampleRun.In(_folder, arguments);
}
