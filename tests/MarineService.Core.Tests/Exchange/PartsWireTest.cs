using System.Text;
using MarineService.Core.Exchange;
using MarineService.Core.Parts;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using UnitsNet;

namespace MarineService.Core.Tests.Exchange;

public sealed class PartsWireTest
{
    [Fact]
    public void Sheet_SurvivesARoundTrip()
    {
        FilterNeed need = FilterNeed.Of(FilterKind.EngineOil, FilterOrientation.Sideways).WithThread(FilterThread.Inch(3, 4, 16))
            .WithGasketOuter(Length.FromMillimeters(62), Length.FromMillimeters(72)).WithRoom(Length.FromMillimeters(100))
            .WithBypass(Pressure.FromKilopascals(55), Pressure.FromKilopascals(90)).WithHottestOil(Temperature.FromDegreesCelsius(120))
            .WithBurst(Pressure.FromKilopascals(1400)).WithFlow(Pressure.FromKilopascals(20), VolumeFlow.FromLitersPerMinute(15))
            .WithFiltering(0.95, Length.FromMicrometers(20), Mass.FromGrams(12)).WithEndurance(Pressure.FromKilopascals(500), 50_000, 1_000_000).WithAftermarketTests();
        FilterSpecification filter = FilterSpecification.Named("LV-FIL").WithThread(FilterThread.Inch(3, 4, 16)).WithGasket(Length.FromMillimeters(65), Length.FromMillimeters(57), Length.FromMillimeters(6))
            .WithSize(Length.FromMillimeters(95)).WithBypass(Pressure.FromKilopascals(70)).WithAntiDrainBack(true, Temperature.FromDegreesCelsius(140)).WithBurst(Pressure.FromKilopascals(1900))
            .WithFlow(Pressure.FromKilopascals(15), VolumeFlow.FromLitersPerMinute(15)).WithFiltering(0.97, Length.FromMicrometers(20), Mass.FromGrams(15)).WithEndurance(Pressure.FromKilopascals(700), 60_000, 2_000_000).WithAftermarketTests(true);
        PartsSheet sheet = PartsSheet.Of(PartsCatalogue.Of(
                ServicePart.Measured("LV-OIL", "engine oil", "L", 0.125m),
                ServicePart.Of("LV-FIL", "oil filter"),
                ServicePart.Of("LV-GSK", "gasket"),
                ServicePart.Of("LV-IMP", "impeller").With(KitItem.Of("LV-GSK", 2m).OnceFor("pump cover")),
                ServicePart.Tool("LV-TW", "torque wrench"),
                ServicePart.Tool("LV-PUL", "puller").BoughtWhenMissing()))
            .With(TaskKit.Of("engine-oil", KitItem.Of("LV-OIL", 5.75m), KitItem.Of("LV-FIL")), TaskKit.Of("first-run"))
            .With(TaskLooseParts.Of("engine-oil", LooseItem.Of(LoosePart.Of("M6 screw", LoosePartKind.Screw, "pump cover", 2), 6)), TaskLooseParts.Of("hoses"))
            .With(PartOffers.Of("LV-OIL", PackOffer.Of("can", 5m, 41.9999m), PackOffer.Of("bottle", 0.001m, 0m)))
            .With(FilterBase.Of("LV-FIL", need).With(filter))
            .WithSparesAboard(KitItem.Of("LV-IMP", 2m));
        EngineSpecification engine = EngineSpecification.Named("Corrie 24P").With(Task("engine-oil"), Task("first-run"), Task("hoses")).WithPartsSheet(sheet);
        string text = EngineSpecificationJson.ToText(engine);
        ReadResult<EngineSpecification> read = EngineSpecificationJson.Read(Encoding.UTF8.GetBytes(text));
        Assert.True(read.IsRead, string.Join("\n", read.Faults));
        PartsSheet back = read.Value.PartsSheet!;
        Assert.Equal(PublicState.Of(sheet), PublicState.Of(back));
        Assert.Equal(text, EngineSpecificationJson.ToText(read.Value));

        // What the public properties of a need do not show decides the comparison, so that is the same line by line.
        Assert.Equal(
            need.Compare(filter).Explain(DisplayUnits.Metric).ToString(),
            back.FilterBases[0].Comparison.Value.Explain(DisplayUnits.Metric).ToString());
        Assert.Equal(FilterVerdict.Equivalent, back.FilterBases[0].Comparison.Value.Verdict);
    }

