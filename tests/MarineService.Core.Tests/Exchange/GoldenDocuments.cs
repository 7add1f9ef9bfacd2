using System.Reflection;

namespace MarineService.Core.Tests.Exchange;

/// <summary>Documents that must load for ever: each member, entry kind and word is in one of them.</summary>
internal static class GoldenDocuments
{
    /// <summary>Documents that the library reads.</summary>
    internal static IReadOnlyList<string> Names { get; } = [.. Below("Documents/").Where(name => !Written.Contains(name))];

    /// <summary>The files of the demo club's launches.</summary>
    internal static IReadOnlyList<string> Club { get; } = [.. Below("Club/")];

    /// <summary>Documents that the library only writes: an old one must stay valid by its schema.</summary>
    internal static IReadOnlyList<string> Written => ["Documents/v1/due-list.json", "Documents/v1/oil-selection.json", "Documents/v1/due-list-forecast.json", "Documents/v1/visit-plan.json"];

    internal static byte[] Read(string name)
    {
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name)!;
        using MemoryStream copy = new();
        stream.CopyTo(copy);
        return copy.ToArray();
    }

    private static IEnumerable<string> Below(string folder) =>
        Assembly.GetExecutingAssembly().GetManifestResourceNames()
            .Where(name => name.StartsWith(folder, StringComparison.Ordinal))
            .Order(StringComparer.Ordinal);
}
