using System.Buffers;
using System.Text.Json;
using Json.Schema;
using MarineService.Core.Exchange;
using MarineService.Core.Oils;
using NodaTime;
using UnitsNet;

namespace MarineService.Core.Tests.Exchange;

public sealed class OilSelectionJsonTest
{
    private static readonly OilChoice Choice = OilSelection.Among(PermittedOils.Of("15W-40", "10W-30").Requiring("CI-4")).WithFitted(LabelledOil.Of("15W-40", "CK-4"));

    [Fact]
    public void ToText_OfOneStart_SaysVerdictsMarginsLimitsAndSources()
    {
        JsonElement document = Parsed(OilSelectionJson.ToText(Choice.ForColdestStart(Temperature.FromDegreesCelsius(-17)), DisplayUnits.Metric));
        Assert.Equal("marine-service/oil-selection", document.GetProperty("format").GetString());
        Assert.Contains("J300_202405", document.GetProperty("revision").GetString(), StringComparison.Ordinal);
        Assert.Equal("10W-30", document.GetProperty("best").GetString());
        Assert.Equal("start-with-accepted-grade", document.GetProperty("advice").GetString());
        Assert.False(document.TryGetProperty("nights", out _));
        JsonElement second = document.GetProperty("grades")[1];
        Assert.Equal("15W-40", second.GetProperty("grade").GetString());
        Assert.Equal("marginal", second.GetProperty("suitability").GetString());
        Assert.Equal(-2, second.GetProperty("coldMargin").GetProperty("value").GetDouble());
        Assert.Equal("K", second.GetProperty("coldMargin").GetProperty("unit").GetString());
        Assert.Equal("cranking-with-margin", second.GetProperty("decidedBy").GetProperty("kind").GetString());
        Assert.Equal("SAE J300", second.GetProperty("decidedBy").GetProperty("source").GetProperty("document").GetString());
        Assert.Equal(5, second.GetProperty("limits").GetArrayLength());
        JsonElement fitted = document.GetProperty("fitted");
        Assert.Equal("CK-4", fitted.GetProperty("categories")[0].GetProperty("path")[0].GetString());
        Assert.Equal("OIL-011", document.GetProperty("findings")[0].GetProperty("code").GetString());
    }

    [Fact]
    public void ToText_OfNights_SaysWhenTheFittedOilStopsBeingAccepted()
    {
        OilSeason season = Choice.ForNights(
        [
            NightMinimum.Of(new LocalDate(2026, 11, 7), Temperature.FromDegreesCelsius(-4)), NightMinimum.Of(new LocalDate(2026, 11, 28), Temperature.FromDegreesCelsius(-16)),
        ]);
        JsonElement nights = Parsed(OilSelectionJson.ToText(season, DisplayUnits.Metric)).GetProperty("nights");
        Assert.Equal("2026-11-28", nights.GetProperty("fittedStopsBeingAccepted").GetString());
        Assert.Equal(1, nights.GetProperty("fitted").GetProperty("marginal").GetInt32());
        Assert.Equal("2026-11-28", nights.GetProperty("grades")[0].GetProperty("firstNotAccepted").GetString());
        Assert.False(nights.GetProperty("grades")[1].TryGetProperty("firstNotAccepted", out _));
    }

