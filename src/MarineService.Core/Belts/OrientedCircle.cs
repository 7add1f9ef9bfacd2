namespace MarineService.Core.Belts;

/// <summary>A pulley as the belt's pitch line sees it: centre, pitch radius, and +1 for counter-clockwise, -1 for clockwise.</summary>
internal readonly struct OrientedCircle(double xMm, double yMm, double radiusMm, int sign)
{
    internal readonly double XMm = xMm;
    internal readonly double YMm = yMm;
    internal readonly double RadiusMm = radiusMm;
    internal readonly double SignedRadiusMm = sign * radiusMm;
    internal readonly int Sign = sign;

    internal OrientedCircle MovedTo(double xMm, double yMm) => new(xMm, yMm, RadiusMm, Sign);
}
