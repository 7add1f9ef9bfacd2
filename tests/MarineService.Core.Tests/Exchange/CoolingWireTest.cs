using Json.Schema;
using MarineService.Core.Cooling;
using MarineService.Core.Exchange;
using MarineService.Core.Records;
using MarineService.Core.Specifications;
using NodaTime;
using UnitsNet;

namespace MarineService.Core.Tests.Exchange;

public sealed class CoolingWireTest
{
    private static readonly LocalDate Day = new(2026, 10, 4);

    [Fact]
    public void RawWater_SurvivesARoundTrip()
    {
        RawWaterSystem water = RawWaterSystem.Of(
            RawWaterCircuit.Of(CircuitPlace.Of(CircuitPlaceKind.RawWaterPump), CircuitPlace.Of(CircuitPlaceKind.ExhaustOutlet, "port outlet")),
            RawWaterPump.Of(Impeller.Of(6, ImpellerHub.Keyed, ImpellerRubber.Nitrile, PumpRotation.Of(Sense.CounterClockwise, PumpSide.Drive)), Volume.FromLiters(0.0221), 1.25),
            DischargeLimit.Given(Temperature.FromDegreesCelsius(52)));
        string text = EngineSpecificationJson.ToText(EngineSpecification.Named("Corrie 60P").WithRawWater(water));
        RawWaterSystem read = EngineSpecificationJson.Read(System.Text.Encoding.UTF8.GetBytes(text)).Value.RawWater!;
        Assert.Equal(["raw-water pump", "port outlet"], read.Circuit.Places.Select(place => place.Name));
        Assert.Equal(water.Pump!.Impeller.Rotation, read.Pump!.Impeller.Rotation);
        Assert.Equal((6, ImpellerHub.Keyed, ImpellerRubber.Nitrile), (read.Pump.Impeller.Vanes, read.Pump.Impeller.Hub, read.Pump.Impeller.Rubber));
        Assert.Equal(0.0221, read.Pump.Displacement.Value.Liters, 12);
        Assert.Equal(1.25, read.Pump.SpeedRatio, 12);
        Assert.Equal(52, read.MakersLimit!.Limit.DegreesCelsius, 9);
    }

    [Theory]
    [InlineData("[]", "/rawWater/circuit/0/kind")]
    [InlineData("""[ { "kind": "seacock" } ]""", "/rawWater/circuit/0/kind")]
    [InlineData("""[ { "kind": "raw-water-pump" }, { "kind": "raw-water-pump" } ]""", "/rawWater/circuit/1/name")]
    [InlineData("""[ { "kind": "raw-water-pump" }, { "kind": "exhaust-outlet" }, { "kind": "block" } ]""", "/rawWater/circuit/2/kind")]
    [InlineData("""[ { "kind": "funnel" } ]""", "/rawWater/circuit/0/kind")]
    public void Circuit_ThatCannotBe_IsAFaultInItsPlace(string circuit, string place)
    {
        string text = $$"""
            { "format": "marine-service/engine-specification", "version": 1, "engine": { "designation": "Brae 16D" }, "tasks": [],
              "rawWater": { "circuit": {{circuit}} } }
            """;
        Assert.Contains(EngineSpecificationJson.Read(System.Text.Encoding.UTF8.GetBytes(text)).Faults, fault => fault.Place == place);
    }

    [Theory]
    [InlineData("""{ "vanes": 3, "seen": [ { "number": 4, "state": "whole" } ] }""")]
    [InlineData("""{ "vanes": 3, "seen": [ { "number": 1, "state": "whole" }, { "number": 1, "state": "cracked" } ] }""")]
    [InlineData("""{ "vanes": 3, "seen": [ { "number": 1, "state": "set" } ] }""")]
    [InlineData("""{ "vanes": 3, "seen": [ { "number": 1, "state": "cracked", "missing": 0.2 } ] }""")]
    [InlineData("""{ "vanes": 3, "pieces": [ { "share": 1, "where": "a" }, { "share": 1, "where": "b" }, { "share": 1, "where": "c" }, { "share": 0.5, "where": "d" } ] }""")]
    [InlineData("""{ "vanes": 3, "fittedOn": "2026-10-05" }""")]
    [InlineData("""{ "vanes": 2 }""")]
    public void Inspection_ThatCannotBe_IsAFault(string impeller)
    {
        string text = $$"""
            { "format": "marine-service/service-log", "version": 1,
              "entries": [ { "kind": "impeller-inspection", "date": "2026-10-04", "impeller": {{impeller}} } ] }
            """;
        Assert.NotEmpty(ServiceLogJson.Read(System.Text.Encoding.UTF8.GetBytes(text)).Faults);
    }

