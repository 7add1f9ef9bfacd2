using UnitsNet;

namespace MarineService.Core.LayUp;

/// <summary>How much preserving oil goes into a cylinder.</summary>
internal static class FoggingMath
{
    /// <summary>Dose for one cylinder: ½ US fl oz up to 25 in³ swept, then 1, 1½ and 2 for each further 25 in³.</summary>
    /// <remarks>Source: TB 740-97-4, chapter 4, as summarized by others.</remarks>
    internal static double DoseMilliliters(double sweptMilliliters)
    {
        double cubicInches = Volume.FromMilliliters(sweptMilliliters).CubicInches;
        double ounces = cubicInches <= 25 ? 0.5 : cubicInches <= 50 ? 1 : cubicInches <= 75 ? 1.5 : 2;
        return Volume.FromUsOunces(ounces).Milliliters;
    }

    /// <summary>Volume above the piston at the top of its stroke: Vs/(r - 1).</summary>
    /// <remarks>Source: definition of the compression ratio, r = (Vs + Vc)/Vc.</remarks>
    internal static double ClearanceMilliliters(double sweptMilliliters, double compressionRatio) => sweptMilliliters / (compressionRatio - 1);
}
