using System.Text.Json;
using Json.Schema;
using MarineService.Core.Belts;
using MarineService.Core.Exchange;
using MarineService.Core.Tests.Belts;
using UnitsNet;

namespace MarineService.Core.Tests.Exchange;

/// <summary>What is written about a belt is valid by its schema, whatever the belt, and says where to draw it.</summary>
public sealed class BeltDocumentsTest
{
    private static readonly RotationalSpeed Speed = RotationalSpeed.FromRevolutionsPerMinute(3000);

    [Fact]
    public void Examination_OfAnyBelt_IsValidByItsSchema()
    {
        JsonSchema schema = JsonSchema.FromText(DocumentSchemas.BeltExamination);
        BeltDrive demo = EngineSpecificationJson.Read(GoldenDocuments.Read("Documents/v1/engine-specification-belt.json")).Value.BeltDrive!;
        BeltDrive byHand = EngineSpecificationJson.Read(GoldenDocuments.Read("Documents/v1/engine-specification-belt-by-hand.json")).Value.BeltDrive!;
        Random random = new(20261012);
        HashSet<BeltVerdict> verdicts = [];
        for (int i = 0; i < 600; i++)
        {
            BeltDrive drive = i % 3 == 0 ? demo : i % 3 == 1 ? byHand : RandomDrives.Any(random, 2 + random.Next(7));
            BeltRouting routing = i < 2 ? drive.Route([.. drive.Pulleys.Select(pulley => pulley.Name)]) : RandomDrives.Scrambled(random, drive, 2 + random.Next(drive.Pulleys.Count - 1));
            BeltExamination seen = BeltExamination.Of(routing, Speed);
            verdicts.Add(seen.Check.Verdict);
            AssertValid(schema, BeltExaminationJson.ToText(seen, (DisplayUnits)(i % 2)));
        }

        Assert.True(verdicts.Count >= 6, string.Join(", ", verdicts));
    }

    [Fact]
    public void Examination_HoldsWhatADrawingNeeds()
    {
        BeltRouting routing = Layouts.Routing("S07");
        JsonElement stops = Parsed(BeltExaminationJson.ToText(BeltExamination.Of(routing, Speed), DisplayUnits.Metric)).GetProperty("stops");
        for (int i = 0; i < 7; i++)
        {
            JsonElement exit = stops[i].GetProperty("exit");
            JsonElement entry = stops[(i + 1) % 7].GetProperty("entry");
            double dx = entry.GetProperty("x").GetDouble() - exit.GetProperty("x").GetDouble();
            double dy = entry.GetProperty("y").GetDouble() - exit.GetProperty("y").GetDouble();
            Assert.Equal(stops[i].GetProperty("exitSpan").GetProperty("value").GetDouble(), Math.Sqrt((dx * dx) + (dy * dy)), 1e-9);
        }
    }

    [Fact]
    public void Search_OfAnyDrive_IsValidByItsSchema()
    {
        JsonSchema schema = JsonSchema.FromText(DocumentSchemas.BeltRoutings);
        BeltDrive demo = EngineSpecificationJson.Read(GoldenDocuments.Read("Documents/v1/engine-specification-belt.json")).Value.BeltDrive!;
        AssertValid(schema, RoutingSearchJson.ToText(demo.FindRoutings(RoutingSearchOptions.Default.WithFaces(FaceChoice.Either).WithMissedPulleys())));
        AssertValid(schema, RoutingSearchJson.ToText(Layouts.Drive("S05").FindRoutings()));
        AssertValid(schema, RoutingSearchJson.ToText(Layouts.Drive("X02").FindRoutings()));
    }

    [Theory]
    [InlineData("\"closes\"", "\"perhaps\"")]
    [InlineData("\"mm\"", "\"cm\"")]
    [InlineData("\"pitchRadius\"", "\"radius\"")]
    public void Schema_RefusesAnAlteredDocument(string from, string to)
    {
        string text = BeltExaminationJson.ToText(BeltExamination.Of(Layouts.Routing("S07"), Speed), DisplayUnits.Metric);
        Assert.Contains(from, text, StringComparison.Ordinal);
        Assert.False(JsonSchema.FromText(DocumentSchemas.BeltExamination).Evaluate(Parsed(text.Replace(from, to, StringComparison.Ordinal))).IsValid);
    }

    private static JsonElement Parsed(string text)
    {
        using JsonDocument document = JsonDocument.Parse(text);
        return document.RootElement.Clone();
    }

    private static void AssertValid(JsonSchema schema, string text) => Assert.True(schema.Evaluate(Parsed(text)).IsValid, text);
}
