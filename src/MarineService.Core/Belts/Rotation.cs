using MarineService.Core.Internal;

namespace MarineService.Core.Belts;

/// <summary>A sense of turning together with the end of the engine from which it is seen.</summary>
/// <remarks>
/// <para>The default value is clockwise, seen from the pulley end.</para>
/// <para>Standards look from different ends and boat people from a third place, so a sense is never kept without its viewpoint.
/// Two values are equal when both parts are; <see cref="IsSameTurningAs"/> compares what the shaft does.</para>
/// </remarks>
public readonly record struct Rotation
{
    private Rotation(Sense sense, Viewpoint seenFrom) => (Sense, SeenFrom) = (sense, seenFrom);

    /// <summary>The sense, as it looks from <see cref="SeenFrom"/>.</summary>
    public Sense Sense { get; }

    /// <summary>Where the observer stands.</summary>
    public Viewpoint SeenFrom { get; }

    /// <summary>+1 when counter-clockwise seen from the pulley end, -1 when clockwise.</summary>
    internal int Sign => AsSeenFrom(Viewpoint.PulleyEnd) == Sense.CounterClockwise ? 1 : -1;

    /// <summary>A sense and where it is seen from.</summary>
    /// <param name="sense">The sense.</param>
    /// <param name="seenFrom">The end from which it looks so.</param>
    /// <returns>The rotation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not a defined value.</exception>
    public static Rotation Of(Sense sense, Viewpoint seenFrom) => new(Guard.Defined(sense), Guard.Defined(seenFrom));

    /// <summary>The same turning of the shaft, as it looks from an end.</summary>
    /// <param name="viewpoint">The end to look from.</param>
    /// <returns>The sense seen from there.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="viewpoint"/> is not a defined value.</exception>
    public Sense AsSeenFrom(Viewpoint viewpoint) => Guard.Defined(viewpoint) == SeenFrom ? Sense : Opposite(Sense);

    /// <summary>Whether the shaft turns the same way, wherever each value was seen from.</summary>
    /// <param name="other">The other rotation.</param>
    /// <returns>True when both describe the same turning.</returns>
    public bool IsSameTurningAs(Rotation other) => Sign == other.Sign;

    /// <summary>Sense and viewpoint: "clockwise, seen from the pulley end".</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => $"{Word(Sense)}, seen from the {Word(SeenFrom)}";

    internal static Rotation FromSign(int sign) => new(sign > 0 ? Sense.CounterClockwise : Sense.Clockwise, Viewpoint.PulleyEnd);

    internal static Sense Opposite(Sense sense) => sense == Sense.Clockwise ? Sense.CounterClockwise : Sense.Clockwise;

    internal static string Word(Sense sense) => sense == Sense.Clockwise ? "clockwise" : "counter-clockwise";

    internal static string Word(Viewpoint viewpoint) => viewpoint == Viewpoint.PulleyEnd ? "pulley end" : "flywheel end";
}
