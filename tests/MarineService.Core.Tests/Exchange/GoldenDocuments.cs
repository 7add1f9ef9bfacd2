using System.Reflection;

namespace MarineService.Core.Tests.Exchange;

/// <summary>Documents that must load for ever: each member, entry kind and word is in one of them.</summary>
internal static class GoldenDocuments
{
    internal static IReadOnlyList<string> Names { get; } =
    [
        .. Assembly.GetExecutingAssembly().GetManifestResourceNames()
            .Where(name => name.StartsWith("Documents/", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal),
    ];

    internal static byte[] Read(string name)
    {
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name)!;
        using MemoryStream copy = new();
        stream.CopyTo(copy);
        return copy.ToArray();
    }
}
