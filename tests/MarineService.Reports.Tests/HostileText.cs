using FsCheck;
using FsCheck.Fluent;

namespace MarineService.Reports.Tests;

/// <summary>Text that people, or those who wish them ill, may write into a boat's papers: markup, quotes, marks, halves of characters.</summary>
internal static class HostileText
{
    private static readonly string[] Pieces =
    [
        "<script>alert(1)</script>", "</style><style>*{display:none}", "</title></head>", "<!--", "-->", "<![CDATA[", "]]>", "\" onload=\"x", "' x='", "<br/>", "</td></tr></table>",
        "<svg onload=x>", "</svg>", "<plaintext>", "<textarea>", "&amp;", "&lt", "&#0;", "&#x80;", "javascript:x", "{{x}}", "\0", "\u0001", "\u001B[31m", "\u007F", "\u0085", "\uFFFE", "\uFFFF",
        "\uD800", "\uDC00", "\uDC00\uD800", "\U0001F6A4", "e\u0301", "\u202E", "\u200F", "\u2066", "\u2069", "\u00A0", "\u2028", "\r", "\r\n", "\n", "\t", " ", "=1+1", "@x", ",", ";", "\\", "%s", "100 %", "a", "Z", "\u0130", "9",
    ];

    /// <summary>Never blank: it begins with a letter.</summary>
    internal static Arbitrary<string> Some { get; } =
        (from pieces in Gen.Elements(Pieces).ArrayOf() select "h" + string.Concat(pieces.Take(12))).ToArbitrary();
}
