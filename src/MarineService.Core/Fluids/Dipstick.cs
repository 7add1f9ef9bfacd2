using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Fluids;

/// <summary>A dipstick: how much oil lies between its marks, and how it wants to be read.</summary>
/// <remarks>By default it is read with cold oil (15 °C), seated, with the boat afloat.</remarks>
public sealed class Dipstick
{
    /// <summary>One standard deviation of a maker's range figure, as a share of it: project choice.</summary>
    internal const double DefaultRangeSigma = 0.05;

    internal const double ColdCelsius = 15;

    private const double MinCalibrationSpan = 0.3;

    private readonly Terms _terms;

    private Dipstick(Terms terms) => _terms = terms;

    /// <summary>Oil between the add and the full mark, as poured at 15 °C.</summary>
    public Volume RangeVolume => Volume.FromLiters(RangeLiters);

    /// <summary>Standard uncertainty of <see cref="RangeVolume"/>.</summary>
    public Volume RangeStandardUncertainty => Volume.FromLiters(RangeSigmaLiters);

    /// <summary>The oil temperature at which the marks are true.</summary>
    public Temperature OilTemperature => Temperature.FromDegreesCelsius(ReferenceCelsius);

    /// <summary>How the stick must sit when it is read.</summary>
    public StickSeating Seating => _terms.Seating;

    /// <summary>How the boat must lie when it is read.</summary>
    public BoatAttitude Attitude => _terms.Attitude;

    /// <summary>The sump's shape, or null when it is not known.</summary>
    public SumpShape? Shape => _terms.Shape;

    /// <summary>Height of the add mark along the stick from the floor, or null when the range was given as a volume.</summary>
    public Length? AddMark => AddMarkMm is double mm ? Length.FromMillimeters(mm) : null;

    /// <summary>Height of the full mark along the stick from the floor, or null when the range was given as a volume.</summary>
    public Length? FullMark => FullMarkMm is double mm ? Length.FromMillimeters(mm) : null;

    /// <summary>Where the range comes from.</summary>
    public Citation Source => _terms.Source;

    internal double RangeLiters => _terms.RangeLiters;

    internal double RangeSigmaLiters => _terms.RangeSigmaLiters;

    internal double ReferenceCelsius => _terms.ReferenceCelsius;

    internal double? AddMarkMm => _terms.AddMarkMm;

    internal double? FullMarkMm => _terms.FullMarkMm;

    /// <summary>A dipstick by the volume between its marks.</summary>
    /// <param name="range">Above 0, at most 1,000 L.</param>
    /// <param name="standardUncertainty">From 0 to 1,000 L; null for 5 % of the range (project choice).</param>
    /// <returns>The dipstick.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A volume is outside its range.</exception>
    public static Dipstick WithRange(Volume range, Volume? standardUncertainty = null)
    {
        double liters = Guard.Positive(Canonical.Liters(range), "L", nameof(range));
        Guard.InRange(liters, 0, 1000, "L", nameof(range));
        double sigma = standardUncertainty is Volume u
            ? Guard.InRange(Canonical.Liters(u), 0, 1000, "L", nameof(standardUncertainty))
            : DefaultRangeSigma * liters;
        return new(new Terms(liters, sigma, Citation.GivenByCaller));
    }

    /// <summary>A dipstick by the places of its marks and the sump's area.</summary>
    /// <remarks>Marks the wrong way round are not refused here; <see cref="Sump.Validate"/> reports them.</remarks>
    /// <param name="addMark">Height of the add mark along the stick, 0 to 5 m from the floor.</param>
    /// <param name="fullMark">Height of the full mark along the stick, 0 to 5 m from the floor.</param>
    /// <param name="shape">The sump.</param>
    /// <returns>The dipstick.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="shape"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A height is outside its range.</exception>
    public static Dipstick FromMarks(Length addMark, Length fullMark, SumpShape shape)
    {
        Guard.NotNull(shape);
        double add = Guard.InRange(Canonical.Millimeters(addMark), 0, 5000, "mm", nameof(addMark));
        double full = Guard.InRange(Canonical.Millimeters(fullMark), 0, 5000, "mm", nameof(fullMark));
        double liters = Math.Abs(shape.LitersAlongStick(full - add));
        return new(new Terms(liters, DefaultRangeSigma * liters, SumpShape.Source, Shape: shape, AddMarkMm: add, FullMarkMm: full));
    }

    /// <summary>The same dipstick, its marks true for hot oil.</summary>
    /// <param name="oilTemperature">From 40 to 150 °C; what the manual says, often about 80 °C.</param>
    /// <returns>A new dipstick.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="oilTemperature"/> is outside its range.</exception>
    public Dipstick MarkedForHotOil(Temperature oilTemperature) =>
        new(_terms with { ReferenceCelsius = Guard.InRange(Canonical.Celsius(oilTemperature), 40, 150, "°C", nameof(oilTemperature)) });

    /// <summary>The same dipstick with how it must sit.</summary>
    /// <param name="seating">How.</param>
    /// <returns>A new dipstick.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="seating"/> is not defined.</exception>
    public Dipstick Read(StickSeating seating) => new(_terms with { Seating = Guard.Defined(seating) });

    /// <summary>The same dipstick with how the boat must lie.</summary>
    /// <param name="attitude">How.</param>
    /// <returns>A new dipstick.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="attitude"/> is not defined.</exception>
    public Dipstick Read(BoatAttitude attitude) => new(_terms with { Attitude = Guard.Defined(attitude) });

