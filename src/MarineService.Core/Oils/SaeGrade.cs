using System.Diagnostics.CodeAnalysis;
using MarineService.Core.Internal;

namespace MarineService.Core.Oils;

/// <summary>An engine-oil grade as a label carries it: one winter grade, one grade without W, or both, such as 15W-40.</summary>
/// <remarks>
/// A closed list: every combination that SAE J300 allows. 25W with 8 to 20 is left out, because 25W asks for at least 9.3 mm²/s at
/// 100 °C and those grades end there or below. Two grades are the same object when they are equal.
/// </remarks>
public sealed class SaeGrade
{
    private static readonly SaeGrade?[] Table = BuildTable();

    private SaeGrade(SaeWGrade? winter, SaeNonWGrade? hot)
    {
        (Winter, Hot) = (winter, hot);
        Designation = winter is null ? hot!.Designation : hot is null ? winter.Designation : $"{winter.Designation}-{hot.Designation}";
    }

    /// <summary>Every grade, by winter grade and then by grade without W; the single grades without W last.</summary>
    public static IReadOnlyList<SaeGrade> All { get; } = Array.AsReadOnly([.. Table.OfType<SaeGrade>()]);

    /// <summary>The winter grade, or null when the label has none: then the standard sets no cold limit at all.</summary>
    public SaeWGrade? Winter { get; }

    /// <summary>The grade without W, or null when the label has none.</summary>
    public SaeNonWGrade? Hot { get; }

    /// <summary>The grade as a label writes it: "15W-40", "10W", "30".</summary>
    public string Designation { get; }

    /// <summary>The revision of SAE J300 that the limits are taken from.</summary>
    public static string Revision => OilSources.J300Revision;

    /// <summary>A grade from its parts.</summary>
    /// <param name="winter">The winter grade, or null for none.</param>
    /// <param name="hot">The grade without W, or null for none.</param>
    /// <returns>The grade.</returns>
    /// <exception cref="ArgumentException">Both parts are null, or no oil can meet both.</exception>
    public static SaeGrade Of(SaeWGrade? winter, SaeNonWGrade? hot) =>
        winter is null && hot is null
            ? throw new ArgumentException("Must have a winter grade, a grade without W, or both.", nameof(hot))
            : Find(winter, hot) ?? throw new ArgumentException($"Must be {SaeGradeText.Impossible(winter, hot)}.", nameof(hot));

    /// <summary>Reads a designation such as "15W-40", "10W" or "SAE 30"; case and a leading "SAE" do not matter.</summary>
    /// <param name="designation">The text.</param>
    /// <returns>The grade.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="designation"/> is null.</exception>
    /// <exception cref="ArgumentException">It is not a grade of SAE J300; the message says what was expected.</exception>
    /// <example><code>SaeGrade.Parse("15W-40").Winter; // 15W</code></example>
    public static SaeGrade Parse(string designation) => Parse(Guard.NotNull(designation), nameof(designation));

    /// <summary>Reads a designation without throwing.</summary>
    /// <param name="designation">The text, or null.</param>
    /// <param name="grade">The grade, or null when the text is not one.</param>
    /// <returns>True when the text is a grade of SAE J300.</returns>
    public static bool TryParse(string? designation, [NotNullWhen(true)] out SaeGrade? grade)
    {
        grade = null;
        return designation is not null && SaeGradeText.Read(designation, out grade) is null;
    }

    /// <summary>The grade with the name of the classification: "SAE 15W-40".</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() => $"SAE {Designation}";

    /// <summary>Reads a designation for a caller whose argument has another name.</summary>
    internal static SaeGrade Parse(string text, string paramName)
    {
        string? expected = SaeGradeText.Read(text, out SaeGrade? grade);
        return expected is null ? grade! : throw new ArgumentException(SaeGradeText.Fault(text, expected), paramName);
    }

    /// <summary>The grade of these parts, or null when there is none.</summary>
    internal static SaeGrade? Find(SaeWGrade? winter, SaeNonWGrade? hot) => Table[Place(winter, hot)];

    private static int Place(SaeWGrade? winter, SaeNonWGrade? hot) =>
        ((winter?.Index ?? SaeWGrade.All.Count) * (SaeNonWGrade.All.Count + 1)) + (hot?.Index ?? SaeNonWGrade.All.Count);

    private static SaeGrade?[] BuildTable()
    {
        SaeGrade?[] table = new SaeGrade?[(SaeWGrade.All.Count + 1) * (SaeNonWGrade.All.Count + 1)];
        foreach (SaeWGrade? winter in SaeWGrade.All.Append(null))
        {
            foreach (SaeNonWGrade? hot in SaeNonWGrade.All.Append(null))
            {
                bool isNothing = winter is null && hot is null;
                bool isImpossible = winter?.Kv100Min >= hot?.Kv100Max;
                table[Place(winter, hot)] = isNothing || isImpossible ? null : new(winter, hot);
            }
        }

        return table;
    }
}
