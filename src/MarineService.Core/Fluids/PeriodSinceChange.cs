using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Fluids;

/// <summary>What happened to the oil between the last change and this one: the level it was left at, top-ups, hours, power.</summary>
public sealed class PeriodSinceChange
{
    private readonly Terms _terms;

    private PeriodSinceChange(Terms terms) => _terms = terms;

    /// <summary>The settled reading that ended the last change.</summary>
    public DipstickReading LevelAfterLastChange => _terms.Level;

    /// <summary>What was topped up since, each amount as it was measured.</summary>
    public IReadOnlyList<MeasuredVolume> TopUps => _terms.TopUps;

    /// <summary>Hours run since, or null when they are not known.</summary>
    public EngineHours? Running => _terms.Hours;

    /// <summary>The mean power over those hours, or null when it is not known.</summary>
    public Power? MeanPower => _terms.MeanPowerKilowatts is double kilowatts ? Power.FromKilowatts(kilowatts) : null;

    /// <summary>What the engine used in each of the earlier periods, latest first, in litres per 100 h.</summary>
    public IReadOnlyList<double> EarlierLitersPer100Hours => _terms.Earlier;

    internal double? MeanPowerKilowatts => _terms.MeanPowerKilowatts;

    /// <summary>A period by the level that it began with.</summary>
    /// <param name="levelAfterLastChange">The settled reading that ended the last change.</param>
    /// <returns>The period, without top-ups.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="levelAfterLastChange"/> is null.</exception>
    public static PeriodSinceChange From(DipstickReading levelAfterLastChange) =>
        new(new Terms(Guard.NotNull(levelAfterLastChange), [], null, null, []));

    /// <summary>The same period with one more top-up.</summary>
    /// <param name="amount">What was poured.</param>
    /// <returns>A new period.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="amount"/> is null.</exception>
    public PeriodSinceChange ToppedUp(MeasuredVolume amount) =>
        new(_terms with { TopUps = Array.AsReadOnly<MeasuredVolume>([.. _terms.TopUps, Guard.NotNull(amount)]) });

    /// <summary>The same period with the hours run.</summary>
    /// <param name="hours">Above 0 h.</param>
    /// <returns>A new period.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="hours"/> is zero.</exception>
    public PeriodSinceChange RunFor(EngineHours hours) =>
        hours > EngineHours.Zero
            ? new(_terms with { Hours = hours })
            : throw new ArgumentOutOfRangeException(nameof(hours), hours, "Must be above 0 h.");

    /// <summary>The same period with the mean power.</summary>
    /// <param name="meanPower">Above 0, at most 100,000 kW.</param>
    /// <returns>A new period.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="meanPower"/> is outside its range.</exception>
    public PeriodSinceChange AtMeanPower(Power meanPower)
    {
        double kilowatts = Guard.Positive(Canonical.Kilowatts(meanPower), "kW", nameof(meanPower));
        return new(_terms with { MeanPowerKilowatts = Guard.InRange(kilowatts, 0, 100_000, "kW", nameof(meanPower)) });
    }

    /// <summary>The same period with what the engine used before, so that a trend shows.</summary>
    /// <param name="litersPer100Hours">Each from -100 to 100 L per 100 h, latest first; the first three count.</param>
    /// <returns>A new period.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="litersPer100Hours"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public PeriodSinceChange After(params double[] litersPer100Hours)
    {
        Guard.NotNull(litersPer100Hours);
        double[] copy = [.. litersPer100Hours];
        foreach (double value in copy)
        {
            Guard.InRange(value, -100, 100, "L per 100 h", nameof(litersPer100Hours));
        }

        return new(_terms with { Earlier = Array.AsReadOnly(copy) });
    }

    private readonly record struct Terms(
        DipstickReading Level,
        IReadOnlyList<MeasuredVolume> TopUps,
        EngineHours? Hours,
        double? MeanPowerKilowatts,
        IReadOnlyList<double> Earlier);
}
