using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Fluids;

/// <summary>How far a tilted boat makes a dipstick lie.</summary>
public sealed class TiltCorrection
{
    private readonly double _depthMm;
    private readonly double _liters;
    private readonly double _pitchRad;
    private readonly double _rollRad;

    internal TiltCorrection(double depthMm, double liters, double pitchRad, double rollRad) =>
        (_depthMm, _liters, _pitchRad, _rollRad) = (depthMm, liters, pitchRad, rollRad);

    /// <summary>How much too high the stick reads; negative when too low.</summary>
    public Length DepthError => Length.FromMillimeters(_depthMm);

    /// <summary>How much oil the error looks like; negative when too little.</summary>
    public Volume VolumeError => Volume.FromLiters(_liters);

    /// <summary>The correction with its inputs.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not defined.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        string way = _depthMm >= 0 ? "high" : "low";
        return new ExplanationBuilder(
                $"The stick reads {FigureUnit.Millimeter.Write(Math.Abs(_depthMm), units)} too {way}, which looks like {FigureUnit.Liter.Write(Math.Abs(_liters), units)}.")
            .Add("stern down", FigureUnit.Degree.Write(Angle.FromRadians(_pitchRad).Degrees, units))
            .Add("starboard", FigureUnit.Degree.Write(Angle.FromRadians(_rollRad).Degrees, units) + " down")
            .Add("rule", "x·tan(pitch) + y·tan(roll) for a rectangular sump; nothing at the center")
            .Build(SumpShape.Source);
    }
}
