namespace MarineService.Reports.Internal;

/// <summary>
/// How much room a text takes, and where to break it. No font is asked, so that the same text breaks alike everywhere: the widths are those
/// of a common sans-serif, rounded up, so that a wider font still fits.
/// </summary>
internal static class Lettering
{
    /// <summary>From one line's foot to the next, as a share of the letters' size.</summary>
    internal const double Leading = 1.35;

    private const double NarrowShare = 0.36;
    private const double UsualShare = 0.6;
    private const double CapitalShare = 0.74;
    private const double WideShare = 0.95;
    private const double SquareShare = 1.05;

    /// <summary>Above this, scripts whose signs fill a square, and symbols.</summary>
    private const char FirstSquare = '\u2190';

    private static readonly char[] Narrow = " .,:;'|!iljtfrI()[]{}-/".ToCharArray();
    private static readonly char[] Wide = "mwMW@%&".ToCharArray();

    internal static double Width(string text, double size) => size * text.Sum(Share);

    /// <summary>The text as it will stand in the picture, in lines that fit the width; a word that is too long for a line is cut, never in the middle of a character.</summary>
    internal static IReadOnlyList<string> Wrap(string text, double size, double width)
    {
        List<string> lines = [];
        string line = string.Empty;
        foreach (string word in PlainText.Of(text).Split(' ', '\n', '\t').SelectMany(word => Cut(word, size, width)))
        {
            string longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && Width(longer, size) > width)
            {
                lines.Add(line);
                longer = word;
            }

            line = longer;
        }

        lines.Add(line);
        return lines;
    }

    private static IEnumerable<string> Cut(string word, double size, double width)
    {
        int from = 0;
        double used = 0;
        for (int i = 0; i < word.Length; i++)
        {
            double more = size * Share(word[i]);
            if (i > from && used + more > width && !char.IsLowSurrogate(word[i]))
            {
                yield return word.Substring(from, i - from);
                (from, used) = (i, 0);
            }

            used += more;
        }

        yield return word.Substring(from);
    }

    private static double Share(char letter) =>
        letter >= FirstSquare ? SquareShare
        : Array.IndexOf(Narrow, letter) >= 0 ? NarrowShare
        : Array.IndexOf(Wide, letter) >= 0 ? WideShare
        : char.IsUpper(letter) ? CapitalShare
        : UsualShare;
}
