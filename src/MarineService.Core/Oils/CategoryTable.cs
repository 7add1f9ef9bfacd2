using NodaTime;

namespace MarineService.Core.Oils;

/// <summary>The categories, the stated coverage between them, and the stated exceptions.</summary>
/// <remarks>Adding one: a row here, its edges with their source below, a row in the reference table of the tests.</remarks>
internal static class CategoryTable
{
    internal static readonly IReadOnlyList<ServiceCategory> All = Array.AsReadOnly<ServiceCategory>(
    [
        .. from name in new[] { "SA", "SB", "SC", "SD", "SE", "SF", "SG", "SH" }
           select new ServiceCategory(name, CategoryBody.ApiS, "petrol", OilSources.ApiListing, caution: "obsolete, before 1996"),
        new("SJ", CategoryBody.ApiS, "petrol", Citation.FromMemory, 1996, caution: "for older engines"),
        new("SL", CategoryBody.ApiS, "petrol", OilSources.ApiListing, 2001, caution: "for older engines"),
        new("SM", CategoryBody.ApiS, "petrol", OilSources.ApiListing, 2004, caution: "for older engines"),
        new("SN", CategoryBody.ApiS, "petrol", OilSources.ApiListing, 2010),
        new("SP", CategoryBody.ApiS, "petrol", OilSources.ApiListing, 2020),
        new("SQ", CategoryBody.ApiS, "petrol", OilSources.ApiGuide, firstLicence: new LocalDate(2025, 3, 31)),

        .. from name in new[] { "CA", "CB", "CC", "CD", "CE" }
           select new ServiceCategory(name, CategoryBody.ApiC, "diesel", Citation.FromMemory, caution: "obsolete, before 1990"),
        new("CD-II", CategoryBody.ApiC, "two-stroke diesel", Citation.FromMemory, caution: "obsolete, before 1990"),
        new("CF-4", CategoryBody.ApiC, "four-stroke diesel", Citation.FromMemory, 1990, caution: "obsolete"),
        new("CF", CategoryBody.ApiC, "diesel with indirect injection, high-sulfur fuel", OilSources.ApiListing, 1994, lastSeenOnLabels: new LocalDate(2010, 12, 30),
            caution: "the newer C-4 categories are not stated to cover CF: ask the engine's maker"),
        new("CF-2", CategoryBody.ApiC, "two-stroke diesel", OilSources.ApiListing, 1994, lastSeenOnLabels: new LocalDate(2010, 2, 1),
            caution: "two-stroke diesels only; it has no successor"),
        new("CG-4", CategoryBody.ApiC, "four-stroke diesel", OilSources.ApiListing, 1995, lastSeenOnLabels: new LocalDate(2009, 8, 31), caution: "obsolete"),
        new("CH-4", CategoryBody.ApiC, "four-stroke diesel", OilSources.ApiListing, 1998),
        new("CI-4", CategoryBody.ApiC, "four-stroke diesel", OilSources.ApiGuide, 2002, caution: "for fuel with up to 0.5 % sulfur by mass"),
        new("CI-4 PLUS", CategoryBody.ApiC, "four-stroke diesel", Citation.FromMemory, 2004, caution: "a supplement to CI-4 or CJ-4"),
        new("CJ-4", CategoryBody.ApiC, "four-stroke diesel", OilSources.ApiGuide, firstLicence: new LocalDate(2006, 10, 15),
            caution: "on fuel above 15 ppm sulfur ask the engine's maker for the interval; some small-diesel makers forbid it"),
        new("CK-4", CategoryBody.ApiC, "four-stroke diesel", OilSources.ApiGuide, firstLicence: new LocalDate(2016, 12, 1),
            caution: "on fuel above 15 ppm sulfur ask the engine's maker"),
        new("FA-4", CategoryBody.ApiC, "selected four-stroke diesels of 2017 and later", OilSources.ApiGuide, firstLicence: new LocalDate(2016, 12, 1),
            caution: "low high-shear viscosity (2.9 to 3.2 mPa·s), xW-30 only, fuel of at most 15 ppm sulfur"),
        new("CL-4", CategoryBody.ApiC, "four-stroke diesel", OilSources.ApiListing, firstLicence: new LocalDate(2027, 1, 1)),
        new("FB-4", CategoryBody.ApiC, "selected four-stroke diesels", OilSources.ApiListing, firstLicence: new LocalDate(2027, 1, 1),
            caution: "low high-shear viscosity; not for engines that ask for a C category"),

        new("GF-6A", CategoryBody.Ilsac, "petrol", OilSources.ApiListing, 2020),
        new("GF-6B", CategoryBody.Ilsac, "petrol", OilSources.ApiListing, 2020, caution: "SAE 0W-16 only"),
        new("GF-7A", CategoryBody.Ilsac, "petrol", OilSources.ApiListing, 2025),
        new("GF-7B", CategoryBody.Ilsac, "petrol", OilSources.ApiListing, 2025, caution: "SAE 0W-16 only"),

        new("FC-W", CategoryBody.Nmma, "four-stroke marine petrol", OilSources.ApiGuide, 2004),
        new("FC-W Catalyst Compatible", CategoryBody.Nmma, "four-stroke marine petrol with catalyst", OilSources.ApiGuide, 2009,
            caution: "adds requirements to FC-W; whether it may always be used where FC-W is asked for was not seen"),
        new("TC-W3", CategoryBody.Nmma, "two-stroke marine petrol", OilSources.ApiGuide, caution: "two-stroke only, never in a four-stroke crankcase"),

        Acea("A1/B1", Citation.FromMemory),
        Acea("A3/B3", OilSources.AceaSequences, withdrawnIn: 2021),
        Acea("A3/B4", Citation.FromMemory),
        Acea("A5/B5", OilSources.AceaSequences),
        Acea("A7/B7", OilSources.AceaSequences, 2021, caution: "built on A5/B5, which is not a statement that it covers it"),
        Acea("C1", OilSources.AceaSequences, withdrawnIn: 2021),
        Acea("C2", Citation.FromMemory),
        Acea("C3", Citation.FromMemory),
        Acea("C4", Citation.FromMemory),
        Acea("C5", OilSources.AceaSequences),
        Acea("C6", OilSources.AceaSequences, 2021, caution: "built on C5, which is not a statement that it covers it"),
        Acea("E4", OilSources.AceaSequences),
        Acea("E6", OilSources.AceaSequences, withdrawnIn: 2022, caution: "superseded by E8 in 2022"),
        Acea("E7", OilSources.AceaSequences),
        Acea("E8", OilSources.AceaSequences, 2022),
        Acea("E9", OilSources.AceaSequences, withdrawnIn: 2022, caution: "superseded by E11 in 2022"),
        Acea("E11", OilSources.AceaSequences, 2022),
        Acea("F8", Citation.FromMemory, 2022, caution: "low high-shear viscosity, not interchangeable with the E categories"),
        Acea("F11", Citation.FromMemory, 2022, caution: "low high-shear viscosity, not interchangeable with the E categories"),
    ]);

