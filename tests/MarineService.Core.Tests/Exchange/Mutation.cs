using System.Text.Json.Nodes;

namespace MarineService.Core.Tests.Exchange;

/// <summary>Changes one thing, or a few, in a document: what people and programs get wrong, and some things they get right.</summary>
internal static class Mutation
{
    private static readonly string[] Values =
    [
        "null", "true", "false", "0", "-1", "1", "0.001", "0.0001", "0.5", "0.01", "0.009", "1.0", "12.0", "12.5", "50", "50.1", "100", "99.999",
        "1200", "1201", "100000", "100000.001", "1000000", "1000000.001", "-0", "1e2", "1E-3", "412.123", "412.1234", "\"\"", "\" \"", "\"\\u00a0\"",
        "\"x\"", "\"main\"", "\"boat\"", "\"2026-04-01\"", "\"2023-02-29\"", "\"2024-02-29\"", "\"1899-12-31\"", "\"1900-01-01\"", "\"2199-12-31\"",
        "\"2200-01-01\"", "\"2026-4-1\"", "\"2026-04-01T00:00\"", "\"replace\"", "\"Replace\"", "\"done-point\"", "\"fixed-grid\"", "\"inspect\"",
        "\"each-use\"", "\"interval\"", "\"pro-rata\"", "\"passed\"", "\"failed\"", "\"not-stated\"", "\"L\"", "\"mL\"", "\"kW\"", "\"[HP]\"", "\"Cel\"",
        "\"published\"", "\"derived\"", "\"given-by-caller\"", "\"common-practice\"", "\"reading\"", "\"completion\"", "\"meter-change\"", "\"event\"",
        "\"withdrawal\"", "\"duty\"", "\"top-up\"", "\"planned-lay-up\"", "\"opening-due-point\"", "\"1\"", "[]", "{}", "[\"a\"]", "[\"a\",\"a\"]", "[\"\"]", "[1]",
        "{\"hours\":100}", "{\"months\":12}", "{\"hours\":100,\"months\":12}", "{\"value\":1,\"unit\":\"L\"}", "{\"value\":1,\"unit\":\"kW\"}",
        "{\"value\":-61,\"unit\":\"Cel\"}", "{\"standing\":\"published\"}", "{\"standing\":\"derived\",\"document\":\"x\"}", "\"15W-40\"", "\"SAE 30\"", "\"40W-15\"", "\"CK-4\"", "\"ck-4\"", "\"E9-16\"", "\"E9-1995\"", "\"mm2/s\"", "[[\"CK-4\"]]", "[[]]",
        "{\"value\":140,\"unit\":\"[degF]\"}", "{\"value\":-76,\"unit\":\"[degF]\"}", "{\"value\":60.001,\"unit\":\"Cel\"}", "{\"value\":0.4,\"unit\":\"cSt\"}", "{\"grade\":\"30\"}",
        "\"drained\"", "\"filter-kept\"", "\"settled\"", "\"oil-change\"", "\"extractor\"", "\"milky\"", "\"mm\"", "\"deg\"", "\"h\"", "\"kg/m3\"",
        "{\"range\":0.5}", "{\"range\":-5.1}", "{\"volume\":{\"value\":0,\"unit\":\"L\"}}", "{\"value\":10,\"unit\":\"min\"}", "{\"value\":801,\"unit\":\"kg/m3\"}",
        "{\"value\":45.1,\"unit\":\"deg\"}", "[{\"step\":\"begun\"}]", "[{\"step\":\"ran\"}]",
        "\"clockwise\"", "\"pulley-end\"", "\"grooved\"", "\"smooth\"", "\"mm\"", "\"deg\"", "\"[in_i]\"", "\"a(b)\"", "{\"value\":60,\"unit\":\"mm\"}", "{\"value\":0,\"unit\":\"mm\"}",
        "{\"sense\":\"clockwise\",\"seenFrom\":\"pulley-end\"}", "{\"x\":1,\"y\":-1,\"unit\":\"mm\"}", "\"automatic\"", "\"set-by-hand\"", "\"alternator\"",
        "[\"hose\"]", "[\"hose\",\"hose\"]", "\"hose\"", "\"petrol\"", "9.4", "21", "{\"count\":4}", "\"winter-work\"", "\"exhaust\"", "\"propylene\"", "[{\"point\":\"a\",\"rodded\":1,\"ran\":1}]", "{\"lowPoints\":[]}", "{\"value\":0.01,\"unit\":\"L\"}",
        "\"start\"", "\"open-fuel\"", "[\"start\"]", "[\"start\",\"start\"]", "\"oil-unfit\"", "[\"look\"]", "\"warning\"", "{\"value\":2881,\"unit\":\"min\"}", "{\"value\":24.5,\"unit\":\"h\"}",
        "[{\"id\":\"h\",\"text\":\"t\",\"count\":true,\"written\":true}]", "[{\"id\":\"h\",\"text\":\"t\",\"count\":false}]", "[{\"name\":\"spanner\"}]", "[{\"circumstance\":\"petrol\",\"holds\":true}]",
        "\"gathered\"", "\"gasket-up\"", "\"3/4-16\"", "\"kPa\"", "\"[psi]\"", "\"um\"", "\"kg\"", "\"LV-GSK-1\"", "{\"part\":\"LV-GSK-1\"}", "[{\"part\":\"x\",\"quantity\":0.5}]", "12.34567",
        "[{\"name\":\"can\",\"amount\":5,\"price\":40}]", "{\"least\":{\"value\":1,\"unit\":\"kPa\"},\"most\":{\"value\":0.02,\"unit\":\"bar\"}}", "{\"kind\":\"fuel\"}",
        "{\"towing\":0.5}", "{\"towing\":1.5}", "{\" \":0.5}",
    ];

