using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Parts;

namespace MarineService.Core.Tests.Parts;

/// <summary>What a visit takes along.</summary>
public sealed class KitListTest
{
    private static readonly PartsCatalogue Catalogue = PartsCatalogue.Of(
        ServicePart.Measured("LV-OIL", "engine oil", "L", 0.1m),
        ServicePart.Of("LV-FIL", "oil filter"),
        ServicePart.Of("LV-GSK", "pump cover gasket"),
        ServicePart.Of("LV-WSH", "pump cover washer"),
        ServicePart.Of("LV-IMP", "impeller").With(KitItem.Of("LV-GSK"), KitItem.Of("LV-WSH", 6m)),
        ServicePart.Of("LV-RAG", "absorbent").WithReserve(0.25m),
        ServicePart.Tool("LV-WRENCH", "torque wrench"));

    private static readonly TaskKit[] Kits =
    [
        TaskKit.Of("engine-oil", KitItem.Of("LV-OIL", 5.7m), KitItem.Of("LV-FIL"), KitItem.Of("LV-RAG", 3m), KitItem.Of("LV-WRENCH")),
        TaskKit.Of("impeller", KitItem.Of("LV-IMP").OnceFor("pump cover"), KitItem.Of("LV-RAG", 2m), KitItem.Of("LV-WRENCH")),
        TaskKit.Of("pump-anode", KitItem.Of("LV-GSK").OnceFor("pump cover")),
    ];

    [Law(MaxTest = 200)]
    public Property For_InWhateverOrder_IsTheSame() => Prop.ForAll(Gen.Choose(0, int.MaxValue - 1).ToArbitrary(), seed =>
    {
        Random random = new(seed);
        return Text(KitList.For(Catalogue, Kits.OrderBy(_ => random.Next()))) == Text(KitList.For(Catalogue, Kits));
    });

    [Law(MaxTest = 200)]
    public Property ToBuy_IsNeverNegativeAndBalances() => Prop.ForAll(Gen.Choose(0, int.MaxValue - 1).ToArbitrary(), seed =>
    {
        Random random = new(seed);
        KitItem[] shelf = [.. Catalogue.Parts.Where(_ => random.Next(2) == 0).Select(part => KitItem.Of(part.Number, random.Next(1, 20)))];
        TaskKit[] some = [.. Kits.Where(_ => random.Next(3) > 0)];
        return KitList.For(Catalogue, some, [KitItem.Of("LV-IMP")], shelf).Lines
            .All(line => line.ToBuy >= 0 && line.FromShelf <= line.OnShelf
                && line.ToGather >= 0 && line.FromShelf + line.ToBuy + line.ToGather == line.Total
                && (line.Part.IsTool ? line.ToBuy : line.ToGather) == 0);
    });

    [Law(MaxTest = 100)]
    public Property MoreTasks_NeverTakeLess() => Prop.ForAll(Gen.Choose(0, 7).ToArbitrary(), mask =>
    {
        KitList some = KitList.For(Catalogue, Kits.Where((_, i) => (mask & (1 << i)) != 0));
        KitList all = KitList.For(Catalogue, Kits);
        return some.Lines.All(line => all[line.Part.Number]!.Total >= line.Total);
    });

    [Fact]
    public void For_Visit_AddsUsesRoundsReservesAndTakesToolsOnce()
    {
        KitList list = KitList.For(Catalogue, Kits);
        Assert.Equal(6.27m, list["LV-OIL"]!.Total);
        Assert.Equal(5m, list["LV-RAG"]!.Wanted);
        Assert.Equal(7m, list["LV-RAG"]!.Total);
        Assert.Equal(1m, list["LV-WRENCH"]!.Total);
        Assert.Equal(1m, list["LV-GSK"]!.Total);
        Assert.Equal(6m, list["LV-WSH"]!.Total);
        Assert.Equal(["impeller", "pump-anode"], list["LV-GSK"]!.WantedBy);
    }

    [Fact]
    public void SpareImpellerKeptAboard_IncludesGasketAndWashers_CommonPractice()
    {
        KitList list = KitList.For(Catalogue, [], sparesAboard: [KitItem.Of("LV-IMP")]);
        Assert.Equal(["LV-GSK", "LV-IMP", "LV-WSH"], list.Lines.Select(line => line.Part.Number));
        Assert.Equal(6m, list["LV-WSH"]!.Aboard);
    }

