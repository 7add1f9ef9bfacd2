namespace MarineService.Core.Belts;

/// <summary>One step from a belt that lies wrong to one that lies right.</summary>
public sealed class RoutingEdit
{
    internal RoutingEdit(RoutingEditKind kind, string pulleyName, string? otherName, BeltFace? face) =>
        (Kind, PulleyName, OtherName, Face) = (kind, pulleyName, otherName, face);

    /// <summary>What to do.</summary>
    public RoutingEditKind Kind { get; }

    /// <summary>The pulley at which to do it.</summary>
    public string PulleyName { get; }

    /// <summary>The pulley after which to insert, or the one to swap with; null otherwise.</summary>
    public string? OtherName { get; }

    /// <summary>The face that must touch the pulley afterwards, for an insertion or a turn; null otherwise.</summary>
    public BeltFace? Face { get; }

    /// <summary>The step in a mechanic's words.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Kind switch
    {
        RoutingEditKind.Insert => $"lead the belt over '{PulleyName}' after '{OtherName}', on the belt's {FaceWord}",
        RoutingEditKind.Remove => $"take the belt off '{PulleyName}'",
        RoutingEditKind.Swap => $"let '{PulleyName}' and '{OtherName}' change places",
        _ => $"turn the belt over at '{PulleyName}', so that it runs on the belt's {FaceWord}",
    };

    private string FaceWord => Face == BeltFace.Back ? "back" : "ribs";
}
