using MarineService.Core.Internal;

namespace MarineService.Core.Engines;

/// <summary>A boat: its name, where it is kept, in which water, and whether its raw-water inlet has a seacock.</summary>
public sealed class Boat
{
    private Boat(string name, KeptWhere kept, WaterKind water, bool? hasSeacock) =>
        (Name, Kept, Water, HasSeacock) = (name, kept, water, hasSeacock);

    /// <summary>The boat's name.</summary>
    public string Name { get; }

    /// <summary>Where it is kept in season.</summary>
    public KeptWhere Kept { get; }

    /// <summary>The water it lies in.</summary>
    public WaterKind Water { get; }

    /// <summary>Whether the raw-water inlet has a seacock; null when it is not stated.</summary>
    public bool? HasSeacock { get; }

    /// <summary>A boat.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="kept">Where it is kept in season.</param>
    /// <param name="water">The water it lies in.</param>
    /// <param name="hasSeacock">Whether the raw-water inlet has a seacock; null when it is not stated.</param>
    /// <returns>The boat.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An enum value is not defined.</exception>
    public static Boat Of(string name, KeptWhere kept = KeptWhere.NotStated, WaterKind water = WaterKind.NotStated, bool? hasSeacock = null) =>
        new(Guard.NotBlank(name), Guard.Defined(kept), Guard.Defined(water), hasSeacock);

    /// <summary>The boat's name.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Name;
}
