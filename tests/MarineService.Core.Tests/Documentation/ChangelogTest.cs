using System.Reflection;
using MarineService.Core.Tests.Architecture;

namespace MarineService.Core.Tests.Documentation;

public sealed class ChangelogTest
{
    [Fact]
    public void TopEntry_IsThatOfTheVersionBeingBuilt()
    {
        string version = Library.Core.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion.Split('+')[0];
        string heading = File.ReadLines(Path.Combine(Repository.Root, "CHANGELOG.md")).First(line => line.StartsWith("## ", StringComparison.Ordinal));
        Assert.Equal(version, heading.Substring(3).Split(' ')[0]);
    }
}
