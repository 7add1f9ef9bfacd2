namespace MarineService.Core.Oils;

/// <summary>Where the figures and rules of this room come from, named once.</summary>
internal static class OilSources
{
    internal const string J300Revision =
        "J300_202405; limits from public copies of the 2015 and 2021 revisions, the 2024 abstract lists no changed limit";

    internal static readonly Citation J300 = Citation.Published("SAE J300", J300Revision, "table 1");

    internal static readonly Citation J300Label = Citation.Secondary("SAE J300", J300Revision, "labelling of W grades");

    /// <summary>J300 section 6 says which of several overlapping thin grades to name; its text was not seen.</summary>
    internal static readonly Citation J300Overlap = Citation.FromMemory;

    internal static readonly Citation D341 = Citation.Published("ASTM D341", null, "double-log equation, as reproduced publicly");

    internal static readonly Citation D2270 = Citation.Published("ASTM D2270", null, "sections 5 and 6, table 1, appendix X2");

    internal static readonly Citation E29 = Citation.Published("ASTM E29", null, "rounding method");

    internal static readonly Citation BlendIndex = Citation.Published("Viscosity blending index (Refutas)", null, "formula, as on four public pages");

    internal static readonly Citation BlendScope = Citation.Secondary("ASTM D7152", null, "section 1.3");

    internal static readonly Citation BlendChart = Citation.Secondary("Hydraulic Institute Engineering Data Book", null, "figure 2.C.2");

    internal static readonly Citation FuelChart = Citation.Secondary("Public fuel-dilution chart for diesel engine oils", null, "chart at 40 °C and at 100 °F");

    internal static readonly Citation ApiGuide = Citation.Published("API engine oil guide", null, "as repeated in public listings");

    internal static readonly Citation ApiListing = Citation.Secondary("API service categories, public listing");

    internal static readonly Citation AceaSequences = Citation.Secondary("ACEA European oil sequences", "2021 and 2022");
}
