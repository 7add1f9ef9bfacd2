using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Belts;

/// <summary>The pull in a standing span as it was measured: by its sound, or by pressing it.</summary>
/// <remarks>
/// <para>By sound: T = 4 m L² f², the stretched string of physics texts. One per cent in frequency or span is two per cent in pull.
/// Stiffness raises the note of short spans, so take the longest.</para>
/// <para>By pressing at the middle: the two halves balance the force, worked out from statics; the belt's own stretch is left out.</para>
/// <para>The engine stands, the key is out: hands are at the belt.</para>
/// </remarks>
public sealed class SpanTensionReading
{
    private readonly double _newtons;
    private readonly double? _sigmaNewtons;

    private SpanTensionReading(double newtons, double? sigmaNewtons) => (_newtons, _sigmaNewtons) = (newtons, sigmaNewtons);

    /// <summary>The pull of the standing belt.</summary>
    public Force Pull => Force.FromNewtons(_newtons);

    /// <summary>One standard deviation of the pull, from the spread of the readings; not known for a single reading.</summary>
    public Answer<Force> StandardUncertainty => _sigmaNewtons is double sigma
        ? Answer.Known(Force.FromNewtons(sigma))
        : Answer.NotKnown<Force>("Several readings of the same span.");

    /// <summary>From the note of a plucked span, as a phone's microphone hears it.</summary>
    /// <param name="span">The free span, tangent point to tangent point; above 0 and up to 10,000 mm.</param>
    /// <param name="massPerMeter">Mass of a metre of the whole belt; above 0 and up to 10 kg/m.</param>
    /// <param name="readings">One or more readings of the lowest note; above 0 and up to 5,000 Hz each. The median counts.</param>
    /// <returns>The pull.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="readings"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="readings"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside its range.</exception>
    public static SpanTensionReading FromNote(Length span, LinearDensity massPerMeter, params Frequency[] readings)
    {
        double meters = SpanMm(span) / 1000;
        double mass = Guard.InRange(
            Guard.Positive(Canonical.KilogramsPerMeter(massPerMeter), "kg/m", nameof(massPerMeter)), 0, 10, "kg/m", nameof(massPerMeter));
        if (Guard.NotNull(readings).Length == 0)
        {
            throw new ArgumentException("Must hold at least one reading.", nameof(readings));
        }

        double[] hertz = new double[readings.Length];
        for (int i = 0; i < hertz.Length; i++)
        {
            hertz[i] = Guard.InRange(Guard.Positive(Canonical.Hertz(readings[i]), "Hz", nameof(readings)), 0, 5000, "Hz", nameof(readings));
        }

        Array.Sort(hertz);
        int middle = hertz.Length / 2;
        double median = hertz.Length % 2 == 1 ? hertz[middle] : (hertz[middle - 1] + hertz[middle]) / 2;
        double newtons = TensionMath.TensionNewtons(median, mass, meters);
        return new(newtons, hertz.Length < 2 ? null : 2 * newtons * Spread(hertz) / median);
    }

    /// <summary>From a force pressed square on the middle of the span, and how far the span gave way.</summary>
    /// <param name="span">The free span; above 0 and up to 10,000 mm.</param>
    /// <param name="force">The force; above 0 and up to 2,000 N.</param>
    /// <param name="deflection">How far the middle moved; above 0 and up to a quarter of the span.</param>
    /// <returns>The pull.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside its range.</exception>
    public static SpanTensionReading FromDeflection(Length span, Force force, Length deflection)
    {
        double spanMm = SpanMm(span);
        double newtons = Guard.InRange(Guard.Positive(Canonical.Newtons(force), "N", nameof(force)), 0, 2000, "N", nameof(force));
        double moved = Guard.InRange(
            Guard.Positive(Canonical.Millimeters(deflection), "mm", nameof(deflection)), 0, spanMm / 4, "mm", nameof(deflection));
        return new(TensionMath.TensionFromDeflectionNewtons(newtons, moved, spanMm), null);
    }

    /// <summary>Compares the measured pull with the least that a tension check asks for.</summary>
    /// <remarks>Within two standard uncertainties of it the verdict is at the limit. Project choice.</remarks>
    /// <param name="check">The tension check of the same drive.</param>
    /// <returns>What was found; empty when it is tight enough.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="check"/> is null.</exception>
    public IReadOnlyList<Finding> CompareWith(TensionCheck check)
    {
        double least = Canonical.Newtons(Guard.NotNull(check).LeastPull);
        double doubt = 2 * (_sigmaNewtons ?? 0);
        Figure measured = Figure.Of("measured", _newtons, FigureUnit.Newton);
        return Math.Abs(_newtons - least) < doubt
            ? [TensionRules.AtLeast.On("belt", measured, Figure.Of("uncertainty", doubt, FigureUnit.Newton), Figure.Of("least", least, FigureUnit.Newton))]
            : _newtons < least ? [TensionRules.BelowLeast.On("belt", measured, Figure.Of("least", least, FigureUnit.Newton))]
            : [];
    }

    /// <summary>The pull, with its uncertainty when known.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FigureUnit.Newton.Write(_newtons, DisplayUnits.Metric)
        + (_sigmaNewtons is double sigma ? $" ± {FigureUnit.Newton.Write(sigma, DisplayUnits.Metric)}" : string.Empty);

    private static double SpanMm(Length span) =>
        Guard.InRange(Guard.Positive(Canonical.Millimeters(span), "mm", nameof(span)), 0, 10_000, "mm", nameof(span));

    /// <summary>One standard deviation of the readings themselves: what a further single reading would scatter by.</summary>
    private static double Spread(double[] values)
    {
        double mean = values.Average();
        return Math.Sqrt(values.Sum(value => (value - mean) * (value - mean)) / (values.Length - 1));
    }
}
