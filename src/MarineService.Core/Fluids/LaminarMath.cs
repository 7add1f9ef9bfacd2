namespace MarineService.Core.Fluids;

/// <summary>Laminar flow of oil through a hose, and what clings to walls; SI units unless the name says otherwise.</summary>
/// <remarks>
/// Source: Hagen–Poiseuille, Δp = 32μℓv/d² = 128μℓQ/(πd⁴), f = 64/Re, as in the Hydraulic Institute Engineering Data Book, eq. 3.A.5.
/// With K for entrance, velocity head and fittings: gH = 32νℓv/d² + Kv²/2, where H is the head of the oil itself in m.
/// Under gravity H is the drop from the oil's surface to the free outlet, so the density cancels; under suction it is
/// suction/(ρg) less the lift. Either falls by the level that has gone down.
/// </remarks>
internal static class LaminarMath
{
    /// <summary>Above this Reynolds number the laminar law no longer holds.</summary>
    internal const double MaxReynolds = 2000;

    /// <summary>Pressure loss of a straight run, Pa: dynamic viscosity Pa·s, length and bore m, velocity m/s.</summary>
    internal static double PressureLossPa(double dynamicPaS, double lengthM, double boreM, double velocityMPerS) =>
        32 * dynamicPaS * lengthM * velocityMPerS / (boreM * boreM);

    /// <summary>Flow through a straight run under a pressure difference, m³/s.</summary>
    internal static double FlowM3PerS(double pressurePa, double dynamicPaS, double lengthM, double boreM) =>
        Math.PI * FluidMath.Square(boreM * boreM) * pressurePa / (128 * dynamicPaS * lengthM);

    internal static double BoreAreaM2(double boreM) => Math.PI / 4 * boreM * boreM;

    internal static double Reynolds(double velocityMPerS, double boreM, double viscosityM2PerS) => velocityMPerS * boreM / viscosityM2PerS;

    /// <summary>Velocity under a head, m/s: the positive root of Kv²/2 + bv - gH = 0 with b = 32νℓ/d².</summary>
    /// <remarks>Written so that nothing cancels when K is small: v = 2gH/(b + √(b² + 2KgH)).</remarks>
    internal static double VelocityMPerS(double headM, double friction, double lossK)
    {
        double gh = FluidMath.Gravity * headM;
        return 2 * gh / (friction + Math.Sqrt(friction * friction + 2 * lossK * gh));
    }

    /// <summary>b = 32νℓ/d², 1/s times m.</summary>
    internal static double Friction(double viscosityM2PerS, double lengthM, double boreM) => 32 * viscosityM2PerS * lengthM / (boreM * boreM);

    /// <summary>Time for the velocity to fall from one value to a lower one while a surface of the given area sinks, s.</summary>
    /// <remarks>From dH = -(a/A)v dt and g dH = (b + Kv)dv: t = A/(ag)·[b ln(v₀/v₁) + K(v₀ - v₁)].</remarks>
    internal static double FallingSeconds(double v0, double v1, double friction, double lossK, double surfaceM2, double boreAreaM2) =>
        surfaceM2 / (boreAreaM2 * FluidMath.Gravity) * (friction * Math.Log(v0 / v1) + lossK * (v0 - v1));

    /// <summary>Thickness of a film on a vertical wall, mm: viscosity mm²/s, depth below the top mm, time s.</summary>
    internal static double FilmThicknessMm(double viscosityMm2PerS, double depthMm, double seconds) =>
        Math.Sqrt(viscosityMm2PerS * depthMm / (FluidMath.Gravity * 1000 * seconds));
}
