using MarineService.Core.Tests.Reference;
using MathNet.Numerics.Interpolation;

namespace MarineService.Core.Tests.Oils;

/// <summary>Saybolt Universal seconds, in which old charts are drawn, by a spline through the handbook's conversion table. Tests only.</summary>
internal static class Saybolt
{
    private static readonly double[] Ssu = [.. ReferenceTable.Read("saybolt-universal.csv").Select(row => row.Number("ssu_s"))];
    private static readonly double[] Kv = [.. ReferenceTable.Read("saybolt-universal.csv").Select(row => row.Number("kv_mm2_s"))];
    private static readonly CubicSpline ToKinematic = CubicSpline.InterpolateNaturalSorted(Ssu, Kv);
    private static readonly CubicSpline ToSeconds = CubicSpline.InterpolateNaturalSorted(Kv, Ssu);

    internal static double Seconds(double kinematic) => ToSeconds.Interpolate(kinematic);

    internal static double Kinematic(double seconds) => ToKinematic.Interpolate(seconds);
}
