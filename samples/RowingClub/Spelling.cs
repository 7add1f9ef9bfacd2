using System.CommandLine;

namespace RowingClub;

/// <summary>What a mistyped word may have meant.</summary>
internal static class Spelling
{
    /// <summary>The command or option that differs least from one of the words, when it is near enough to be it.</summary>
    internal static string? NearestTo(IEnumerable<string> words, Command command)
    {
        string[] known = [.. command.Subcommands.Select(sub => sub.Name), .. command.Options.Select(option => option.Name)];
        return (from word in words
                from name in known
                let distance = Distance(word, name)
                where distance <= Math.Max(1, name.TrimStart('-').Length / 3)
                orderby distance, name
                select name).FirstOrDefault();
    }

    /// <summary>The nearest of some names, or null.</summary>
    internal static string? NearestTo(string word, IEnumerable<string> names) =>
        names.Select(name => (name, distance: Distance(word.ToUpperInvariant(), name.ToUpperInvariant())))
            .Where(pair => pair.distance <= Math.Max(1, pair.name.Length / 3)).OrderBy(pair => pair.distance).Select(pair => pair.name).FirstOrDefault();

    // Letters put in, left out, changed or swapped with the next (optimal string alignment).
    private static int Distance(string one, string other)
    {
        int[] before = [];
        int[] above = [.. Enumerable.Range(0, other.Length + 1)];
        for (int i = 1; i <= one.Length; i++)
        {
            int[] row = new int[other.Length + 1];
            row[0] = i;
            for (int k = 1; k <= other.Length; k++)
            {
                row[k] = Math.Min(Math.Min(above[k], row[k - 1]) + 1, above[k - 1] + (one[i - 1] == other[k - 1] ? 0 : 1));
                if (i > 1 && k > 1 && one[i - 1] == other[k - 2] && one[i - 2] == other[k - 1])
                {
                    row[k] = Math.Min(row[k], before[k - 2] + 1);
                }
            }

            (before, above) = (above, row);
        }

        return above[other.Length];
    }
}