    [Fact]
    public void ToText_InUsUnits_DiffersInWordsOnly()
    {
        OilSelection selection = Choice.ForColdestStart(Temperature.FromDegreesFahrenheit(1.4));
        JsonElement metric = Parsed(OilSelectionJson.ToText(selection, DisplayUnits.Metric));
        JsonElement us = Parsed(OilSelectionJson.ToText(selection, DisplayUnits.UsCustomary));
        Assert.Equal(WithoutWords(metric), WithoutWords(us));
        Assert.NotEqual(metric.GetRawText(), us.GetRawText());
        Assert.Contains("-4 °F", us.GetProperty("grades")[0].GetProperty("reason").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void ToText_OfEveryAdvice_IsValidByItsSchema()
    {
        JsonSchema schema = JsonSchema.FromText(DocumentSchemas.OilSelection);
        PermittedOils limited = PermittedOils.Of(
            PermittedGrade.Of(SaeGrade.Parse("15W-40"), Temperature.FromDegreesCelsius(-10), Temperature.FromDegreesCelsius(40)),
            PermittedGrade.Of(SaeGrade.Parse("50"), makersPreference: 1)).Requiring("E9-16", "FC-W").Requiring("CI-4").Forbidding("CJ-4");
        LabelledOil[] oils = [LabelledOil.Of("15W-40", "CK-4", "FA-4"), LabelledOil.Of("0W-16"), LabelledOil.Of("50", "CJ-4")];
        HashSet<ColdStartAdvice> seen = [];
        foreach (PermittedOils permitted in new[] { limited, PermittedOils.Of("50"), PermittedOils.Of("5W-30", "30") })
        {
            foreach (LabelledOil oil in oils)
            {
                OilChoice choice = OilSelection.Among(permitted).WithFitted(oil).WithClaimsAsOf(new LocalDate(2026, 10, 12)).WithHottestAmbient(Temperature.FromDegreesCelsius(35));
                for (int celsius = -45; celsius <= 30; celsius += 5)
                {
                    Temperature start = Temperature.FromDegreesCelsius(celsius);
                    OilSelection[] selections = [choice.ForColdestStart(start), choice.WhileLaidUp(start)];
                    seen.UnionWith(selections.Select(selection => selection.Advice));
                    Assert.All(selections, selection => AssertValid(schema, OilSelectionJson.ToText(selection, DisplayUnits.UsCustomary)));
                    AssertValid(schema, OilSelectionJson.ToText(choice.ForNights([NightMinimum.Of(new LocalDate(2026, 12, 1), start)]), DisplayUnits.Metric));
                }
            }
        }

        Assert.Equal(Enum.GetValues<ColdStartAdvice>(), seen.Order());
    }

    [Fact]
    public void Schema_RefusesAnAlteredDocument()
    {
        JsonSchema schema = JsonSchema.FromText(DocumentSchemas.OilSelection);
        string text = OilSelectionJson.ToText(Choice.ForColdestStart(Temperature.FromDegreesCelsius(-17)), DisplayUnits.Metric);
        foreach ((string from, string to) in new[] { ("\"accepted\"", "\"perhaps\""), ("\"K\"", "\"C\""), ("\"takesPart\": true,", ""), ("\"laidUp\"", "\"resting\"") })
        {
            Assert.Contains(from, text, StringComparison.Ordinal);
            Assert.False(schema.Evaluate(Parsed(text.Replace(from, to, StringComparison.Ordinal))).IsValid, from);
        }
    }

    [Fact]
    public void Write_BadArguments_Throw()
    {
        OilSelection selection = Choice.ForColdestStart(Temperature.FromDegreesCelsius(0));
        OilSeason season = Choice.ForNights([NightMinimum.Of(new LocalDate(2026, 11, 7), Temperature.FromDegreesCelsius(-4))]);
        Assert.Throws<ArgumentNullException>("selection", () => OilSelectionJson.Write((OilSelection)null!, new ArrayBufferWriter<byte>(), DisplayUnits.Metric));
        Assert.Throws<ArgumentNullException>("output", () => OilSelectionJson.Write(selection, null!, DisplayUnits.Metric));
        Assert.Throws<ArgumentNullException>("season", () => OilSelectionJson.Write((OilSeason)null!, new ArrayBufferWriter<byte>(), DisplayUnits.Metric));
        Assert.Throws<ArgumentNullException>("output", () => OilSelectionJson.Write(season, null!, DisplayUnits.Metric));
        Assert.Throws<ArgumentOutOfRangeException>("units", () => OilSelectionJson.ToText(selection, (DisplayUnits)7));
        Assert.Throws<ArgumentOutOfRangeException>("units", () => OilSelectionJson.ToText(season, (DisplayUnits)7));
    }

    private static JsonElement Parsed(string text)
    {
        using JsonDocument document = JsonDocument.Parse(text);
        return document.RootElement.Clone();
    }

    private static void AssertValid(JsonSchema schema, string text) => Assert.True(schema.Evaluate(Parsed(text)).IsValid, text);

    // Sentences are "reason" and "message"; all else is a decision or an amount.
    private static string WithoutWords(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => "{" + string.Join(",", element.EnumerateObject().Where(member => member.Name is not "reason" and not "message")
            .Select(member => member.Name + ":" + WithoutWords(member.Value))) + "}",
        JsonValueKind.Array => "[" + string.Join(",", element.EnumerateArray().Select(WithoutWords)) + "]",
        _ => element.GetRawText(),
    };
}
