using MarineService.Core.Internal;

namespace MarineService.Core.LayUp;

/// <summary>What an engine's data sheet knows for the winter: raw-water side, cylinders, fuel tank. Each may be missing.</summary>
/// <remarks>Never changes; each With gives a copy.</remarks>
public sealed class LayUpSheet
{
    private LayUpSheet(RawWaterSide? side, Cylinders? cylinders, FuelTank? tank) => (RawWaterSide, Cylinders, FuelTank) = (side, cylinders, tank);

    /// <summary>A sheet on which nothing is stated.</summary>
    public static LayUpSheet Empty { get; } = new(null, null, null);

    /// <summary>The raw-water side, or null when it is not stated.</summary>
    public RawWaterSide? RawWaterSide { get; }

    /// <summary>The cylinders, or null when they are not stated.</summary>
    public Cylinders? Cylinders { get; }

    /// <summary>The tank that the engine draws from, or null when it is not stated. State a tank that engines share for one of them.</summary>
    public FuelTank? FuelTank { get; }

    /// <summary>A copy with the raw-water side.</summary>
    /// <param name="side">The raw-water side.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="side"/> is null.</exception>
    public LayUpSheet With(RawWaterSide side) => new(Guard.NotNull(side), Cylinders, FuelTank);

    /// <summary>A copy with the cylinders.</summary>
    /// <param name="cylinders">The cylinders.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="cylinders"/> is null.</exception>
    public LayUpSheet With(Cylinders cylinders) => new(RawWaterSide, Guard.NotNull(cylinders), FuelTank);

    /// <summary>A copy with the fuel tank.</summary>
    /// <param name="tank">The tank.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tank"/> is null.</exception>
    public LayUpSheet With(FuelTank tank) => new(RawWaterSide, Cylinders, Guard.NotNull(tank));
}
