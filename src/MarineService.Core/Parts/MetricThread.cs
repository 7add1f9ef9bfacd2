using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Parts;

/// <summary>A metric screw thread of the ISO basic profile: nominal diameter and pitch.</summary>
/// <remarks>Diameters by ISO 724 and ISO 68-1, stress area by ISO 898-1. Two threads are equal when both figures are.</remarks>
public sealed record MetricThread
{
    internal const double SmallestMm = 1;
    internal const double LargestMm = 100;

    // Coarser than a quarter of the diameter is no thread of the series: M1 has 0.25 mm.
    internal const double CoarsestShare = 0.25;

    private MetricThread(double diameterMm, double pitchMm, bool isCoarse) => (DiameterMm, PitchMm, IsCoarse) = (diameterMm, pitchMm, isCoarse);

    /// <summary>M5, pitch 0.8 mm.</summary>
    public static MetricThread M5 { get; } = new(5, 0.8, true);

    /// <summary>M6, pitch 1 mm; its hexagon head is usually 10 mm across flats.</summary>
    public static MetricThread M6 { get; } = new(6, 1, true);

    /// <summary>M8, pitch 1.25 mm.</summary>
    public static MetricThread M8 { get; } = new(8, 1.25, true);

    /// <summary>M10, pitch 1.5 mm.</summary>
    public static MetricThread M10 { get; } = new(10, 1.5, true);

    /// <summary>M12, pitch 1.75 mm.</summary>
    public static MetricThread M12 { get; } = new(12, 1.75, true);

    /// <summary>The coarse threads that small engines are held together with, thinnest first.</summary>
    public static IReadOnlyList<MetricThread> Coarse { get; } = Array.AsReadOnly<MetricThread>([M5, M6, M8, M10, M12]);

    /// <summary>The nominal diameter.</summary>
    public Length Diameter => Length.FromMillimeters(DiameterMm);

    /// <summary>The pitch.</summary>
    public Length Pitch => Length.FromMillimeters(PitchMm);

    /// <summary>The basic pitch diameter d2.</summary>
    public Length PitchDiameter => Length.FromMillimeters(TorqueMath.PitchDiameterMm(DiameterMm, PitchMm));

    /// <summary>The diameter d3 at the rounded root.</summary>
    public Length RootDiameter => Length.FromMillimeters(TorqueMath.RootDiameterMm(DiameterMm, PitchMm));

    /// <summary>The area that the proof stress counts on, unrounded; tables print three digits of it.</summary>
    public Area StressArea => Area.FromSquareMillimeters(StressAreaSquareMm);

    internal double DiameterMm { get; }

    internal double PitchMm { get; }

    internal double StressAreaSquareMm => TorqueMath.StressAreaSquareMm(DiameterMm, PitchMm);

    private bool IsCoarse { get; }

    /// <summary>Another thread of the ISO profile, such as a fine one.</summary>
    /// <param name="diameter">The nominal diameter, from 1 to 100 mm.</param>
    /// <param name="pitch">The pitch; above 0 and up to a quarter of the diameter.</param>
    /// <returns>The thread.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static MetricThread Of(Length diameter, Length pitch)
    {
        double d = Guard.InRange(Canonical.Millimeters(diameter), SmallestMm, LargestMm, "mm", nameof(diameter));
        double p = Guard.Positive(Canonical.Millimeters(pitch), "mm", nameof(pitch));
        Guard.InRange(p, 0, d * CoarsestShare, "mm", nameof(pitch));
        return Coarse.FirstOrDefault(known => known.DiameterMm == d && known.PitchMm == p) ?? new(d, p, false);
    }

    /// <summary>The designation: "M8" for a coarse pitch, "M8x1" for another.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() =>
        IsCoarse ? FormattableString.Invariant($"M{DiameterMm}") : FormattableString.Invariant($"M{DiameterMm}x{PitchMm}");
}
