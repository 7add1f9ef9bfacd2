using MarineService.Core.Belts;
using MarineService.Core.Tests.Reference;

namespace MarineService.Core.Tests.Belts;

/// <summary>The reference layouts as drives: exact centres, the belt's dimensions as the table says, no belt length.</summary>
internal static class Layouts
{
    private static readonly IReadOnlyList<IReadOnlyDictionary<string, string>> Rows = ReferenceTable.Read("belts-layouts.csv");

    internal static IReadOnlyList<IReadOnlyDictionary<string, string>> Totals { get; } = ReferenceTable.Read("belts-layout-totals.csv");

    internal static TheoryData<string> Names => [.. Totals.Select(row => row["layout"])];

    internal static TheoryData<string> Measurable => [.. Totals.Where(row => row["pitch_length"].Length > 0).Select(row => row["layout"])];

    internal static IReadOnlyDictionary<string, string> TotalsOf(string layout) => Totals.Single(row => row["layout"] == layout);

    internal static IReadOnlyList<IReadOnlyDictionary<string, string>> RoutedRows(string layout) =>
        [.. Rows.Where(row => row["layout"] == layout && row["routed"] == "1")];

    internal static IReadOnlyList<IReadOnlyDictionary<string, string>> AllRows(string layout) => [.. Rows.Where(row => row["layout"] == layout)];

    internal static BeltDriveBuilder Builder(string layout)
    {
        IReadOnlyDictionary<string, string> totals = TotalsOf(layout);
        double back = totals.Number("back_offset");
        BeltDriveBuilder builder = BeltDrive
            .SeenFromPulleyEnd(totals.Number("first_pulley_sense") > 0 ? Sense.CounterClockwise : Sense.Clockwise)
            .WithBelt(RibbedBelt.Unmeasured.WithThickness(totals.Number("be"), back, Math.Max(back, 4.8)))
            .WithCentersKnownTo(0);
        foreach (IReadOnlyDictionary<string, string> row in AllRows(layout))
        {
            builder = row["contact"] == "rib"
                ? builder.Grooved(row["name"], row.Number("x"), row.Number("y"), row.Number("diameter"))
                : builder.Smooth(row["name"], row.Number("x"), row.Number("y"), row.Number("diameter"));
        }

        return builder;
    }

    internal static BeltDrive Drive(string layout) => Builder(layout).Build();

    internal static BeltRouting Routing(string layout) => Drive(layout).Route([.. RoutedRows(layout).Select(row => row["name"])]);

    /// <summary>S07 with its arm as the reference describes it.</summary>
    internal static BeltDrive S07WithArm() =>
        Builder("S07").WithTensioner(Tensioner.Automatic("TEN", pivotXMm: -222, pivotYMm: -31, fromDegrees: -20, toDegrees: 45)).Build();

    /// <summary>"CRK TEN* WP" as the tables write it: an asterisk means the belt's back, everything else runs on the ribs.</summary>
    internal static BeltRouting Starred(BeltDrive drive, string order) =>
        drive.Route([.. order.Split(' ').Select(name => name.EndsWith('*') ? $"{name.TrimEnd('*')}(back)" : $"{name}(ribs)")]);

    internal static string Starred(BeltRouting routing) =>
        string.Join(" ", routing.Stops.Select(stop => stop.Face == BeltFace.Back ? stop.PulleyName + "*" : stop.PulleyName));
}
