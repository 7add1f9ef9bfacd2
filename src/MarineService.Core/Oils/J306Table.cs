namespace MarineService.Core.Oils;

/// <summary>The table of SAE J306, February 2019, with what differed in the 2005 revision.</summary>
internal static class J306Table
{
    /// <summary>The temperature at which ASTM D2983 may read at most 150,000 mPa·s, the coldest first.</summary>
    internal static readonly IReadOnlyList<WinterRow> Winters =
    [
        new("70W", -55, 3.8, 4.1),
        new("75W", -40, 3.8, 4.1),
        new("80W", -26, 8.5, 7.0),
        new("85W", -12, 11.0, 11.0),
    ];

    internal static readonly IReadOnlyList<HotRow> Hots =
    [
        new("65", 3.8, 5.0, null),
        new("70", 5.0, 6.5, null),
        new("75", 6.5, 8.5, null),
        new("80", 8.5, 11.0, 7.0),
        new("85", 11.0, 13.5, 11.0),
        new("90", 13.5, 18.5, 13.5),
        new("110", 18.5, 24.0, 18.5),
        new("140", 24.0, 32.5, 24.0),
        new("190", 32.5, 41.0, 32.5),
        new("250", 41.0, double.PositiveInfinity, 41.0),
    ];

    internal static Citation Citation(GearOilRevision revision) =>
        Core.Citation.Secondary("SAE J306", revision == GearOilRevision.Year2005 ? "2005" : "February 2019");

    internal sealed class WinterRow(string name, double celsius, double min2019, double min2005)
    {
        internal string Name { get; } = name;

        internal double Celsius { get; } = celsius;

        /// <summary>The smaller bound of both revisions.</summary>
        internal double LeastKv100 => Math.Min(min2019, min2005);

        internal double Kv100Min(GearOilRevision revision) => revision == GearOilRevision.Year2005 ? min2005 : min2019;
    }

    internal sealed class HotRow(string name, double min2019, double max, double? min2005)
    {
        internal string Name { get; } = name;

        internal double Max { get; } = max;

        internal bool Holds(double kv100, GearOilRevision revision) =>
            kv100 >= (revision == GearOilRevision.Year2005 ? min2005 ?? double.PositiveInfinity : min2019) && kv100 < Max;
    }
}
