using System.Text.Json;

namespace MarineService.Core.Tests.Sample;

/// <summary>The layup command as the shell sees it.</summary>
public sealed class LayUpCommandTest : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("rowing-club-layup-").FullName;

    public LayUpCommandTest()
    {
        File.WriteAllText(Path.Combine(_folder, "S.json"), "{ \"format\": \"marine-service/engine-specification\", \"version\": 1, \"engine\": { \"designation\": \"Brae 16D\" }, \"tasks\": [] }");
        File.WriteAllText(Path.Combine(_folder, "L.json"), "{ \"format\": \"marine-service/service-log\", \"version\": 1, \"entries\": [] }");
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void LayUp_OfTheClub_GivesEachLaunchItsPlanWithAmounts()
    {
        (string output, string errors, int exit) = Run("layup --low -20C");
        Assert.Equal(0, exit);
        Assert.Empty(errors);
        Assert.Contains("Curlew, Corrie 60P: Protect down to -20 °C.", output, StringComparison.Ordinal);
        Assert.Contains("Mix 3.27 L of 'propylene glycol' with 3.93 L of clean fresh water: 7.20 L of 43.1 % glycol.", output, StringComparison.Ordinal);
        Assert.Contains("Dipper, Corrie 24P", output, StringComparison.Ordinal);
        Assert.Contains("Mix 3.92 L of 'propylene glycol' with 3.58 L of clean fresh water: 7.50 L of 49.7 % glycol.", output, StringComparison.Ordinal);
        Assert.Contains("Tern, Brae 16D", output, StringComparison.Ordinal);
        Assert.Contains("burns diesel: it is not fogged", output, StringComparison.Ordinal);
    }

    [Fact]
    public void LayUp_InUsUnits_DecidesTheSame()
    {
        string[] metric = Amounts(Run("layup --low -20C --json").Output);
        Assert.Equal(metric, Amounts(Run("layup --low -4F --units us --json").Output));
        Assert.Equal(metric, Amounts(Run("layup --low -4 --units us --json").Output));
        Assert.Equal(3, metric.Length);
        Assert.Contains("US qt", Run("layup Tern --low -4 --units us").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void LayUp_WithoutATemperature_TakesTheWinterOnRecordLessTheMargin() =>
        Assert.Contains("Protect down to -21.5 °C.", Run("layup Dipper").Output, StringComparison.Ordinal);

    [Fact]
    public void LayUp_TooWeakAntifreezeOrFlatBattery_ExitsOne()
    {
        Assert.Equal(1, Run("layup Dipper --low -20C --strength 30 --ready-mixed").Exit);
        (string output, _, int exit) = Run("layup Tern --low -20C --battery 11.8");
        Assert.Equal(1, exit);
        Assert.Contains("ACT       battery: freezes at", output, StringComparison.Ordinal);
    }

    [Fact]
    public void LayUp_OfABareDataSheet_SaysWhatIsMissing()
    {
        (string output, string errors, int exit) = Run("layup --spec S.json --log L.json --low -10C");
        Assert.Empty(errors);
        Assert.Equal(1, exit);
        Assert.Contains("Not known: The low points of the raw-water side.", output, StringComparison.Ordinal);
        Assert.Contains("does not say whether raw water runs through its block", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("layup --spec S.json --log L.json", "For a boat of your own give --low or --nights.")]
    [InlineData("layup --low -20C --nights n.csv", "Give either --low or --nights.")]
    [InlineData("layup --low -20C --strength 0", "--strength")]
    [InlineData("layup --low cold", "is no air temperature")]
    [InlineData("layup --low -20C --battery 240", "--battery")]
    public void LayUp_WrongUsage_IsSaid(string arguments, string said)
    {
        (_, string errors, int exit) = Run(arguments);
        Assert.Equal(64, exit);
        Assert.Contains(said, errors, StringComparison.Ordinal);
    }

    // Each document's amounts as text; documents follow each other in the output.
    private static string[] Amounts(string output)
    {
        List<string> amounts = [];
        foreach (string text in output.Split("\n}\n", StringSplitOptions.RemoveEmptyEntries))
        {
            using JsonDocument document = JsonDocument.Parse(text + "\n}");
            JsonElement root = document.RootElement;
            double low = Math.Round(root.GetProperty("low").GetProperty("value").GetDouble(), 6);
            double product = Math.Round(root.GetProperty("antifreeze").GetProperty("product").GetProperty("value").GetDouble(), 6);
            amounts.Add(FormattableString.Invariant($"{root.GetProperty("engine")} {low} {product} {root.GetProperty("fogging").GetRawText()}"));
        }

        return [.. amounts];
    }

    private (string Output, string Errors, int Exit) Run(string arguments) => SampleRun.In(_folder, arguments);
}
