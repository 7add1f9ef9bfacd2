using System.Globalization;
using MarineService.Core.Internal;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace MarineService.Core.Fluids;

/// <summary>What the dipstick showed, and how it was read.</summary>
/// <remarks>
/// The place is a share of the range between the marks: 0 is the add mark, 1 the full mark, more than 1 is above full and
/// less than 0 below add. What is not said (settling time, oil temperature, seating, attitude) is taken to be as the stick wants it.
/// </remarks>
public sealed class DipstickReading
{
    /// <summary>One standard deviation of a careful reading, as a share of the range: project choice, about 1 mm on a 20 mm range.</summary>
    internal const double DefaultSigma = 0.05;

    private readonly Terms _terms;

    private DipstickReading(Terms terms) => _terms = terms;

    /// <summary>Where the oil stood: 0 at the add mark, 1 at the full mark.</summary>
    public double RangeFraction => _terms.Range;

    /// <summary>Standard uncertainty of <see cref="RangeFraction"/>.</summary>
    public double StandardUncertaintyFraction => _terms.Sigma;

    /// <summary>The oil's temperature, or null when it was not taken.</summary>
    public Temperature? OilTemperature => Celsius is double celsius ? Temperature.FromDegreesCelsius(celsius) : null;

    /// <summary>How long the engine had stood since it stopped or since the last pour, or null when it was not timed.</summary>
    public Duration? Settled => SettledMinutes is double minutes ? Duration.FromMinutes(minutes) : null;

    /// <summary>How the stick sat, or null when it was not said.</summary>
    public StickSeating? Seating => _terms.Seating;

    /// <summary>How the boat lay, or null when it was not said.</summary>
    public BoatAttitude? Attitude => _terms.Attitude;

    /// <summary>Stern down against the attitude of the marks.</summary>
    public Angle Pitch => Angle.FromRadians(PitchRad);

    /// <summary>Starboard down against the attitude of the marks.</summary>
    public Angle Roll => Angle.FromRadians(RollRad);

    internal double SigmaFraction => _terms.Sigma;

    internal double? Celsius => _terms.Celsius;

    internal double? SettledMinutes => _terms.SettledMinutes;

    internal double PitchRad => _terms.PitchRad;

    internal double RollRad => _terms.RollRad;

    internal bool IsTilted => PitchRad != 0 || RollRad != 0;

    /// <summary>A reading by its place between the marks.</summary>
    /// <param name="rangeFraction">From -5 to 10; 0 is the add mark, 1 the full mark.</param>
    /// <param name="standardUncertaintyFraction">One standard deviation as a share of the range, 0 to 2; by default 0.05 (project choice).</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <example><code>DipstickReading.OfRange(0.6).WithOilAt(Temperature.FromDegreesCelsius(15));</code></example>
    public static DipstickReading OfRange(double rangeFraction, double standardUncertaintyFraction = DefaultSigma) =>
        new(new Terms(
            Guard.InRange(rangeFraction, -5, 10, "of the range"),
            Guard.InRange(standardUncertaintyFraction, 0, 2, "of the range")));

    /// <summary>The same reading with the oil's temperature, so that hot and cold readings can be compared.</summary>
    /// <param name="temperature">From -60 to 200 °C.</param>
    /// <returns>A new reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="temperature"/> is outside its range.</exception>
    public DipstickReading WithOilAt(Temperature temperature) =>
        new(_terms with { Celsius = Guard.InRange(Canonical.Celsius(temperature), -60, 200, "°C", nameof(temperature)) });

    /// <summary>The same reading with the time that the oil had to run down.</summary>
    /// <param name="settled">From 0 to 1000 days.</param>
    /// <returns>A new reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="settled"/> is outside its range.</exception>
    public DipstickReading SettledFor(Duration settled) =>
        new(_terms with { SettledMinutes = Guard.InRange(settled.TotalMinutes, 0, 1_440_000, "min", nameof(settled)) });

    /// <summary>The same reading with how the stick sat.</summary>
    /// <param name="seating">How.</param>
    /// <returns>A new reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="seating"/> is not defined.</exception>
    public DipstickReading With(StickSeating seating) => new(_terms with { Seating = Guard.Defined(seating) });

    /// <summary>The same reading with how the boat lay.</summary>
    /// <param name="attitude">How.</param>
    /// <returns>A new reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="attitude"/> is not defined.</exception>
    public DipstickReading With(BoatAttitude attitude) => new(_terms with { Attitude = Guard.Defined(attitude) });

    /// <summary>The same reading with a tilt against the attitude in which the marks are true.</summary>
    /// <param name="pitch">Stern down positive; from -45 to 45°.</param>
    /// <param name="roll">Starboard down positive; from -45 to 45°.</param>
    /// <returns>A new reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An angle is outside its range.</exception>
    public DipstickReading Tilted(Angle pitch, Angle roll)
    {
        // 45° by way of degrees may end a bit of a binary fraction beyond a quarter of π.
        const double Limit = Math.PI / 4 + 1e-12;
        return new(_terms with
        {
            PitchRad = Guard.InRange(Canonical.Radians(pitch), -Limit, Limit, "rad", nameof(pitch)),
            RollRad = Guard.InRange(Canonical.Radians(roll), -Limit, Limit, "rad", nameof(roll)),
        });
    }

    /// <summary>The place on the stick, invariant: "60 % of the range".</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        (100 * RangeFraction).ToString("0", CultureInfo.InvariantCulture) + " % of the range";

    private readonly record struct Terms(
        double Range,
        double Sigma,
        double? Celsius = null,
        double? SettledMinutes = null,
        StickSeating? Seating = null,
        BoatAttitude? Attitude = null,
        double PitchRad = 0,
        double RollRad = 0);
}