    /// <summary>The same dipstick in a sump of known shape, so that a tilt can be corrected.</summary>
    /// <param name="shape">The sump.</param>
    /// <returns>A new dipstick with the same range volume.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="shape"/> is null.</exception>
    public Dipstick InSump(SumpShape shape) => new(_terms with { Shape = Guard.NotNull(shape) });

    /// <summary>The same dipstick with the heights of its marks, so that heights can be read on it.</summary>
    /// <remarks>Marks the wrong way round are not refused here; <see cref="Sump.Validate"/> reports them.</remarks>
    /// <param name="addMark">Height of the add mark along the stick, 0 to 5 m from the floor.</param>
    /// <param name="fullMark">Height of the full mark along the stick, 0 to 5 m from the floor.</param>
    /// <returns>A new dipstick with the same range volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A height is outside its range.</exception>
    public Dipstick WithMarks(Length addMark, Length fullMark) =>
        new(_terms with
        {
            AddMarkMm = Guard.InRange(Canonical.Millimeters(addMark), 0, 5000, "mm", nameof(addMark)),
            FullMarkMm = Guard.InRange(Canonical.Millimeters(fullMark), 0, 5000, "mm", nameof(fullMark)),
        });

    /// <summary>A reading from a height on the stick.</summary>
    /// <param name="height">Along the stick from the floor, 0 to 5 m.</param>
    /// <param name="standardUncertainty">One standard deviation, 0 to 100 mm; null for 1 mm (project choice).</param>
    /// <returns>The reading, or not known when the places of the marks are not, or when they are reversed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public Answer<DipstickReading> ReadAt(Length height, Length? standardUncertainty = null)
    {
        double mm = Guard.InRange(Canonical.Millimeters(height), 0, 5000, "mm", nameof(height));
        double sigma = standardUncertainty is Length u ? Guard.InRange(Canonical.Millimeters(u), 0, 100, "mm", nameof(standardUncertainty)) : 1;
        if (AddMarkMm is not double add || FullMarkMm is not double full)
        {
            return Answer.NotKnown<DipstickReading>("The heights of the add and the full mark on the stick.");
        }

        double span = full - add;
        double place = span > 0 ? (mm - add) / span : double.NaN;
        return place is >= -5 and <= 10
            ? Answer.Known(DipstickReading.OfRange(place, Math.Min(2, sigma / span)))
            : Answer.NotKnown<DipstickReading>("Marks the right way round and within reach of the reading.");
    }

    /// <summary>The same dipstick with its range measured by a fill: how far a known amount moved the level.</summary>
    /// <remarks>
    /// The measured range is weighed against the one held so far by their uncertainties, so a rough fill cannot spoil a good
    /// figure. Both readings must be settled and taken in the same way.
    /// </remarks>
    /// <param name="poured">What was poured between the readings, with temperature and standard uncertainty if taken.</param>
    /// <param name="before">The reading before.</param>
    /// <param name="after">The reading after.</param>
    /// <param name="oil">The oil; null for <see cref="OilDensity.Typical"/>.</param>
    /// <returns>A new dipstick, or not known when the level rose by less than 0.3 of the range.</returns>
    /// <exception cref="ArgumentNullException">An argument other than <paramref name="oil"/> is null.</exception>
    public Answer<Dipstick> CalibratedBy(MeasuredVolume poured, DipstickReading before, DipstickReading after, OilDensity? oil = null)
    {
        Guard.NotNull(poured);
        double span = Guard.NotNull(after).RangeFraction - Guard.NotNull(before).RangeFraction;
        if (span < MinCalibrationSpan)
        {
            return Answer.NotKnown<Dipstick>("Two settled readings at least 0.3 of the range apart.");
        }

        BaseVolume fill = BaseVolume.Of(poured, oil ?? OilDensity.Typical, OilChangeLimits.Default, OilChangeLimits.Default.PourAssumption);
        if (!fill.IsCovered || fill.Liters <= 0)
        {
            return Answer.NotKnown<Dipstick>("A fill above 0 L measured between -50 and 150 °C.");
        }

        double range = fill.Liters / span;
        double readings = FluidMath.RootSumSquare(before.SigmaFraction, after.SigmaFraction) * range;
        double variance = (fill.Variance + readings * readings) / (span * span);
        double held = RangeSigmaLiters * RangeSigmaLiters;
        double weight = held + variance > 0 ? held / (held + variance) : 0;
        return Answer.Known(new Dipstick(_terms with
        {
            RangeLiters = RangeLiters + weight * (range - RangeLiters),
            RangeSigmaLiters = Math.Sqrt(weight * variance),
            Source = Citation.GivenByCaller,
        }));
    }

    /// <summary>Range and manner of reading, metric and invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{FigureUnit.Liter.Write(RangeLiters, DisplayUnits.Metric)} between the marks, oil at {FigureUnit.DegreeCelsius.Write(ReferenceCelsius, DisplayUnits.Metric)}, {Seating}, {Attitude}";

    private readonly record struct Terms(
        double RangeLiters,
        double RangeSigmaLiters,
        Citation Source,
        double ReferenceCelsius = ColdCelsius,
        StickSeating Seating = StickSeating.Seated,
        BoatAttitude Attitude = BoatAttitude.Afloat,
        SumpShape? Shape = null,
        double? AddMarkMm = null,
        double? FullMarkMm = null);
}
