using MarineService.Core.Internal;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace MarineService.Core.Fluids;

/// <summary>The way out of a sump: a hose under gravity, or a tube with a pump; and how long the oil takes through it.</summary>
/// <remarks>
/// <para>Laminar law (Hagen–Poiseuille) with a falling level and, if wanted, entrance, velocity head and fittings. It holds
/// up to a Reynolds number of 2000; above that the answer is not known. The length counts the tube inside the engine too.
/// The caller gives the viscosity at the oil's temperature.</para>
/// <para>Source: Hydraulic Institute Engineering Data Book, eq. 3.A.5, as summarized by others; the falling level is derived from it.</para>
/// </remarks>
public sealed class DrainPath
{
    internal static readonly Citation Source = Citation.Secondary("Hydraulic Institute Engineering Data Book", null, "equation 3.A.5, laminar flow");

    private readonly Terms _terms;

    private DrainPath(Terms terms) => _terms = terms;

    /// <summary>Inside diameter.</summary>
    public Length Bore => Length.FromMillimeters(_terms.BoreMm);

    /// <summary>Whole length.</summary>
    public Length Length => Length.FromMillimeters(_terms.LengthMm);

    /// <summary>How the oil leaves.</summary>
    public DrainMethod Method => _terms.SuctionKpa is null ? DrainMethod.DrainPlug : DrainMethod.Extractor;

    /// <summary>Entrance, velocity head and fittings, in velocity heads; 0 when they are left out.</summary>
    public double LossRatio => _terms.LossK;

    /// <summary>A longer drain is called slow, and advice is given: 15 minutes unless changed.</summary>
    public Duration SlowAfter => Duration.FromSeconds(_terms.SlowSeconds);

    internal double BoreMm => _terms.BoreMm;

    internal double SlowSeconds => _terms.SlowSeconds;

    /// <summary>Through a hose or the drain hole, by gravity.</summary>
    /// <param name="bore">Inside diameter, above 0, at most 500 mm.</param>
    /// <param name="length">Above 0, at most 100 m.</param>
    /// <param name="outletBelowFloor">From the sump floor down to the free outlet, 0 to 100 m.</param>
    /// <returns>The path.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public static DrainPath ByGravity(Length bore, Length length, Length outletBelowFloor) =>
        new(new Terms(
            InRange(bore, 500, nameof(bore)),
            InRange(length, 100_000, nameof(length)),
            -Guard.InRange(Canonical.Millimeters(outletBelowFloor), 0, 100_000, "mm", nameof(outletBelowFloor)),
            null));

    /// <summary>Through the dipstick tube, by a pump.</summary>
    /// <param name="bore">Inside diameter, above 0, at most 500 mm.</param>
    /// <param name="length">Above 0, at most 100 m.</param>
    /// <param name="liftAboveFloor">From the sump floor up to the pump, 0 to 100 m.</param>
    /// <param name="suction">Below atmosphere; above 0, at most 101.325 kPa. Hand pumps reach perhaps 50 to 80 kPa (common practice).</param>
    /// <returns>The path.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static DrainPath BySuction(Length bore, Length length, Length liftAboveFloor, Pressure suction)
    {
        double kpa = Guard.Positive(Canonical.Kilopascals(suction), "kPa", nameof(suction));
        return new(new Terms(
            InRange(bore, 500, nameof(bore)),
            InRange(length, 100_000, nameof(length)),
            Guard.InRange(Canonical.Millimeters(liftAboveFloor), 0, 100_000, "mm", nameof(liftAboveFloor)),
            Guard.InRange(kpa, 0, FluidMath.AtmosphereKpa, "kPa", nameof(suction))));
    }

    /// <summary>The highest that any pump can lift an oil: the atmosphere over its weight, about 12 m.</summary>
    /// <param name="density">Of the oil at its temperature, 500 to 2,000 kg/m³.</param>
    /// <returns>The height.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="density"/> is outside its range.</exception>
    public static Length SuctionCeiling(Density density) =>
        Length.FromMillimeters(1000 * HeadM(FluidMath.AtmosphereKpa, InRange(density, nameof(density))));

    /// <summary>The same path with entrance, velocity head and fittings.</summary>
    /// <param name="lossRatio">In velocity heads, 0 to 1,000; about 2 for the laminar velocity head alone (common practice), more for a valve.</param>
    /// <returns>A new path.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="lossRatio"/> is outside its range.</exception>
    public DrainPath WithLosses(double lossRatio) =>
        new(_terms with { LossK = Guard.InRange(lossRatio, 0, 1000, "velocity heads") });

