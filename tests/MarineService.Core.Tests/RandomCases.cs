namespace MarineService.Core.Tests;

/// <summary>How many random cases a long comparison looks at: all of them on the net10.0 build, a tenth on the other, whose sources are the same.</summary>
internal static class RandomCases
{
#if LIB_NETSTANDARD
    private const int Share = 10;
#else
    private const int Share = 1;
#endif

    internal static int Of(int all) => all / Share;
}
