using System.Text.Json;
using Json.Schema;
using MarineService.Core.Exchange;

namespace MarineService.Core.Tests.Sample;

/// <summary>The balance command as the shell sees it: the club's change, the planted ingress, questions at a terminal, bad data.</summary>
public sealed class BalanceCommandTest : IDisposable
{
    private const string Specification = """
        { "format": "marine-service/engine-specification", "version": 1, "engine": { "designation": "Corrie 60P" }, "tasks": [],
          "sump": { "serviceFill": { "value": 6, "unit": "L" }, "filter": { "value": 0.6, "unit": "L" }, "dipstick": { "range": { "value": 1, "unit": "L" } } } }
        """;

    private const string Log = """{ "format": "marine-service/service-log", "version": 1, "entries": [] }""";

    private readonly string _folder = Directory.CreateTempSubdirectory("rowing-club-balance-").FullName;

    public BalanceCommandTest()
    {
        Write("S.json", Specification);
        Write("L.json", Log);
        Write("bare.json", """{ "format": "marine-service/engine-specification", "version": 1, "engine": { "designation": "Brae 16D" }, "tasks": [] }""");
        Write("bad.json", """
            { "format": "marine-service/service-log", "version": 1, "entries": [ { "kind": "oil-change", "date": "2026-10-12", "task": "engine-oil",
              "account": [ { "step": "begun" }, { "step": "poured" }, { "step": "drained", "amount": { "volume": { "value": -1, "unit": "L" } } } ] } ] }
            """);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Balance_OfTheClub_StopsPouringBeforeFull_AndTheIngressEndsInStop()
    {
        (string output, string errors, int exit) = Run("balance");
        Assert.Equal(1, exit);
        Assert.Empty(errors);
        Assert.Contains("Curlew, Corrie 60P: The account adds up.", output, StringComparison.Ordinal);
        Assert.Contains("Dipper, Corrie 24P: no oil change is recorded.", output, StringComparison.Ordinal);
        Assert.Contains("Tern, Brae 16D: Stop:", output, StringComparison.Ordinal);
        // The planted ingress: above full before, water on the stick, more oil than was left, each with its reason.
        Assert.All(
            ["above full", "the oil looked milky", "more is in the engine than was left and topped up", "likely: Water from outside",
                "Pour nothing before the cause is found."],
            reason => Assert.Contains(reason, output, StringComparison.Ordinal));
    }

    [Fact]
    public void Balance_Curlew_NeverAllowsAPourPastTheFullMark()
    {
        (string output, _, int exit) = Run("balance Curlew --json");
        Assert.Equal(0, exit);
        using JsonDocument document = JsonDocument.Parse(output);
        Assert.True(JsonSchema.FromText(DocumentSchemas.FluidBalance).Evaluate(document.RootElement).IsValid);
        JsonElement[] events = [.. document.RootElement.GetProperty("events").EnumerateArray()];
        double? allowed = null;
        foreach (JsonElement change in events)
        {
            JsonElement told = change.GetProperty("told");
            if (told.GetProperty("step").GetString() == "poured")
            {
                Assert.True(told.GetProperty("amount").GetProperty("volume").GetProperty("value").GetDouble() <= allowed, told.GetRawText());
            }

            JsonElement level = change.GetProperty("level");
            allowed = change.TryGetProperty("nextPour", out JsonElement next) ? next.GetProperty("atMost").GetProperty("value").GetDouble() : null;
            Assert.True(allowed is null || allowed <= level.GetProperty("roomToFull").GetProperty("value").GetDouble());
            Assert.Empty(change.GetProperty("findings").EnumerateArray());
        }

        // It ends below the full mark, and says that no more is needed.
        Assert.InRange(events[^1].GetProperty("level").GetProperty("range").GetDouble(), 0.85, 0.99);
        Assert.True(events[^1].GetProperty("nextPour").GetProperty("atTarget").GetBoolean());
    }

    [Fact]
    public void Ask_StepByStep_GivesTheNextPourAfterEachAnswerAndKeepsTheChange()
    {
        string[] answers =
        [
            "perhaps", "0.6", "usual", "5.7 L 70 C", "50 L", "", "emptied", "", "4.8 L 15 C", "ran", "read -0.1", "0.5", "back", "0.5 L 15 C", "read 40 %", "",
        ];
        (string output, string errors, int exit) = Run("balance --spec S.json --log L.json --today 2026-10-12 --ask --save kept.json", answers);
        Assert.True(exit == 0, errors + output);
        Assert.Contains("'perhaps' was not understood", output, StringComparison.Ordinal);
        Assert.Contains("is more than twice the 6.00 L that the engine holds", output, StringComparison.Ordinal);
        Assert.Contains("Next: Pour at most 4.98 L.", output, StringComparison.Ordinal);
        Assert.Contains("Next: Pour at most 0.50 L.", output, StringComparison.Ordinal);
        (string again, _, _) = Run("balance --spec S.json --log kept.json --today 2026-10-12 --json");
        using JsonDocument document = JsonDocument.Parse(again);
        Assert.Equal(
            ["begun", "looked", "drained", "filter-changed", "poured", "ran", "settled", "poured", "settled"],
            document.RootElement.GetProperty("events").EnumerateArray().Select(item => item.GetProperty("told").GetProperty("step").GetString()));
    }

    [Fact]
    public void Ask_AsJson_KeepsQuestionsOutOfTheDocument()
    {
        (string output, string errors, int exit) = Run("balance --spec S.json --log L.json --today 2026-10-12 --ask --json", ["1.4", "milky"]);
        Assert.Equal(1, exit);
        Assert.Contains("The level on the stick", errors, StringComparison.Ordinal);
        using JsonDocument document = JsonDocument.Parse(output);
        Assert.Equal("stop", document.RootElement.GetProperty("severity").GetString());
    }

    [Fact]
    public void Balance_InUsUnits_DecidesTheSame()
    {
        string output = Run("balance Curlew --units us").Output;
        Assert.Contains("US qt", output, StringComparison.Ordinal);
        Assert.Contains("The account adds up.", output, StringComparison.Ordinal);
        Assert.Equal(Run("balance Tern --units us").Exit, Run("balance Tern").Exit);
    }

    [Theory]
    [InlineData("balance --spec S.json --log L.json", 0)]
    [InlineData("balance --spec bare.json --log L.json", 0)]
    [InlineData("balance --spec bare.json --log L.json --ask", 65)]
    [InlineData("balance Curlew --change bad.json", 65)]
    [InlineData("balance Curlew --change none.json", 66)]
    [InlineData("balance Curlew --change bad.json --ask", 64)]
    [InlineData("balance Curlew --save kept.json", 64)]
    [InlineData("balance --ask", 64)]
    public void Balance_Exits_WithItsCode(string arguments, int expected)
    {
        (string output, string errors, int exit) = Run(arguments, []);
        Assert.True(expected == exit, $"exit {exit}: {output}{errors}");
        Assert.Equal(expected != 0, errors.Length > 0);
    }

    [Fact]
    public void Balance_BadChange_ReportsEveryFaultWithItsPlace()
    {
        string errors = Run("balance Curlew --change bad.json").Errors;
        Assert.Contains("/entries/0/account/1", errors, StringComparison.Ordinal);
        Assert.Contains("/entries/0/account/2/amount/volume/value", errors, StringComparison.Ordinal);
    }

    private void Write(string name, string text) => File.WriteAllText(Path.Combine(_folder, name), text);

    private (string Output, string Errors, int Exit) Run(string arguments, IReadOnlyList<string>? answers = null) => SampleRun.In(_folder, arguments, answers);
}
