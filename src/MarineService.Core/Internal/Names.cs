namespace MarineService.Core.Internal;

/// <summary>Checks lists of names.</summary>
internal static class Names
{
    /// <summary>A copy; refuses null, blank names and a name given twice.</summary>
    internal static IReadOnlyList<string> Distinct(IEnumerable<string>? names, string argument)
    {
        IReadOnlyList<string> copy = Guard.Items(names, argument);
        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (string name in copy)
        {
            if (!seen.Add(Guard.NotBlank(name, argument)))
            {
                throw new ArgumentException($"'{name}' is named twice.", argument);
            }
        }

        return copy;
    }
}
