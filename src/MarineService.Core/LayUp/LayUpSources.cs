namespace MarineService.Core.LayUp;

/// <summary>Where the figures of this room come from.</summary>
internal static class LayUpSources
{
    internal static Citation VesselPreservation { get; } =
        Citation.Secondary("TB 740-97-4, Preservation of vessels for storage", null, "chapter 4, paragraphs 29, 43, 110, 111, 118, 120");

    internal static Citation FuelTankLevel { get; } = Citation.Secondary("TB 55-1900-231-15", null, "fuel tanks in storage, 90 to 95 %");

    internal static Citation CleanBoatingFuel { get; } = Citation.Secondary("New Jersey clean boating tip sheet", null, "fuel tanks no more than 90 % full");

    internal static Citation PropyleneAshore { get; } =
        Citation.Secondary("New York Sea Grant, Marina Pollution Prevention", null, "section 3, winterizing vessels");

    internal static Citation FreezeClaims { get; } =
        Citation.Secondary("Boat Owners Association of The United States, summaries of claim files", null, "freeze claims");

    internal static Citation BurstRatings { get; } = Citation.Secondary("Technical pages of glycol suppliers", null, "freeze, slush and burst protection");

    internal static Citation BatteryFreezing { get; } =
        Citation.Secondary("Owner's manual of a vehicle", null, "off-season storage, freezing point by specific gravity");

    internal static Citation FuelAge { get; } = Citation.Secondary("Articles of boating magazines", null, "storage life of untreated fuel");

    internal static Citation Blower { get; } = Citation.Secondary("33 CFR 183.610", null, "label: operate the blower for four minutes and check the bilge");

    internal static Citation UsedOilCan { get; } = Citation.Secondary("40 CFR 279.22", null, "containers marked Used Oil");
}
