using MarineService.Core.Parts;

namespace MarineService.Core.Exchange;

/// <summary>An attribute of a spin-on filter in documents: its member, its unit and bounds, and whether a base asks for a range, a least or a most.</summary>
internal sealed class FilterAttribute
{
    private FilterAttribute(string name, FilterProperty property, FilterDemand demand, WireUnits? units, double min, double max) =>
        (Name, Property, Demand, Units, Min, Max) = (name, property, demand, units, min, max);

    /// <summary>Those that a base may ask for, and last the one that only a filter has.</summary>
    internal static FilterAttribute[] All { get; } =
    [
        Size("gasketOuter", FilterProperty.GasketOuter, FilterDemand.Range),
        Size("gasketInner", FilterProperty.GasketInner, FilterDemand.Range),
        Size("gasketSection", FilterProperty.GasketSection, FilterDemand.Range),
        Size("height", FilterProperty.Height, FilterDemand.Most),
        Size("outerDiameter", FilterProperty.OuterDiameter, FilterDemand.Most),
        new("bypass", FilterProperty.Bypass, FilterDemand.Range, null, 0, 1),
        new("bypassOpening", FilterProperty.BypassOpening, FilterDemand.Range, WireUnits.Pressure, JsonCursor.AboveZero, FilterNeed.MostDifferenceKilopascals),
        new("antiDrainTemperature", FilterProperty.AntiDrainTemperature, FilterDemand.Least, WireUnits.Temperature, 0, FilterNeed.MostCelsius),
        new("burst", FilterProperty.Burst, FilterDemand.Least, WireUnits.Pressure, JsonCursor.AboveZero, FilterNeed.MostStrengthKilopascals),
        new("pressureDrop", FilterProperty.PressureDrop, FilterDemand.Most, WireUnits.Pressure, JsonCursor.AboveZero, FilterNeed.MostDifferenceKilopascals),
        new("efficiency", FilterProperty.Efficiency, FilterDemand.Least, null, JsonCursor.AboveZero, 1),
        new("capacity", FilterProperty.Capacity, FilterDemand.Least, WireUnits.Mass, JsonCursor.AboveZero, FilterNeed.MostGrams),
        new("collapse", FilterProperty.Collapse, FilterDemand.Least, WireUnits.Pressure, JsonCursor.AboveZero, FilterNeed.MostStrengthKilopascals),
        new("fatigueCycles", FilterProperty.Fatigue, FilterDemand.Least, null, 1, FilterNeed.MostCycles),
        new("vibrationCycles", FilterProperty.Vibration, FilterDemand.Least, null, 1, FilterNeed.MostCycles),
        new("aftermarketTests", FilterProperty.AftermarketTests, FilterDemand.Range, null, 0, 1),
        new("antiDrainBack", FilterProperty.AntiDrainBack, FilterDemand.Range, null, 0, 1),
    ];

    internal string Name { get; }

    internal FilterProperty Property { get; }

    internal FilterDemand Demand { get; }

    /// <summary>The units, or null for yes and no, a share, or a count.</summary>
    internal WireUnits? Units { get; }

    internal double Min { get; }

    internal double Max { get; }

    internal bool IsCount => Max > 1 && Units is null;

    /// <summary>A value in the unit of the attribute; yes is 1 and no is 0.</summary>
    internal double? Read(ref JsonCursor json, double max) =>
        Property.IsYesOrNo ? json.YesOrNo() is bool yes ? yes ? 1 : 0 : null
        : Units is not null ? json.Quantity(Units, Min, max)
        : IsCount ? json.WholeNumber((int)Min, (int)max)
        : json.Real(Min, max);

    private static FilterAttribute Size(string name, FilterProperty property, FilterDemand demand) =>
        new(name, property, demand, WireUnits.Length, JsonCursor.AboveZero, FilterNeed.MostMm);
}
