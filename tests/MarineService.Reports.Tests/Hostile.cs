using System.Text;

namespace MarineService.Reports.Tests;

/// <summary>Texts that try to break out of whatever they are written into.</summary>
internal static class Hostile
{
    private static readonly string[] Pieces =
    [
        "a", "oil", " ", "  ", "\t", "\n", "\r", "\r\n", "\0", "\u0001", "\u007F", "\u0085", "\u2028", "\uFEFF", "\u200B", "\u202E", "\uFFFE",
        "=", "+", "-", "@", "＝", "＋", "－", "＠", "=HYPERLINK(\"x\";\"y\")", "'", "''", "\"", "\"\"", ",", ";", ":", "\\", "\\n", "\\,",
        "<b>", "&amp;", "]]>", "é", "水", "\U0001F6A4", "\U0001F468\u200D\U0001F469", "\uD83D", "\uDEA4", "e\u0301",
        "BEGIN:VTODO", "\r\nEND:VTODO\r\n", "\r\n UID:x", "2026-04-01", "0", "1e5", "not known",
    ];

    /// <summary>A text with at least one character that is not white space.</summary>
    internal static string Text(Random random)
    {
        StringBuilder text = new();
        do
        {
            for (int k = random.Next(1, 40); k > 0; k--)
            {
                text.Append(Pieces[random.Next(Pieces.Length)]);
            }
        }
        while (string.IsNullOrWhiteSpace(text.ToString()));
        return text.ToString();
    }

    /// <summary>What XML and its like can hold of a text: everything else is the replacement character.</summary>
    internal static string Held(string text) => string.Concat(text.EnumerateRunes().Select(rune =>
        rune.Value is '\t' or '\n' or '\r' or (>= 0x20 and not (0xFFFE or 0xFFFF)) ? rune.ToString() : "\uFFFD"));
}
