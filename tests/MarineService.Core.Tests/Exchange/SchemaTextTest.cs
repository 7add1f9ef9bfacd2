using System.Reflection;
using System.Text.Json;
using Json.Schema;
using MarineService.Core.Exchange;

namespace MarineService.Core.Tests.Exchange;

/// <summary>The schemas themselves: valid, described, each thing said once, and with the very names and words that the code has.</summary>
public sealed class SchemaTextTest
{
    private static readonly Type[] ExchangeTypes = [.. typeof(DocumentSchemas).Assembly.GetTypes().Where(type => type.Namespace == typeof(DocumentSchemas).Namespace)];

    private static readonly Dictionary<string, JsonElement> Schemas = typeof(DocumentSchemas).GetProperties(BindingFlags.Public | BindingFlags.Static)
        .ToDictionary(schema => schema.Name, schema => JsonDocument.Parse((string)schema.GetValue(null)!).RootElement);

    public static TheoryData<string> Names => [.. Schemas.Keys.Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Schema_IsValid_ByTheMetaSchema(string name)
    {
        Assert.Equal("https://json-schema.org/draft/2020-12/schema", Schemas[name].GetProperty("$schema").GetString());
        EvaluationResults result = MetaSchemas.Draft202012.Evaluate(Schemas[name], new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, string.Join("; ", (result.Details ?? []).Where(detail => detail.Errors is not null).Select(detail => $"{detail.InstanceLocation}: {string.Join(", ", detail.Errors!.Values)}")));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Schema_DescribesItselfAndEveryMember(string name)
    {
        Assert.True(Schemas[name].TryGetProperty("title", out _));
        Assert.True(Schemas[name].TryGetProperty("description", out _));
        string[] silent = [.. Objects(Schemas[name]).SelectMany(Members).Where(member => !member.Value.TryGetProperty("description", out _)).Select(member => member.Name)];
        Assert.True(silent.Length == 0, "no description: " + string.Join(", ", silent));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Schema_ClosesEveryObject_AndPointsWhereSomethingIs(string name)
    {
        Assert.All(Objects(Schemas[name]), item => Assert.False(item.GetProperty("additionalProperties").GetBoolean()));
        HashSet<string> defined = Schemas[name].TryGetProperty("$defs", out JsonElement definitions) ? [.. definitions.EnumerateObject().Select(definition => definition.Name)] : [];
        HashSet<string> used = [.. References(Schemas[name]).Select(reference => reference["#/$defs/".Length..])];
        Assert.Equal(used.Order(StringComparer.Ordinal), defined.Order(StringComparer.Ordinal));
    }

    /// <summary>What several schemas define under one name is the same thing.</summary>
    [Fact]
    public void Definitions_OfOneName_AreTheSameInEverySchemaThatIsRead()
    {
        IEnumerable<IGrouping<string, string>> definitions = Schemas.Where(schema => schema.Key is nameof(DocumentSchemas.EngineSpecification) or nameof(DocumentSchemas.BoatSpecification) or nameof(DocumentSchemas.ServiceLog))
            .Where(schema => schema.Value.TryGetProperty("$defs", out _))
            .SelectMany(schema => schema.Value.GetProperty("$defs").EnumerateObject())
            .GroupBy(definition => definition.Name, definition => definition.Value.GetRawText().ReplaceLineEndings("\n"));
        Assert.All(definitions, same => Assert.Single(same.Distinct()));
    }

    /// <summary>The members of each object in the schemas are the members that a reader or a writer has, and the other way round.</summary>
    [Fact]
    public void Members_AreThoseOfTheCode()
    {
        HashSet<string> inCode = [.. ExchangeTypes.SelectMany(StaticFields).Select(field => field.GetValue(null)).Concat([WireUnits.Members]).OfType<MemberNames>().Select(names => Sorted(names.Names))];
        HashSet<string> inSchemas = [.. Schemas.Values.SelectMany(Objects).Select(item => Sorted(Members(item).Select(member => member.Name)))];

        // A document begins with format and version, whether its reader counts them among its members or not; an interval of a boat has no hours.
        string WithHead(string names) => Sorted(names.Split(' ').Union(["format", "version"]));
        string[] onlyInCode = [.. inCode.Where(names => !inSchemas.Contains(names) && !inSchemas.Contains(WithHead(names)))];
        string[] onlyInSchemas = [.. inSchemas.Where(names => names != "months" && !inCode.Contains(names) && !inCode.Any(code => WithHead(code) == names))];
        Assert.True(onlyInCode.Length + onlyInSchemas.Length == 0, $"only in code: {string.Join(" | ", onlyInCode)}; only in schemas: {string.Join(" | ", onlyInSchemas)}");
    }

    /// <summary>Each list of words in the schemas is that of an enumeration or of the units of a dimension.</summary>
    [Fact]
    public void Words_AreThoseOfTheCode()
    {
        IEnumerable<string> enumerations = typeof(DocumentSchemas).Assembly.GetTypes().Where(type => type.IsEnum)
            .Select(type => (string)typeof(WireEnum<>).MakeGenericType(type).GetProperty("List", BindingFlags.NonPublic | BindingFlags.Static)!.GetValue(null)!);
        IEnumerable<string> units = typeof(WireUnits).GetProperties(BindingFlags.NonPublic | BindingFlags.Static).Select(property => property.GetValue(null)).OfType<WireUnits>().Select(dimension => dimension.List);
        HashSet<string> known = [.. enumerations.Concat(units).Select(list => Sorted(list.Split(", ")))];

        // The occasion "interval" is said by an interval; the kinds of tensioner are types of their own.
        known.UnionWith([Sorted(["each-use", "lay-up", "commissioning"]), Sorted(["automatic", "set-by-hand"])]);
        string[] strange = [.. Schemas.Values.SelectMany(Objects).SelectMany(Members).Where(member => member.Value.TryGetProperty("enum", out _))
            .Select(member => Sorted(member.Value.GetProperty("enum").EnumerateArray().Select(word => word.GetString()!))).Where(words => !known.Contains(words))];
        Assert.True(strange.Length == 0, "no list of the code's: " + string.Join(" | ", strange));
    }

    private static string Sorted(IEnumerable<string> names) => string.Join(" ", names.Order(StringComparer.Ordinal));

    private static IEnumerable<FieldInfo> StaticFields(Type type) =>
        type.ContainsGenericParameters ? [] : type.GetFields(BindingFlags.Static | BindingFlags.NonPublic | BindingFlags.Public).Where(field => !field.IsLiteral);

    private static IEnumerable<JsonProperty> Members(JsonElement item) => item.GetProperty("properties").EnumerateObject();

    // Every object with members of its own; conditions and alternatives say more of objects that are defined elsewhere.
    private static IEnumerable<JsonElement> Objects(JsonElement schema)
    {
        if (schema.ValueKind != JsonValueKind.Object)
        {
            yield break;
        }

        if (schema.TryGetProperty("properties", out _))
        {
            yield return schema;
        }

        foreach (JsonProperty keyword in schema.EnumerateObject())
        {
            IEnumerable<JsonElement> inner = keyword.Name switch
            {
                "properties" or "$defs" => keyword.Value.EnumerateObject().SelectMany(member => Objects(member.Value)),
                "items" => Objects(keyword.Value),
                _ => [],
            };
            foreach (JsonElement item in inner)
            {
                yield return item;
            }
        }
    }

    private static IEnumerable<string> References(JsonElement schema) => schema.ValueKind switch
    {
        JsonValueKind.Object => schema.EnumerateObject().SelectMany(member => member.Name == "$ref" ? [member.Value.GetString()!] : References(member.Value)),
        JsonValueKind.Array => schema.EnumerateArray().SelectMany(References),
        _ => [],
    };
}
