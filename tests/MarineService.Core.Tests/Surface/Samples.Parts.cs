using MarineService.Core.Parts;
using NodaTime;
using UnitsNet;

namespace MarineService.Core.Tests.Surface;

/// <content>What only fits and joints make.</content>
internal static partial class Samples
{
    private static IEnumerable<object> OfParts()
    {
        BoltPattern pattern = BoltPattern.Of(Length.FromMillimeters(34), 0, 110, 240);
        CoverFit fit = pattern.Fit(pattern, ScrewClearance.OfStandardHole(MetricThread.M5, ClearanceSeries.Medium).Value);
        return
        [
            MetricThread.M8, PropertyClass.Class88, NutFactor.Oiled, pattern, fit, fit.AsHeld(Angle.FromDegrees(10)).Value,
            ScrewClearance.OnTappedHole(Length.FromMillimeters(5.5), Length.FromMillimeters(5)),
            MarineService.Core.Specifications.FittedCover.Of(Joint.Of("lid", JointSeat.FlatGasket, thread: MetricThread.M8)).WithPattern(pattern, Length.FromMillimeters(9)),
            Joint.Of("bracket", JointSeat.Metal, ThreadMaterial.Steel, MetricThread.M8, PropertyClass.Class88),
            .. OfStores(),
        ];
    }

    private static IEnumerable<object> OfStores()
    {
        FilterNeed need = FilterNeed.Of(FilterKind.EngineOil, FilterOrientation.Sideways).WithThread(FilterThread.Inch(3, 4, 16));
        FilterSpecification filter = FilterSpecification.Named("F1").WithThread(FilterThread.Metric(20, 1.5));
        FilterComparison comparison = need.Compare(filter);
        RubberPart rubber = RubberPart.Of("impeller", Polymer.Chloroprene, CureQuarter.Of(2017, 2)).Kept(asGuided: true);
        PartsCatalogue catalogue = PartsCatalogue.Of(ServicePart.Of("LV-1", "filter"));
        TaskKit kit = TaskKit.Of("engine-oil", KitItem.Of("LV-1"));
        KitList list = KitList.For(catalogue, [kit]);
        Purchase purchase = Purchase.Cheapest(4m, PackOffer.Of("can", 5m, 40m));
        PartAlternative alternative = PartAlternative.Of("LV-2", 9m, "fire rating");
        LoosePart screw = LoosePart.Of("M6 screw", LoosePartKind.Screw, "pump cover", captiveWashers: 1);
        LooseParts tally = LooseParts.Empty.TakenOff(screw, 6);
        return
        [
            FilterThread.Metric(20, 1.5), FilterProperty.Burst, need, filter, comparison, comparison.Attributes[0],
            CureQuarter.Of(2017, 2), StorageGuide.Iso2230, StorageGuide.Iso2230.LimitFor(Polymer.Nitrile).Value, rubber, rubber.AgeOn(new LocalDate(2026, 4, 1)),
            ServicePart.Of("LV-1", "filter"), KitItem.Of("LV-1"), kit, catalogue, list, list.Lines[0],
            PackOffer.Of("can", 5m, 40m), purchase, purchase.Lines[0], alternative, PartChoice.Between("LV-1", 14m, alternative),
            screw, tally, tally.Open[0], LooseItem.Of(screw, 6), TaskLooseParts.Of("engine-oil", LooseItem.Of(screw, 6)),
            PartOffers.Of("LV-1", PackOffer.Of("can", 5m, 40m)), FilterBase.Of("LV-1", need), PartsSheet.Of(catalogue).With(kit),
        ];
    }
}
