using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Parts;

/// <summary>How much of a torque friction takes: K in torque = K × clamp force × diameter.</summary>
/// <remarks>Even with K known, the clamp force at one torque scatters by 25 to 30 %. Dry stainless threads can reach 0.3 and gall (from memory).</remarks>
public sealed class NutFactor
{
    private const double Least = 0.05;
    private const double Most = 0.6;

    private NutFactor(string name, double ratio, Citation citation) => (Name, Ratio, Citation) = (name, ratio, citation);

    /// <summary>Steel as received, clean and not oiled: 0.20.</summary>
    public static NutFactor AsReceived { get; } = new("as received", 0.20, PartsSources.NutFactors);

    /// <summary>Oiled: 0.15.</summary>
    public static NutFactor Oiled { get; } = new("oiled", 0.15, PartsSources.NutFactors);

    /// <summary>Waxed: 0.13 or less.</summary>
    public static NutFactor Waxed { get; } = new("waxed", 0.13, PartsSources.NutFactors);

    /// <summary>The state of the threads.</summary>
    public string Name { get; }

    /// <summary>K.</summary>
    public double Ratio { get; }

    /// <summary>Where it comes from.</summary>
    public Citation Citation { get; }

    /// <summary>A factor that a maker states or that was measured.</summary>
    /// <param name="ratio">K, from 0.05 to 0.6 (ratio).</param>
    /// <returns>The factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="ratio"/> is outside its range.</exception>
    public static NutFactor Given(double ratio) => new("given", Guard.InRange(ratio, Least, Most, "(ratio)"), Citation.GivenByCaller);

    /// <summary>The factor that one coefficient of friction in the thread and under the head amounts to.</summary>
    /// <remarks>K = (P/2π + μ·d2/(2·cos 30°) + μ·Dm/2) / d.</remarks>
    /// <param name="thread">The thread.</param>
    /// <param name="frictionRatio">Coefficient of friction, from 0 to 0.6 (ratio).</param>
    /// <param name="headMeanDiameter">Mean diameter of the face under the head; in mm, from the thread's diameter to three times that.</param>
    /// <returns>The factor.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static NutFactor FromFriction(MetricThread thread, double frictionRatio, Length headMeanDiameter)
    {
        double d = Guard.NotNull(thread).DiameterMm;
        double mu = Guard.InRange(frictionRatio, 0, Most, "(ratio)");
        double head = Guard.InRange(Canonical.Millimeters(headMeanDiameter), d, 3 * d, "mm", nameof(headMeanDiameter));
        return new(
            FormattableString.Invariant($"friction {mu}"), TorqueMath.NutFactor(d, thread.PitchMm, mu, mu, head), PartsSources.LongFormula);
    }

    /// <summary>State and factor.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{Name}, K {Ratio:0.###}");
}
