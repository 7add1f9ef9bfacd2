using MarineService.Core.Internal;

namespace MarineService.Core.Belts;

/// <summary>What is read at one pulley with a straightedge held against the face of a reference pulley.</summary>
/// <remarks>
/// The gap is the distance from the straightedge back to the pulley's face: positive when the face stands back towards the engine,
/// negative when it stands proud. Two gaps, at the near rim and at the far rim, show a lean as well.
/// </remarks>
public sealed class StraightedgeReading
{
    internal const double WidestGapMm = 200;

    private StraightedgeReading(string pulleyName, double nearGapMm, double farGapMm, double faceToMiddleMm) =>
        (PulleyName, NearGapMm, FarGapMm, FaceToMiddleMm) = (pulleyName, nearGapMm, farGapMm, faceToMiddleMm);

    /// <summary>The pulley at which the gap was read.</summary>
    public string PulleyName { get; }

    /// <summary>The gap at the rim nearer to the reference pulley [mm].</summary>
    public double NearGapMm { get; }

    /// <summary>The gap at the rim farther from the reference pulley [mm].</summary>
    public double FarGapMm { get; }

    /// <summary>From the face of the pulley back to the middle of its rim [mm].</summary>
    public double FaceToMiddleMm { get; }

    /// <summary>One gap: the pulley is taken to stand square.</summary>
    /// <param name="pulleyName">The pulley's name.</param>
    /// <param name="gapMm">The gap; from -200 to 200 mm.</param>
    /// <param name="faceToMiddleMm">From face to the middle of the rim; from 0 to 300 mm.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="pulleyName"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="pulleyName"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static StraightedgeReading Of(string pulleyName, double gapMm, double faceToMiddleMm) =>
        new(Guard.NotBlank(pulleyName), Gap(gapMm, nameof(gapMm)), gapMm, Face(faceToMiddleMm));

    /// <summary>Two gaps, at the near and the far rim: their difference is the lean along the straightedge.</summary>
    /// <param name="pulleyName">The pulley's name.</param>
    /// <param name="nearGapMm">The gap at the near rim; from -200 to 200 mm.</param>
    /// <param name="farGapMm">The gap at the far rim; from -200 to 200 mm.</param>
    /// <param name="faceToMiddleMm">From face to the middle of the rim; from 0 to 300 mm.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="pulleyName"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="pulleyName"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static StraightedgeReading AtBothRims(string pulleyName, double nearGapMm, double farGapMm, double faceToMiddleMm) =>
        new(Guard.NotBlank(pulleyName), Gap(nearGapMm, nameof(nearGapMm)), Gap(farGapMm, nameof(farGapMm)), Face(faceToMiddleMm));

    /// <summary>The pulley and its gaps.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"'{PulleyName}': {NearGapMm:0.0#} mm near, {FarGapMm:0.0#} mm far");

    private static double Gap(double mm, string name) => Guard.InRange(mm, -WidestGapMm, WidestGapMm, "mm", name);

    private static double Face(double faceToMiddleMm) => Guard.InRange(faceToMiddleMm, 0, Pulley.WidestMm, "mm");
}
