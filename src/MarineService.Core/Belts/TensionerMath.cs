namespace MarineService.Core.Belts;

/// <summary>The balance of the tensioner's arm: moment = pull x |growth of the path for each radian|; and the room to fit a belt.</summary>
/// <remarks>Sources: virtual work, worked out and checked by differences; fitting room by SAE J1596, as summarized by others.</remarks>
internal static class TensionerMath
{
    private const double MmPerMeter = 1000;

    internal static double TensionNewtons(double momentNewtonMeters, double slopeMmPerRad) =>
        momentNewtonMeters * MmPerMeter / Math.Abs(slopeMmPerRad);

    /// <summary>SAE J1596's fitting allowance: in the standard's summary 0.77 is in inches.</summary>
    internal static double SmallestBeltMm(double slackestPathMm, double minusToleranceMm, double flangeMm) =>
        (1.003 * slackestPathMm) + (2 * minusToleranceMm) + (0.77 * 25.4) + (6.28 * flangeMm);

    internal static double MomentNewtonMeters(double tensionNewtons, double slopeMmPerRad) =>
        tensionNewtons * Math.Abs(slopeMmPerRad) / MmPerMeter;
}
