using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using MarineService.Core.Exchange;

namespace MarineService.Core.Tests.Sample;

/// <summary>The card command as the shell sees it: a card, a form, a report that starts before the water, one that is proved and entered.</summary>
public sealed class CardCommandTest : IDisposable
{
    private const string Spring = "card Curlew --today 2027-04-20";

    private readonly string _folder = Directory.CreateTempSubdirectory("rowing-club-card-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Card_OfSpring_LooksAtTheOilColdFirstAndRestoresTheBilgePumpLast()
    {
        (string output, string errors, int exit) = Run(Spring);
        Assert.Equal(0, exit);
        Assert.Empty(errors);
        Assert.Contains(" 2 [ ] Look at the oil cold", output, StringComparison.Ordinal);
        int bilge = output.IndexOf("Bilge free of oil, bilge pump on automatic", StringComparison.Ordinal);
        string[] after = [.. output[bilge..].Split('\n').Skip(1).Where(line => line.Contains("[ ]", StringComparison.Ordinal))];
        Assert.All(after, line => Assert.True(line.Contains("(record)", StringComparison.Ordinal) || line.Contains("(plan-next)", StringComparison.Ordinal), line));
        Assert.Contains("33 CFR 183.610", output, StringComparison.Ordinal);
        Assert.Contains("(coolant-level)", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Card_Json_IsValidByItsSchema()
    {
        JsonSchema schema = JsonSchema.FromText(DocumentSchemas.JobCard);
        foreach (string arguments in new[] { Spring + " --json", "card Curlew --task engine-oil --task fuel-filter --coldest 2 --hottest 26 --json" })
        {
            using JsonDocument card = JsonDocument.Parse(Run(arguments).Output);
            Assert.True(schema.Evaluate(card.RootElement).IsValid);
        }
    }

    [Fact]
    public void Card_WithOil_SaysWhichAndHowMuch_OrThatTheWeatherIsNotKnown()
    {
        Assert.Contains("Oil          15W-40, to have 6.6 L", Run("card Curlew --task engine-oil --coldest 2 --hottest 26").Output, StringComparison.Ordinal);
        Assert.Contains("7.0 US qt", Run("card Curlew --task engine-oil --coldest 2C --hottest 26C --units us").Output, StringComparison.Ordinal);
        Assert.Contains("The lowest and the highest air temperature", Run("card Curlew --task engine-oil").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Report_ThatStartsBeforeTheWater_IsRefused_AndTheLogIsUntouched()
    {
        JsonObject report = Form();
        report["events"] = new JsonArray(report["events"]!.AsArray().Take(5).Append(new JsonObject { ["step"] = "proof-start" }).Select(one => one!.DeepClone()).ToArray());
        Write("early.json", report);
        (string output, _, int exit) = Run(Spring + " --done early.json --into L.json");
        Assert.Equal(1, exit);
        Assert.Contains("a dry impeller tears", output, StringComparison.Ordinal);
        Assert.Contains("Nothing was entered.", output, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(_folder, "L.json")));
    }

    [Fact]
    public void Report_OfAWholeVisit_IsProvedAndEntered()
    {
        Write("done.json", Form());
        (string output, string errors, int exit) = Run(Spring + " --done done.json --into L.json");
        Assert.True(exit == 0, output + errors);
        Assert.Contains("Proved.", output, StringComparison.Ordinal);
        string[] tasks = [.. JsonNode.Parse(File.ReadAllText(Path.Combine(_folder, "L.json")))!["entries"]!.AsArray().Select(entry => entry!["task"]!.GetValue<string>())];
        Assert.Equal(["belt-inspect", "coolant", "first-run", "impeller-replace", "strainer"], tasks.Order());
    }

    [Fact]
    public void Report_WithStartImpellerAndBuckets_IsProvedAndEntersThem()
    {
        JsonObject report = Form();
        report["start"] = JsonNode.Parse("""{ "elapsed": { "value": 40, "unit": "s" }, "pressure": { "value": 4, "unit": "s" }, "water": [{ "outlet": "port outlet", "after": { "value": 12, "unit": "s" } }, { "outlet": "starboard outlet", "after": { "value": 14, "unit": "s" } }] }""");
        report["impeller"] = JsonNode.Parse("""{ "vanes": 3, "seen": [{ "number": 1, "state": "whole" }, { "number": 2, "state": "whole" }, { "number": 3, "state": "cracked" }] }""");
        Write("done.json", report);
        (string output, string errors, int exit) = Run(Spring + " --done done.json --into L.json");
        Assert.True(exit == 0, output + errors);
        Assert.Contains(JsonNode.Parse(File.ReadAllText(Path.Combine(_folder, "L.json")))!["entries"]!.AsArray(), entry => entry!["kind"]!.GetValue<string>() == "impeller-inspection");
        report["start"]!["water"] = new JsonArray();
        Write("dry.json", report);
        (output, _, exit) = Run(Spring + " --done dry.json --into M.json");
        Assert.Equal(1, exit);
        Assert.Contains("Nothing was entered.", output, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(_folder, "M.json")));
    }

    [Fact]
    public void Report_ThatWasPutDown_EntersWhatIsProved_AndTheNextDayTheRest()
    {
        File.WriteAllBytes(Path.Combine(_folder, "curlew.boat.json"), Bytes("curlew.boat.json"));
        File.WriteAllBytes(Path.Combine(_folder, "L.json"), Bytes("curlew.log.json"));
        JsonObject whole = Form();
        JsonNode[] events = [.. whole["events"]!.AsArray().Select(one => one!.DeepClone())];
        int bilge = Array.FindIndex(events, one => one["step"]!.GetValue<string>() == "count-tools");
        JsonObject half = whole.DeepClone().AsObject();
        half["events"] = new JsonArray([.. events.Take(bilge).Select(one => one.DeepClone()), new JsonObject { ["putDown"] = "dark" }]);
        Write("half.json", half);
        const string Files = "card --spec curlew.boat.json --log L.json --today 2027-04-20";
        (string output, string errors, int exit) = Run(Files + " --done half.json --into L.json");
        Assert.True(exit == 1, output + errors);
        Assert.Contains("Put down: proved strainer, belt-inspect; open ", output, StringComparison.Ordinal);
        Assert.Contains("is open", output, StringComparison.Ordinal);

        // The strainer is due no more; the report goes on with its own card all the same.
        whole["events"] = new JsonArray([.. half["events"]!.AsArray().Select(one => one!.DeepClone()), new JsonObject { ["takenUp"] = "2027-04-20" }, .. events.Skip(bilge).Select(one => one.DeepClone())]);
        Write("whole.json", whole);
        (output, errors, exit) = Run(Files + " --done whole.json --into L.json");
        Assert.True(exit == 0, output + errors);
        string[] tasks = [.. JsonNode.Parse(File.ReadAllText(Path.Combine(_folder, "L.json")))!["entries"]!.AsArray().Where(entry => entry!["date"]!.GetValue<string>() == "2027-04-20" && entry["task"] is not null).Select(entry => entry!["task"]!.GetValue<string>())];
        Assert.Equal(["belt-inspect", "coolant", "first-run", "impeller-replace", "strainer"], tasks.Order());
    }

    [Fact]
    public void Procedure_OfTheManual_TakesThePlaceOfTheUsualOne()
    {
        Write("manual.json", Manual());
        (string output, _, int exit) = Run("card Curlew --task strainer --procedure manual.json");
        Assert.Equal(0, exit);
        Assert.Contains("Turn the strainer's lever, pour it out, turn it back", output, StringComparison.Ordinal);
        Assert.DoesNotContain("Strainer basket out", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Procedure_OfTheManual_DoesATaskThatHasNone()
    {
        JsonObject manual = Manual();
        manual["tasks"]![0]!["task"] = "ventilate";
        Write("manual.json", manual);
        Assert.Contains("no card", Run("card Curlew --task ventilate").Output, StringComparison.Ordinal);
        Assert.Contains("Job card Curlew/main/", Run("card Curlew --task ventilate --procedure manual.json").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Procedure_InACircle_IsRefused_AndTheCircleIsPrinted()
    {
        JsonObject manual = Manual();
        manual["steps"]![0]!["after"] = new JsonArray("turn-lever");
        Write("manual.json", manual);
        (_, string errors, int exit) = Run("card Curlew --task strainer --procedure manual.json");
        Assert.Equal(65, exit);
        Assert.Contains("shut-it -> turn-lever -> shut-it", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Procedure_WithoutATask_OrTwoForOne_IsRefused()
    {
        Write("manual.json", Manual());
        JsonObject silent = Manual();
        silent.Remove("tasks");
        Write("silent.json", silent);
        Assert.Equal(65, Run("card Curlew --task strainer --procedure silent.json").Exit);
        (_, string errors, int exit) = Run("card Curlew --task strainer --procedure manual.json --procedure manual.json");
        Assert.Equal(65, exit);
        Assert.Contains("both do 'strainer'", errors, StringComparison.Ordinal);
        Assert.Equal(66, Run("card Curlew --procedure nowhere.json").Exit);
    }

    [Fact]
    public void Report_WithAScrewLeftOver_IsRefused()
    {
        JsonObject report = Form();
        JsonNode cover = report["tally"]!.AsArray().Single(line => line!["place"]!.GetValue<string>() == "raw-water pump cover")!;
        cover["putBack"] = 5;
        Write("short.json", report);
        (string output, _, int exit) = Run(Spring + " --done short.json --into L.json");
        Assert.Equal(1, exit);
        Assert.Contains("M5 x 16 screw of raw-water pump cover: 1 still off", output, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(_folder, "L.json")));
    }

    [Fact]
    public void Card_OfALaunchWithAPartsSheet_PrintsKitPurchasesFilterAndWhatComesOff()
    {
        string output = Run("card Curlew --task engine-oil --task impeller-replace --shelf LV-OIL-40=2 --shelf LV-IMP-60=1").Output;
        Assert.Contains("6.6 L of LV-OIL-40 engine oil 15W-40, 2 off the shelf, 4.6 to buy; for engine-oil", output, StringComparison.Ordinal);
        Assert.Contains("4.6 L of LV-OIL-40 engine oil 15W-40: 1 x can of 5 L: 41.50", output, StringComparison.Ordinal);
        Assert.Contains("1 of LV-T-2 impeller puller, 1 to gather; for impeller-replace", output, StringComparison.Ordinal);
        Assert.Contains("LV-FIL-60: equivalent, not filled first", output, StringComparison.Ordinal);
        Assert.Contains("6 x M5 x 16 screw of raw-water pump cover, 1 captive washer on each", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Report_OfAnotherCard_IsRefused()
    {
        JsonObject report = Form();
        report["card"] = "Dipper/main/2027-04-20/strainer";
        Write("other.json", report);
        (string output, _, int exit) = Run(Spring + " --done other.json");
        Assert.Equal(1, exit);
        Assert.Contains("the proof is for card 'Dipper/main/2027-04-20/strainer'", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("card Curlew --into L.json", 64)]
    [InlineData("card --form", 64)]
    [InlineData("card Curlew --engine port", 64)]
    [InlineData("card Curlew --task nothing", 64)]
    [InlineData("card Curlew --coldest 5", 64)]
    [InlineData("card Curlew --shelf LV-OIL-40", 64)]
    [InlineData("card Curlew --shelf LV-OIL-40=-1", 64)]
    [InlineData("card Curlew --shelf LV-OIL-40=1 --shelf LV-OIL-40=2", 64)]
    [InlineData("card Curlew --shelf LV-OIL-99=1", 64)]
    [InlineData("card Curlew --done nowhere.json", 66)]
    public void Card_Refused_ExitsWithItsCodeAndSaysWhy(string arguments, int expected)
    {
        (string output, string errors, int exit) = Run(arguments);
        Assert.True(expected == exit, $"exit {exit}: {output}{errors}");
        Assert.NotEmpty(errors);
    }

    /// <summary>The card's own form, filled in.</summary>
    private JsonObject Form()
    {
        JsonObject report = JsonNode.Parse(Run(Spring + " --form").Output)!.AsObject();
        foreach (JsonNode? one in report["events"]!.AsArray())
        {
            foreach (JsonNode? proof in one!["proofs"]?.AsArray() ?? [])
            {
                proof!["passed"] = true;
                proof["missing"] = 0;
                proof["note"] = "seen";
                proof["time"] = new JsonObject { ["value"] = 5, ["unit"] = "min" };
            }
        }

        JsonArray off = JsonNode.Parse(Run(Spring + " --json").Output)!["comesOff"]!.AsArray();
        foreach ((JsonNode? line, JsonNode? item) in report["tally"]!.AsArray().Zip(off))
        {
            line!["putBack"] = item!["count"]!.GetValue<int>();
            line["captiveWashers"] = item["count"]!.GetValue<int>() * (item["captiveWashers"]?.GetValue<int>() ?? 0);
        }

        report["dial"] = 104.2;
        report["belt"] = new JsonArray("crank", "tensioner(back)", "raw-water pump", "alternator", "circulating pump(back)", "steering pump", "idler(back)");
        report["verdicts"] = new JsonArray(
            new JsonObject { ["task"] = "belt-inspect", ["passed"] = true }, new JsonObject { ["task"] = "first-run", ["passed"] = true });
        report["by"] = "M. Kerr";
        return report;
    }

    private static JsonObject Manual() => JsonNode.Parse("""
        {
          "format": "marine-service/procedure", "version": 1, "id": "manual-strainer", "title": "Strainer", "tasks": [{ "task": "strainer", "provedBy": ["turn-lever"] }],
          "steps": [
            { "id": "shut-it", "text": "Shut the seacock", "acts": ["shut-seacock"] },
            { "id": "turn-lever", "text": "Turn the strainer's lever, pour it out, turn it back", "after": ["shut-it"], "acts": ["open-strainer"] },
            { "id": "open-it", "text": "Open the seacock", "after": ["turn-lever"], "acts": ["supply-water"] }
          ]
        }
        """)!.AsObject();

    private static byte[] Bytes(string name)
    {
        using Stream stream = typeof(CardCommandTest).Assembly.GetManifestResourceStream($"Club/{name}")!;
        using MemoryStream copy = new();
        stream.CopyTo(copy);
        return copy.ToArray();
    }

    private void Write(string name, JsonNode document) => File.WriteAllText(Path.Combine(_folder, name), document.ToJsonString());

    private (string Output, string Errors, int Exit) Run(string arguments) => SampleRun.In(_folder, arguments);
}
