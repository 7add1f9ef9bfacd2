namespace RowingClub;

/// <summary>Names of files made of names that people give.</summary>
internal static class FileName
{
    /// <summary>Small letters, figures and dashes: a boat's name may hold anything, a file's name better not.</summary>
    internal static string Of(string name)
    {
#pragma warning disable CA1308 // The demo's files have lower-case names too.
        string stem = string.Concat(name.ToLowerInvariant().Select(letter => char.IsAsciiLetterOrDigit(letter) ? letter : '-')).Trim('-');
#pragma warning restore CA1308
        return stem.Length == 0 ? "boat" : stem;
    }
}
