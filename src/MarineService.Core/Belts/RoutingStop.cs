using MarineService.Core.Internal;

namespace MarineService.Core.Belts;

/// <summary>One entry of a routing: the pulley that the belt comes to, and the face that touches it.</summary>
public sealed record RoutingStop
{
    private RoutingStop(string pulleyName, BeltFace face) => (PulleyName, Face) = (pulleyName, face);

    /// <summary>The pulley's name.</summary>
    public string PulleyName { get; }

    /// <summary>The face of the belt on that pulley.</summary>
    public BeltFace Face { get; }

    /// <summary>A stop on a pulley.</summary>
    /// <param name="pulleyName">The pulley's name; not blank.</param>
    /// <param name="face">The face of the belt that touches it.</param>
    /// <returns>The stop.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="pulleyName"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="pulleyName"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="face"/> is not a defined value.</exception>
    public static RoutingStop On(string pulleyName, BeltFace face) => new(Guard.NotBlank(pulleyName), Guard.Defined(face));

    /// <summary>The stop as it is written in a list: "tensioner(back)", or the bare name on the ribbed face.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Face == BeltFace.Back ? $"{PulleyName}(back)" : PulleyName;
}
