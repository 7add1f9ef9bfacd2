using MarineService.Core.Internal;

namespace MarineService.Core.Fleet;

/// <summary>The data sheets that the engines of a fleet refer to.</summary>
public sealed class FleetCatalogue
{
    private readonly Dictionary<string, FleetSpecification> _byReference;

    private FleetCatalogue(FleetSpecification[] specifications)
    {
        Specifications = Array.AsReadOnly(specifications);
        _byReference = specifications.ToDictionary(specification => specification.Reference, StringComparer.Ordinal);
    }

    /// <summary>The data sheets in the order given.</summary>
    public IReadOnlyList<FleetSpecification> Specifications { get; }

    /// <summary>A catalogue.</summary>
    /// <param name="specifications">The data sheets; references distinct.</param>
    /// <returns>The catalogue.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="specifications"/> or an item is null.</exception>
    /// <exception cref="ArgumentException">A reference is used twice.</exception>
    public static FleetCatalogue Of(params FleetSpecification[] specifications)
    {
        FleetSpecification[] all = [.. Guard.Items(specifications)];
        Names.Distinct(all.Select(specification => specification.Reference), nameof(specifications));
        return new(all);
    }

    /// <summary>A data sheet by its reference.</summary>
    /// <param name="reference">The reference.</param>
    /// <returns>The data sheet, or null when there is none.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="reference"/> is null.</exception>
    public FleetSpecification? Find(string reference) =>
        _byReference.TryGetValue(Guard.NotNull(reference), out FleetSpecification? found) ? found : null;
}
