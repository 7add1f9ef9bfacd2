using MarineService.Core.Internal;

namespace MarineService.Core.Oils;

/// <summary>What the engine's maker permits in the sump: grades in order of preference, required and forbidden service categories.</summary>
/// <remarks>Never changes; each With gives a new one. The maker's list always wins over any general figure.</remarks>
public sealed class PermittedOils
{
    private PermittedOils(IReadOnlyList<PermittedGrade> grades, IReadOnlyList<CategoryRequirement> required, IReadOnlyList<ServiceCategory> forbidden) =>
        (Grades, Required, Forbidden) = (grades, required, forbidden);

    /// <summary>The permitted grades; the maker's order unless a grade says its preference. At least one.</summary>
    public IReadOnlyList<PermittedGrade> Grades { get; }

    /// <summary>The required categories: each must be met, by any one of its members.</summary>
    public IReadOnlyList<CategoryRequirement> Required { get; }

    /// <summary>The categories that the maker forbids.</summary>
    public IReadOnlyList<ServiceCategory> Forbidden { get; }

    /// <summary>Permitted grades, the maker's first choice first.</summary>
    /// <param name="grades">At least one; no grade twice.</param>
    /// <returns>The permission.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="grades"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="grades"/> is empty, holds null, or names a grade twice.</exception>
    public static PermittedOils Of(params PermittedGrade[] grades) => Of(Guard.Items(grades), nameof(grades));

    /// <summary>Permitted grades by their designations, the maker's first choice first.</summary>
    /// <param name="designations">At least one, such as "15W-40"; none twice.</param>
    /// <returns>The permission.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="designations"/> or an item is null.</exception>
    /// <exception cref="ArgumentException">It is empty, names a grade twice, or holds text that is not a grade.</exception>
    public static PermittedOils Of(params string[] designations) =>
        Of(Guard.Items(designations).Select(text => PermittedGrade.Of(SaeGrade.Parse(text, nameof(designations)))), nameof(designations));

    /// <summary>Adds a required category; every one that is added must be met.</summary>
    /// <param name="anyOf">The categories, any one of which will do; at least one.</param>
    /// <returns>The permission with the demand.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="anyOf"/> or an item is null.</exception>
    /// <exception cref="ArgumentException">It is empty or holds text that is not a known category.</exception>
    public PermittedOils Requiring(params string[] anyOf) =>
        Requiring(CategoryRequirement.OneOf([.. Guard.Items(anyOf).Select(text => CategoryClaim.Parse(text, nameof(anyOf)))]));

    /// <summary>Adds a required category; every one that is added must be met.</summary>
    /// <param name="requirement">The demand.</param>
    /// <returns>The permission with the demand.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="requirement"/> is null.</exception>
    public PermittedOils Requiring(CategoryRequirement requirement) => Requiring([Guard.NotNull(requirement)]);

    /// <summary>All demands at once, so that a long list is copied once.</summary>
    internal PermittedOils Requiring(IEnumerable<CategoryRequirement> requirements) => new(Grades, [.. Required, .. requirements], Forbidden);

    /// <summary>Adds categories that the maker forbids; they override any coverage.</summary>
    /// <param name="categories">The categories.</param>
    /// <returns>The permission with the ban.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="categories"/> or an item is null.</exception>
    /// <exception cref="ArgumentException">It holds text that is not a known category.</exception>
    public PermittedOils Forbidding(params string[] categories) =>
        new(Grades, Required, [.. Forbidden, .. Guard.Items(categories).Select(text => ServiceCategory.Parse(text, nameof(categories)))]);

    /// <summary>The grades and categories, metric and invariant.</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() =>
        string.Join(", ", Grades)
        + string.Concat(Required.Select(required => $"; {required}"))
        + (Forbidden.Count == 0 ? string.Empty : $"; never {string.Join(", ", Forbidden)}");

    /// <summary>Permitted grades, or null with the fault: none at all, or one twice.</summary>
    internal static PermittedOils? Of(IReadOnlyList<PermittedGrade> grades, out string? fault)
    {
        IGrouping<SaeGrade, PermittedGrade>? doubled = grades.GroupBy(item => item.Grade).FirstOrDefault(group => group.Count() > 1);
        fault = grades.Count == 0 ? "Must name at least one grade."
            : doubled is not null ? $"Names {doubled.Key.Designation} {doubled.Count()} times; each grade may be named once."
            : null;
        return fault is null ? new(grades, [], []) : null;
    }

    private static PermittedOils Of(IEnumerable<PermittedGrade> grades, string paramName) =>
        Of(Array.AsReadOnly<PermittedGrade>([.. grades]), out string? fault) ?? throw new ArgumentException(fault, paramName);

    /// <summary>The maker's preference of each grade: its own number, or its place in the list.</summary>
    internal int PreferenceOf(int index) => Grades[index].MakersPreference ?? index + 1;
}
