using System.Buffers;
using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using MarineService.Core.Exchange;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using MarineService.Core.Tests.Scheduling;
using NodaTime;

namespace MarineService.Core.Tests.Exchange;

/// <summary>What is written about visits and forecasts is valid by its schema; what is altered in its shape is not.</summary>
public sealed class VisitPlanJsonTest
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(DocumentSchemas.VisitPlan);

    public static IEnumerable<TheoryDataRow<string>> Plans => Documents().Select(text => new TheoryDataRow<string>(text));

    [Theory]
    [MemberData(nameof(Plans))]
    public void Plan_IsValidByItsSchema(string text) => Assert.True(IsValid(JsonNode.Parse(text)!), text);

    [Fact]
    public void Plan_HasTheWorkedExamplesFigures()
    {
        JsonNode plan = JsonNode.Parse(Documents().First())!;
        Assert.Equal(190.3m, plan["cost"]!.GetValue<decimal>());
        Assert.Equal(190.3m, plan["lowerBound"]!.GetValue<decimal>());
        Assert.Equal(222m, plan["bestSingleVisit"]!["cost"]!.GetValue<decimal>());
        Assert.Equal("2024-06-25", plan["visits"]![0]!["date"]!.GetValue<string>());
        Assert.Equal(37.5m, plan["visits"]![0]!["items"]![3]!["nextBestExtraCost"]!.GetValue<decimal>());
    }

    /// <summary>Each member that must be there, taken away at any depth, and one more anywhere: not valid.</summary>
    [Fact]
    public void AlteredShape_IsNotValid()
    {
        string text = Documents().First();
        JsonNode required = JsonNode.Parse(DocumentSchemas.VisitPlan)!;
        foreach (string member in required["required"]!.AsArray().Select(name => name!.GetValue<string>()))
        {
            JsonObject plan = JsonNode.Parse(text)!.AsObject();
            Assert.True(plan.Remove(member));
            Assert.False(IsValid(plan), member);
        }

        foreach (Func<JsonNode, JsonObject> place in new Func<JsonNode, JsonObject>[] { plan => plan.AsObject(), plan => plan["visits"]![0]!.AsObject(), plan => plan["visits"]![0]!["items"]![0]!.AsObject(), plan => plan["seasons"]![0]!.AsObject() })
        {
            JsonNode plan = JsonNode.Parse(text)!;
            place(plan)["more"] = 1;
            Assert.False(IsValid(plan));
        }
    }

    [Fact]
    public void DueList_OfTheClub_CarriesForecastsThatAreValid()
    {
        JsonSchema schema = JsonSchema.FromText(DocumentSchemas.DueList);
        foreach (string launch in new[] { "curlew", "dipper", "tern" })
        {
            (BoatSpecification boat, ServiceLog log) = Club(launch);
            for (LocalDate day = new(2025, 4, 1); day < new LocalDate(2027, 6, 1); day = day.PlusDays(61))
            {
                JsonNode list = JsonNode.Parse(DueListJson.ToText(log.DueList(boat, day)))!;
                Assert.True(schema.Evaluate(Parsed(list.ToJsonString())).IsValid, list.ToJsonString());
                Assert.All(list["tasks"]!.AsArray(), task => Assert.NotNull(task!["forecast"]));
            }
        }
    }

    [Fact]
    public void PlannedUse_OfTheLog_OverridesPastSeasons()
    {
        (BoatSpecification boat, ServiceLog log) = Club("dipper");
        LocalDate today = new(2026, 10, 12);
        ServiceLog planned = log.With(MarineService.Core.Engines.PlannedUse.Between(new(2027, 4, 17), new(2027, 10, 23), EngineHours.FromHours(400m)));
        ServiceLog read = ServiceLogJson.Read(System.Text.Encoding.UTF8.GetBytes(ServiceLogJson.ToText(planned))).Value;
        DueForecast before = log.DueList(boat, today)["impeller-inspect"].Forecast;
        DueForecast after = read.DueList(boat, today)["impeller-inspect"].Forecast;
        Assert.False(before.Hours.Value.RestsOnPlan);
        Assert.True(after.Hours.Value.RestsOnPlan);
        Assert.True(after.Hours.Value.Expected < before.Hours.Value.Expected, $"{before}; {after}");
    }

    [Theory]
    [InlineData("2027-04-16", "10", "/entries/0/until")]
    [InlineData("2037-05-01", "10", "/entries/0/until")]
    [InlineData("2027-04-18", "48.001", "/entries/0/plannedHours")]
    public void PlannedUse_ThatCannotBe_IsAFaultWithItsPlace(string until, string hours, string place)
    {
        string text = $$"""{ "format": "marine-service/service-log", "version": 1, "entries": [ { "kind": "planned-use", "date": "2027-04-17", "until": "{{until}}", "plannedHours": {{hours}} } ] }""";
        Assert.Equal(place, Assert.Single(ServiceLogJson.Read(System.Text.Encoding.UTF8.GetBytes(text)).Faults).Place);
    }

    [Fact]
    public void BadArguments_AreRefusedByName()
    {
        VisitPlan plan = VisitPlanner.From(new(2026, 4, 1), 1m).LeastCost([]).Value;
        Assert.Throws<ArgumentNullException>("plan", () => VisitPlanJson.ToText(null!));
        Assert.Throws<ArgumentNullException>("plan", () => VisitPlanJson.Write(null!, new ArrayBufferWriter<byte>()));
        Assert.Throws<ArgumentNullException>("output", () => VisitPlanJson.Write(plan, null!));
    }

    private static IEnumerable<string> Documents()
    {
        VisitPlanner planner = VisitPlanner.From(new(2024, 4, 15), 60m);
        yield return VisitPlanJson.ToText(planner.LeastCost(VisitPlannerTest.WorkedExample).Value);
        VisitTask[] shared = [VisitPlannerTest.Day("belt", 40, 0.5m, 1m).Behind("belt"), VisitPlannerTest.Day("pump", 60, 0.5m, 1m).Behind("belt")];
        yield return VisitPlanJson.ToText(planner.WithAccess("belt", 12m).LeastCost(shared).Value);
        yield return VisitPlanJson.ToText(planner.FewestVisits([VisitPlannerTest.Day("a", 5, 1m, 1m).NeverLate()]).Value);
        yield return VisitPlanJson.ToText(planner.LeastCost([RepeatedTask.Every("oil", new(2024, 6, 1), 6, 80m, 1m)], new(2025, 12, 31)).Value);
        yield return VisitPlanJson.ToText(planner.LeastCost([]).Value);
    }

    private static (BoatSpecification Boat, ServiceLog Log) Club(string launch) =>
        (BoatSpecificationJson.Read(GoldenDocuments.Read($"Club/{launch}.boat.json")).Value, ServiceLogJson.Read(GoldenDocuments.Read($"Club/{launch}.log.json")).Value);

    private static bool IsValid(JsonNode document) => Schema.Evaluate(Parsed(document.ToJsonString()), new EvaluationOptions { RequireFormatValidation = true }).IsValid;

    private static JsonElement Parsed(string text)
    {
        using JsonDocument document = JsonDocument.Parse(text);
        return document.RootElement.Clone();
    }
}
