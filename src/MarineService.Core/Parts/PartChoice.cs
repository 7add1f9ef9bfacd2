using MarineService.Core.Internal;

namespace MarineService.Core.Parts;

/// <summary>An original part against those offered in its place: the difference in money, and any safety attribute that is not known.</summary>
/// <remarks>A saving never outweighs a safety attribute that is not known.</remarks>
public sealed class PartChoice
{
    private PartChoice(string original, decimal originalPrice, IReadOnlyList<PartAlternative> alternatives) =>
        (Original, OriginalPrice, Alternatives) = (original, originalPrice, alternatives);

    /// <summary>The original part.</summary>
    public string Original { get; }

    /// <summary>What it costs, in the caller's currency.</summary>
    public decimal OriginalPrice { get; }

    /// <summary>The others: equivalent, conditional, not known, not equivalent; the cheaper first, then by name.</summary>
    public IReadOnlyList<PartAlternative> Alternatives { get; }

    /// <summary>The cheapest part that is equivalent and costs less than the original; null when the original is the choice.</summary>
    public PartAlternative? Cheaper => Alternatives.FirstOrDefault(part => part.Verdict == FilterVerdict.Equivalent && part.Price < OriginalPrice);

    /// <summary>A choice.</summary>
    /// <param name="original">The original by the caller's own number or name; not blank.</param>
    /// <param name="originalPrice">What it costs in the caller's currency; from 0 to 1,000,000.</param>
    /// <param name="alternatives">What is offered in its place; names distinct.</param>
    /// <returns>The choice.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="original"/> or <paramref name="alternatives"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="original"/> is blank, an item is null, or a name is used twice.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="originalPrice"/> is outside its range.</exception>
    public static PartChoice Between(string original, decimal originalPrice, params PartAlternative[] alternatives)
    {
        IReadOnlyList<PartAlternative> all = Guard.Items(alternatives);
        Names.Distinct(all.Select(part => part.Name), nameof(alternatives));
        return new(
            Guard.NotBlank(original),
            Guard.InRange(originalPrice, 0m, 1_000_000m, "of the currency"),
            Array.AsReadOnly<PartAlternative>([.. all.OrderBy(part => Rank(part.Verdict)).ThenBy(part => part.Price).ThenBy(part => part.Name, StringComparer.Ordinal)]));
    }

    /// <summary>Why: the choice, and each alternative with its difference and what is not known of it.</summary>
    /// <param name="units">Which units to write; money stays in the caller's currency.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new ExplanationBuilder(ToString() + ".").Add(Original, FormattableString.Invariant($"original at {OriginalPrice:0.00##}"));
        foreach (PartAlternative part in Alternatives)
        {
            decimal saving = part.SavingAgainst(OriginalPrice);
            lines.Add(part.Name, FormattableString.Invariant($"{part.ToString().Substring(part.Name.Length + 1)}; {(saving < 0 ? $"{-saving:0.00##} more" : $"{saving:0.00##} less")} than the original"));
        }

        return lines.Build(Citation.CommonPractice);
    }

    /// <summary>What to take.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Cheaper is PartAlternative part
        ? FormattableString.Invariant($"{part.Name} saves {part.SavingAgainst(OriginalPrice):0.00##} against {Original}")
        : $"take the original, {Original}";

    private static int Rank(FilterVerdict verdict) => verdict switch
    {
        FilterVerdict.Equivalent => 0,
        FilterVerdict.Conditional => 1,
        FilterVerdict.Unknown => 2,
        _ => 3,
    };
}
