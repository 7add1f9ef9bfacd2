using MarineService.Core.Internal;

namespace MarineService.Core.Parts;

/// <summary>One size in which something is sold: how much is in it and what it costs.</summary>
public sealed record PackOffer
{
    internal const decimal LeastAmount = 0.001m;
    internal const decimal MostAmount = 100_000m;
    internal const int AmountDecimals = 3;
    internal const decimal MostPrice = 1_000_000m;
    internal const int PriceDecimals = 4;

    private PackOffer(string name, decimal amount, decimal price) => (Name, Amount, Price) = (name, amount, price);

    /// <summary>The pack by the caller's own name.</summary>
    public string Name { get; }

    /// <summary>How much is in it; above 0 in the unit in which the need is stated.</summary>
    public decimal Amount { get; }

    /// <summary>What one costs, in the caller's currency.</summary>
    public decimal Price { get; }

    /// <summary>A pack size.</summary>
    /// <param name="name">The caller's own name; not blank.</param>
    /// <param name="amount">How much is in it; from 0.001 to 100,000 with at most three decimals.</param>
    /// <param name="price">What one costs in the caller's currency; from 0 to 1,000,000 with at most four decimals.</param>
    /// <returns>The pack size.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A figure is outside its range or has more decimals.</exception>
    public static PackOffer Of(string name, decimal amount, decimal price) => new(
        Guard.NotBlank(name),
        Decimals(Guard.InRange(amount, LeastAmount, MostAmount, "of the unit"), AmountDecimals, nameof(amount)),
        Decimals(Guard.InRange(price, 0m, MostPrice, "of the currency"), PriceDecimals, nameof(price)));

    /// <summary>Name, amount and price.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{Name} ({Amount:0.###} at {Price:0.00##})");

    internal static decimal Decimals(decimal value, int most, string argument) => decimal.Round(value, most) == value
        ? value
        : throw new ArgumentOutOfRangeException(argument, value, FormattableString.Invariant($"Must have at most {most} decimals."));
}
