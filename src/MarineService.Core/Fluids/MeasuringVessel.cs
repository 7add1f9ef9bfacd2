using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Fluids;

/// <summary>What a volume was measured in, and so how sure the reading is.</summary>
/// <remarks>
/// u² = (share × volume)² + (graduation/√12)². The second part is the standard uncertainty of reading to the nearest
/// graduation (rectangular distribution, JCGM 100:2008, 4.3.7). The shares are common practice or project choice; make
/// your own vessel with <see cref="Of"/> when you know better.
/// </remarks>
public sealed class MeasuringVessel
{
    private readonly double _graduationLiters;

    private MeasuringVessel(string name, double relativeFraction, double graduationLiters) =>
        (Name, RelativeUncertaintyFraction, _graduationLiters) = (name, relativeFraction, graduationLiters);

    /// <summary>A plastic workshop jug, marked every 0.1 L: 1.5 % of the reading (common practice: 1 to 2 %).</summary>
    public static MeasuringVessel WorkshopJug { get; } = new("workshop jug", 0.015, 0.1);

    /// <summary>A glass or clear cylinder, marked every 10 mL: 0.5 % of the reading (project choice).</summary>
    public static MeasuringVessel MeasuringCylinder { get; } = new("measuring cylinder", 0.005, 0.01);

    /// <summary>A full, sealed container as sold: 0.5 % of its nominal content (project choice).</summary>
    public static MeasuringVessel SealedContainer { get; } = new("sealed container", 0.005, 0);

    /// <summary>Weighed on a kitchen or parcel scale and divided by the density: 0.7 % (project choice; mostly the density).</summary>
    public static MeasuringVessel Scale { get; } = new("scale", 0.007, 0.01);

    /// <summary>A drain pan or bucket, judged by eye: 8 % and half a litre (project choice).</summary>
    public static MeasuringVessel ByEye { get; } = new("judged by eye", 0.08, 0.5);

    /// <summary>What it is.</summary>
    public string Name { get; }

    /// <summary>Standard uncertainty as a share of the reading, 0 to 1.</summary>
    public double RelativeUncertaintyFraction { get; }

    /// <summary>The step between two marks; 0 L when it has none.</summary>
    public Volume Graduation => Volume.FromLiters(_graduationLiters);

    internal double GraduationVariance => _graduationLiters * _graduationLiters / 12;

    /// <summary>A vessel of your own.</summary>
    /// <param name="name">What it is; not blank.</param>
    /// <param name="relativeUncertaintyFraction">Standard uncertainty as a share of the reading, 0 to 0.5.</param>
    /// <param name="graduation">The step between two marks, 0 to 10 L.</param>
    /// <returns>The vessel.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static MeasuringVessel Of(string name, double relativeUncertaintyFraction, Volume graduation) =>
        new(
            Guard.NotBlank(name),
            Guard.InRange(relativeUncertaintyFraction, 0, 0.5, "of the reading"),
            Guard.InRange(Canonical.Liters(graduation), 0, 10, "L", nameof(graduation)));

    /// <summary>A reading with the uncertainty of this vessel.</summary>
    /// <param name="volume">From 0 to 10,000 L.</param>
    /// <param name="temperature">From -60 to 200 °C, or null when it was not taken.</param>
    /// <returns>The measured volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <example><code>MeasuringVessel.WorkshopJug.Read(Volume.FromLiters(5.5), Temperature.FromDegreesCelsius(70)); // 5.50 L ± 0.09 L at 70 °C</code></example>
    public MeasuredVolume Read(Volume volume, Temperature? temperature = null)
    {
        double liters = Guard.InRange(Canonical.Liters(volume), 0, 10_000, "L", nameof(volume));
        double sigma = Math.Sqrt(FluidMath.Square(RelativeUncertaintyFraction * liters) + GraduationVariance);
        return MeasuredVolume.Of(volume, temperature, Volume.FromLiters(sigma));
    }

    /// <summary>The name.</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() => Name;
}
