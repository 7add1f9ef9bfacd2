using MarineService.Core.Internal;

namespace MarineService.Core.Parts;

/// <summary>The packs in which one part is sold, with their prices in the caller's currency.</summary>
public sealed class PartOffers
{
    private PartOffers(string part, IReadOnlyList<PackOffer> packs) => (Part, Packs) = (part, packs);

    /// <summary>The number of the part.</summary>
    public string Part { get; }

    /// <summary>The packs, in the order given; their amounts are in the part's unit of issue.</summary>
    public IReadOnlyList<PackOffer> Packs { get; }

    /// <summary>The packs of a part.</summary>
    /// <param name="part">The number of the part; not blank.</param>
    /// <param name="packs">The packs; 1 to 64, names distinct.</param>
    /// <returns>The offers.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="part"/> is blank, an item is null, a name is used twice, or there are none or more than 64.</exception>
    public static PartOffers Of(string part, params PackOffer[] packs) => new(Guard.NotBlank(part), Purchase.Offers(packs, nameof(packs)));

    /// <summary>The cheapest packs that cover an amount.</summary>
    /// <param name="needed">The amount; from 0 to 1,000,000,000 in the part's unit of issue.</param>
    /// <returns>The purchase; not known when the amount is too large to be reckoned in the measure that all packs share.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="needed"/> is outside its range.</exception>
    public Answer<Purchase> Cheapest(decimal needed) => Cover(Guard.InRange(needed, 0m, 1_000_000_000m, "of the unit"));

    /// <summary>The part and how many packs there are.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{Part}: {string.Join(", ", Packs)}");

    /// <summary>As <see cref="Cheapest"/>, for an amount that was worked out and knows no upper end.</summary>
    internal Answer<Purchase> Cover(decimal needed) => Purchase.Fault(needed, Packs) is string fault
        ? Answer.NotKnown<Purchase>($"What to buy of '{Part}': {fault}")
        : Answer.Known(Purchase.Cheapest(needed, [.. Packs]));
}
