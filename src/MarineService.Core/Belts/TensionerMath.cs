namespace MarineService.Core.Belts;

/// <summary>The balance of the tensioner's arm: moment = pull x |growth of the path for each radian|.</summary>
internal static class TensionerMath
{
    private const double MmPerMeter = 1000;

    internal static double TensionNewtons(double momentNewtonMeters, double slopeMmPerRad) =>
        momentNewtonMeters * MmPerMeter / Math.Abs(slopeMmPerRad);

    internal static double MomentNewtonMeters(double tensionNewtons, double slopeMmPerRad) =>
        tensionNewtons * Math.Abs(slopeMmPerRad) / MmPerMeter;
}
