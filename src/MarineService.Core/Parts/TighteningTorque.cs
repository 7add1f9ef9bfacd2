using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Parts;

/// <summary>A torque worked out from thread, property class, friction and the wanted share of the proof load.</summary>
/// <remarks>
/// For a steel screw in steel against a hard face only. The engine maker's figure always goes before it. Torque = K × F × d with
/// F = share × proof stress × stress area.
/// </remarks>
/// <example><code>TighteningTorque.Of(MetricThread.M8, PropertyClass.Class88, NutFactor.AsReceived);   // 25.5 N·m</code></example>
public sealed class TighteningTorque
{
    private readonly double _newtonMeters;
    private readonly double _clampNewtons;
    private readonly double _proofNewtons;

    private TighteningTorque(MetricThread thread, PropertyClass propertyClass, NutFactor nutFactor, double share, double scatter)
    {
        (Thread, PropertyClass, NutFactor, ProofFraction, ScatterFraction) = (thread, propertyClass, nutFactor, share, scatter);
        _proofNewtons = propertyClass.ProofNewtons(thread);
        _clampNewtons = share * _proofNewtons;
        _newtonMeters = TorqueMath.TorqueNewtonMeters(nutFactor.Ratio, _clampNewtons, thread.DiameterMm);
        Findings = HighestClampNewtons > _proofNewtons
            ? Array.AsReadOnly<Finding>(
            [
                TighteningRules.MayPassProof.On(
                    $"screw {thread} {propertyClass}",
                    Figure.Of("highest", HighestClampNewtons, FigureUnit.Newton),
                    Figure.Of("proof load", _proofNewtons, FigureUnit.Newton),
                    Figure.Of("scatter", scatter, FigureUnit.Fraction)),
            ])
            : [];
    }

    /// <summary>The thread.</summary>
    public MetricThread Thread { get; }

    /// <summary>The strength of the screw.</summary>
    public PropertyClass PropertyClass { get; }

    /// <summary>The friction that was counted on.</summary>
    public NutFactor NutFactor { get; }

    /// <summary>The wanted share of the proof load.</summary>
    public double ProofFraction { get; }

    /// <summary>How far the clamp force may lie to either side of what is wanted.</summary>
    public double ScatterFraction { get; }

    /// <summary>The torque.</summary>
    public Torque Torque => Torque.FromNewtonMeters(_newtonMeters);

    /// <summary>The clamp force that is wanted.</summary>
    public Force ClampForce => Force.FromNewtons(_clampNewtons);

    /// <summary>The least clamp force that the torque may really give.</summary>
    public Force LeastClampForce => Force.FromNewtons(_clampNewtons * (1 - ScatterFraction));

    /// <summary>The highest clamp force that the torque may really give.</summary>
    public Force HighestClampForce => Force.FromNewtons(HighestClampNewtons);

    /// <summary>What was found: that the scatter may pass the proof load.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    private double HighestClampNewtons => _clampNewtons * (1 + ScatterFraction);

    /// <summary>Works out a torque.</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="propertyClass">The mark on the screw's head.</param>
    /// <param name="nutFactor">The state of the threads.</param>
    /// <param name="proofFraction">The wanted share of the proof load, from 0.1 to 1 (fraction); 0.75 for joints that are taken apart again.</param>
    /// <param name="scatterFraction">How far the clamp force may lie off, from 0 to 0.6 (fraction); published figures say 0.25 to 0.30.</param>
    /// <returns>The torque with what it rests on.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A fraction is outside its range.</exception>
    public static TighteningTorque Of(
        MetricThread thread, PropertyClass propertyClass, NutFactor nutFactor, double proofFraction = 0.75, double scatterFraction = 0.30) =>
        new(
            Guard.NotNull(thread),
            Guard.NotNull(propertyClass),
            Guard.NotNull(nutFactor),
            Guard.InRange(proofFraction, 0.1, 1, "(fraction)"),
            Guard.InRange(scatterFraction, 0, 0.6, "(fraction)"));

    /// <summary>The clamp force when the same torque goes on threads in another state.</summary>
    /// <param name="actual">The state that the threads are really in.</param>
    /// <returns>The clamp force.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="actual"/> is null.</exception>
    public Force ClampForceWith(NutFactor actual) =>
        Force.FromNewtons(TorqueMath.ClampNewtons(Guard.NotNull(actual).Ratio, _newtonMeters, Thread.DiameterMm));

    /// <summary>The share of the proof load when the same torque goes on threads in another state.</summary>
    /// <param name="actual">The state that the threads are really in.</param>
    /// <returns>A fraction; above 1 the screw is beyond its proof load.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="actual"/> is null.</exception>
    public double ActualProofFraction(NutFactor actual) => Canonical.Newtons(ClampForceWith(actual)) / _proofNewtons;

    /// <summary>Torque, clamp force with its scatter, and every figure behind them.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new($"{FigureUnit.NewtonMeter.Write(_newtonMeters, units)} for {Thread} {PropertyClass}, {NutFactor}.");
        lines.Add("clamp force", $"{FigureUnit.Newton.Write(_clampNewtons, units)}, "
            + $"{FigureUnit.Newton.Write(_clampNewtons * (1 - ScatterFraction), units)} to {FigureUnit.Newton.Write(HighestClampNewtons, units)} with scatter");
        lines.Add("proof load", $"{FigureUnit.Newton.Write(_proofNewtons, units)}, {FigureUnit.Fraction.Write(ProofFraction, units)} of it wanted");
        lines.Add("stress area", FormattableString.Invariant($"{Thread.StressAreaSquareMm:0.00} mm²"));
        foreach (Finding finding in Findings)
        {
            lines.Add(finding.Code, $"{finding.Severity}: {finding.Message(units)}");
        }

        lines.Add("before it", "the engine maker's figure, wherever there is one");
        return lines.Build(PartsSources.StressArea, PropertyClass.Citation, NutFactor.Citation);
    }

    /// <summary>The answer in one line.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Explain(DisplayUnits.Metric).Answer;
}
