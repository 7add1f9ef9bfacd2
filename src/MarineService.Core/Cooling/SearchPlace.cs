namespace MarineService.Core.Cooling;

/// <summary>A place to look for a missing piece of an impeller, with the reason.</summary>
public sealed class SearchPlace
{
    internal SearchPlace(int order, CircuitPlace place, bool isDownstream, string reason) =>
        (Order, Place, IsDownstream, Reason) = (order, place, isDownstream, reason);

    /// <summary>The order of the search, counted from 1.</summary>
    public int Order { get; }

    /// <summary>The place.</summary>
    public CircuitPlace Place { get; }

    /// <summary>True from the pump on with the flow; false on the suction side.</summary>
    public bool IsDownstream { get; }

    /// <summary>Why there.</summary>
    public string Reason { get; }

    /// <summary>Order, place and reason.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{Order}. {Place.Name}: {Reason}");
}