    /// <summary>The same path with another idea of slow.</summary>
    /// <param name="slowAfter">Above 0, at most 100 days.</param>
    /// <returns>A new path.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="slowAfter"/> is outside its range.</exception>
    public DrainPath CallingSlowAfter(Duration slowAfter) =>
        new(_terms with { SlowSeconds = Guard.InRange(Guard.Positive(slowAfter.TotalSeconds, "s", nameof(slowAfter)), 0, 8_640_000, "s", nameof(slowAfter)) });

    /// <summary>How long an amount of oil takes to leave.</summary>
    /// <param name="oil">How much lies in the sump; above 0, at most 10,000 L.</param>
    /// <param name="surface">The sump's area; above 0, at most 1,000 m².</param>
    /// <param name="viscosity">At the oil's temperature; above 0, at most 1,000,000 mm²/s.</param>
    /// <param name="density">At the oil's temperature, 500 to 2,000 kg/m³; null for 880. Under gravity it cancels.</param>
    /// <returns>
    /// The drain; not known when the flow is not laminar, when the pump cannot lift the oil, or when the outlet is level with
    /// the floor, so that the last of it would never leave.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Answer<DrainTime> Drain(Volume oil, Area surface, KinematicViscosity viscosity, Density? density = null)
    {
        double liters = Guard.InRange(Guard.Positive(Canonical.Liters(oil), "L", nameof(oil)), 0, 10_000, "L", nameof(oil));
        double areaM2 = Guard.InRange(Guard.Positive(Canonical.SquareMeters(surface), "m²", nameof(surface)), 0, 1000, "m²", nameof(surface));
        double mm2PerS = Canonical.MillimetersSquaredPerSecond(viscosity);
        Guard.InRange(Guard.Positive(mm2PerS, "mm²/s", nameof(viscosity)), 0, 1e6, "mm²/s", nameof(viscosity));
        double kgPerM3 = density is Density given ? InRange(given, nameof(density)) : 880;

        double depthM = liters / 1000 / areaM2;
        double endHeadM = (_terms.SuctionKpa is double kpa ? HeadM(kpa, kgPerM3) : 0) - _terms.LiftMm / 1000;
        if (endHeadM <= 0)
        {
            return Answer.NotKnown<DrainTime>(_terms.SuctionKpa is null
                ? "An outlet below the sump floor: level with it, the last oil never leaves."
                : "A pump with more suction, or less lift: this one cannot raise the last of the oil.");
        }

        double boreM = _terms.BoreMm / 1000;
        double nu = mm2PerS / 1e6;
        double friction = LaminarMath.Friction(nu, _terms.LengthMm / 1000, boreM);
        double v0 = LaminarMath.VelocityMPerS(endHeadM + depthM, friction, _terms.LossK);
        double reynolds = LaminarMath.Reynolds(v0, boreM, nu);
        return reynolds <= LaminarMath.MaxReynolds
            ? Answer.Known(new DrainTime(this, liters, areaM2, mm2PerS, friction, endHeadM, v0, reynolds))
            : Answer.NotKnown<DrainTime>("Laminar flow: this one is faster than the law reaches (Reynolds number above 2000), so it is quick anyway.");
    }

    /// <summary>Bore, length and way, metric and invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{FigureUnit.Millimeter.Write(_terms.BoreMm, DisplayUnits.Metric)} × {FigureUnit.Millimeter.Write(_terms.LengthMm, DisplayUnits.Metric)}, {Method}";

    private static double HeadM(double kpa, double kgPerM3) => 1000 * kpa / (kgPerM3 * FluidMath.Gravity);

    private static double InRange(Length length, double maxMm, string name) =>
        Guard.InRange(Guard.Positive(Canonical.Millimeters(length), "mm", name), 0, maxMm, "mm", name);

    private static double InRange(Density density, string name) =>
        Guard.InRange(Canonical.KilogramsPerCubicMeter(density), 500, 2000, "kg/m³", name);

    private readonly record struct Terms(
        double BoreMm, double LengthMm, double LiftMm, double? SuctionKpa, double LossK = 0, double SlowSeconds = 900);
}
