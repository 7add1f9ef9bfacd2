namespace MarineService.Core.Belts;

/// <summary>How the belt's pitch line lies on one pulley, and the straight span that leaves it: all that a drawing needs.</summary>
/// <remarks>
/// <para>Millimetres; x to the right, y up, seen from the pulley end. The arc runs from the entry point to the exit point, turning
/// counter-clockwise when <see cref="TurnsCounterClockwise"/>; the span runs on from the exit point to the entry point of the next pulley.</para>
/// <para>The default value is an empty contact at the origin.</para>
/// <para>Source: common tangents of oriented circles, worked out and checked against a polygon method.</para>
/// </remarks>
public readonly struct StopGeometry : IEquatable<StopGeometry>
{
    private readonly double _ux;
    private readonly double _uy;

    internal StopGeometry(in OrientedCircle circle, double inUx, double inUy, double outUx, double outUy, double wrapRadians, double exitSpanMm)
    {
        (CenterXMm, CenterYMm) = (circle.XMm, circle.YMm);
        SignedRadiusMm = circle.SignedRadiusMm;
        EntryXMm = circle.XMm + (SignedRadiusMm * inUy);
        EntryYMm = circle.YMm - (SignedRadiusMm * inUx);
        ExitXMm = circle.XMm + (SignedRadiusMm * outUy);
        ExitYMm = circle.YMm - (SignedRadiusMm * outUx);
        (_ux, _uy) = (outUx, outUy);
        WrapRadians = wrapRadians;
        ExitSpanMm = exitSpanMm;
    }

    /// <summary>The pulley's centre, across [mm].</summary>
    public double CenterXMm { get; }

    /// <summary>The pulley's centre, up [mm].</summary>
    public double CenterYMm { get; }

    /// <summary>The radius of the pitch line on this pulley [mm].</summary>
    public double PitchRadiusMm => Math.Abs(SignedRadiusMm);

    /// <summary>Whether the pulley turns counter-clockwise, seen from the pulley end.</summary>
    public bool TurnsCounterClockwise => SignedRadiusMm > 0;

    /// <summary>Where the belt runs on to the pulley, across [mm].</summary>
    public double EntryXMm { get; }

    /// <summary>Where the belt runs on to the pulley, up [mm].</summary>
    public double EntryYMm { get; }

    /// <summary>Where the belt leaves the pulley, across [mm].</summary>
    public double ExitXMm { get; }

    /// <summary>Where the belt leaves the pulley, up [mm].</summary>
    public double ExitYMm { get; }

    /// <summary>The angle of the pulley that the belt touches [rad], from 0 to a full turn.</summary>
    public double WrapRadians { get; }

    /// <summary>The angle of the pulley that the belt touches [degrees], from 0 to 360.</summary>
    public double WrapDegrees => WrapRadians * (180 / Math.PI);

    /// <summary>The length of the arc of the pitch line on the pulley [mm].</summary>
    public double ArcMm => PitchRadiusMm * WrapRadians;

    /// <summary>The length of the straight span that leaves the pulley [mm].</summary>
    public double ExitSpanMm { get; }

    /// <summary>The direction of the leaving span, across: a component of a unit vector along the belt's travel.</summary>
    public double ExitDirectionXRatio => _ux;

    /// <summary>The direction of the leaving span, up: a component of a unit vector along the belt's travel.</summary>
    public double ExitDirectionYRatio => _uy;

    internal double SignedRadiusMm { get; }

    /// <summary>Whether all values of two contacts are the same.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>True when equal.</returns>
    public static bool operator ==(StopGeometry left, StopGeometry right) => left.Equals(right);

    /// <summary>Whether two contacts differ in any value.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>True when they differ.</returns>
    public static bool operator !=(StopGeometry left, StopGeometry right) => !left.Equals(right);

    /// <summary>Whether all values are the same, bit for bit.</summary>
    /// <param name="other">The other contact.</param>
    /// <returns>True when equal.</returns>
    public bool Equals(StopGeometry other) =>
        CenterXMm.Equals(other.CenterXMm) && CenterYMm.Equals(other.CenterYMm) && SignedRadiusMm.Equals(other.SignedRadiusMm)
        && EntryXMm.Equals(other.EntryXMm) && EntryYMm.Equals(other.EntryYMm) && ExitXMm.Equals(other.ExitXMm)
        && ExitYMm.Equals(other.ExitYMm) && WrapRadians.Equals(other.WrapRadians) && ExitSpanMm.Equals(other.ExitSpanMm)
        && _ux.Equals(other._ux) && _uy.Equals(other._uy);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is StopGeometry other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() =>
        (EntryXMm.GetHashCode() * 31) ^ (EntryYMm.GetHashCode() * 17) ^ ExitXMm.GetHashCode() ^ WrapRadians.GetHashCode();
}
