using MarineService.Core.Internal;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace MarineService.Core.Fluids;

/// <summary>How a drain goes: how fast at first, how long, how much is left after a time, and what would help.</summary>
public sealed class DrainTime
{
    private const double LitersPerCubicMeter = 1000;

    // From here on oil on the skin does harm within a second or so; the engine runs it at 70 to 100 °C.
    private const double HotCelsius = 55;

    private readonly DrainPath _path;
    private readonly double _liters;
    private readonly double _areaM2;
    private readonly double _viscosityMm2PerS;
    private readonly double _friction;
    private readonly double _endHeadM;
    private readonly double _v0;
    private readonly double _v1;
    private readonly double _reynolds;

    internal DrainTime(
        DrainPath path, double liters, double areaM2, double viscosityMm2PerS, double friction, double endHeadM, double v0, double reynolds)
    {
        (_path, _liters, _areaM2, _viscosityMm2PerS, _friction) = (path, liters, areaM2, viscosityMm2PerS, friction);
        (_endHeadM, _v0, _reynolds) = (endHeadM, v0, reynolds);
        _v1 = LaminarMath.VelocityMPerS(endHeadM, friction, path.LossRatio);
    }

    /// <summary>The way out.</summary>
    public DrainPath Path => _path;

    /// <summary>The flow at the start.</summary>
    public VolumeFlow FirstFlow => VolumeFlow.FromLitersPerMinute(_v0 * BoreAreaM2 * LitersPerCubicMeter * 60);

    /// <summary>The flow at the end.</summary>
    public VolumeFlow LastFlow => VolumeFlow.FromLitersPerMinute(_v1 * BoreAreaM2 * LitersPerCubicMeter * 60);

    /// <summary>Until all of it has left, drips and wall film apart.</summary>
    public Duration Total => Duration.FromSeconds(TotalSeconds);

    /// <summary>The Reynolds number at the start; the law holds up to 2000.</summary>
    public double ReynoldsNumberRatio => _reynolds;

    private double TotalSeconds => SecondsTo(_v1);

    private double BoreAreaM2 => LaminarMath.BoreAreaM2(_path.BoreMm / 1000);

    /// <summary>How much is still in the sump after a time.</summary>
    /// <param name="after">0 or more.</param>
    /// <returns>The volume; 0 L once the drain has ended.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="after"/> is negative.</exception>
    public Volume LeftAfter(Duration after)
    {
        double seconds = Guard.NotNegative(after.TotalSeconds, "s", nameof(after));
        if (seconds >= TotalSeconds)
        {
            return Volume.Zero;
        }

        // Time rises steadily as the velocity falls from its first to its last value, so halving finds it.
        (double slow, double fast) = (_v1, _v0);
        for (int i = 0; i < 100 && fast - slow > 1e-14 * fast; i++)
        {
            double middle = 0.5 * (slow + fast);
            if (SecondsTo(middle) > seconds)
            {
                slow = middle;
            }
            else
            {
                fast = middle;
            }
        }

        double headM = (_friction * fast + 0.5 * _path.LossRatio * fast * fast) / FluidMath.Gravity;
        return Volume.FromLiters(Math.Max(0, headM - _endHeadM) * _areaM2 * LitersPerCubicMeter);
    }

    /// <summary>What would help, and what to beware of.</summary>
    /// <param name="oilTemperature">From -60 to 200 °C, or null when it is not known.</param>
    /// <param name="keptByTilt">What the tilted floor keeps back (<see cref="SumpShape.KeptByTilt"/>), 0 to 10,000 L; null for a level floor.</param>
    /// <returns>Findings; empty when all is well.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public IReadOnlyList<Finding> Advise(Temperature? oilTemperature = null, Volume? keptByTilt = null)
    {
        List<Finding> findings = [];
        double seconds = TotalSeconds;
        double slow = _path.SlowSeconds;
        if (seconds > slow)
        {
            Figure time = Figure.Of("time", seconds / 60, FigureUnit.Minute);
            Figure wanted = Figure.Of("wanted", slow / 60, FigureUnit.Minute);
            findings.Add(DrainRules.OilIsThick.On(
                "drain",
                Figure.Of("viscosity", _viscosityMm2PerS, FigureUnit.SquareMillimeterPerSecond),
                time,
                Figure.Of("thinner", _viscosityMm2PerS * slow / seconds, FigureUnit.SquareMillimeterPerSecond),
                wanted));
            findings.Add(DrainRules.BoreIsNarrow.On(
                "drain",
                Figure.Of("bore", _path.BoreMm, FigureUnit.Millimeter),
                time,
                Figure.Of("wider", _path.BoreMm * Math.Sqrt(Math.Sqrt(seconds / slow)), FigureUnit.Millimeter),
                wanted));
        }

        if (oilTemperature is Temperature given)
        {
            double celsius = Guard.InRange(Canonical.Celsius(given), -60, 200, "°C", nameof(oilTemperature));
            if (celsius >= HotCelsius)
            {
                findings.Add(DrainRules.OilIsHot.On("drain", Figure.Of("temperature", celsius, FigureUnit.DegreeCelsius)));
            }
        }

        if (keptByTilt is Volume kept)
        {
            double liters = Guard.InRange(Canonical.Liters(kept), 0, 10_000, "L", nameof(keptByTilt));
            if (liters > 0.02 * _liters)
            {
                findings.Add(DrainRules.TiltKeepsOil.On("drain", Figure.Of("kept", liters, FigureUnit.Liter)));
            }
        }

        return findings.AsReadOnly();
    }

    /// <summary>The drain with its inputs.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not defined.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        return new ExplanationBuilder(
                $"{FigureUnit.Liter.Write(_liters, units)} leaves in {FigureUnit.Minute.Write(TotalSeconds / 60, units)}.")
            .Add("path", $"bore {FigureUnit.Millimeter.Write(_path.BoreMm, units)}, length {FigureUnit.Millimeter.Write(Canonical.Millimeters(_path.Length), units)}, {_path.Method}")
            .Add("viscosity", FigureUnit.SquareMillimeterPerSecond.Write(_viscosityMm2PerS, units))
            .Add("first flow", FigureUnit.LiterPerMinute.Write(FirstFlow.LitersPerMinute, units))
            .Add("Reynolds", $"{FigureUnit.Number.Write(Math.Round(_reynolds), units)}, laminar up to 2000")
            .Add("losses", $"{FigureUnit.Number.Write(_path.LossRatio, units)} velocity heads")
            .Build(DrainPath.Source, Citation.Derived("the laminar law with a falling level"));
    }

    private double SecondsTo(double velocity) =>
        LaminarMath.FallingSeconds(_v0, velocity, _friction, _path.LossRatio, _areaM2, BoreAreaM2);
}
