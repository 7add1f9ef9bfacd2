using MarineService.Core.Internal;

namespace MarineService.Core.Cooling;

/// <summary>Which way the impeller turns, with the side of the pump from which it is seen.</summary>
/// <remarks>
/// The default value is clockwise, seen from the cover. Two values are equal when both parts are; <see cref="FromCover"/> is what the
/// impeller does. An engine of the other hand turns its pump the other way, and the vanes then bend the other way.
/// </remarks>
public readonly record struct PumpRotation
{
    private PumpRotation(Sense sense, PumpSide seenFrom) => (Sense, SeenFrom) = (sense, seenFrom);

    /// <summary>The sense, as it looks from <see cref="SeenFrom"/>.</summary>
    public Sense Sense { get; }

    /// <summary>Where the observer stands.</summary>
    public PumpSide SeenFrom { get; }

    /// <summary>The sense as it looks from the cover.</summary>
    public Sense FromCover => SeenFrom == PumpSide.Cover ? Sense : Opposite(Sense);

    /// <summary>Which way the tips of the vanes lean, seen from the cover: they trail, so against the turning.</summary>
    public Sense TipsLeanFromCover => Opposite(FromCover);

    /// <summary>A sense and where it is seen from.</summary>
    /// <param name="sense">The sense.</param>
    /// <param name="seenFrom">The side from which it looks so.</param>
    /// <returns>The rotation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not a defined value.</exception>
    public static PumpRotation Of(Sense sense, PumpSide seenFrom) => new(Guard.Defined(sense), Guard.Defined(seenFrom));

    /// <summary>Sense and side: "clockwise, seen from the cover".</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => $"{Word(Sense)}, seen from the {(SeenFrom == PumpSide.Cover ? "cover" : "drive")}";

    internal static Sense Opposite(Sense sense) => sense == Sense.Clockwise ? Sense.CounterClockwise : Sense.Clockwise;

    internal static string Word(Sense sense) => sense == Sense.Clockwise ? "clockwise" : "counter-clockwise";
}
