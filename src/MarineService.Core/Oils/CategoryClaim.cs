using System.Globalization;
using MarineService.Core.Internal;

namespace MarineService.Core.Oils;

/// <summary>A category as an oil claims it or an engine asks for it: with the year of the issue where the body has issues.</summary>
/// <remarks>Two are equal when category and year are.</remarks>
public sealed record CategoryClaim
{
    private CategoryClaim(ServiceCategory category, int? issueYear) => (Category, IssueYear) = (category, issueYear);

    /// <summary>The category.</summary>
    public ServiceCategory Category { get; }

    /// <summary>The year of the ACEA issue, or null when none is named.</summary>
    public int? IssueYear { get; }

    /// <summary>A claim.</summary>
    /// <param name="category">The category.</param>
    /// <param name="issueYear">The year of the ACEA issue, from 1996 to 2199; null for other bodies or when none is named.</param>
    /// <returns>The claim.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="category"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="issueYear"/> is outside its range.</exception>
    /// <exception cref="ArgumentException">A year is given for a body that has no issues.</exception>
    public static CategoryClaim Of(ServiceCategory category, int? issueYear = null)
    {
        Guard.NotNull(category);
        if (issueYear is not int year)
        {
            return new(category, null);
        }

        Guard.InRange(year, 1996, 2199, "(year of an ACEA issue)", nameof(issueYear));
        return category.Body == CategoryBody.Acea
            ? new(category, year)
            : throw new ArgumentException($"Must be null for {category}: only ACEA categories are issued by year.", nameof(issueYear));
    }

    /// <summary>Reads a claim such as "CK-4", "E9-16", "ACEA A3/B4-2016" or "FC-W".</summary>
    /// <param name="text">The text.</param>
    /// <returns>The claim.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="ArgumentException">It names no known category; the message says what was expected.</exception>
    public static CategoryClaim Parse(string text) =>
        Parse(Guard.NotNull(text), nameof(text));

    /// <summary>The claim as a label writes it: "E9-16".</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() =>
        IssueYear is int year and >= 1996 and <= 2095 ? FormattableString.Invariant($"{Category}-{year % 100:00}") : WithFullYear();

    /// <summary>The claim with all four digits of its year: "E9-2016".</summary>
    internal string WithFullYear() => IssueYear is int year ? FormattableString.Invariant($"{Category}-{year}") : Category.Name;

    /// <summary>Reads a claim for a caller whose argument has another name.</summary>
    internal static CategoryClaim Parse(string text, string paramName) =>
        Read(text) ?? throw new ArgumentException(ServiceCategory.Expected(text), paramName);

    /// <summary>The claim, or null when the text names no known category.</summary>
    internal static CategoryClaim? Read(string text)
    {
        if (ServiceCategory.TryParse(text, out ServiceCategory? plain))
        {
            return new(plain, null);
        }

        int hyphen = text.LastIndexOf('-');
        return hyphen > 0
            && ServiceCategory.TryParse(text.Substring(0, hyphen), out ServiceCategory? issued)
            && issued.Body == CategoryBody.Acea
            && Year(text.Substring(hyphen + 1).Trim()) is int year
                ? new(issued, year)
                : null;
    }

    // ACEA began in 1996: "96" to "99" are the last century, the rest is this one.
    private static int? Year(string text) =>
        text.Length is 2 or 4 && int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number)
            ? text.Length == 2 ? (number >= 96 ? 1900 + number : 2000 + number) : number is >= 1996 and <= 2199 ? number : null
            : null;
}
