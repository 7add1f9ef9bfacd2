using System.Buffers;
using System.Text.Json;
using Json.Schema;
using MarineService.Core.Exchange;
using MarineService.Core.Fluids;
using UnitsNet;
using static MarineService.Core.Tests.Fluids.Changes;

namespace MarineService.Core.Tests.Exchange;

public sealed class FluidBalanceJsonTest
{
    private static readonly OilChange Whole = OilChange.Begin(SixLiters, DipstickReading.OfRange(0.6))
        .Since(PeriodSinceChange.From(DipstickReading.OfRange(1)).ToppedUp(At15(0.3)).RunFor(EngineHours.FromHours(95)).AtMeanPower(Power.FromKilowatts(40)).After(0.2, 0.3, 0.25))
        .Looked(OilAppearance.Usual)
        .Drained(At(5.5, 70))
        .FilterChanged(true)
        .FilterPrimed(At15(0.3))
        .Poured(At15(4.4))
        .Drained(At15(1))
        .Ran()
        .Settled(DipstickReading.OfRange(0.6))
        .DrawnOff(At15(0.1))
        .Settled(DipstickReading.OfRange(0.5));

    [Fact]
    public void ToText_OfAWholeChange_SaysLevelNextPourAndSumsAfterEveryEvent()
    {
        JsonElement document = Parsed(FluidBalanceJson.ToText(Whole.Balance(), DisplayUnits.Metric));
        Assert.Equal("marine-service/fluid-balance", document.GetProperty("format").GetString());
        JsonElement[] events = [.. document.GetProperty("events").EnumerateArray()];
        Assert.Equal(Whole.Events.Count, events.Length);
        Assert.Equal(0.4, Number(events[0].GetProperty("level").GetProperty("roomToFull")), 1e-12);
        // A drain after a pour is refused, with the reason, and the account stands as before.
        Assert.True(events[7].GetProperty("refused").GetBoolean());
        Assert.Equal("FLUID-007", events[7].GetProperty("findings")[0].GetProperty("code").GetString());
        Assert.Equal(events[6].GetProperty("level").GetRawText(), events[7].GetProperty("level").GetRawText());
        // A drain whose filter nobody spoke of says nothing of the next pour.
        Assert.False(events[3].TryGetProperty("nextPour", out _));
        Assert.Equal("first-pour", events[4].GetProperty("nextPour").GetProperty("decidedBy").GetString());
        BalanceCheck drain = Whole.Balance().Drain.Value;
        Assert.Equal(drain.Difference.Liters, Number(document.GetProperty("drain").GetProperty("difference")), 1e-12);
        // 0.3 topped up, 0.4 of room before, none after the last change: 0.7 L in 95 h.
        Assert.Equal(0.7, Number(document.GetProperty("consumption").GetProperty("measured")), 1e-9);
        Assert.Equal(0.7 / 0.95, document.GetProperty("rate").GetProperty("litersPer100Hours").GetDouble(), 1e-9);
    }

    [Fact]
    public void ToText_OfAnIngress_IsStopWithCausesAndWhatToLookAt()
    {
        OilChange ingress = OilChange.Begin(SixLiters, DipstickReading.OfRange(1.5))
            .Since(PeriodSinceChange.From(DipstickReading.OfRange(0.9))).Looked(OilAppearance.Milky);
        JsonElement document = Parsed(FluidBalanceJson.ToText(ingress.Balance(), DisplayUnits.Metric));
        Assert.Equal("stop", document.GetProperty("severity").GetString());
        string[] codes = [.. document.GetProperty("findings").EnumerateArray().Select(finding => finding.GetProperty("code").GetString()!)];
        Assert.Contains("FLUID-016", codes);
        Assert.Contains("FLUID-028", codes);
        Assert.Equal(codes, document.GetProperty("meanings").EnumerateArray().Select(meaning => meaning.GetProperty("code").GetString()));
        JsonElement next = document.GetProperty("events").EnumerateArray().Last().GetProperty("nextPour");
        Assert.Equal(0, next.GetProperty("atMost").GetProperty("value").GetDouble());
        Assert.Equal("cause-not-found FLUID-016", $"{next.GetProperty("decidedBy").GetString()} {next.GetProperty("cause").GetString()}");
        JsonElement gained = document.GetProperty("meanings").EnumerateArray().Single(meaning => meaning.GetProperty("code").GetString() == "FLUID-028");
        Assert.True(gained.GetProperty("likelyCauses").GetArrayLength() > 1);
        Assert.True(gained.GetProperty("lookNext").GetArrayLength() > 1);
        Assert.NotEmpty(document.GetProperty("missing").EnumerateArray());
    }

    [Fact]
    public void ToText_OfAccountsOfEveryLength_IsValidByItsSchema()
    {
        JsonSchema schema = JsonSchema.FromText(DocumentSchemas.FluidBalance);
        OilChange bare = OilChange.BeginWithoutReading(SixLiters.DrainedOnlyByExtractor(L(0.4)))
            .Looked(OilAppearance.SmellsOfFuel).Drained(At(5.2, 40), DrainMethod.Extractor).FilterKept().Poured(MeasuredVolume.Of(L(6)));
        foreach (OilChange change in Whole.Events.Concat(bare.Events))
        {
            foreach (DisplayUnits units in Enum.GetValues<DisplayUnits>())
            {
                string text = FluidBalanceJson.ToText(change.Balance(), units);
                Assert.True(schema.Evaluate(Parsed(text)).IsValid, text);
            }
        }
    }

    [Fact]
    public void Schema_RefusesAnAlteredDocument()
    {
        JsonSchema schema = JsonSchema.FromText(DocumentSchemas.FluidBalance);
        string text = FluidBalanceJson.ToText(Whole.Balance(), DisplayUnits.Metric);
        foreach ((string from, string to) in new[] { ("\"first-pour\"", "\"any\""), ("\"atTarget\"", "\"done\""), ("\"unit\": \"L\"", "\"unit\": \"l\""), ("\"severity\"", "\"grade\"") })
        {
            Assert.Contains(from, text, StringComparison.Ordinal);
            Assert.False(schema.Evaluate(Parsed(text.Replace(from, to, StringComparison.Ordinal))).IsValid, from);
        }
    }

    [Fact]
    public void Write_BadArguments_Throw()
    {
        FluidBalance balance = Whole.Balance();
        Assert.Throws<ArgumentNullException>("balance", () => FluidBalanceJson.Write(null!, new ArrayBufferWriter<byte>(), DisplayUnits.Metric));
        Assert.Throws<ArgumentNullException>("output", () => FluidBalanceJson.Write(balance, null!, DisplayUnits.Metric));
        Assert.Throws<ArgumentOutOfRangeException>("units", () => FluidBalanceJson.ToText(balance, (DisplayUnits)7));
    }

    private static double Number(JsonElement quantity) => quantity.GetProperty("value").GetDouble();

    private static JsonElement Parsed(string text)
    {
        using JsonDocument document = JsonDocument.Parse(text);
        return document.RootElement.Clone();
    }
}
