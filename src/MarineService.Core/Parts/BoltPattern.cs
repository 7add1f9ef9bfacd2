using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Parts;

/// <summary>Holes on one bolt circle, whose gaps need not be equal: of a cover, or of the block that it goes on.</summary>
/// <remarks>
/// Angles run counter-clockwise, seen from outside the engine looking at the cover. Holes are numbered from 1 in the order given. Patterns
/// never change.
/// </remarks>
/// <example><code>
/// BoltPattern block = BoltPattern.Of(Length.FromMillimeters(34), 0, 58, 121, 180, 238.3, 301);
/// CoverFit fit = block.Fit(block, ScrewClearance.OfStandardHole(MetricThread.M5, ClearanceSeries.Medium).Value);
/// </code></example>
public sealed class BoltPattern
{
    internal const int MostHoles = 48;
    internal const double Degree = Math.PI / 180;
    internal const double LargestRadiusMm = 2000;
    internal const double LeastDegrees = -360;
    internal const double MostDegrees = 720;

    // Nearer than this no two holes can be drilled: it is a typing mistake. A project choice.
    private const double NearestMm = 1;

    private BoltPattern(double radiusMm, double[] anglesRad) => (RadiusMm, AnglesRad) = (radiusMm, anglesRad);

    /// <summary>The radius of the bolt circle.</summary>
    public Length BoltCircleRadius => Length.FromMillimeters(RadiusMm);

    /// <summary>How many holes there are.</summary>
    public int HoleCount => AnglesRad.Length;

    /// <summary>Where the holes are, counter-clockwise [degrees].</summary>
    public IReadOnlyList<double> AnglesDegrees => Array.AsReadOnly(Array.ConvertAll(AnglesRad, rad => rad / Degree));

    /// <summary>From each hole to the next, counter-clockwise; together 360 [degrees].</summary>
    public IReadOnlyList<double> GapsDegrees => Array.AsReadOnly(Gaps(AnglesRad));

    internal double RadiusMm { get; }

    internal double[] AnglesRad { get; }

    /// <summary>A pattern by the angles of its holes.</summary>
    /// <param name="boltCircleRadius">The radius of the bolt circle; above 0 and up to 2000 mm.</param>
    /// <param name="anglesDegrees">
    /// Two to 48 angles from -360 to 720 degrees, counter-clockwise: each greater than the one before, the last less than a turn after the first, no two holes
    /// within 1 mm.
    /// </param>
    /// <returns>The pattern.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="anglesDegrees"/> is null.</exception>
    /// <exception cref="ArgumentException">The angles are too few or too many, not in order, or two holes are at one place.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The radius or an angle is outside its range.</exception>
    public static BoltPattern Of(Length boltCircleRadius, params double[] anglesDegrees)
    {
        double radius = CheckedRadius(boltCircleRadius);
        Guard.NotNull(anglesDegrees);
        for (int i = 0; i < anglesDegrees.Length; i++)
        {
            Guard.InRange(anglesDegrees[i], LeastDegrees, MostDegrees, "degrees", nameof(anglesDegrees));
        }

        return Fault(radius, anglesDegrees) is string fault
            ? throw new ArgumentException(fault, nameof(anglesDegrees))
            : new(radius, Array.ConvertAll(anglesDegrees, angle => angle * Degree));
    }

    /// <summary>A pattern whose gaps are all equal.</summary>
    /// <param name="boltCircleRadius">The radius of the bolt circle; above 0 and up to 2000 mm.</param>
    /// <param name="holes">How many holes, from 2 to 48, no two within 1 mm.</param>
    /// <returns>The pattern, with hole 1 at 0 degrees.</returns>
    /// <exception cref="ArgumentException">Two holes are at one place.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static BoltPattern EvenlySpaced(Length boltCircleRadius, int holes)
    {
        Guard.InRange(holes, 2, MostHoles, "holes");
        return Of(boltCircleRadius, [.. Enumerable.Range(0, holes).Select(i => i * 360.0 / holes)]);
    }

