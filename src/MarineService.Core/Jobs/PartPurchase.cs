using MarineService.Core.Parts;

namespace MarineService.Core.Jobs;

/// <summary>What to buy of one part: the amount that the shelf lacks, and the cheapest packs that cover it.</summary>
public sealed class PartPurchase
{
    internal PartPurchase(KitLine line, Answer<Purchase> packs) => (Line, Packs) = (line, packs);

    /// <summary>The part's line of the kit list; <see cref="KitLine.ToBuy"/> is the amount.</summary>
    public KitLine Line { get; }

    /// <summary>The cheapest packs, exactly; not known when no pack of the part is offered.</summary>
    public Answer<Purchase> Packs { get; }

    /// <summary>The amount, the part and the packs.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant(
        $"{Line.ToBuy:0.###}{(Line.Part.Unit is null ? string.Empty : " " + Line.Part.Unit)} of {Line.Part}: {(Packs.IsKnown ? Packs.Value.ToString() : "price not known")}");
}
