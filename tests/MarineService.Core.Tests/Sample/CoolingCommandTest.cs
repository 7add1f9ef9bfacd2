using System.Text.Json;

namespace MarineService.Core.Tests.Sample;

/// <summary>The cooling command as the shell sees it: the club's failed impeller, and where its missing piece is.</summary>
public sealed class CoolingCommandTest
{
    [Fact]
    public void Cooling_OfTheClub_JudgesTheFailedImpeller_AndSaysWhereToLook()
    {
        (string output, string errors, int exit) = Run("cooling");
        Assert.Equal(1, exit);
        Assert.Empty(errors);
        Assert.Contains("Curlew, Corrie 60P: impeller of 2026-10-04. Replace it, and search", output, StringComparison.Ordinal);
        Assert.Contains("0.25 outstanding", output, StringComparison.Ordinal);
        Assert.True(output.IndexOf("2. steering cooler", StringComparison.Ordinal) < output.IndexOf("4. heat exchanger", StringComparison.Ordinal));
        Assert.Contains("port outlet and starboard outlet", output, StringComparison.Ordinal);
        Assert.Contains("Bucket test of 2026-05-09: 213.0 L/min at rated speed, 189.9 L/min needed. The pump gives enough.", output, StringComparison.Ordinal);
        Assert.Contains("aluminium anode, 30 % gone: passes", output, StringComparison.Ordinal);
        Assert.Contains("raw-water pump cover: to contact, then no more; 3.0 N·m at most.", output, StringComparison.Ordinal);
        Assert.Contains("Fits at 2 of 6 rotations.", output, StringComparison.Ordinal);
        Assert.Contains("Fits at one of 3 rotations: hole 1 on hole 1.", output, StringComparison.Ordinal);
        Assert.Contains("Dipper, Corrie 24P: no impeller inspection in the log.", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Cooling_Json_IsTheLibrarysDocument()
    {
        (string output, _, int exit) = Run("cooling Curlew --json");
        Assert.Equal(1, exit);
        using JsonDocument document = JsonDocument.Parse(output);
        Assert.Equal("replace-and-search", document.RootElement.GetProperty("verdict").GetString());
        Assert.Equal(0.25, document.RootElement.GetProperty("account").GetProperty("outstanding").GetDouble(), 9);
        Assert.Equal(11, document.RootElement.GetProperty("search").GetArrayLength());
        Assert.Equal(65, Run("cooling Tern --json").Exit);
    }

    [Fact]
    public void Cooling_InUsUnits_DecidesTheSame()
    {
        (string output, _, int exit) = Run("cooling Curlew --units us");
        Assert.Equal(1, exit);
        Assert.Contains("US gal/min", output, StringComparison.Ordinal);
        Assert.Contains("130 °F", output, StringComparison.Ordinal);
        Assert.Equal(64, Run("cooling Curlw").Exit);
    }

    [Theory]
    [InlineData("cracked", 0.0, true, 0)]
    [InlineData("cracked", 0.0, false, 1)]
    [InlineData("torn", 0.4, true, 1)]
    public void Cooling_AfterANewImpeller_AsksOnlyForThePiecesThatWereNeverFound(string state, double missing, bool isReplaced, int exit)
    {
        string folder = Directory.CreateTempSubdirectory("rowing-club-cooling-").FullName;
        try
        {
            string sheet = Path.Combine(folder, "S.json");
            string log = Path.Combine(folder, "L.json");
            string share = missing > 0 ? FormattableString.Invariant($", \"missing\": {missing}") : "";
            string seen = string.Join(", ", Enumerable.Range(2, 5).Select(vane => $$"""{ "number": {{vane}}, "state": "whole" }"""));
            string replaced = isReplaced ? """, { "kind": "completion", "date": "2026-10-05", "task": "impeller-replace" }""" : "";
            File.WriteAllText(sheet, """{ "format": "marine-service/engine-specification", "version": 1, "engine": { "designation": "Brae 16D" }, "tasks": [] }""");
            File.WriteAllText(log, $$"""
                { "format": "marine-service/service-log", "version": 1, "entries": [
                  { "kind": "impeller-inspection", "date": "2026-10-04", "impeller": { "vanes": 6, "seen": [ { "number": 1, "state": "{{state}}"{{share}} }, {{seen}} ] } }{{replaced}} ] }
                """);
            Assert.Equal(exit, Run($"cooling --spec {sheet} --log {log} --today 2026-10-12").Exit);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static (string Output, string Errors, int Exit) Run(string arguments) => SampleRun.In(Path.GetTempPath(), arguments);
}
