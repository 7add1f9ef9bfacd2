using System.Reflection;

namespace MarineService.Core.Tests.Architecture;

/// <summary>Where the sources and documents lie that some tests read.</summary>
internal static class Repository
{
    internal static string Root { get; } =
        typeof(Repository).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(a => a.Key == "RepositoryRoot").Value!;

    /// <summary>The folder of each library.</summary>
    internal static IEnumerable<string> LibrarySources => Library.All.Select(library => Path.Combine(Root, "src", Library.Name(library)));

    /// <summary>Files below a folder that people wrote: no build output.</summary>
    internal static IEnumerable<string> Files(string folder, string pattern) =>
        Directory.EnumerateFiles(folder, pattern, SearchOption.AllDirectories)
            .Where(path => !Relative(path).Split('/').Any(part => part is "bin" or "obj" or "artifacts" or "_site" or ".git"))
            .Order(StringComparer.Ordinal);

    internal static string Relative(string path) => Path.GetRelativePath(Root, path).Replace('\\', '/');
}
