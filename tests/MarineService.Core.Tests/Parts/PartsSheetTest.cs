using MarineService.Core.Parts;

namespace MarineService.Core.Tests.Parts;

/// <summary>The parts of one engine: nothing in the sheet names a part that is not there.</summary>
public sealed class PartsSheetTest
{
    private static readonly PartsSheet Sheet = PartsSheet.Of(PartsCatalogue.Of(ServicePart.Of("LV-1", "filter"), ServicePart.Measured("LV-2", "oil", "L")));

    [Fact]
    public void UnknownPart_IsRefusedByName_WhereverItIsNamed()
    {
        AssertNamed("kits", () => Sheet.With(TaskKit.Of("oil", KitItem.Of("LV-9"))));
        AssertNamed("spares", () => Sheet.WithSparesAboard(KitItem.Of("LV-9")));
        AssertNamed("offers", () => Sheet.With(PartOffers.Of("LV-9", PackOffer.Of("one", 1m, 1m))));
        AssertNamed("bases", () => Sheet.With(FilterBase.Of("LV-9", FilterNeed.Of(FilterKind.Fuel))));
    }

    [Fact]
    public void Doubles_AreRefused()
    {
        Assert.Equal("kits", Assert.Throws<ArgumentException>(() => Sheet.With(TaskKit.Of("oil")).With(TaskKit.Of("oil"))).ParamName);
        Assert.Equal("tasks", Assert.Throws<ArgumentException>(() => Sheet.With(TaskLooseParts.Of("oil")).With(TaskLooseParts.Of("oil"))).ParamName);
        Assert.Equal("spares", Assert.Throws<ArgumentException>(() => Sheet.WithSparesAboard(KitItem.Of("LV-1")).WithSparesAboard(KitItem.Of("LV-1"))).ParamName);
        Assert.Equal("bases", Assert.Throws<ArgumentException>(() => Sheet.With(Base()).With(Base())).ParamName);
        LooseItem screw = LooseItem.Of(LoosePart.Of("screw", LoosePartKind.Screw, "lid"), 2);
        Assert.Equal("items", Assert.Throws<ArgumentException>(() => TaskLooseParts.Of("oil", screw, LooseItem.Of(LoosePart.Of("screw", LoosePartKind.Other, "lid"), 1))).ParamName);
    }

    [Fact]
    public void BrokenPieces_AreRefused() =>
        Assert.Contains("whole pieces", Assert.Throws<ArgumentException>(() => Sheet.With(TaskKit.Of("oil", KitItem.Of("LV-1", 0.5m)))).Message, StringComparison.Ordinal);

    [Fact]
    public void LoosePart_ThatTwoTasksDescribeOtherwise_IsRefused()
    {
        TaskLooseParts Off(string task, int washers) => TaskLooseParts.Of(task, LooseItem.Of(LoosePart.Of("screw", LoosePartKind.Screw, "lid", washers), 2));
        Assert.Equal("tasks", Assert.Throws<ArgumentException>(() => Sheet.With(Off("oil", 0), Off("belt", 1))).ParamName);
        Assert.Equal(2, Sheet.With(Off("oil", 1), Off("belt", 1)).ComesOff.Count);
    }

    /// <summary>A shop's new prices replace the old ones.</summary>
    [Fact]
    public void Offers_GivenAgain_ReplaceTheFormer()
    {
        PartsSheet dear = Sheet.With(PartOffers.Of("LV-2", PackOffer.Of("can", 5m, 50m)), PartOffers.Of("LV-1", PackOffer.Of("one", 1m, 9m)));
        PartsSheet cheap = dear.With(PartOffers.Of("LV-2", PackOffer.Of("can", 5m, 40m)));
        Assert.Equal(["LV-1: one (1 at 9.00)", "LV-2: can (5 at 40.00)"], cheap.Offers.Select(offer => offer.ToString()));
        Assert.Equal(80m, cheap.Offers[1].Cheapest(5.001m).Value.Price);
    }

    [Fact]
    public void FilterBase_HoldsTheFilterAgainstItsNeed_OrSaysWhatIsMissing()
    {
        Assert.False(Base().Comparison.IsKnown);
        Assert.Equal(FilterVerdict.NotEquivalent, Base().With(FilterSpecification.Named("LV-1").WithThread(FilterThread.Metric(20, 1.5))).Comparison.Value.Verdict);
        Assert.Equal("filter", Assert.Throws<ArgumentException>(() => Base().With(FilterSpecification.Named("LV-2"))).ParamName);
    }

    private static FilterBase Base() => FilterBase.Of("LV-1", FilterNeed.Of(FilterKind.EngineOil).WithThread(FilterThread.Inch(3, 4, 16)));

    private static void AssertNamed(string argument, Func<object> call)
    {
        ArgumentException fault = Assert.Throws<ArgumentException>(call);
        Assert.Equal(argument, fault.ParamName);
        Assert.Contains("'LV-9'", fault.Message, StringComparison.Ordinal);
    }
}
