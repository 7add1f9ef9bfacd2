namespace MarineService.Core.Parts;

/// <summary>One part of a kit list: who wants it, what the shelf gives, what is to be bought.</summary>
public sealed class KitLine
{
    internal KitLine(ServicePart part, decimal wanted, decimal aboard, decimal onShelf, IReadOnlyList<string> wantedBy)
    {
        (Part, Wanted, Aboard, OnShelf, WantedBy) = (part, wanted, aboard, onShelf, wantedBy);
        decimal withReserve = wanted * (1 + part.ReserveFraction);
        Reserve = (part.Unit is null ? decimal.Ceiling(withReserve) : withReserve) - wanted;
    }

    /// <summary>The part.</summary>
    public ServicePart Part { get; }

    /// <summary>What the tasks use; 0 or more in the part's unit of issue.</summary>
    public decimal Wanted { get; }

    /// <summary>What is taken along on top; whole pieces are rounded up.</summary>
    public decimal Reserve { get; }

    /// <summary>What must be aboard as a spare when the visit is over; 0 or more in the part's unit of issue.</summary>
    public decimal Aboard { get; }

    /// <summary>What the shelf holds; never below 0.</summary>
    public decimal OnShelf { get; }

    /// <summary>All that the visit takes: use, reserve and spares; above 0 in the part's unit of issue.</summary>
    public decimal Total => Wanted + Reserve + Aboard;

    /// <summary>What comes off the shelf; 0 or more in the part's unit of issue.</summary>
    public decimal FromShelf => Math.Min(Total, OnShelf);

    /// <summary>What must be bought; 0 when the shelf has enough, and for a tool that is not said to be bought.</summary>
    public decimal ToBuy => Part.IsBoughtWhenMissing ? Total - FromShelf : 0;

    /// <summary>What must be gathered from elsewhere: tools that the shelf lacks; 0 for what is bought.</summary>
    public decimal ToGather => Total - FromShelf - ToBuy;

    /// <summary>The tasks and spares that want it, in the order of their names.</summary>
    public IReadOnlyList<string> WantedBy { get; }

    /// <summary>How the amount came about.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant(
        $"{Part}: {Total:0.###}{(Part.Unit is null ? string.Empty : " " + Part.Unit)} ({Wanted:0.###} for the tasks, {Reserve:0.###} reserve, {Aboard:0.###} spare aboard), {FromShelf:0.###} off the shelf, {Total - FromShelf:0.###} to {(Part.IsBoughtWhenMissing ? "buy" : "gather")}; for {string.Join(", ", WantedBy)}");
}
