namespace MarineService.Core.Tests.Architecture;

public sealed class SourceRulesTest
{
    [Fact]
    public void EverySourceFile_LiesWhereItsNameSays()
    {
        string[] broken =
        [
            .. from library in Repository.LibrarySources
               from file in Repository.Files(library, "*.cs")
               from fault in SourceRules.Faults(Path.GetRelativePath(library, file).Replace('\\', '/'), File.ReadAllText(file), Path.GetFileName(library))
               select fault,
        ];
        Assert.All(Repository.LibrarySources, library => Assert.NotEmpty(Repository.Files(library, "*.cs")));
        Assert.True(broken.Length == 0, string.Join('\n', broken));
    }

    [Fact]
    public void EveryRoom_HasAReadmeOfAtMostFortyLines()
    {
        // Folders below a room (such as schemas) belong to the room's readme.
        string[] faults =
        [
            .. from folder in Repository.LibrarySources.SelectMany(Directory.EnumerateDirectories).Order(StringComparer.Ordinal)
               where Directory.EnumerateFiles(folder, "*.cs").Any()
               let readme = Path.Combine(folder, "README.md")
               let lines = File.Exists(readme) ? File.ReadAllLines(readme).Length : 0
               where Path.GetFileName(folder) is not ("bin" or "obj") && lines is 0 or > 40
               select lines == 0 ? $"{Repository.Relative(readme)} is missing" : $"{Repository.Relative(readme)} has {lines} lines, more than 40",
        ];
        Assert.True(faults.Length == 0, string.Join('\n', faults));
    }

    /// <summary>Examples are run by the documents' test, and again by strangers' programs with the packed package: no room without one.</summary>
    [Fact]
    public void EveryRoom_ShowsAnExampleInItsReadme()
    {
        string[] without =
        [
            .. from folder in Repository.LibrarySources.SelectMany(Directory.EnumerateDirectories).Order(StringComparer.Ordinal)
               let readme = Path.Combine(folder, "README.md")
               where Path.GetFileName(folder) is not "Internal" && File.Exists(readme)
               where !File.ReadLines(readme).Contains("```csharp")
               select Repository.Relative(readme),
        ];
        Assert.True(without.Length == 0, "No C# block in " + string.Join(", ", without));
    }

    [Theory]
    [InlineData("Belts/Pulley.cs", "namespace MarineService.Core.Belts;\npublic sealed class Pulley;\ninternal static class Helper;\n", "")]
    [InlineData("Belts/Pulley.Shape.cs", "namespace MarineService.Core.Belts;\npublic sealed partial class Pulley;\n", "")]
    [InlineData("PairOfT.cs", "namespace MarineService.Core;\npublic sealed class Pair<T>;\n", "")]
    [InlineData("Belts/Pulley.cs", "namespace MarineService.Core.Oils;\npublic sealed class Pulley;\n", "namespace is")]
    [InlineData("Belts/Pulley.cs", "namespace MarineService.Core.Belts;\npublic sealed class Pulleys;\n", "is named Pulleys")]
    [InlineData("Belts/Pulley.cs", "namespace MarineService.Core.Belts;\npublic sealed class Pulley;\npublic enum Side { Left }\n", "2 public types")]
    public void Faults_OfOneFile_AreTheExpectedOnes(string path, string text, string expected)
    {
        string found = string.Join('\n', SourceRules.Faults(path, text));
        Assert.True(expected.Length == 0 ? found.Length == 0 : found.Contains(expected, StringComparison.Ordinal), found);
    }
}
