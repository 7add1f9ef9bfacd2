using FsCheck.Xunit;

namespace MarineService.Core.Tests;

/// <summary>
/// A law over random cases. The seed is fixed, so that a build says the same thing twice;
/// with LAW_SEED=random in the environment every run looks at new cases, and LAW_SEED=(a,b) looks at one run's again.
/// </summary>
[AttributeUsage(AttributeTargets.Method)]
#pragma warning disable xUnit3003 // The attribute that this one extends takes no source information.
public sealed class LawAttribute : PropertyAttribute
#pragma warning restore xUnit3003
{
    private const string FixedSeed = "(20261125,57)";

    /// <summary>A law with the seed that the environment asks for.</summary>
    public LawAttribute()
    {
        switch (Environment.GetEnvironmentVariable("LAW_SEED"))
        {
            case null or "":
                Replay = FixedSeed;
                break;
            case "random":
                break;
            case string seed:
                Replay = seed;
                break;
        }
    }
}