    [Fact]
    public void Inspection_SurvivesARoundTrip()
    {
        ImpellerInspection seen = ImpellerInspection.Of(6, Day, EngineHours.FromHours(88.2m))
            .With(VaneRecord.Torn(3, 0.4), VaneRecord.Set(4, Angle.FromDegrees(12.5)), VaneRecord.Missing(5))
            .With(ImpellerFault.Swollen)
            .WithFound(FoundPiece.Of(0.333, "heat exchanger"))
            .WithFittedOn(new LocalDate(2024, 4, 13));
        string text = ServiceLogJson.ToText(ServiceLog.Empty.With(seen));
        ImpellerInspection read = Assert.IsType<ImpellerInspection>(ServiceLogJson.Read(System.Text.Encoding.UTF8.GetBytes(text)).Value.Entries[0].Fact);
        Assert.Equal(seen.Vanes.Select(vane => vane.ToString()), read.Vanes.Select(vane => vane.ToString()));
        Assert.Equal(seen.Pieces.Select(piece => piece.ToString()), read.Pieces.Select(piece => piece.ToString()));
        Assert.Equal((seen.FittedOn, seen.Dial, seen.NewVanes), (read.FittedOn, read.Dial, read.NewVanes));
        Assert.Equal([ImpellerFault.Swollen], read.Faults);
    }

    [Fact]
    public void BucketTest_SurvivesARoundTrip()
    {
        BucketTest test = BucketTest.Of(
            Day,
            RotationalSpeed.FromRevolutionsPerMinute(1500),
            [
                BucketCatch.Of("port outlet", MeasuredVolume.Of(Volume.FromLiters(4.9), Temperature.FromDegreesCelsius(14), Volume.FromLiters(0.1)), UnitsNet.Duration.FromSeconds(20)),
                BucketCatch.Of("starboard outlet", MeasuredVolume.Of(Volume.FromLiters(5.2)), UnitsNet.Duration.FromSeconds(21.5)),
            ],
            EngineHours.FromHours(41.2m));
        string text = ServiceLogJson.ToText(ServiceLog.Empty.With(test));
        BucketTest read = Assert.IsType<BucketTest>(ServiceLogJson.Read(System.Text.Encoding.UTF8.GetBytes(text)).Value.Entries[0].Fact);
        Assert.Equal((test.Date, test.Dial), (read.Date, read.Dial));
        Assert.Equal(1500, read.EngineSpeed.RevolutionsPerMinute, 9);
        Assert.Equal(["port outlet", "starboard outlet"], read.Catches.Select(bucket => bucket.Outlet));
        Assert.Equal([20, 21.5], read.Catches.Select(bucket => bucket.Time.Seconds));
        Assert.Equal(test.Catches.Select(bucket => bucket.Volume.ToString()), read.Catches.Select(bucket => bucket.Volume.ToString()));

        // 4.9 L in 20 s and 5.2 L in 21.5 s, by hand.
        Assert.Equal(14.7 + (5.2 * 60 / 21.5), read.Flow.LitersPerMinute, 9);
    }

    [Fact]
    public void AnodeInspection_SurvivesARoundTrip_AndIsJudgedUnderItsName()
    {
        AnodeInspection seen = AnodeInspection.Of(Day, "heat exchanger", AnodeMetal.Zinc, 0.02, 6, EngineHours.FromHours(88.2m));
        string text = ServiceLogJson.ToText(ServiceLog.Empty.With(seen));
        AnodeInspection read = Assert.IsType<AnodeInspection>(ServiceLogJson.Read(System.Text.Encoding.UTF8.GetBytes(text)).Value.Entries[0].Fact);
        Assert.Equal((seen.Date, seen.Dial, seen.Anode, seen.Metal, seen.MonthsInWater), (read.Date, read.Dial, read.Anode, read.Metal, read.MonthsInWater));
        Assert.Equal(0.02, read.WornFraction);
        AnodeCheck check = read.Judge(MarineService.Core.Engines.WaterKind.Fresh);
        Assert.Equal(["ANODE-002", "ANODE-003"], check.Findings.Select(finding => finding.Code));
        Assert.All(check.Findings, finding => Assert.Equal("heat exchanger", finding.Subject));
    }