    [Fact]
    public void Shelf_WithMoreThanEnough_LeavesNothingToBuy()
    {
        KitList list = KitList.For(Catalogue, Kits, shelf: [KitItem.Of("LV-OIL", 20m), KitItem.Of("LV-WSH", 4m)]);
        Assert.Equal(0m, list["LV-OIL"]!.ToBuy);
        Assert.Equal(2m, list["LV-WSH"]!.ToBuy);
        Assert.Equal("LV-WSH pump cover washer: 6 (6 for the tasks, 0 reserve, 0 spare aboard), 4 off the shelf, 2 to buy; for impeller", list["LV-WSH"]!.ToString());
        Assert.Contains("4 off the shelf", list.Explain(DisplayUnits.Metric).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void UnknownPartsAndDoubles_AreRefusedByName()
    {
        Assert.Equal("kits", Assert.Throws<ArgumentException>(() => KitList.For(Catalogue, [TaskKit.Of("t", KitItem.Of("nothing"))])).ParamName);
        Assert.Equal("kits", Assert.Throws<ArgumentException>(() => KitList.For(Catalogue, [Kits[0], Kits[0]])).ParamName);
        Assert.Equal("kits", Assert.Throws<ArgumentException>(() => KitList.For(Catalogue, [TaskKit.Of("t", KitItem.Of("LV-FIL", 1.5m))])).ParamName);
        Assert.Equal("parts", Assert.Throws<ArgumentException>(() => PartsCatalogue.Of(ServicePart.Of("a", "a").With(KitItem.Of("b")))).ParamName);
    }

    /// <summary>A tool is gathered: it comes back, and few buy a torque wrench for one visit. Who means to buy it says so.</summary>
    [Fact]
    public void Tool_ThatTheShelfLacks_IsGathered_UnlessItIsSaidToBeBought()
    {
        KitLine gathered = KitList.For(Catalogue, Kits)["LV-WRENCH"]!;
        Assert.Equal((0m, 1m), (gathered.ToBuy, gathered.ToGather));
        Assert.EndsWith("0 off the shelf, 1 to gather; for engine-oil, impeller", gathered.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain(KitList.For(Catalogue, Kits).ToBuy, line => line.Part.IsTool);
        Assert.Equal(["LV-WRENCH"], KitList.For(Catalogue, Kits).ToGather.Select(line => line.Part.Number));
        KitLine bought = KitList.For(PartsCatalogue.Of(ServicePart.Tool("T", "puller").BoughtWhenMissing()), [TaskKit.Of("t", KitItem.Of("T"))])["T"]!;
        Assert.Equal((1m, 0m), (bought.ToBuy, bought.ToGather));
        Assert.Equal(0m, KitList.For(Catalogue, Kits, shelf: [KitItem.Of("LV-WRENCH")])["LV-WRENCH"]!.ToGather);
    }

    [Fact]
    public void Companion_InBrokenPieces_IsRefused()
    {
        ArgumentException fault = Assert.Throws<ArgumentException>(() => PartsCatalogue.Of(ServicePart.Of("b", "b"), ServicePart.Of("a", "a").With(KitItem.Of("b", 1.5m))));
        Assert.Equal("parts", fault.ParamName);
        Assert.Contains("whole number of pieces", fault.Message, StringComparison.Ordinal);
    }

    /// <summary>One brush goes with each litre of paint: two and a half litres take three brushes.</summary>
    [Fact]
    public void Companion_OfWhatIsMeasured_IsRoundedUpToWholePieces()
    {
        PartsCatalogue paint = PartsCatalogue.Of(ServicePart.Of("brush", "brush"), ServicePart.Measured("paint", "paint", "L").With(KitItem.Of("brush")));
        Assert.Equal(3m, KitList.For(paint, [TaskKit.Of("hull", KitItem.Of("paint", 2.5m))])["brush"]!.Total);
        Assert.Equal(3m, KitList.For(paint, [], sparesAboard: [KitItem.Of("paint", 2.5m)])["brush"]!.Total);
    }

    [Fact]
    public void Companions_AreNeverCutOff()
    {
        PartsCatalogue many = PartsCatalogue.Of(ServicePart.Of("b", "b"), ServicePart.Of("a", "a").With(KitItem.Of("b", 1_000m)));
        Assert.Equal(10_000_000m, KitList.For(many, [TaskKit.Of("t", KitItem.Of("a", 10_000m))])["b"]!.Total);
    }

    /// <summary>One gasket too many goes back on the shelf, one too few leaves the pump open; who means the same gasket gives both one occasion.</summary>
    [Fact]
    public void PartThatIsListedAndACompanion_CountsTwice_UnlessBothAreForOneOccasion()
    {
        decimal Gaskets(params KitItem[] items) => KitList.For(Catalogue, [TaskKit.Of("impeller", items)])["LV-GSK"]!.Total;
        Assert.Equal(2m, Gaskets(KitItem.Of("LV-IMP"), KitItem.Of("LV-GSK")));
        Assert.Equal(2m, Gaskets(KitItem.Of("LV-IMP").OnceFor("pump cover"), KitItem.Of("LV-GSK")));
        Assert.Equal(1m, Gaskets(KitItem.Of("LV-IMP").OnceFor("pump cover"), KitItem.Of("LV-GSK").OnceFor("pump cover")));
        Assert.Equal(3m, Gaskets(KitItem.Of("LV-IMP").OnceFor("pump cover"), KitItem.Of("LV-GSK", 3m).OnceFor("pump cover")));
    }

    private static string Text(KitList list) => string.Join("\n", list.Lines);
}
