using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Parts;

/// <summary>How far a hole of the cover may lie off its hole in the block before the screw does not go in any more.</summary>
/// <remarks>A clear hole on a tapped one gives half the difference of hole and screw; clear on clear gives the whole difference.</remarks>
public sealed class ScrewClearance
{
    private const double LargestMm = 100;

    // ISO 273, as reproduced in trade tables: screw, fine, medium, coarse.
    private static readonly double[][] Iso273 =
    [
        [5, 5.3, 5.5, 5.8],
        [6, 6.4, 6.6, 7.0],
        [8, 8.4, 9.0, 10.0],
        [10, 10.5, 11.0, 12.0],
        [12, 13.0, 13.5, 14.5],
    ];

    private ScrewClearance(double radialPlayMm, string name, Citation citation) => (RadialPlayMm, Name, Citation) = (radialPlayMm, name, citation);

    /// <summary>How far a hole may lie off in any direction [mm].</summary>
    public double RadialPlayMm { get; }

    /// <summary>What it was worked out from.</summary>
    public string Name { get; }

    /// <summary>Where the figures come from.</summary>
    public Citation Citation { get; }

    /// <summary>Clear holes in the cover on tapped holes in the block.</summary>
    /// <param name="coverHole">Diameter of the holes in the cover, up to 100 mm.</param>
    /// <param name="screw">Diameter of the screws; above 0 mm and less than the hole.</param>
    /// <returns>The clearance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ScrewClearance OnTappedHole(Length coverHole, Length screw) => Of(coverHole, screw, 0.5, "tapped");

    /// <summary>Clear holes in the cover on clear holes, with nuts behind.</summary>
    /// <param name="coverHole">Diameter of both holes, up to 100 mm.</param>
    /// <param name="screw">Diameter of the screws; above 0 mm and less than the hole.</param>
    /// <returns>The clearance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ScrewClearance OnClearHole(Length coverHole, Length screw) => Of(coverHole, screw, 1, "clear");

    /// <summary>Holes drilled by ISO 273 on tapped holes.</summary>
    /// <param name="thread">The thread, of the coarse threads from M5 to M12.</param>
    /// <param name="series">How wide the holes were drilled.</param>
    /// <returns>The clearance; not known for another thread.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="series"/> is not a defined value.</exception>
    public static Answer<ScrewClearance> OfStandardHole(MetricThread thread, ClearanceSeries series)
    {
        double diameter = Guard.NotNull(thread).DiameterMm;
        Guard.Defined(series);
        return Array.Find(Iso273, row => row[0] == diameter) is double[] row
            ? Answer.Known(new ScrewClearance(
                (row[(int)series + 1] - diameter) / 2,
                FormattableString.Invariant($"{thread} in {row[(int)series + 1]} mm on a tapped hole"),
                PartsSources.ClearanceHoles))
            : Answer.NotKnown<ScrewClearance>($"The diameter of the holes for {thread}.");
    }

    /// <summary>What it was worked out from, and the play.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{Name}, {RadialPlayMm:0.###} mm");

    private static ScrewClearance Of(Length coverHole, Length screw, double share, string other)
    {
        double hole = Guard.InRange(Guard.Positive(Canonical.Millimeters(coverHole), "mm", nameof(coverHole)), 0, LargestMm, "mm", nameof(coverHole));
        double shank = Guard.Positive(Canonical.Millimeters(screw), "mm", nameof(screw));
        return shank < hole
            ? new((hole - shank) * share, FormattableString.Invariant($"{shank} mm in {hole} mm on a {other} hole"), Citation.GivenByCaller)
            : throw new ArgumentOutOfRangeException(nameof(screw), shank, FormattableString.Invariant($"Must be less than the hole, {hole} mm."));
    }
}
