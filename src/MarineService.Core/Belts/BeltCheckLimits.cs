using MarineService.Core.Internal;

namespace MarineService.Core.Belts;

/// <summary>The figures that a check compares with where no standard gives one, or where an engine's manual may give its own.</summary>
public sealed class BeltCheckLimits
{
    private readonly Values _values;

    private BeltCheckLimits(Values values) => _values = values;

    /// <summary>The figures of this project.</summary>
    public static BeltCheckLimits Default { get; } = new(new(2, 3, 0.01, 0.5));

    /// <summary>How many standard uncertainties a test must clear its limit by; 2 by default, about 95 %. Project choice.</summary>
    public double CoverageFactorRatio => _values.Coverage;

    /// <summary>The least room between belt and a pulley that it passes [mm]; 3 by default. Project choice.</summary>
    public double LeastClearanceMm => _values.ClearanceMm;

    /// <summary>The share of its length that a belt may stretch and wear in its life; 0.01 by default. Project choice.</summary>
    public double StretchFraction => _values.Stretch;

    /// <summary>The least length that a degree of the arm must take up [mm]; 0.5 by default. Project choice.</summary>
    public double LeastTakeUpMmPerDegree => _values.TakeUp;

    /// <summary>The same figures with another coverage factor.</summary>
    /// <param name="ratio">From 0 to 10.</param>
    /// <returns>New limits.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="ratio"/> is outside its range.</exception>
    public BeltCheckLimits WithCoverageFactor(double ratio) => new(_values with { Coverage = Guard.InRange(ratio, 0, 10, "(ratio)") });

    /// <summary>The same figures with another least clearance.</summary>
    /// <param name="mm">From 0 to 100 mm.</param>
    /// <returns>New limits.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="mm"/> is outside its range.</exception>
    public BeltCheckLimits WithLeastClearance(double mm) => new(_values with { ClearanceMm = Guard.InRange(mm, 0, 100, "mm") });

    /// <summary>The same figures with another allowance for stretch and wear.</summary>
    /// <param name="fraction">From 0 to 0.2 of the belt's length.</param>
    /// <returns>New limits.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="fraction"/> is outside its range.</exception>
    public BeltCheckLimits WithStretch(double fraction) => new(_values with { Stretch = Guard.InRange(fraction, 0, 0.2, "(fraction)") });

    /// <summary>The same figures with another least take-up.</summary>
    /// <param name="mmPerDegree">From 0 to 20 mm for each degree of the arm.</param>
    /// <returns>New limits.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="mmPerDegree"/> is outside its range.</exception>
    public BeltCheckLimits WithLeastTakeUp(double mmPerDegree) => new(_values with { TakeUp = Guard.InRange(mmPerDegree, 0, 20, "mm per degree") });

    /// <summary>The working figure for the least wrap of a pulley [degrees], or null when nobody states one for its duty.</summary>
    /// <remarks>No standard gives one: common practice and memory. Better is the wrap that the load needs, from a tension check.</remarks>
    internal static double? WorkingWrapDegrees(Pulley pulley, BeltFace face) => pulley.LeastWrapDegrees ?? pulley.Duty switch
    {
        PulleyDuty.Crank => 150,
        PulleyDuty.Alternator or PulleyDuty.PowerSteering => 120,
        PulleyDuty.RawWaterPump or PulleyDuty.CirculatingPump => 90,
        PulleyDuty.Tensioner => 60,
        PulleyDuty.Idler => 10,
        _ => face == BeltFace.Back && pulley.LoadKilowatts > 0 ? 90 : null,
    };

    private readonly record struct Values(double Coverage, double ClearanceMm, double Stretch, double TakeUp);
}
