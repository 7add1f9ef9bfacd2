using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Specifications;

/// <summary>An engine that shares all service data with another and differs only in its rating.</summary>
public sealed class EngineVariant
{
    private readonly double _kilowatts;
    private readonly double _revolutionsPerMinute;

    private EngineVariant(string designation, double kilowatts, double revolutionsPerMinute) =>
        (Designation, _kilowatts, _revolutionsPerMinute) = (designation, kilowatts, revolutionsPerMinute);

    /// <summary>The maker's designation.</summary>
    public string Designation { get; }

    /// <summary>The rated power.</summary>
    public Power RatedPower => Power.FromKilowatts(_kilowatts);

    /// <summary>The crankshaft speed at the rated power.</summary>
    public RotationalSpeed RatedSpeed => RotationalSpeed.FromRevolutionsPerMinute(_revolutionsPerMinute);

    internal double RatedKilowatts => _kilowatts;

    internal double RatedRevolutionsPerMinute => _revolutionsPerMinute;

    /// <summary>A variant.</summary>
    /// <param name="designation">The maker's designation; not blank.</param>
    /// <param name="ratedPower">From 0.5 to 5,000 kW.</param>
    /// <param name="ratedSpeed">From 100 to 15,000 revolutions a minute.</param>
    /// <returns>The variant.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="designation"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="designation"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A rating is outside its range.</exception>
    public static EngineVariant Of(string designation, Power ratedPower, RotationalSpeed ratedSpeed) =>
        new(
            Guard.NotBlank(designation),
            Guard.InRange(Canonical.Kilowatts(ratedPower), 0.5, 5000, "kW", nameof(ratedPower)),
            Guard.InRange(Canonical.RevolutionsPerMinute(ratedSpeed), 100, 15_000, "revolutions a minute", nameof(ratedSpeed)));

    /// <summary>The designation.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Designation;
}
