using System.Diagnostics.CodeAnalysis;
using MarineService.Core.Internal;

namespace MarineService.Core.Oils;

/// <summary>A gear-oil grade of SAE J306, such as 75W-90: a list of its own, not comparable with engine-oil grades.</summary>
/// <remarks>
/// Never chooses the fluid of a marine gearbox: that is its maker's, and often automatic-transmission fluid or engine oil.
/// A gear SAE 90 is about as thin hot as an engine SAE 40. Source: SAE J306, as summarized publicly.
/// </remarks>
public sealed class GearOilGrade
{
    private static readonly GearOilGrade?[] Table = BuildTable();

    private GearOilGrade(string? winter, string? hot) =>
        (Winter, Hot, Designation) = (winter, hot, winter is null ? hot! : hot is null ? winter : $"{winter}-{hot}");

    /// <summary>The winter part, "75W", or null.</summary>
    public string? Winter { get; }

    /// <summary>The part without W, "90", or null.</summary>
    public string? Hot { get; }

    /// <summary>The grade as a label writes it: "75W-90".</summary>
    public string Designation { get; }

    /// <summary>Reads a designation such as "75W-90", "80W" or "SAE 90" of the 2019 revision.</summary>
    /// <param name="designation">The text.</param>
    /// <returns>The grade.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="designation"/> is null.</exception>
    /// <exception cref="ArgumentException">It is not a grade of SAE J306; the message says what was expected.</exception>
    public static GearOilGrade Parse(string designation) =>
        TryParse(Guard.NotNull(designation), out GearOilGrade? grade)
            ? grade
            : throw new ArgumentException(
                $"'{designation}' is not a gear-oil grade of SAE J306; expected one of {string.Join(", ", J306Table.Winters.Select(w => w.Name))}, one of {string.Join(", ", J306Table.Hots.Select(h => h.Name))}, or both with a hyphen, such as 75W-90.",
                nameof(designation));

    /// <summary>Reads a designation without throwing.</summary>
    /// <param name="designation">The text, or null.</param>
    /// <param name="grade">The grade, or null when the text is not one.</param>
    /// <returns>True when the text is a grade of SAE J306.</returns>
    public static bool TryParse(string? designation, [NotNullWhen(true)] out GearOilGrade? grade)
    {
        grade = null;
        if (designation is null)
        {
            return false;
        }

        string bare = designation.Trim().ToUpperInvariant();
        bare = bare.StartsWith("SAE", StringComparison.Ordinal) ? bare.Substring(3).TrimStart() : bare;
        grade = Table.OfType<GearOilGrade>().FirstOrDefault(known => known.Designation == bare);
        return grade is not null;
    }

    /// <summary>The grade with the name of the classification: "SAE 75W-90 gear oil".</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() => $"SAE {Designation} gear oil";

    /// <summary>The grade at these places of the table, -1 for no part; null when there is none.</summary>
    internal static GearOilGrade? At(int winter, int hot) => Table[Place(winter, hot)];

    private static int Place(int winter, int hot) => ((winter + 1) * (J306Table.Hots.Count + 1)) + hot + 1;

    private static GearOilGrade?[] BuildTable()
    {
        GearOilGrade?[] table = new GearOilGrade?[(J306Table.Winters.Count + 1) * (J306Table.Hots.Count + 1)];
        for (int w = -1; w < J306Table.Winters.Count; w++)
        {
            for (int h = -1; h < J306Table.Hots.Count; h++)
            {
                J306Table.WinterRow? winter = w < 0 ? null : J306Table.Winters[w];
                J306Table.HotRow? hot = h < 0 ? null : J306Table.Hots[h];
                bool isNothing = winter is null && hot is null;
                bool isImpossible = winter?.LeastKv100 >= hot?.Max;
                table[Place(w, h)] = isNothing || isImpossible ? null : new(winter?.Name, hot?.Name);
            }
        }

        return table;
    }
}
