using MarineService.Core.Internal;

namespace MarineService.Core.Cooling;

/// <summary>A piece of rubber that was found, matched to the gap it came from.</summary>
public sealed class FoundPiece
{
    private FoundPiece(int thousandths, string where) => (Thousandths, Where) = (thousandths, where);

    /// <summary>How much of a vane it is, above 0 and up to 1.</summary>
    public double VaneFraction => Thousandths / (double)VaneRecord.WholeVane;

    /// <summary>Where it was found.</summary>
    public string Where { get; }

    internal int Thousandths { get; }

    /// <summary>A piece.</summary>
    /// <param name="vaneFraction">How much of a vane it is, from 0.001 to 1 (fraction); hold it against the gap.</param>
    /// <param name="where">Where it was found; not blank.</param>
    /// <returns>The piece.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="where"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="where"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="vaneFraction"/> is outside its range.</exception>
    public static FoundPiece Of(double vaneFraction, string where) =>
        new(VaneRecord.Thousandths(Guard.InRange(vaneFraction, 0.001, 1, "(fraction)")), Guard.NotBlank(where));

    /// <summary>Share and place.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{VaneFraction:0.###} of a vane, {Where}");
}
