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
    private const int MutantsOfEach = 1500;

    private static readonly EvaluationOptions Options = new() { OutputFormat = OutputFormat.Flag, RequireFormatValidation = true };

    public static TheoryData<string> Golden => [.. GoldenDocuments.Names];

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

    private static bool IsValid(JsonSchema schema, byte[] utf8)
    {
        using JsonDocument document = JsonDocument.Parse(utf8);
        return schema.Evaluate(document.RootElement, Options).IsValid;
    }
}
