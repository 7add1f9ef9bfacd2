using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using MarineService.Core.Exchange;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;

namespace MarineService.Core.Tests.Exchange;

/// <summary>The published schemas and the reader say the same of the shape of a document. Second opinion: JsonSchema.Net.</summary>
public sealed class DocumentSchemasTest
{
    private static readonly int MutantsOfEach = RandomCases.Of(400);

    private static readonly EvaluationOptions Options = new() { OutputFormat = OutputFormat.Flag, RequireFormatValidation = true };

    public static TheoryData<string> Golden => [.. GoldenDocuments.Names, .. GoldenDocuments.Club];

    [Theory]
    [MemberData(nameof(Golden))]
    public void GoldenDocument_IsValid_ByItsSchema(string name)
    {
        byte[] utf8 = GoldenDocuments.Read(name);
        Assert.True(IsValid(JsonSchema.FromText(DocumentKind.Of(utf8).Schema), utf8));
    }

    [Theory]
    [MemberData(nameof(Golden))]
    public void AlteredDocument_IsValidByItsSchema_ExactlyWhenTheReaderFindsNoFaultOfShape(string name)
    {
        byte[] utf8 = GoldenDocuments.Read(name);
        DocumentKind kind = DocumentKind.Of(utf8);
        JsonSchema schema = JsonSchema.FromText(kind.Schema);
        JsonNode document = JsonNode.Parse(utf8)!;
        Random random = new(20261012);
        int valid = 0;
        for (int i = 0; i < MutantsOfEach; i++)
        {
            string mutant = Mutation.Of(document, random);
            bool bySchema = IsValid(schema, System.Text.Encoding.UTF8.GetBytes(mutant));
            ReadFault[] faults = [.. kind.FaultsOf(mutant).Where(fault => !fault.IsMeaning)];
            Assert.True(
                bySchema == (faults.Length == 0),
                $"schema says {(bySchema ? "valid" : "not valid")}, the reader says {string.Join("; ", faults.Select(fault => fault.ToString()))} of {mutant}");
            valid += bySchema ? 1 : 0;
        }

        // Both answers must occur, or the comparison proves nothing.
        Assert.InRange(valid, 1, MutantsOfEach - 1);
    }

    /// <summary>
    /// Damaged text: what the reader accepts is valid by the schema, and what is not valid has a fault. What is valid may still have faults
    /// that no schema can say: members that stand twice, halves of characters, digits that would be lost.
    /// </summary>
    [Theory]
    [MemberData(nameof(Golden))]
    public void DamagedText_NeverThrows_AndIsReadOnlyWhenValid(string name)
    {
        byte[] utf8 = GoldenDocuments.Read(name);
        DocumentKind kind = DocumentKind.Of(utf8);
        JsonSchema schema = JsonSchema.FromText(kind.Schema);
        Random random = new(20261012);
        for (int i = 0; i < MutantsOfEach; i++)
        {
            byte[] mutant = TextMutation.Of(utf8, random);
            IReadOnlyList<ReadFault> faults = kind.Faults(mutant);
            bool? bySchema = Judge(schema, mutant);
            string text = System.Text.Encoding.UTF8.GetString(mutant);
            Assert.True(bySchema != false || faults.Count > 0, $"not valid, but read: {text}");
            Assert.True(
                bySchema != true || faults.All(fault => fault.IsMeaning),
                $"valid, but the reader says {string.Join("; ", faults.Select(fault => fault.ToString()))} of {text}");
            Assert.All(faults, fault => Assert.True(fault.Place.Length == 0 || fault.Place[0] == '/', fault.Place));
        }
    }

    /// <summary>What the library wrote once stays valid: programs that read it keep what they have.</summary>
    [Fact]
    public void WrittenDocuments_OfOld_StayValid()
    {
        Assert.True(IsValid(JsonSchema.FromText(DocumentSchemas.DueList), GoldenDocuments.Read("Documents/v1/due-list.json")));
        Assert.True(IsValid(JsonSchema.FromText(DocumentSchemas.OilSelection), GoldenDocuments.Read("Documents/v1/oil-selection.json")));
        Assert.True(IsValid(JsonSchema.FromText(DocumentSchemas.DueList), GoldenDocuments.Read("Documents/v1/due-list-forecast.json")));
        Assert.True(IsValid(JsonSchema.FromText(DocumentSchemas.VisitPlan), GoldenDocuments.Read("Documents/v1/visit-plan.json")));
    }

    [Fact]
    public void DueList_OfEveryStatusAndBasis_IsValidByItsSchema()
    {
        MarineService.Core.Specifications.BoatSpecification boat = BoatSpecificationJson.Read(GoldenDocuments.Read("Documents/v1/boat-specification.json")).Value;
        ServiceLog log = ServiceLogJson.Read(GoldenDocuments.Read("Documents/v1/service-log.json")).Value;
        JsonSchema schema = JsonSchema.FromText(DocumentSchemas.DueList);
        for (NodaTime.LocalDate day = new(2024, 3, 1); day < new NodaTime.LocalDate(2026, 12, 1); day = day.PlusDays(40))
        {
            DueList due = log.DueList(boat, day);
            Assert.True(IsValid(schema, System.Text.Encoding.UTF8.GetBytes(DueListJson.ToText(due))), DueListJson.ToText(due));
        }
    }

    // Not JSON is not valid; a half of a character in a text is JSON, but the second opinion has none of it.
    private static bool? Judge(JsonSchema schema, byte[] utf8)
    {
        try
        {
            return IsValid(schema, utf8);
        }
        catch (JsonException)
        {
            return false;
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }

    private static bool IsValid(JsonSchema schema, byte[] utf8)
    {
        using JsonDocument document = JsonDocument.Parse(utf8);
        return schema.Evaluate(document.RootElement, Options).IsValid;
    }
}
