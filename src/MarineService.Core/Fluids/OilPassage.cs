using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Fluids;

/// <summary>Oil that lies outside the sump: an oil cooler, a remote filter, long hoses.</summary>
/// <remarks>
/// What drains is part of the service fill already. What does not drain stays as old oil at every change and is counted in
/// the share of old oil that is left, not in the service fill.
/// </remarks>
public sealed class OilPassage
{
    private OilPassage(string name, double liters, bool drains) => (Name, Liters, Drains) = (name, liters, drains);

    /// <summary>What it is, such as "oil cooler".</summary>
    public string Name { get; }

    /// <summary>What it holds.</summary>
    public Volume Volume => Volume.FromLiters(Liters);

    /// <summary>Whether its oil leaves with the drain.</summary>
    public bool Drains { get; }

    internal double Liters { get; }

    /// <summary>A passage.</summary>
    /// <param name="name">What it is; not blank.</param>
    /// <param name="volume">Above 0, at most 1,000 L.</param>
    /// <param name="drains">Whether its oil leaves with the drain.</param>
    /// <returns>The passage.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="volume"/> is outside its range.</exception>
    public static OilPassage Of(string name, Volume volume, bool drains) =>
        new(
            Guard.NotBlank(name),
            Guard.InRange(Guard.Positive(Canonical.Liters(volume), "L", nameof(volume)), 0, 1000, "L", nameof(volume)),
            drains);

    /// <summary>Name, volume and whether it drains, metric and invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Name} {FigureUnit.Liter.Write(Liters, DisplayUnits.Metric)}, {(Drains ? "drains" : "does not drain")}";
}
