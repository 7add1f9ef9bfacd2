using MarineService.Core.Internal;

namespace MarineService.Core.Parts;

/// <summary>So much of one part, perhaps for an occasion that several tasks of a visit share.</summary>
public sealed record KitItem
{
    internal const decimal Least = 0.001m;
    internal const decimal Most = 100_000m;

    private KitItem(string part, decimal quantity, string? occasion) => (Part, Quantity, Occasion) = (part, quantity, occasion);

    /// <summary>The number of the part.</summary>
    public string Part { get; }

    /// <summary>How much, from 0.001 to 100,000 in the part's unit of issue.</summary>
    public decimal Quantity { get; }

    /// <summary>What it is for when tasks share it, such as "pump cover"; null when each task needs its own.</summary>
    public string? Occasion { get; }

    /// <summary>So much of a part.</summary>
    /// <param name="part">The number of the part; not blank.</param>
    /// <param name="quantity">How much; from 0.001 to 100,000 in the part's unit of issue.</param>
    /// <returns>The item.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="part"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="part"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="quantity"/> is outside its range.</exception>
    public static KitItem Of(string part, decimal quantity = 1m) =>
        new(Guard.NotBlank(part), Guard.InRange(quantity, Least, Most, "of the part"), null);

    /// <summary>A copy that is needed once, however many tasks of the visit open the same thing.</summary>
    /// <param name="occasion">What they share, such as "pump cover"; not blank.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="occasion"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="occasion"/> is blank.</exception>
    public KitItem OnceFor(string occasion) => new(Part, Quantity, Guard.NotBlank(occasion));

    /// <summary>So many times as much of it; what is worked out knows no upper end.</summary>
    internal KitItem Times(decimal times, string? occasion) => new(Part, Quantity * times, occasion ?? Occasion);

    /// <summary>Quantity and part.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{Quantity:0.###} x {Part}");
}
