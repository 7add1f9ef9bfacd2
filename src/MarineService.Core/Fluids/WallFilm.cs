using MarineService.Core.Internal;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace MarineService.Core.Fluids;

/// <summary>Oil that still clings to the walls above the level, and how long it takes to run down.</summary>
/// <remarks>
/// Film on a vertical wall at depth z after time t: h = √(νz/(gt)); the mean over z is two thirds of it. From memory of the
/// textbook law of film drainage. It counts plain wall only: passages, heads and the filter hold more, so a time from
/// here is the least to wait, and the manual's figure goes first.
/// </remarks>
public sealed class WallFilm
{
    private readonly double _viscosityMm2PerS;
    private readonly double _heightMm;
    private readonly double _areaM2;

    private WallFilm(double viscosityMm2PerS, double heightMm, double areaM2) =>
        (_viscosityMm2PerS, _heightMm, _areaM2) = (viscosityMm2PerS, heightMm, areaM2);

    /// <summary>The film of an oil on walls.</summary>
    /// <param name="viscosity">Of the oil at its temperature; above 0, at most 1,000,000 mm²/s.</param>
    /// <param name="wallHeight">From the top of the wetted wall down to the level; above 0, at most 5 m.</param>
    /// <param name="wallArea">Wetted area; above 0, at most 100 m².</param>
    /// <returns>The film.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static WallFilm Of(KinematicViscosity viscosity, Length wallHeight, Area wallArea) =>
        new(
            Guard.InRange(
                Guard.Positive(Canonical.MillimetersSquaredPerSecond(viscosity), "mm²/s", nameof(viscosity)), 0, 1e6, "mm²/s", nameof(viscosity)),
            Guard.InRange(Guard.Positive(Canonical.Millimeters(wallHeight), "mm", nameof(wallHeight)), 0, 5000, "mm", nameof(wallHeight)),
            Guard.InRange(Guard.Positive(Canonical.SquareMeters(wallArea), "m²", nameof(wallArea)), 0, 100, "m²", nameof(wallArea)));

    /// <summary>The thickness at the foot of the wall after a time.</summary>
    /// <param name="after">Above 0, at most 1000 days.</param>
    /// <returns>The thickness.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="after"/> is outside its range.</exception>
    public Length ThicknessAfter(Duration after) =>
        Length.FromMillimeters(LaminarMath.FilmThicknessMm(_viscosityMm2PerS, _heightMm, Seconds(after, nameof(after))));

    /// <summary>The volume still on the walls after a time.</summary>
    /// <param name="after">Above 0, at most 1000 days.</param>
    /// <returns>The volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="after"/> is outside its range.</exception>
    public Volume VolumeAfter(Duration after) => Volume.FromLiters(LitersAfter(Seconds(after, nameof(after))));

    /// <summary>How long until no more than a volume clings to the walls.</summary>
    /// <param name="volume">Above 0, at most 10,000 L.</param>
    /// <returns>The time; a volume above what a film can hold gives a very short one.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="volume"/> is outside its range, or so small that the time is above 1000 days.</exception>
    public Duration TimeUntil(Volume volume)
    {
        double liters = Guard.InRange(Guard.Positive(Canonical.Liters(volume), "L", nameof(volume)), 0, 10_000, "L", nameof(volume));
        // The volume falls with the square root of time, so one second tells the rest.
        double seconds = FluidMath.Square(LitersAfter(1) / liters);
        return seconds <= 86_400_000
            ? Duration.FromSeconds(seconds)
            : throw new ArgumentOutOfRangeException(nameof(volume), liters, "Must be large enough to be reached within 1000 days.");
    }

    /// <summary>What clings to the walls after a time, with the inputs.</summary>
    /// <param name="after">Above 0, at most 1000 days.</param>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not defined.</exception>
    public Explanation Explain(Duration after, DisplayUnits units)
    {
        Guard.Defined(units);
        double seconds = Seconds(after, nameof(after));
        return new ExplanationBuilder(
                $"After {FigureUnit.Minute.Write(seconds / 60, units)}, {FigureUnit.Liter.Write(LitersAfter(seconds), units)} still clings to the walls.")
            .Add("viscosity", FigureUnit.SquareMillimeterPerSecond.Write(_viscosityMm2PerS, units))
            .Add("wall", $"{FigureUnit.Millimeter.Write(_heightMm, units)} high")
            .Add("limit", "plain wall only; the manual's waiting time goes first")
            .Build(Citation.FromMemory);
    }

    private double LitersAfter(double seconds) =>
        2.0 / 3.0 * LaminarMath.FilmThicknessMm(_viscosityMm2PerS, _heightMm, seconds) * _areaM2;

    private static double Seconds(Duration after, string name) =>
        Guard.InRange(Guard.Positive(after.TotalSeconds, "s", name), 0, 86_400_000, "s", name);
}
