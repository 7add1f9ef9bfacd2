using MarineService.Core.Internal;

namespace MarineService.Core.Parts;

/// <summary>A kind of loose part at one place: screws, clips, pins, washers.</summary>
/// <remarks>Two are equal when all four members are. A washer that is captive on its screw still is counted: it can come off.</remarks>
public sealed record LoosePart
{
    internal const int MostWashers = 4;

    private LoosePart(string name, LoosePartKind kind, string place, int captiveWashers) =>
        (Name, Kind, Place, CaptiveWashers) = (name, kind, place, captiveWashers);

    /// <summary>What it is, such as "M6 x 20 screw".</summary>
    public string Name { get; }

    /// <summary>Its kind.</summary>
    public LoosePartKind Kind { get; }

    /// <summary>Where it belongs, such as "pump cover".</summary>
    public string Place { get; }

    /// <summary>How many washers are captive on each; 0 when none.</summary>
    public int CaptiveWashers { get; }

    /// <summary>A kind of loose part.</summary>
    /// <param name="name">What it is; not blank.</param>
    /// <param name="kind">Its kind.</param>
    /// <param name="place">Where it belongs; not blank.</param>
    /// <param name="captiveWashers">How many washers are captive on each; from 0 to 4.</param>
    /// <returns>The kind of part.</returns>
    /// <exception cref="ArgumentNullException">A text is null.</exception>
    /// <exception cref="ArgumentException">A text is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> is not a defined value, or <paramref name="captiveWashers"/> is outside its range.</exception>
    public static LoosePart Of(string name, LoosePartKind kind, string place, int captiveWashers = 0) =>
        new(Guard.NotBlank(name), Guard.Defined(kind), Guard.NotBlank(place), Guard.InRange(captiveWashers, 0, MostWashers, "washers"));

    /// <summary>Name and place.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => $"{Name} of {Place}";

    /// <summary>The washers that are captive on it, as a kind of part of their own.</summary>
    internal LoosePart Washer => new($"captive washer on {Name}", LoosePartKind.Washer, Place, 0);
}
