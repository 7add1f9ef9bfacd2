namespace MarineService.Core.Belts;

/// <summary>The angle between a span and the groove plane of a pulley.</summary>
/// <remarks>Source: worked out from the geometry of a line and a plane; for an offset alone it is the arc tangent of offset over span.</remarks>
internal static class AlignmentMath
{
    /// <summary>The height of a leaning groove plane at a point, for a lean of so much a millimetre across and up.</summary>
    internal static double HeightMm(Pulley pulley, double xMm, double yMm) =>
        (pulley.AxialPositionMm ?? 0) + (pulley.LeanAcrossRatio * (xMm - pulley.XMm)) + (pulley.LeanUpRatio * (yMm - pulley.YMm));

    /// <summary>The angle of a span, rising so many millimetres for each along, against a plane; positive when it rises out of it.</summary>
    internal static double AngleRad(double riseRatio, double ux, double uy, double leanAcross, double leanUp)
    {
        double sine = (riseRatio - (leanAcross * ux) - (leanUp * uy))
            / Math.Sqrt((1 + (riseRatio * riseRatio)) * (1 + (leanAcross * leanAcross) + (leanUp * leanUp)));
        return Math.Asin(sine);
    }
}
