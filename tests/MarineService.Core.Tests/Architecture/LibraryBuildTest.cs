using System.Reflection;
using System.Runtime.Versioning;

namespace MarineService.Core.Tests.Architecture;

public sealed class LibraryBuildTest
{
#if LIB_NETSTANDARD
    private const string Expected = ".NETStandard,Version=v2.0";
#else
    private const string Expected = ".NETCoreApp,Version=v10.0";
#endif

    [Fact]
    public void TestProject_Loads_TheBuildItIsNamedAfter()
    {
        TargetFrameworkAttribute? attribute = typeof(EngineHours).Assembly.GetCustomAttribute<TargetFrameworkAttribute>();
        Assert.Equal(Expected, attribute!.FrameworkName);
    }

    [Fact]
    public void Library_IsStrongNamed() =>
        Assert.NotEmpty(typeof(EngineHours).Assembly.GetName().GetPublicKeyToken()!);
}
