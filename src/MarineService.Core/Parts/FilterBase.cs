using MarineService.Core.Internal;

namespace MarineService.Core.Parts;

/// <summary>A base of the engine on which a spin-on filter goes: which part, what the base needs, and what the part's maker says of it.</summary>
/// <example><code>FilterBase.Of("LV-FIL-1", FilterNeed.Of(FilterKind.EngineOil, FilterOrientation.GasketUp).WithThread(FilterThread.Inch(3, 4, 16)));</code></example>
public sealed class FilterBase
{
    private FilterBase(string part, FilterNeed need, FilterSpecification? filter) => (Part, Need, Filter) = (part, need, filter);

    /// <summary>The number of the part that goes on it.</summary>
    public string Part { get; }

    /// <summary>What the base needs.</summary>
    public FilterNeed Need { get; }

    /// <summary>The part as its maker describes it, under its number; null when that is not stated.</summary>
    public FilterSpecification? Filter { get; }

    /// <summary>Whether the part may go on; not known when nothing is stated of it.</summary>
    public Answer<FilterComparison> Comparison => Filter is null
        ? Answer.NotKnown<FilterComparison>($"What the maker of '{Part}' says of it: thread, gasket, bypass, burst pressure.")
        : Answer.Known(Need.Compare(Filter));

    /// <summary>A base and the part that goes on it.</summary>
    /// <param name="part">The number of the part; not blank.</param>
    /// <param name="need">What the base needs.</param>
    /// <returns>The base.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="part"/> is blank.</exception>
    public static FilterBase Of(string part, FilterNeed need) => new(Guard.NotBlank(part), Guard.NotNull(need), null);

    /// <summary>A copy with the part as its maker describes it.</summary>
    /// <param name="filter">The description; its name is the number of the part.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="filter"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="filter"/> has another name.</exception>
    public FilterBase With(FilterSpecification filter) => Guard.NotNull(filter).Name == Part
        ? new(Part, Need, filter)
        : throw new ArgumentException($"It is '{filter.Name}'; must be '{Part}'.", nameof(filter));

    /// <summary>The part and what it filters.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => $"{Part}: {Need.Kind}";
}
