using System.Text;
using System.Text.Json;

namespace MarineService.Core.Tests.Exchange;

public sealed class GoldenDocumentsTest
{
    public static TheoryData<string> Golden => [.. GoldenDocuments.Names, .. GoldenDocuments.Club];

    [Theory]
    [MemberData(nameof(Golden))]
    public void Document_Loads_AndSurvivesARoundTrip(string name)
    {
        byte[] utf8 = GoldenDocuments.Read(name);
        DocumentKind kind = DocumentKind.Of(utf8);
        Assert.Empty(kind.Faults(utf8));
        string once = kind.Rewrite(utf8);
        Assert.Equal(once, kind.Rewrite(Encoding.UTF8.GetBytes(once)));
    }

    /// <summary>What is written is what was read: each value of the golden document stands in it, or is the default that goes unsaid.</summary>
    [Theory]
    [InlineData("Documents/v1/engine-specification.json")]
    [InlineData("Documents/v1/boat-specification.json")]
    public void DataSheet_IsWritten_WithEveryTask(string name)
    {
        byte[] utf8 = GoldenDocuments.Read(name);
        using JsonDocument before = JsonDocument.Parse(utf8);
        using JsonDocument after = JsonDocument.Parse(DocumentKind.Of(utf8).Rewrite(utf8));
        Assert.Equal(Ids(before.RootElement), Ids(after.RootElement));
    }

    [Fact]
    public void Folder_HoldsEveryMemberAndWord_ThatTheSchemasKnow()
    {
        HashSet<string> said = [];
        foreach (string name in GoldenDocuments.Names)
        {
            using JsonDocument document = JsonDocument.Parse(GoldenDocuments.Read(name));
            Collect(document.RootElement, said);
        }

        string[] missing = [.. DocumentKind.All.SelectMany(kind => Known(JsonDocument.Parse(kind.Schema).RootElement)).Distinct().Where(word => !said.Contains(word))];
        Assert.True(missing.Length == 0, "in no golden document: " + string.Join(", ", missing));
    }

    private static string[] Ids(JsonElement element) =>
        [.. element.ValueKind == JsonValueKind.Object && element.TryGetProperty("tasks", out JsonElement tasks) ? tasks.EnumerateArray().Select(task => task.GetProperty("id").GetString()!) : []];

    private static void Collect(JsonElement element, HashSet<string> said)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Object:
                foreach (JsonProperty member in element.EnumerateObject())
                {
                    said.Add(member.Name);
                    Collect(member.Value, said);
                }

                break;
            case JsonValueKind.Array:
                foreach (JsonElement item in element.EnumerateArray())
                {
                    Collect(item, said);
                }

                break;
            case JsonValueKind.String:
                said.Add(element.GetString()!);
                break;
        }
    }

    private static IEnumerable<string> Known(JsonElement schema)
    {
        if (schema.ValueKind == JsonValueKind.Array)
        {
            return schema.EnumerateArray().SelectMany(Known);
        }

        if (schema.ValueKind != JsonValueKind.Object)
        {
            return [];
        }

        return schema.EnumerateObject().SelectMany(member => member.Name switch
        {
            "properties" => member.Value.EnumerateObject().Select(property => property.Name).Concat(member.Value.EnumerateObject().SelectMany(property => Known(property.Value))),
            "enum" => member.Value.EnumerateArray().Select(word => word.GetString()!),
            _ => Known(member.Value),
        });
    }
}