    /// <summary>Which category is stated to cover which others, and where that is stated.</summary>
    internal static readonly IReadOnlyList<(string From, string[] To, Citation Citation)> Stated =
    [
        // API guide: each later S category covers the earlier ones. Listings repeat it from SJ on.
        ("SQ", ["SP"], OilSources.ApiGuide),
        ("SP", ["SN"], OilSources.ApiGuide),
        ("SN", ["SM"], OilSources.ApiGuide),
        ("SM", ["SL"], OilSources.ApiGuide),
        ("SL", ["SJ"], OilSources.ApiGuide),
        ("SJ", ["SH", "SG", "SF", "SE", "SD", "SC", "SB", "SA"], OilSources.ApiGuide),

        ("CF-4", ["CD", "CE"], Citation.FromMemory),
        ("CF", ["CD"], Citation.FromMemory),
        ("CF-2", ["CD-II"], Citation.FromMemory),
        ("CG-4", ["CD", "CE", "CF-4"], Citation.FromMemory),
        ("CH-4", ["CD", "CE", "CF-4", "CG-4"], Citation.FromMemory),
        ("CI-4", ["CH-4", "CG-4", "CF-4", "CE", "CD"], OilSources.ApiGuide),
        ("CI-4 PLUS", ["CI-4"], OilSources.ApiListing),
        ("CJ-4", ["CI-4 PLUS", "CI-4", "CH-4", "CG-4", "CF-4"], OilSources.ApiGuide),
        ("CK-4", ["CJ-4", "CI-4 PLUS", "CI-4", "CH-4"], OilSources.ApiGuide),
        ("CL-4", ["CK-4"], OilSources.ApiListing),
        ("FB-4", ["FA-4"], OilSources.ApiListing),
    ];

    internal static string OneOfAll => $"one of {string.Join(", ", All)}";

    internal static ServiceCategory Named(string name) => All.First(category => category.Name == name);

    /// <summary>Why the one may not stand in for the other, where that is stated; null when nothing is.</summary>
    internal static (string Why, Citation Citation)? Exclusion(ServiceCategory claimed, ServiceCategory required)
    {
        bool requiredIsC = required.Body == CategoryBody.ApiC && required.Name[0] == 'C';
        return claimed.Name switch
        {
            "FA-4" when requiredIsC => ("FA-4 is not backward compatible with any C category", OilSources.ApiGuide),
            "FB-4" when requiredIsC => ("FB-4 is not for engines that ask for a C category", OilSources.ApiListing),
            "GF-6B" or "GF-7B" when required.Name != claimed.Name && required.Body == CategoryBody.Ilsac =>
                ($"{claimed} is SAE 0W-16 only and replaces nothing thicker", OilSources.ApiListing),
            "TC-W3" when required.Name != "TC-W3" => ("TC-W3 is for two-stroke engines only", OilSources.ApiGuide),
            "F8" or "F11" when required.Name[0] == 'E' && required.Body == CategoryBody.Acea =>
                ($"{claimed} has a low high-shear viscosity and is not interchangeable with the E categories", Citation.FromMemory),
            "CF-2" or "CD-II" when required.Name is not "CF-2" and not "CD-II" && requiredIsC =>
                ($"{claimed} is for two-stroke diesels only", OilSources.ApiListing),
            _ when required.Body == CategoryBody.Nmma && claimed.Body != CategoryBody.Nmma =>
                ($"{required} is a mark of its own with rust and engine tests that {claimed} does not imply", OilSources.ApiGuide),
            _ => null,
        };
    }

    // A replaced issue may be marketed for two more years.
    private static ServiceCategory Acea(string name, Citation citation, int? firstYear = null, int? withdrawnIn = null, string? caution = null) =>
        new(name, CategoryBody.Acea, name[0] is 'E' or 'F' ? "heavy-duty diesel" : "light duty", citation, firstYear,
            lastSeenOnLabels: withdrawnIn is int year ? new LocalDate(year + 2, 12, 31) : null,
            caution: caution ?? (withdrawnIn is int gone ? FormattableString.Invariant($"withdrawn in the {gone} sequences") : null));
}
