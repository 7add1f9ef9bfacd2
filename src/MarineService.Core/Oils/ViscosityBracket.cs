using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Oils;

/// <summary>A viscosity known only to lie between two rules' results.</summary>
public sealed record ViscosityBracket
{
    internal ViscosityBracket(double oneEnd, double otherEnd) => (LowKinematic, HighKinematic) = (Math.Min(oneEnd, otherEnd), Math.Max(oneEnd, otherEnd));

    /// <summary>The thinner end.</summary>
    public KinematicViscosity Low => KinematicViscosity.FromCentistokes(LowKinematic);

    /// <summary>The thicker end.</summary>
    public KinematicViscosity High => KinematicViscosity.FromCentistokes(HighKinematic);

    internal double LowKinematic { get; }

    internal double HighKinematic { get; }

    /// <summary>Both ends, invariant.</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() => ToString(DisplayUnits.Metric);

    /// <summary>Both ends.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Invariant text.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public string ToString(DisplayUnits units)
    {
        Guard.Defined(units);
        return $"{FigureUnit.SquareMillimeterPerSecond.Write(LowKinematic, units)} to {FigureUnit.SquareMillimeterPerSecond.Write(HighKinematic, units)}";
    }
}
