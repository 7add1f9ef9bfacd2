using System.Diagnostics.CodeAnalysis;
using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Oils;

/// <summary>A service category that an oil may claim and an engine may ask for, such as CK-4.</summary>
/// <remarks>
/// A closed list. Which category covers which is taken from published statements only and never from the order of the letters.
/// Two categories are the same object when they are equal.
/// </remarks>
public sealed class ServiceCategory
{
    internal ServiceCategory(
        string name, CategoryBody body, string engine, Citation citation, int? firstYear = null, LocalDate? firstLicence = null,
        LocalDate? lastSeenOnLabels = null, string? caution = null) =>
        (Name, Body, Engine, Citation, FirstYear, FirstLicence, LastOnLabels, Caution) =
            (name, body, engine, citation, firstLicence?.Year ?? firstYear, firstLicence, lastSeenOnLabels, caution);

    /// <summary>All categories, by body.</summary>
    public static IReadOnlyList<ServiceCategory> All => CategoryTable.All;

    /// <summary>The category as a label writes it: "CK-4", "FC-W", "E11".</summary>
    public string Name { get; }

    /// <summary>Who publishes it.</summary>
    public CategoryBody Body { get; }

    /// <summary>The engines that it was made for, in a few words.</summary>
    public string Engine { get; }

    /// <summary>The year of its first licence or issue, or null when it is not known.</summary>
    public int? FirstYear { get; }

    /// <summary>The date from which an oil may claim it, or null when only the year or nothing is known.</summary>
    public LocalDate? FirstLicence { get; }

    /// <summary>The last date on which new oils were sold with this claim, or null when it is current or not known.</summary>
    public LocalDate? LastOnLabels { get; }

    /// <summary>What to beware of, or null.</summary>
    public string? Caution { get; }

    /// <summary>How well the category's data are known.</summary>
    public Citation Citation { get; }

    /// <summary>Reads a name such as "CK-4", "API CK-4", "ci-4 plus" or "FC-W".</summary>
    /// <param name="name">The text.</param>
    /// <returns>The category.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException">The category is not in the list; the message says what was expected.</exception>
    public static ServiceCategory Parse(string name) =>
        Parse(Guard.NotNull(name), nameof(name));

    /// <summary>Reads a name without throwing.</summary>
    /// <param name="name">The text, or null.</param>
    /// <param name="category">The category, or null when it is not in the list.</param>
    /// <returns>True when it is in the list.</returns>
    public static bool TryParse(string? name, [NotNullWhen(true)] out ServiceCategory? category)
    {
        category = null;
        if (name is null)
        {
            return false;
        }

        string bare = Bare(name);
        category = CategoryTable.All.FirstOrDefault(known => string.Equals(known.Name, bare, StringComparison.OrdinalIgnoreCase));
        return category is not null;
    }

    /// <summary>The name as a label writes it.</summary>
    /// <returns>Same as <see cref="Name"/>.</returns>
    public override string ToString() => Name;

    /// <summary>Reads a name for a caller whose argument has another name.</summary>
    internal static ServiceCategory Parse(string text, string paramName) =>
        TryParse(text, out ServiceCategory? category) ? category : throw new ArgumentException(Expected(text), paramName);

    internal static string Expected(string name) =>
        $"'{name}' is not a service category that is known here; expected {CategoryTable.OneOfAll}.";

    private static string Bare(string name)
    {
        string bare = name.Trim();
        foreach (string body in new[] { "API ", "ILSAC ", "NMMA ", "ACEA " })
        {
            if (bare.StartsWith(body, StringComparison.OrdinalIgnoreCase))
            {
                return bare.Substring(body.Length).TrimStart();
            }
        }

        return bare;
    }
}
