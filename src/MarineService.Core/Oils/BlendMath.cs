namespace MarineService.Core.Oils;

/// <summary>Viscosity of a mix of two liquids at one temperature, ν in mm²/s, and the share that a viscosity points to.</summary>
/// <remarks>
/// Sources: the double log agrees with the Hydraulic Institute's chart (figure 2.C.2), its attribution to ASTM D7152 is from memory; the
/// blending index stands on four public pages; the single log is common practice. Each rule maps ν to a scale on which shares add: y = (1 - x)·y₁ + x·y₂.
/// </remarks>
internal static class BlendMath
{
    /// <summary>ln ln(ν + 0.7) has no value at 0.3 and below; 0.4 stays clear of it and below any fuel.</summary>
    internal const double LeastKinematic = 0.4;

    internal static double Mix(BlendingMethod method, double first, double second, double secondFraction)
    {
        // Nothing added is nothing changed: no round trip through logarithms.
        if (secondFraction == 0 || secondFraction == 1 || first == second)
        {
            return secondFraction == 1 ? second : first;
        }

        double mixed = FromScale(method, ((1 - secondFraction) * ToScale(method, first)) + (secondFraction * ToScale(method, second)));

        // The last digit of two logarithms must not put a mix outside its parts.
        return Math.Max(Math.Min(first, second), Math.Min(mixed, Math.Max(first, second)));
    }

    /// <summary>The share of the second liquid that brings the first to a viscosity; outside 0 to 1 when none does.</summary>
    internal static double SecondFraction(BlendingMethod method, double first, double second, double mixed) =>
        (ToScale(method, first) - ToScale(method, mixed)) / (ToScale(method, first) - ToScale(method, second));

    internal static double ToScale(BlendingMethod method, double kinematic) => method switch
    {
        BlendingMethod.DoubleLog => Math.Log(Math.Log(kinematic + 0.7)),
        BlendingMethod.BlendingIndex => (14.534 * Math.Log(Math.Log(kinematic + 0.8))) + 10.975,
        _ => Math.Log(kinematic),
    };

    private static double FromScale(BlendingMethod method, double value) => method switch
    {
        BlendingMethod.DoubleLog => Math.Exp(Math.Exp(value)) - 0.7,
        BlendingMethod.BlendingIndex => Math.Exp(Math.Exp((value - 10.975) / 14.534)) - 0.8,
        _ => Math.Exp(value),
    };
}