    [Theory]
    [InlineData(""" "catalogue": [ { "number": "a" } ] """, "/parts/catalogue/0/title")]
    [InlineData(""" "catalogue": [ { "number": "a", "title": "a" }, { "number": "a", "title": "b" } ] """, "/parts/catalogue/1/number")]
    [InlineData(""" "catalogue": [ { "number": "a", "title": "a", "unit": "L", "tool": "gathered" } ] """, "/parts/catalogue/0")]
    [InlineData(""" "catalogue": [ { "number": "a", "title": "a", "tool": "lent" } ] """, "/parts/catalogue/0/tool")]
    [InlineData(""" "catalogue": [ { "number": "a", "title": "a", "reserve": 10.1 } ] """, "/parts/catalogue/0/reserve")]
    [InlineData(""" "catalogue": [ { "number": "a", "title": "a", "companions": [ { "part": "a" } ] } ] """, "/parts/catalogue/0/companions/0/part")]
    [InlineData(""" "catalogue": [ { "number": "a", "title": "a", "companions": [ { "part": "b" } ] } ] """, "/parts/catalogue/0/companions/0/part")]
    [InlineData(""" "catalogue": [ { "number": "a", "title": "a", "companions": [ { "part": "b" } ] }, { "number": "b", "title": "b", "companions": [ { "part": "c" } ] }, { "number": "c", "title": "c" } ] """, "/parts/catalogue/0/companions/0/part")]
    [InlineData(""" "catalogue": [ { "number": "a", "title": "a", "companions": [ { "part": "b", "quantity": 1.5 } ] }, { "number": "b", "title": "b" } ] """, "/parts/catalogue/0/companions/0/quantity")]
    [InlineData(""" "catalogue": [ { "number": "a", "title": "a", "packs": [] } ] """, "/parts/catalogue/0/packs")]
    [InlineData(""" "catalogue": [ { "number": "a", "title": "a", "packs": [ { "name": "x", "amount": 1, "price": 0.00001 } ] } ] """, "/parts/catalogue/0/packs/0/price")]
    [InlineData(""" "catalogue": [ { "number": "a", "title": "a", "packs": [ { "name": "x", "amount": 0, "price": 1 } ] } ] """, "/parts/catalogue/0/packs/0/amount")]
    [InlineData(""" "catalogue": [ { "number": "a", "title": "a", "packs": [ { "name": "x", "amount": 1, "price": 1 }, { "name": "x", "amount": 2, "price": 1 } ] } ] """, "/parts/catalogue/0/packs/1/name")]
    [InlineData(""" "tasks": [] """, "/parts/catalogue")]
    [InlineData(""" "catalogue": [], "tasks": [ { "task": "oil", "takes": [ { "part": "nothing" } ] } ] """, "/parts/tasks/0/takes/0/part")]
    [InlineData(""" "tasks": [ { "task": "oil", "takes": [ { "part": "a", "quantity": 1.5 } ] } ], "catalogue": [ { "number": "a", "title": "a" } ] """, "/parts/tasks/0/takes/0/quantity")]
    [InlineData(""" "catalogue": [ { "number": "a", "title": "a" } ], "tasks": [ { "task": "oil", "takes": [ { "part": "a" }, { "part": "a" } ] } ] """, "/parts/tasks/0/takes/1/part")]
    [InlineData(""" "catalogue": [], "tasks": [ { "task": "oil" } ] """, "/parts/tasks/0")]
    [InlineData(""" "catalogue": [], "tasks": [ { "task": "hull", "takes": [] } ] """, "/parts/tasks/0/task")]
    [InlineData(""" "catalogue": [], "tasks": [ { "task": "oil", "takes": [] }, { "task": "oil", "comesOff": [] } ] """, "/parts/tasks/1/task")]
    [InlineData(""" "catalogue": [], "tasks": [ { "task": "oil", "comesOff": [ { "name": "screw", "place": "lid", "count": 0 } ] } ] """, "/parts/tasks/0/comesOff/0/count")]
    [InlineData(""" "catalogue": [], "tasks": [ { "task": "oil", "comesOff": [ { "name": "screw", "place": "lid", "count": 1 }, { "name": "screw", "place": "lid", "count": 2 } ] } ] """, "/parts/tasks/0/comesOff/1/name")]
    [InlineData(""" "catalogue": [], "tasks": [ { "task": "oil", "comesOff": [ { "name": "screw", "place": "lid", "count": 1 } ] }, { "task": "belt", "comesOff": [ { "name": "screw", "place": "lid", "count": 1, "captiveWashers": 1 } ] } ] """, "/parts/tasks/1/comesOff/0/name")]
    [InlineData(""" "catalogue": [], "sparesAboard": [ { "part": "nothing" } ] """, "/parts/sparesAboard/0/part")]
    [InlineData(""" "catalogue": [], "filterBases": [ { "part": "nothing", "needs": { "kind": "fuel" } } ] """, "/parts/filterBases/0/part")]
    [InlineData(""" "catalogue": [ { "number": "a", "title": "a" } ], "filterBases": [ { "part": "a", "needs": { "kind": "fuel" } }, { "part": "a", "needs": { "kind": "fuel" } } ] """, "/parts/filterBases/1/part")]
    [InlineData(""" "catalogue": [ { "number": "a", "title": "a" } ], "filterBases": [ { "part": "a", "needs": { "kind": "fuel", "thread": "3/4" } } ] """, "/parts/filterBases/0/needs/thread")]
    [InlineData(""" "catalogue": [ { "number": "a", "title": "a" } ], "filterBases": [ { "part": "a", "needs": { "kind": "fuel", "bypass": false, "bypassOpening": { "least": { "value": 1, "unit": "kPa" }, "most": { "value": 2, "unit": "kPa" } } } } ] """, "/parts/filterBases/0/needs/bypass")]
    [InlineData(""" "catalogue": [ { "number": "a", "title": "a" } ], "filterBases": [ { "part": "a", "needs": { "kind": "fuel", "gasketOuter": { "least": { "value": 2, "unit": "mm" }, "most": { "value": 1, "unit": "mm" } } } } ] """, "/parts/filterBases/0/needs/gasketOuter/most")]
    [InlineData(""" "catalogue": [ { "number": "a", "title": "a" } ], "filterBases": [ { "part": "a", "needs": { "kind": "fuel", "efficiency": 0.9 } } ] """, "/parts/filterBases/0/needs/particleSize")]
    [InlineData(""" "catalogue": [ { "number": "a", "title": "a" } ], "filterBases": [ { "part": "a", "needs": { "kind": "fuel" }, "filter": { "gasketInner": { "value": 60, "unit": "mm" }, "gasketOuter": { "value": 60, "unit": "mm" } } } ] """, "/parts/filterBases/0/filter/gasketInner")]
    public void Sheet_ThatCannotBe_IsAFaultInItsPlace(string members, string place) =>
        Assert.Equal([place], Read(members).Faults.Select(fault => fault.Place));