    /// <summary>Three holes by the distances between their middles, as calipers measure them, going round counter-clockwise.</summary>
    /// <remarks>Three points always lie on one circle; its radius is a·b·c divided by four times the area of the triangle.</remarks>
    /// <param name="from1To2">From hole 1 to hole 2; from 1 to 4000 mm.</param>
    /// <param name="from2To3">From hole 2 to hole 3; from 1 to 4000 mm.</param>
    /// <param name="from3To1">From hole 3 to hole 1; from 1 to 4000 mm, less than the other two together and more than their difference.</param>
    /// <returns>The pattern, with hole 1 at 0 degrees.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A distance is outside its range, or the three make no triangle.</exception>
    public static BoltPattern OfTriangle(Length from1To2, Length from2To3, Length from3To1)
    {
        double a = Guard.InRange(Canonical.Millimeters(from1To2), NearestMm, 2 * LargestRadiusMm, "mm", nameof(from1To2));
        double b = Guard.InRange(Canonical.Millimeters(from2To3), NearestMm, 2 * LargestRadiusMm, "mm", nameof(from2To3));
        double c = Guard.InRange(Canonical.Millimeters(from3To1), NearestMm, 2 * LargestRadiusMm, "mm", nameof(from3To1));
        double s = (a + b + c) / 2;
        double area = Math.Sqrt(Math.Max(0, s * (s - a) * (s - b) * (s - c)));
        double radius = area > 0 ? a * b * c / (4 * area) : double.PositiveInfinity;
        if (radius > LargestRadiusMm)
        {
            throw new ArgumentOutOfRangeException(
                nameof(from3To1), c, FormattableString.Invariant($"Must make a triangle with {a} and {b} mm whose circle has a radius of at most {LargestRadiusMm} mm."));
        }

        // An angle at the middle is twice the angle of the triangle across from the side, by the cosine rule.
        double At(double side, double p, double q) => 2 * Math.Acos(Math.Max(-1, Math.Min(1, ((p * p) + (q * q) - (side * side)) / (2 * p * q))));
        double second = At(a, b, c);
        return new(radius, [0, second, second + At(b, a, c)]);
    }

    /// <summary>At which rotations a cover fits on this pattern.</summary>
    /// <param name="cover">The cover's pattern.</param>
    /// <param name="clearance">How far a hole may lie off.</param>
    /// <param name="location">What holds the cover in its place while the screws go in.</param>
    /// <param name="firstHoleOn">
    /// On which hole of this pattern the cover's hole 1 belongs, from 1 to the number of holes; null when nobody knows.
    /// </param>
    /// <returns>Every rotation, with those that fit.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="cover"/> or <paramref name="clearance"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="location"/> is not a defined value, or there is no such hole.</exception>
    public CoverFit Fit(BoltPattern cover, ScrewClearance clearance, CoverLocation location = CoverLocation.Centered, int? firstHoleOn = null) =>
        new(
            this,
            Guard.NotNull(cover),
            Guard.NotNull(clearance),
            Guard.Defined(location),
            firstHoleOn is int hole ? Guard.InRange(hole, 1, HoleCount, "(number of a hole)", nameof(firstHoleOn)) : null);

    /// <summary>The order in which the screws are tightened: each one as far across from the one before as can be.</summary>
    /// <returns>Numbers of holes, counted from 1. Common practice, no source.</returns>
    public IReadOnlyList<int> CrosswiseOrder()
    {
        List<int> left = [.. Enumerable.Range(1, HoleCount - 1)];
        List<int> order = [1];
        int at = 0;
        while (left.Count > 0)
        {
            int next = left.OrderByDescending(hole => Math.Round(Math.Abs(BoltPatternMath.Wrapped(AnglesRad[hole] - AnglesRad[at])), 9)).First();
            left.Remove(next);
            order.Add(next + 1);
            at = next;
        }

        return order.AsReadOnly();
    }

    /// <summary>Number of holes and radius.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{HoleCount} holes on a radius of {RadiusMm:0.##} mm");

    /// <summary>What is wrong with angles that are each within range, or null.</summary>
    internal static string? Fault(double radiusMm, double[] anglesDegrees)
    {
        if (anglesDegrees.Length is < 2 or > MostHoles)
        {
            return FormattableString.Invariant($"{anglesDegrees.Length} angles; expected 2 to {MostHoles}.");
        }

        for (int i = 0; i < anglesDegrees.Length; i++)
        {
            bool isLast = i + 1 == anglesDegrees.Length;
            double next = isLast ? anglesDegrees[0] + 360 : anglesDegrees[i + 1];
            double gap = next - anglesDegrees[i];
            string second = FormattableString.Invariant($"hole {(isLast ? 1 : i + 2)}");
            if (gap < 0)
            {
                return FormattableString.Invariant($"Holes {i + 1} and {second} are not in order counter-clockwise: {anglesDegrees[i]} and {next} degrees.");
            }

            double apart = BoltPatternMath.DistanceMm(radiusMm, radiusMm, gap * Degree);
            if (apart < NearestMm)
            {
                return FormattableString.Invariant($"Hole {i + 1} and {second} are at one place, {apart:0.###} mm apart; expected at least {NearestMm} mm.");
            }
        }

        return null;
    }

    /// <summary>The same holes seen from the other side, ascending again.</summary>
    internal static double[] Mirrored(double[] anglesRad) => [.. Enumerable.Reverse(anglesRad).Select(angle => -angle)];

    private static double CheckedRadius(Length radius) =>
        Guard.InRange(Guard.Positive(Canonical.Millimeters(radius), "mm", "boltCircleRadius"), 0, LargestRadiusMm, "mm", "boltCircleRadius");

    private static double[] Gaps(double[] rad)
    {
        double[] gaps = new double[rad.Length];
        for (int i = 0; i < gaps.Length; i++)
        {
            gaps[i] = ((i + 1 < rad.Length ? rad[i + 1] : rad[0] + BoltPatternMath.Turn) - rad[i]) / Degree;
        }

        return gaps;
    }
}
