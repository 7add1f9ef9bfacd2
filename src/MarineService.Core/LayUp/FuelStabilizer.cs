using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.LayUp;

/// <summary>A fuel stabilizer by the dose on its label: so much of it treats so much fuel.</summary>
/// <remarks>Labels run from about 1.6 to 3.1 mL for each litre (from memory); the label in the hand decides.</remarks>
public sealed class FuelStabilizer
{
    private FuelStabilizer(string name, double milliliters, double treatsLiters) => (Name, Milliliters, TreatsLiters) = (name, milliliters, treatsLiters);

    /// <summary>What people call it.</summary>
    public string Name { get; }

    /// <summary>How much of it the label measures out.</summary>
    public Volume Dose => Volume.FromMilliliters(Milliliters);

    /// <summary>How much fuel that treats.</summary>
    public Volume Treats => Volume.FromLiters(TreatsLiters);

    internal double Milliliters { get; }

    internal double TreatsLiters { get; }

    /// <summary>A stabilizer.</summary>
    /// <param name="name">What people call it; not blank.</param>
    /// <param name="dose">How much of it the label measures out: above 0, at most a tenth of <paramref name="treats"/>.</param>
    /// <param name="treats">How much fuel that treats: above 0, at most 10,000 L.</param>
    /// <returns>The stabilizer.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A volume is outside its range.</exception>
    /// <example><code>FuelStabilizer.Of("stabilizer", dose: Volume.FromUsOunces(1), treats: Volume.FromUsGallons(5));</code></example>
    public static FuelStabilizer Of(string name, Volume dose, Volume treats)
    {
        Guard.NotBlank(name);
        double treatsLiters = LayUpGuard.LitersAbove0(treats);
        double doseLiters = Guard.InRange(Guard.Positive(Canonical.Liters(dose), "L", nameof(dose)), 0, treatsLiters / 10, "L, a tenth of what it treats", nameof(dose));
        return new(name, 1000 * doseLiters, treatsLiters);
    }

    /// <summary>What people call it.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Name;

    internal double MillilitersFor(double fuelLiters) => Milliliters * (fuelLiters / TreatsLiters);
}
