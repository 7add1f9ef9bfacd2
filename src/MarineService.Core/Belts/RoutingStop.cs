namespace MarineService.Core.Belts;

/// <summary>One entry of a routing: the pulley that the belt comes to, and the face that touches it.</summary>
/// <param name="PulleyName">The pulley's name.</param>
/// <param name="Face">The face of the belt on that pulley.</param>
public sealed record RoutingStop(string PulleyName, BeltFace Face)
{
    /// <summary>The stop as it is written in a list: "tensioner(back)", or the bare name on the ribbed face.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Face == BeltFace.Back ? $"{PulleyName}(back)" : PulleyName;
}
