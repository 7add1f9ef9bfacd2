#pragma warning disable // Specimens are bad on purpose: the tests show that each fault is found.
using MarineService.Core.Internal;

namespace MarineService.Core.Tests.Architecture.Specimens.Documents;

/// <summary>One gap in each method, none in the last.</summary>
public static class Documented
{
    public static void NoSummary()
    {
    }

    /// <summary>Something.</summary>
    public static void NoParameter(int teeth)
    {
    }

    /// <summary>Something.</summary>
    public static string NoReturns() => "";

    /// <summary>Something.</summary>
    /// <param name="mm">The gap.</param>
    public static void NoRange(double mm)
    {
    }

    /// <summary>Something.</summary>
    /// <param name="mm">From 0 to 10 mm.</param>
    public static void NoException(double mm) => Guard.InRange(mm, 0, 10, "mm");

    /// <summary>Something.</summary>
    public static void NoExceptionOfHelper() => Help();

    /// <summary>Something.</summary>
    /// <param name="mm">From 0 to 10 mm.</param>
    /// <returns>From 0 to 10 mm.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="mm"/> is outside its range.</exception>
    public static double Whole(double mm) => Guard.InRange(mm, 0, 10, "mm");

    private static void Help() => throw new InvalidOperationException();
}
