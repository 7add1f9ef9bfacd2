using MarineService.Core.Internal;

namespace MarineService.Core.Belts;

/// <summary>Friction of the two faces of a belt, as design figures that hold for a worn and dusty one.</summary>
/// <remarks>
/// <para>Ribs in grooves 0.4413: the tension ratio 4 over half a turn that design rules use, ln 4 / π; the ratio is from memory.</para>
/// <para>The back on a smooth rim 0.30: from memory. Real dry new belts reach 0.9 to 1.2 in grooves. Water lowers it, and lower still at speed.</para>
/// </remarks>
public sealed class BeltFriction
{
    private const double DesignBack = 0.30;

    private BeltFriction(double ribs, double back) => (RibsRatio, BackRatio) = (ribs, back);

    /// <summary>The design figures: 0.4413 for ribs, 0.30 for the back.</summary>
    public static BeltFriction Design { get; } = new(Math.Log(4) / Math.PI, DesignBack);

    /// <summary>Effective coefficient of ribs in grooves, the wedging included.</summary>
    public double RibsRatio { get; }

    /// <summary>Coefficient of the smooth back.</summary>
    public double BackRatio { get; }

    /// <summary>Figures of the caller's.</summary>
    /// <param name="ribsRatio">Effective coefficient of ribs in grooves; above 0 and up to 5.</param>
    /// <param name="backRatio">Coefficient of the smooth back; above 0 and up to 5.</param>
    /// <returns>The friction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A coefficient is outside its range.</exception>
    public static BeltFriction Of(double ribsRatio, double backRatio) => new(
        Guard.InRange(Guard.Positive(ribsRatio, "(ratio)"), 0, 5, "(ratio)", nameof(ribsRatio)),
        Guard.InRange(Guard.Positive(backRatio, "(ratio)"), 0, 5, "(ratio)", nameof(backRatio)));

    /// <summary>Both coefficients.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"ribs {RibsRatio:0.####}, back {BackRatio:0.####}");

    internal double Of(BeltFace face) => face == BeltFace.Ribs ? RibsRatio : BackRatio;
}