    [Theory]
    [InlineData("bucket-test", """ "bucket": { "speed": { "value": 1500, "unit": "/min" }, "catches": [] } """, "/entries/0/bucket/catches")]
    [InlineData("bucket-test", """ "bucket": { "speed": { "value": 20, "unit": "/min" }, "catches": [ { "outlet": "a", "amount": { "volume": { "value": 1, "unit": "L" } }, "time": { "value": 9, "unit": "s" } } ] } """, "/entries/0/bucket/speed/value")]
    [InlineData("bucket-test", """ "bucket": { "speed": { "value": 900, "unit": "/min" }, "catches": [ { "outlet": "a", "amount": { "volume": { "value": 0, "unit": "L" } }, "time": { "value": 9, "unit": "s" } } ] } """, "/entries/0/bucket/catches/0/amount/volume/value")]
    [InlineData("bucket-test", """ "bucket": { "speed": { "value": 900, "unit": "/min" }, "catches": [ { "outlet": "a", "amount": { "volume": { "value": 1, "unit": "L" } }, "time": { "value": 0.5, "unit": "s" } } ] } """, "/entries/0/bucket/catches/0/time/value")]
    [InlineData("bucket-test", """ "bucket": { "speed": { "value": 900, "unit": "/min" }, "catches": [ { "outlet": "a", "amount": { "volume": { "value": 1, "unit": "L" } }, "time": { "value": 9, "unit": "s" } }, { "outlet": "a", "amount": { "volume": { "value": 1, "unit": "L" } }, "time": { "value": 9, "unit": "s" } } ] } """, "/entries/0/bucket/catches/1/outlet")]
    [InlineData("anode-inspection", """ "anode": { "name": "shaft", "worn": 1.2, "monthsInWater": 3 } """, "/entries/0/anode/worn")]
    [InlineData("anode-inspection", """ "anode": { "name": "shaft", "worn": 0.2, "monthsInWater": 601 } """, "/entries/0/anode/monthsInWater")]
    [InlineData("anode-inspection", """ "anode": { "name": " ", "worn": 0.2, "monthsInWater": 1 } """, "/entries/0/anode/name")]
    [InlineData("anode-inspection", """ "anode": { "name": "shaft", "metal": "lead", "worn": 0.2, "monthsInWater": 1 } """, "/entries/0/anode/metal")]
    [InlineData("reading", """ "dial": 5, "anode": { "name": "shaft", "worn": 0.2, "monthsInWater": 1 } """, "/entries/0/anode")]
    public void Entry_ThatCannotBe_IsAFaultInItsPlace(string kind, string members, string place)
    {
        string text = $$"""
            { "format": "marine-service/service-log", "version": 1, "entries": [ { "kind": "{{kind}}", "date": "2026-10-04", {{members}} } ] }
            """;
        Assert.Equal([place], ServiceLogJson.Read(System.Text.Encoding.UTF8.GetBytes(text)).Faults.Select(fault => fault.Place));
    }

    [Fact]
    public void Assessment_OfEachVerdict_IsValidByItsSchema()
    {
        JsonSchema schema = JsonSchema.FromText(DocumentSchemas.ImpellerAssessment);
        RawWaterCircuit circuit = RawWaterCircuit.Of(CircuitPlaceKind.Seacock, CircuitPlaceKind.RawWaterPump, CircuitPlaceKind.HeatExchanger);
        ImpellerInspection begun = ImpellerInspection.Of(6, Day);
        ImpellerInspection[] seen =
        [
            begun, begun.WithOthersWhole(), begun.With(VaneRecord.Cracked(1)).WithOthersWhole(), begun.With(VaneRecord.Torn(1, 0.4)).WithOthersWhole(),
        ];
        foreach (ImpellerInspection inspection in seen)
        {
            string text = ImpellerAssessmentJson.ToText(inspection.Judge(), circuit);
            Assert.True(schema.Evaluate(System.Text.Json.JsonDocument.Parse(text).RootElement).IsValid, text);
        }

        Assert.Contains("\"replace-and-search\"", ImpellerAssessmentJson.ToText(seen[3].Judge(), circuit), StringComparison.Ordinal);
        Assert.Contains("\"heat exchanger\"", ImpellerAssessmentJson.ToText(seen[3].Judge(), circuit), StringComparison.Ordinal);
    }
}
