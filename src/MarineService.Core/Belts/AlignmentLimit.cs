using MarineService.Core.Internal;

namespace MarineService.Core.Belts;

/// <summary>How far a belt may run askew into a grooved pulley, with the source that says so.</summary>
/// <remarks>Each source states one figure that counts here; the rounded twin that some of them print beside it is not tested as well.</remarks>
public sealed class AlignmentLimit
{
    private const double Radian = Math.PI / 180;

    private AlignmentLimit(string name, double ratio, Citation citation) => (Name, OffsetRatio, Citation) = (name, ratio, citation);

    /// <summary>Ribbed belts on engines: 0.58 mm aside for each 100 mm of span.</summary>
    public static AlignmentLimit EngineDrives { get; } =
        new("ribbed belts on engines", 0.0058, Citation.Secondary("SAE J1596", "cancelled 2019", "alignment"));

    /// <summary>Guideline against chirping: 0.33 degrees of entry angle into each grooved pulley; high friction may chirp below it.</summary>
    public static AlignmentLimit Chirp { get; } =
        new("against chirping", Math.Tan(0.33 * Radian), Citation.Published("SAE 1999-01-1709", "1999", "abstract"));

    /// <summary>Ribbed belts in industry: a quarter of a degree.</summary>
    public static AlignmentLimit Industrial { get; } =
        new("ribbed belts in industry", Math.Tan(0.25 * Radian), Citation.PracticeDescribedIn("a belt maker's checklist"));

    /// <summary>Classical V-belts: half a degree.</summary>
    public static AlignmentLimit ClassicalVBelts { get; } =
        new("classical V-belts", Math.Tan(0.5 * Radian), Citation.PracticeDescribedIn("a belt maker's checklist and an alignment tool's table"));

    /// <summary>What the limit is for.</summary>
    public string Name { get; }

    /// <summary>Millimetres aside for each millimetre along: the tangent of the angle.</summary>
    public double OffsetRatio { get; }

    /// <summary>The angle [degrees].</summary>
    public double AngleDegrees => Math.Atan(OffsetRatio) / Radian;

    /// <summary>Where it comes from.</summary>
    public Citation Citation { get; }

    /// <summary>A limit that the engine's manual gives.</summary>
    /// <param name="offsetRatio">Millimetres aside for each millimetre along; above 0 and up to 0.2.</param>
    /// <returns>The limit.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="offsetRatio"/> is outside its range.</exception>
    public static AlignmentLimit Given(double offsetRatio) => new(
        "given",
        Guard.InRange(Guard.Positive(offsetRatio, "(ratio)"), 0, Pulley.SteepestLeanRatio, "(ratio)", nameof(offsetRatio)),
        Citation.GivenByCaller);

    /// <summary>Name and angle.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{Name}: {AngleDegrees:0.00} degrees");
}
