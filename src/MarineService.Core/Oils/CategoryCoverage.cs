using System.Collections.ObjectModel;
using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Oils;

/// <summary>Whether a claimed category may stand in for a required one, with the path of stated coverage or the missing edge.</summary>
/// <remarks>
/// The viscosity grade must match on its own. A maker's "must not" overrides any coverage: a path never leads through a forbidden
/// category, and a forbidden claim is excluded outright.
/// </remarks>
public sealed class CategoryCoverage
{
    private CategoryCoverage(
        CategoryClaim claimed, CategoryClaim required, Coverage coverage, string reason,
        IReadOnlyList<ServiceCategory> path, IReadOnlyList<string> cautions, IReadOnlyList<Citation> citations) =>
        (Claimed, Required, Coverage, Reason, Path, Cautions, Citations) = (claimed, required, coverage, reason, path, cautions, citations);

    /// <summary>What the oil claims.</summary>
    public CategoryClaim Claimed { get; }

    /// <summary>What the engine asks for.</summary>
    public CategoryClaim Required { get; }

    /// <summary>Covered, excluded, or not stated.</summary>
    public Coverage Coverage { get; }

    /// <summary>Why, in one sentence: the path, the exception, or the missing edge.</summary>
    public string Reason { get; }

    /// <summary>The path from the claimed to the required category; empty unless covered.</summary>
    public IReadOnlyList<ServiceCategory> Path { get; }

    /// <summary>What to beware of; may be empty.</summary>
    public IReadOnlyList<string> Cautions { get; }

    internal IReadOnlyList<Citation> Citations { get; }

    /// <summary>Looks for a path of stated coverage.</summary>
    /// <param name="claimed">What the oil claims.</param>
    /// <param name="required">What the engine asks for.</param>
    /// <param name="asOf">The date for which it is asked, to caution about claims that do not exist yet or any more; null to leave that out.</param>
    /// <param name="forbidden">Categories that the engine's maker forbids; null for none.</param>
    /// <returns>The answer.</returns>
    /// <exception cref="ArgumentNullException">A claim, or an item of <paramref name="forbidden"/>, is null.</exception>
    /// <exception cref="ArgumentException">An item of <paramref name="forbidden"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="asOf"/> is outside 1900 to 2199.</exception>
    /// <example><code>CategoryCoverage.Of(CategoryClaim.Parse("CK-4"), CategoryClaim.Parse("CI-4")).Coverage; // Covered</code></example>
    public static CategoryCoverage Of(
        CategoryClaim claimed, CategoryClaim required, LocalDate? asOf = null, IEnumerable<ServiceCategory>? forbidden = null)
    {
        Guard.NotNull(claimed);
        Guard.NotNull(required);
        IReadOnlyList<ServiceCategory> mustNot = forbidden is null ? [] : Guard.Items(forbidden);
        if (asOf is LocalDate date)
        {
            Guard.Date(date, nameof(asOf));
        }

        IReadOnlyList<string> cautions = CautionsOf(claimed, asOf, mustNot);
        if (mustNot.Contains(claimed.Category))
        {
            return new(claimed, required, Coverage.Excluded, $"the engine's maker forbids {claimed.Category}", [], cautions, [Citation.GivenByCaller]);
        }

        if (claimed.Category == required.Category)
        {
            return SameCategory(claimed, required, cautions);
        }

        if (CategoryTable.Exclusion(claimed.Category, required.Category) is (string why, Citation stated))
        {
            return new(claimed, required, Coverage.Excluded, why, [], cautions, [stated]);
        }

        IReadOnlyList<CoverageEdge> edges = CoverageGraph.PathBetween(claimed.Category, required.Category, mustNot);
        return edges.Count > 0
            ? new(claimed, required, Coverage.Covered, string.Join("; ", edges.Select(edge => $"{edge.From} is stated to cover {edge.To}")),
                [claimed.Category, .. edges.Select(edge => edge.To)], cautions, [.. edges.Select(edge => edge.Citation).Distinct()])
            : new(claimed, required, Coverage.NoneStated, MissingEdge(claimed.Category, required.Category, mustNot), [], cautions, [claimed.Category.Citation]);
    }

    /// <summary>The answer, the path, the cautions and where the coverage is stated.</summary>
    /// <param name="units">Which units to write; no figure here has one.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new(ToString());
        lines.Add("because", Reason).AddIf(Path.Count > 1, "path", () => string.Join(" → ", Path));
        foreach (string caution in Cautions)
        {
            lines.Add("caution", caution);
        }

        return lines.Add("also", "the viscosity grade must match as well").Build([.. Citations]);
    }

    /// <summary>The answer in one line.</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() => Coverage switch
    {
        Coverage.Covered => $"{Claimed} covers {Required}.",
        Coverage.Excluded => $"{Claimed} does not cover {Required}.",
        _ => $"{Claimed} is not stated to cover {Required}.",
    };

    private static CategoryCoverage SameCategory(CategoryClaim claimed, CategoryClaim required, IReadOnlyList<string> cautions)
    {
        IReadOnlyList<Citation> citations = [claimed.Category.Citation];
        if (required.IssueYear is null || required.IssueYear == claimed.IssueYear)
        {
            return new(claimed, required, Coverage.Covered, "it is the same category", [claimed.Category], cautions, citations);
        }

        string reason = claimed.IssueYear is null
            ? $"the issue of {required} is required, and the claim names no year"
            : $"no published statement that the {claimed.IssueYear} issue covers the {required.IssueYear} issue";
        return new(claimed, required, Coverage.NoneStated, reason, [], cautions, citations);
    }

    private static string MissingEdge(ServiceCategory claimed, ServiceCategory required, IReadOnlyList<ServiceCategory> mustNot)
    {
        IReadOnlyList<CoverageEdge> open = mustNot.Count == 0 ? [] : CoverageGraph.PathBetween(claimed, required, []);
        if (open.Count > 0)
        {
            ServiceCategory blocked = open.Select(edge => edge.To).First(mustNot.Contains);
            return $"the stated coverage leads through {blocked}, which the engine's maker forbids";
        }

        IReadOnlyList<ServiceCategory> reached = CoverageGraph.ReachedFrom(claimed);
        string reaches = reached.Count == 0 ? "is not stated to cover any other" : $"is stated to cover {string.Join(", ", reached)}";
        return $"no published statement that {claimed} covers {required}: {claimed} {reaches}";
    }

    private static ReadOnlyCollection<string> CautionsOf(CategoryClaim claimed, LocalDate? asOf, IReadOnlyList<ServiceCategory> mustNot)
    {
        List<string> cautions = [];
        ServiceCategory category = claimed.Category;
        if (category.Caution is not null)
        {
            cautions.Add($"{category}: {category.Caution}");
        }

        if (asOf < (category.FirstLicence ?? (category.FirstYear is int year ? new LocalDate(year, 1, 1) : null)))
        {
            cautions.Add($"no oil may claim {category} yet: it starts {(category.FirstLicence is LocalDate first ? NodaTime.Text.LocalDatePattern.Iso.Format(first) : $"in {category.FirstYear}")}");
        }

        if (asOf > category.LastOnLabels)
        {
            cautions.Add($"{category} was sold as a claim until {NodaTime.Text.LocalDatePattern.Iso.Format(category.LastOnLabels!.Value)} at the latest: the oil is old, or the claim is");
        }

        foreach (ServiceCategory covered in CoverageGraph.ReachedFrom(category).Where(mustNot.Contains))
        {
            cautions.Add($"{category} covers {covered}, which the engine's maker forbids: ask whether {category} is forbidden too");
        }

        return cautions.AsReadOnly();
    }
}