    private static readonly string[] Members =
    [
        "id", "title", "action", "interval", "occasion", "firstService", "tolerancePercent", "anchorPolicy", "ifFailed", "includes", "source", "hours", "months",
        "kind", "date", "dial", "task", "result", "exchangedFraction", "fractionUncertainty", "dueDate", "until", "event", "amount", "edition", "document",
        "unit", "value", "designation", "extra", "partialExchange", "severeDuty", "corrects", "note", "engine", "meter", "tasks",
        "permittedOils", "fittedOil", "grades", "grade", "required", "forbidden", "claims", "coldest", "hottest", "preference", "viscosityAt40C", "viscosityAt100C",
        "sump", "oilTask", "dipstick", "range", "addMark", "onlyByExtractor", "extractorResidual", "passages", "oilDensity", "shape", "account", "step", "reading",
        "method", "emptiedIntoMeasure", "appearance", "period", "levelAfter", "topUps", "settled", "seating", "pitch",
        "beltDrive", "crankTurns", "centersKnownTo", "pulleys", "belt", "tensioner", "routing", "name", "rim", "center", "effectiveDiameter", "outsideDiameter", "diameterOverBalls",
        "duty", "mustTurn", "load", "width", "plane", "leastWrap", "ribs", "tolerance", "spring", "pivot", "sense", "seenFrom", "x",
        "text", "why", "after", "onlyIf", "unless", "acts", "tools", "consumables", "cautions", "holdPoints", "time", "leastTime", "written", "expiresOvernight", "inspects", "replaces", "opens", "closes", "decides", "known", "holds", "provedBy", "word", "size",
        "layUp", "lowPoints", "absent", "circuit", "drains", "holds", "trapped", "cylinders", "count", "displacement", "compressionRatio", "fuelTank", "fuel", "capacity", "works", "point", "rodded", "ran", "scale", "freezingPoint",
        "parts", "catalogue", "number", "tool", "reserve", "companions", "packs", "price", "part", "quantity", "onceFor", "takes", "comesOff", "place", "captiveWashers", "sparesAboard",
        "filterBases", "needs", "filter", "mounted", "thread", "gasketOuter", "bypass", "bypassOpening", "burst", "flow", "pressureDrop", "efficiency", "particleSize", "least", "most", "tally", "putBack", "renewed",
    ];

    internal static string Of(JsonNode document, Random random)
    {
        JsonNode copy = document.DeepClone();
        int changes = 1 + random.Next(2);
        for (int i = 0; i < changes; i++)
        {
            Change(copy, random);
        }

        return copy.ToJsonString();
    }

    private static void Change(JsonNode document, Random random)
    {
        JsonNode[] parents = [.. Below(document).Where(node => node is JsonObject or JsonArray)];
        JsonNode parent = parents[random.Next(parents.Length)];
        JsonNode? value = JsonNode.Parse(Values[random.Next(Values.Length)]);
        if (parent is JsonObject fields)
        {
            string[] names = [.. fields.Select(field => field.Key)];
            string? name = names.Length == 0 ? null : names[random.Next(names.Length)];
            switch (random.Next(5))
            {
                case 0 when name is not null:
                    fields.Remove(name);
                    break;
                case 1:
                    fields[Members[random.Next(Members.Length)]] = value;
                    break;
                case 2 when name is not null:
                    JsonNode? moved = fields[name];
                    fields.Remove(name);
                    fields[Members[random.Next(Members.Length)]] = moved;
                    break;
                default:
                    fields[name ?? "extra"] = value;
                    break;
            }
        }
        else if (parent is JsonArray items)
        {
            switch (random.Next(3))
            {
                case 0 when items.Count > 0:
                    items.RemoveAt(random.Next(items.Count));
                    break;
                case 1 when items.Count > 0:
                    items[random.Next(items.Count)] = value;
                    break;
                default:
                    items.Add(value);
                    break;
            }
        }
    }

    private static IEnumerable<JsonNode> Below(JsonNode node)
    {
        yield return node;
        IEnumerable<JsonNode?> children = node switch
        {
            JsonObject fields => fields.Select(field => field.Value),
            JsonArray items => items,
            _ => [],
        };
        foreach (JsonNode child in children.OfType<JsonNode>().SelectMany(Below))
        {
            yield return child;
        }
    }
}
