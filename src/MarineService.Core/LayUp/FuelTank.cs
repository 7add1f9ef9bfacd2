using MarineService.Core.Engines;
using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.LayUp;

/// <summary>A fuel tank: what is in it and how much it holds.</summary>
public sealed class FuelTank
{
    internal const string PlainTitle = "fuel tank";

    private FuelTank(Fuel fuel, double capacityLiters, string title) => (Fuel, CapacityLiters, Title) = (fuel, capacityLiters, title);

    /// <summary>What is in it.</summary>
    public Fuel Fuel { get; }

    /// <summary>How much it holds when it is full.</summary>
    public Volume Capacity => Volume.FromLiters(CapacityLiters);

    /// <summary>What people call it.</summary>
    public string Title { get; }

    internal double CapacityLiters { get; }

    /// <summary>A tank.</summary>
    /// <param name="fuel">What is in it.</param>
    /// <param name="capacity">Above 0, at most 10,000 L.</param>
    /// <param name="title">What people call it; not blank.</param>
    /// <returns>The tank.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="title"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="title"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static FuelTank Of(Fuel fuel, Volume capacity, string title = PlainTitle) =>
        new(Guard.Defined(fuel), LayUpGuard.LitersAbove0(capacity), Guard.NotBlank(title));

    /// <summary>What people call it.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Title;
}
