using MarineService.Core.Tests.Architecture;

namespace MarineService.Core.Tests.Documentation;

/// <summary>Every document of the repository with its blocks of code.</summary>
internal static class DocumentsOfTheRepository
{
    internal static readonly (string File, IReadOnlyList<MarkdownExample> Blocks)[] All =
    [
        .. new[] { Path.Combine(Repository.Root, "README.md") }
            .Concat(Directory.Exists(Path.Combine(Repository.Root, "docs")) ? Repository.Files(Path.Combine(Repository.Root, "docs"), "*.md") : [])
            .Concat(Repository.LibrarySources.SelectMany(library => Repository.Files(library, "*.md")))
            .Append(Path.Combine(Repository.Root, "DEVELOPERS.md"))
            .Select(Repository.Relative)
            .Select(file => (file, MarkdownExample.In(file, File.ReadAllText(Path.Combine(Repository.Root, file))))),
    ];
}
