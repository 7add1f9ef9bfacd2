using System.Text.Json;
using Json.Schema;
using MarineService.Core.Engines;
using MarineService.Core.Exchange;
using MarineService.Core.Fluids;
using MarineService.Core.LayUp;
using MarineService.Core.Tests.LayUp;
using UnitsNet;

namespace MarineService.Core.Tests.Exchange;

public sealed class LayUpPlanJsonTest
{
    private static readonly LayUpPlan Plan = Winters.Plan
        .WithFuel(FuelLayUp.Of(FuelTank.Of(Fuel.Petrol, Volume.FromLiters(90)), Volume.FromLiters(40), FuelStabilizer.Of("stabilizer", Volume.FromMilliliters(25), Volume.FromLiters(10))))
        .WithBattery(BatteryReading.OfDensity(1.2));

    [Fact]
    public void ToText_SaysAmountsStepsAndSources()
    {
        JsonElement document = Parsed(LayUpPlanJson.ToText(Plan, DisplayUnits.Metric));
        Assert.Equal("marine-service/lay-up-plan", document.GetProperty("format").GetString());
        Assert.Equal("protect", document.GetProperty("verdict").GetString());
        Assert.Equal(-20, document.GetProperty("low").GetProperty("value").GetDouble());
        Assert.Equal(7.5, document.GetProperty("antifreeze").GetProperty("product").GetProperty("value").GetDouble(), 1e-9);
        Assert.Equal(-23, document.GetProperty("antifreeze").GetProperty("wantedFreezingPoint").GetProperty("value").GetDouble(), 1e-9);
        Assert.Equal("dose", document.GetProperty("fogging").GetProperty("verdict").GetString());
        Assert.Equal(0.2025, document.GetProperty("fuel").GetProperty("stabilizer").GetProperty("value").GetDouble(), 1e-9);
        Assert.Equal(-17, Temperature.FromDegreesCelsius(document.GetProperty("battery").GetProperty("freezingPoint").GetProperty("value").GetDouble()).DegreesFahrenheit, 1e-6);
        Assert.Contains(document.GetProperty("steps").EnumerateArray(), step => step.TryGetProperty("caution", out JsonElement caution) && caution.GetProperty("word").GetString() == "danger");
        Assert.Equal(6, document.GetProperty("openings").GetInt32());
    }

    [Fact]
    public void ToText_InUsUnits_DiffersInWordsOnly()
    {
        JsonElement metric = Parsed(LayUpPlanJson.ToText(Plan, DisplayUnits.Metric));
        JsonElement us = Parsed(LayUpPlanJson.ToText(Plan, DisplayUnits.UsCustomary));
        foreach (string member in new[] { "low", "antifreeze", "fogging", "fuel", "battery", "tags" })
        {
            Assert.Equal(metric.GetProperty(member).GetRawText(), us.GetProperty(member).GetRawText());
        }

        Assert.NotEqual(metric.GetProperty("steps").GetRawText(), us.GetProperty("steps").GetRawText());
    }

    [Fact]
    public void ToText_OfManyPlans_IsValidByItsSchema()
    {
        JsonSchema schema = JsonSchema.FromText(DocumentSchemas.LayUpPlan);
        Antifreeze[] products = [Winters.Glycol, Antifreeze.Of("pink", AntifreezeBase.Ethanol), Antifreeze.Of("strong", AntifreezeBase.PropyleneGlycol, 0.95)];
        FreezeDecision[] winters = [Winters.Low, FreezeDecision.ForLow(Temperature.FromDegreesCelsius(4)), FreezeDecision.ForSite(new(2026, 11, 1), new(2027, 4, 1), [])];
        foreach (Fuel fuel in Enum.GetValues<Fuel>())
        {
            foreach (FreezeDecision freeze in winters)
            {
                LayUpPlan bare = LayUpPlan.For(Engine.Of("x", fuel), freeze);
                AssertValid(schema, bare);
                foreach (Antifreeze product in products)
                {
                    AssertValid(schema, bare.WithRawWaterSide(Winters.Side).WithAntifreeze(product).WithCylinders(Cylinders.Of(3, Volume.FromLiters(1.3), 12))
                        .WithCoolant(RefractometerReading.Of(GlycolKind.Ethylene, Temperature.FromDegreesCelsius(-10))).WithFuel(FuelLayUp.Of(FuelTank.Of(fuel, Volume.FromLiters(20)))));
                }
            }
        }

        string altered = LayUpPlanJson.ToText(Plan, DisplayUnits.Metric).Replace("\"protect\"", "\"perhaps\"", StringComparison.Ordinal);
        Assert.False(schema.Evaluate(Parsed(altered)).IsValid);
    }

    private static void AssertValid(JsonSchema schema, LayUpPlan plan)
    {
        string text = LayUpPlanJson.ToText(plan, DisplayUnits.UsCustomary);
        Assert.True(schema.Evaluate(Parsed(text)).IsValid, text);
    }

    private static JsonElement Parsed(string text)
    {
        using JsonDocument document = JsonDocument.Parse(text);
        return document.RootElement.Clone();
    }
}
