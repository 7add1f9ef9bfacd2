using MarineService.Core.Internal;

namespace MarineService.Core.Parts;

/// <summary>A part that is offered in place of the original one: its price, and what is known of it.</summary>
public sealed class PartAlternative
{
    private PartAlternative(string name, decimal price, FilterVerdict verdict, IReadOnlyList<string> unknownSafety) =>
        (Name, Price, Verdict, UnknownSafety) = (name, price, verdict, unknownSafety);

    /// <summary>The part by the caller's own number or name.</summary>
    public string Name { get; }

    /// <summary>What it costs, in the caller's currency.</summary>
    public decimal Price { get; }

    /// <summary>Whether it may stand in.</summary>
    public FilterVerdict Verdict { get; }

    /// <summary>The safety attributes that nobody knows.</summary>
    public IReadOnlyList<string> UnknownSafety { get; }

    /// <summary>A filter that was held against what the engine needs.</summary>
    /// <param name="comparison">How it came out.</param>
    /// <param name="price">What it costs in the caller's currency; from 0 to 1,000,000.</param>
    /// <returns>The alternative.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="comparison"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="price"/> is outside its range.</exception>
    public static PartAlternative Of(FilterComparison comparison, decimal price) => new(
        Guard.NotNull(comparison).Filter.Name,
        Guard.InRange(price, 0m, 1_000_000m, "of the currency"),
        comparison.Verdict,
        Array.AsReadOnly<string>([.. comparison.UnknownSafety.Select(attribute => attribute.Name)]));

    /// <summary>Another part, with the safety attributes that nobody knows; it counts as equivalent only when there is none.</summary>
    /// <param name="name">The caller's own number or name; not blank.</param>
    /// <param name="price">What it costs in the caller's currency; from 0 to 1,000,000.</param>
    /// <param name="unknownSafety">What is not known, such as "fire rating"; distinct, none blank.</param>
    /// <returns>The alternative.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> or <paramref name="unknownSafety"/> is null.</exception>
    /// <exception cref="ArgumentException">A text is blank, or an attribute is named twice.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="price"/> is outside its range.</exception>
    public static PartAlternative Of(string name, decimal price, params string[] unknownSafety)
    {
        IReadOnlyList<string> unknown = Names.Distinct(unknownSafety, nameof(unknownSafety));
        return new(
            Guard.NotBlank(name),
            Guard.InRange(price, 0m, 1_000_000m, "of the currency"),
            unknown.Count == 0 ? FilterVerdict.Equivalent : FilterVerdict.Unknown,
            unknown);
    }

    /// <summary>What is saved against the original; below 0 when the alternative costs more.</summary>
    /// <param name="originalPrice">What the original costs in the same currency; from 0 to 1,000,000.</param>
    /// <returns>The difference in the caller's currency.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="originalPrice"/> is outside its range.</exception>
    public decimal SavingAgainst(decimal originalPrice) => Guard.InRange(originalPrice, 0m, 1_000_000m, "of the currency") - Price;

    /// <summary>Name, price and what is known.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant(
        $"{Name} at {Price:0.00##}: {(Verdict switch { FilterVerdict.Equivalent => "equivalent", FilterVerdict.Conditional => "conditional", FilterVerdict.NotEquivalent => "not equivalent", _ => "not known" })}{(UnknownSafety.Count == 0 ? string.Empty : ", not known: " + string.Join(", ", UnknownSafety))}");
}
