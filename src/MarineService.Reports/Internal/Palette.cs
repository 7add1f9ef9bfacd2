namespace MarineService.Reports.Internal;

/// <summary>
/// Colours on white paper. Marks have at least 3:1 and text at least 4.5:1 (WCAG 2.2, 1.4.11 and 1.4.3); a test computes it.
/// They are told apart by lightness too, so in grey print, and never stand alone: each has a word, a dash or a shape beside it.
/// </summary>
internal static class Palette
{
    internal const string Paper = "#ffffff";
    internal const string Ink = "#1a1a1a";

    /// <summary>Rulings and quiet words.</summary>
    internal const string Quiet = "#595959";

    /// <summary>What is.</summary>
    internal const string Blue = "#1f5f99";

    /// <summary>What is wrong or due.</summary>
    internal const string Red = "#a3191b";

    /// <summary>What comes near.</summary>
    internal const string Amber = "#8a5a00";

    /// <summary>What is in order.</summary>
    internal const string Green = "#1d6b45";

    /// <summary>Large quiet areas; never a cue.</summary>
    internal const string Tint = "#e8eef4";
}
