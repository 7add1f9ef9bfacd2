namespace MarineService.Core.Parts;

/// <summary>Two patterns of holes on bolt circles with one middle; angles in radians, ascending, the last less than a turn after the first.</summary>
/// <remarks>Source: worked out from the geometry of points on circles, and checked by trying every turn.</remarks>
internal static class BoltPatternMath
{
    internal const double Turn = 2 * Math.PI;

    /// <summary>An angle in -pi to pi. Source: worked out from the geometry.</summary>
    internal static double Wrapped(double rad) => rad - (Turn * Math.Round(rad / Turn));

    /// <summary>An angle in 0 to 2 pi; what is within rounding of a whole turn is 0. Source: worked out from the geometry.</summary>
    internal static double Positive(double rad)
    {
        double turned = rad - (Turn * Math.Floor(rad / Turn));
        return turned > Turn - 1e-9 ? 0 : turned;
    }

    /// <summary>
    /// The turn of the cover that leaves the worst hole least off when its hole 0 goes with hole 'shift' of the block, and half the range of
    /// the angles that are left over. Source: the middle of a range is the point least far from both its ends.
    /// </summary>
    internal static double BestTurnRad(double[] block, double[] cover, int shift, out double halfRangeRad)
    {
        double low = 0;
        double high = 0;
        double first = block[shift] - cover[0];
        for (int i = 1; i < cover.Length; i++)
        {
            double left = LeftOver(block, cover, shift, first, i);
            low = Math.Min(low, left);
            high = Math.Max(high, left);
        }

        halfRangeRad = (high - low) / 2;
        return first + ((high + low) / 2);
    }

    /// <summary>How far hole i of the cover stands from its hole in the block at a turn, as an angle. Source: worked out from the geometry.</summary>
    internal static double LeftOver(double[] block, double[] cover, int shift, double turnRad, int i) =>
        Wrapped(block[(i + shift) % block.Length] - cover[i] - turnRad);

    /// <summary>Distance of two points at an angle on two circles. Source: the cosine rule, written so that small angles lose no digits.</summary>
    internal static double DistanceMm(double blockRadiusMm, double coverRadiusMm, double rad)
    {
        double sine = Math.Sin(rad / 2);
        double gap = blockRadiusMm - coverRadiusMm;
        return Math.Sqrt((gap * gap) + (4 * blockRadiusMm * coverRadiusMm * sine * sine));
    }

    /// <summary>The angle at which two points on two circles are so far apart; 0 when they are never that near. Source: the cosine rule.</summary>
    internal static double AngleRad(double blockRadiusMm, double coverRadiusMm, double distanceMm)
    {
        double gap = blockRadiusMm - coverRadiusMm;
        double square = ((distanceMm * distanceMm) - (gap * gap)) / (4 * blockRadiusMm * coverRadiusMm);
        return square <= 0 ? 0 : 2 * Math.Asin(Math.Min(1, Math.Sqrt(square)));
    }
}
