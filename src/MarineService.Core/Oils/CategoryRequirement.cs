using MarineService.Core.Internal;

namespace MarineService.Core.Oils;

/// <summary>One demand of the engine's maker: any one of these categories will do.</summary>
public sealed class CategoryRequirement
{
    private CategoryRequirement(IReadOnlyList<CategoryClaim> anyOf) => AnyOf = anyOf;

    /// <summary>The categories, any one of which meets the demand; at least one.</summary>
    public IReadOnlyList<CategoryClaim> AnyOf { get; }

    /// <summary>A demand.</summary>
    /// <param name="anyOf">The categories, any one of which will do; at least one.</param>
    /// <returns>The demand.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="anyOf"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="anyOf"/> is empty or holds null.</exception>
    public static CategoryRequirement OneOf(params CategoryClaim[] anyOf)
    {
        IReadOnlyList<CategoryClaim> items = Guard.Items(anyOf);
        return items.Count == 0 ? throw new ArgumentException("Must name at least one category.", nameof(anyOf)) : new(items);
    }

    /// <summary>The categories joined by "or".</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() => string.Join(" or ", AnyOf);
}
