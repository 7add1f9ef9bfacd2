namespace MarineService.Core.Parts;

/// <summary>So many packs of one size.</summary>
public sealed record PackLine
{
    internal PackLine(PackOffer pack, int count) => (Pack, Count) = (pack, count);

    /// <summary>The pack size.</summary>
    public PackOffer Pack { get; }

    /// <summary>How many; above 0.</summary>
    public int Count { get; }

    /// <summary>What they cost together, in the caller's currency.</summary>
    public decimal Price => Count * Pack.Price;

    /// <summary>Count and pack.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{Count} x {Pack.Name}");
}
