using MarineService.Core.Internal;

namespace MarineService.Core.Oils;

/// <summary>An oil as its label describes it: the one in the sump, or the one on the shelf.</summary>
public sealed class LabelledOil
{
    private LabelledOil(SaeGrade grade, IReadOnlyList<CategoryClaim> claims, OilViscosity? viscosity) =>
        (Grade, Claims, Viscosity) = (grade, claims, viscosity);

    /// <summary>The grade on the label.</summary>
    public SaeGrade Grade { get; }

    /// <summary>The categories that the label claims; may be empty.</summary>
    public IReadOnlyList<CategoryClaim> Claims { get; }

    /// <summary>The viscosities of its data sheet, or null when they are not known.</summary>
    public OilViscosity? Viscosity { get; }

    /// <summary>An oil by its label.</summary>
    /// <param name="grade">The grade.</param>
    /// <param name="claims">The categories that it claims; null for none.</param>
    /// <param name="viscosity">The viscosities of its data sheet, or null.</param>
    /// <returns>The oil.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="grade"/> is null.</exception>
    /// <exception cref="ArgumentException">An item of <paramref name="claims"/> is null.</exception>
    public static LabelledOil Of(SaeGrade grade, IEnumerable<CategoryClaim>? claims = null, OilViscosity? viscosity = null) =>
        new(Guard.NotNull(grade), claims is null ? [] : Guard.Items(claims), viscosity);

    /// <summary>An oil by the words on its label.</summary>
    /// <param name="designation">The grade, such as "15W-40".</param>
    /// <param name="claims">The categories that it claims, such as "CK-4".</param>
    /// <returns>The oil.</returns>
    /// <exception cref="ArgumentNullException">An argument or an item is null.</exception>
    /// <exception cref="ArgumentException">The grade or a category is not known.</exception>
    /// <example><code>LabelledOil.Of("15W-40", "CK-4", "SN");</code></example>
    public static LabelledOil Of(string designation, params string[] claims) =>
        Of(SaeGrade.Parse(designation), Guard.Items(claims).Select(text => CategoryClaim.Parse(text, nameof(claims))));

    /// <summary>The grade and the claims.</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() => Claims.Count == 0 ? Grade.Designation : $"{Grade.Designation} ({string.Join(", ", Claims)})";
}
