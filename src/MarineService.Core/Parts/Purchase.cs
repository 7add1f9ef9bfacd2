using MarineService.Core.Internal;

namespace MarineService.Core.Parts;

/// <summary>The cheapest packs that cover an amount, exactly.</summary>
/// <remarks>
/// Among purchases of the same price the one with the least left over wins, then the one with the fewest packs, then the one with the most
/// packs of the largest size; so the answer is the same every time, whatever the order of the offers.
/// </remarks>
/// <example><code>Purchase.Cheapest(5.7m, PackOffer.Of("can", 5m, 40m), PackOffer.Of("bottle", 1m, 11m)); // 1 x can, 1 x bottle: 51.00</code></example>
public sealed class Purchase
{
    internal const int MostOffers = 64;
    private const decimal MostNeeded = 100_000m;

    private readonly IReadOnlyList<PackOffer> _offers;

    private Purchase(decimal needed, IReadOnlyList<PackLine> lines, IReadOnlyList<PackOffer> offers) =>
        (Needed, Lines, _offers) = (needed, lines, offers);

    /// <summary>The amount to be covered; 0 or more in the unit of the packs.</summary>
    public decimal Needed { get; }

    /// <summary>What to buy, the largest packs first; empty when nothing is needed.</summary>
    public IReadOnlyList<PackLine> Lines { get; }

    /// <summary>What it costs, in the caller's currency.</summary>
    public decimal Price => Lines.Sum(line => line.Price);

    /// <summary>How much is bought; 0 or more in the unit of the packs.</summary>
    public decimal Amount => Lines.Sum(line => line.Count * line.Pack.Amount);

    /// <summary>How much is left over; never below 0.</summary>
    public decimal Surplus => Amount - Needed;

    /// <summary>The losing candidate: the cheapest purchase of one size only; null when nothing is needed.</summary>
    public PackLine? CheapestOfOneSize => Needed == 0 ? null
        : _offers.Select(pack => new PackLine(pack, (int)decimal.Ceiling(Needed / pack.Amount)))
            .OrderBy(line => line.Price).ThenBy(line => line.Count * line.Pack.Amount).ThenBy(line => line.Count).First();

    /// <summary>The cheapest packs that cover an amount.</summary>
    /// <param name="needed">The amount; from 0 to 100,000 in the unit of the packs.</param>
    /// <param name="offers">The sizes; at least one, names distinct; at most 64.</param>
    /// <returns>The purchase.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="offers"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="needed"/> is outside its range.</exception>
    /// <exception cref="ArgumentException">There is no offer or more than 64, an item is null, a name is used twice, or the amount is more than 2,000,000 times the greatest measure that all sizes share.</exception>
    public static Purchase Cheapest(decimal needed, params PackOffer[] offers)
    {
        Guard.InRange(needed, 0m, MostNeeded, "of the unit");
        IReadOnlyList<PackOffer> all = Offers(offers, nameof(offers));
        if (Fault(needed, all) is string fault)
        {
            throw new ArgumentException(fault, nameof(offers));
        }

        PackOffer[] ordered =
        [
            .. all.OrderByDescending(offer => offer.Amount).ThenBy(offer => offer.Price).ThenBy(offer => offer.Name, StringComparer.Ordinal),
        ];
        long[] amounts = Array.ConvertAll(ordered, offer => (long)(offer.Amount * 1_000m));
        long grain = amounts.Aggregate(PackMath.GreatestCommonDivisor);
        long units = (long)decimal.Ceiling(needed * 1_000m / grain);
        int[] counts = PackMath.Cheapest((int)units, Array.ConvertAll(amounts, amount => amount / grain), Array.ConvertAll(ordered, offer => (long)(offer.Price * 10_000m)));
        return new(
            needed,
            Array.AsReadOnly<PackLine>([.. counts.Select((count, i) => (count, i)).Where(pair => pair.count > 0).Select(pair => new PackLine(ordered[pair.i], pair.count))]),
            all);
    }

    /// <summary>Why: what to buy, what is left over, and the cheapest purchase of one size.</summary>
    /// <param name="units">Which units to write; amounts stay in the unit of the packs.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new ExplanationBuilder(ToString() + ".")
            .Add("needed", FormattableString.Invariant($"{Needed:0.###}"))
            .Add("bought", FormattableString.Invariant($"{Amount:0.###}, {Surplus:0.###} left over"));
        if (CheapestOfOneSize is PackLine one)
        {
            lines.Add("of one size", FormattableString.Invariant($"{one}: {one.Price:0.00##}"));
        }

        return lines.Build(Citation.Derived("the recurrence over every amount up to the one needed; checked by exhaustive search"));
    }

    /// <summary>What to buy and what it costs.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Lines.Count == 0
        ? "nothing to buy"
        : FormattableString.Invariant($"{string.Join(", ", Lines)}: {Price:0.00##}");

    /// <summary>The packs, checked.</summary>
    internal static IReadOnlyList<PackOffer> Offers(IEnumerable<PackOffer>? offers, string argument)
    {
        IReadOnlyList<PackOffer> all = Guard.Items(offers, argument);
        Names.Distinct(all.Select(offer => offer.Name), argument);
        return all.Count is 0 or > MostOffers
            ? throw new ArgumentException(FormattableString.Invariant($"Must be 1 to {MostOffers} pack sizes; there are {all.Count}."), argument)
            : all;
    }

    /// <summary>Why an amount cannot be reckoned in the measure that all packs share, or null.</summary>
    internal static string? Fault(decimal needed, IReadOnlyList<PackOffer> offers)
    {
        long grain = offers.Select(offer => (long)(offer.Amount * 1_000m)).Aggregate(PackMath.GreatestCommonDivisor);
        return needed > MostNeeded
            ? FormattableString.Invariant($"{needed:0.###} is more than {MostNeeded}.")
            : decimal.Ceiling(needed * 1_000m / grain) > PackMath.MostUnits
                ? FormattableString.Invariant($"All sizes share only a measure of {grain / 1000m:0.###}, and {needed:0.###} is more than {PackMath.MostUnits} of it.")
            : null;
    }
}