    /// <summary>Everything at once, and what names a part that could not be read is left in peace.</summary>
    [Fact]
    public void Sheet_WithManyFaults_TellsThemAll()
    {
        string[] places = [.. Read("""
            "catalogue": [ { "number": "a", "title": " " }, { "number": "b", "title": "b" } ],
            "tasks": [ { "task": "oil", "takes": [ { "part": "a" }, { "part": "c" } ] }, { "task": "hull", "takes": [ { "part": "b", "quantity": 0.5 } ] } ]
            """).Faults.Select(fault => fault.Place)];
        Assert.Equal(["/parts/catalogue/0/title", "/parts/tasks/0/takes/1/part", "/parts/tasks/1/takes/0/quantity", "/parts/tasks/1/task"], places);
        Assert.Equal(["/parts/catalogue/0/number"], Read(""" "catalogue": [ { "title": "a" } ], "sparesAboard": [ { "part": "c" } ] """).Faults.Select(fault => fault.Place));
    }

    private static ReadResult<EngineSpecification> Read(string members) => EngineSpecificationJson.Read(Encoding.UTF8.GetBytes($$"""
        { "format": "marine-service/engine-specification", "version": 1, "engine": { "designation": "Brae 16D" },
          "tasks": [ { "id": "oil", "action": "replace", "interval": { "months": 12 } }, { "id": "belt", "action": "inspect", "interval": { "months": 12 } } ],
          "parts": { {{members}} } }
        """));

    private static ServiceTask Task(string id) => ServiceTask.Replace(id, ServiceInterval.OfMonths(12));
}
