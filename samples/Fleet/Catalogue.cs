using MarineService.Core;
using MarineService.Core.Fleet;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;

namespace Fleet;

/// <summary>The invented data sheets of the invented fleet.</summary>
internal static class Catalogue
{
    internal static FleetCatalogue Invented { get; } = FleetCatalogue.Of(
        Sheet("corrie-60p", "Corrie 60P", 100m, 5.5m, "oil filter A", "impeller kit B", "belt C"),
        Sheet("corrie-24p", "Corrie 24P", 100m, 3.8m, "oil filter D", "impeller kit E", "belt F"),
        Sheet("brae-16d", "Brae 16D", 150m, 4.2m, "oil filter G", "impeller kit H", null));

    private static FleetSpecification Sheet(string reference, string designation, decimal oilHours, decimal liters, string filter, string impeller, string? belt)
    {
        EngineSpecification sheet = EngineSpecification.Named(designation).With(
            ServiceTask.EachUse("cooling-water"),
            ServiceTask.Replace("engine-oil", Both(oilHours, 12)).WithFirstService(Both(20m, 12)),
            ServiceTask.Inspect("impeller-look", Both(50m, 12)).IfFailedDo("impeller"),
            ServiceTask.Replace("impeller", Both(300m, 24)).Including("impeller-look"),
            ServiceTask.Inspect("belt", Both(100m, 12)),
            ServiceTask.Replace("coolant", ServiceInterval.OfMonths(36)),
            ServiceTask.Replace("fuel-filter", Both(200m, 12)),
            ServiceTask.Inspect("anodes", ServiceInterval.OfMonths(6)));
        List<PartNeed> parts = [PartNeed.Of("engine-oil", "engine oil, L", liters), PartNeed.Of("engine-oil", filter), PartNeed.Of("impeller", impeller)];
        if (belt is not null)
        {
            parts.Add(PartNeed.Of("belt", belt));
        }

        return FleetSpecification.Of(reference, sheet, [.. parts]);
    }

    private static ServiceInterval Both(decimal hours, int months) => ServiceInterval.FirstOf(EngineHours.FromHours(hours), months);
}
