using System.Reflection;
using MarineService.Core.Tests.Architecture;
using MarineService.Core.Tests.Architecture.Specimens.Inputs;

namespace MarineService.Core.Tests.Surface;

/// <summary>At every public member: what no caller can have meant is refused, and the refusal names the argument.</summary>
public sealed class BadInputTest
{
    private static readonly Type[] Types = [.. Library.PublicTypes];

    private static readonly ValuePool Pool = new(Types);

    /// <summary>Arguments for which one of the values below means something after all, each with the reason.</summary>
    private static readonly string[] MeantToBeAccepted =
    [
        // Any finite number may be a figure; its unit is chosen by the caller.
        "Figure.Of(String name, Double number, FigureUnit unit): number = 1E+300",
        "Figure.Of(String name, Double number, FigureUnit unit): number = -1E+300",
    ];

    [Fact]
    public void Numbers_NotFiniteOrAbsurd_AreRefusedByName() => AssertNone(BadInput.NumbersFor);

    [Fact]
    public void Dates_DefaultFarOrOfAnotherCalendar_AreRefusedByName() => AssertNone(BadInput.DatesFor);

    [Fact]
    public void Enums_Undefined_AreRefusedByName() => AssertNone(BadInput.EnumsFor);

    [Fact]
    public void Nulls_WhereNoneIsAllowed_AreRefusedByName() => AssertNone(BadInput.NullsFor);

    [Fact]
    public void EveryPublicMember_CanBeCalledWithOrdinaryArguments()
    {
        string[] unreached = [.. ValuePool.Callable(Types).Where(method => !Pool.Answered.Contains(method)).Select(Library.Describe)];
        Assert.True(
            unreached.Length == 0,
            "Never answered; add ordinary arguments to Surface/Samples.cs:\n" + string.Join('\n', unreached));
    }

    [Theory]
    [InlineData(nameof(Unguarded.OfNumber))]
    [InlineData(nameof(Unguarded.OfDate))]
    [InlineData(nameof(Unguarded.OfEnum))]
    [InlineData(nameof(Unguarded.OfText))]
    [InlineData(nameof(Unguarded.OfTexts))]
    [InlineData(nameof(Unguarded.OfVolume))]
    [InlineData(nameof(Unguarded.WithWrongName))]
    public void Specimen_WithoutAGuard_IsFound(string method)
    {
        string[] found = [.. All(new ValuePool([typeof(Unguarded), typeof(Severity)]), [typeof(Unguarded)])];
        Assert.Contains(found, line => line.Contains("." + method + "(", StringComparison.Ordinal));
    }

    [Fact]
    public void Specimen_WithGuards_IsLeftAlone() =>
        Assert.Empty(All(new ValuePool([typeof(Guarded), typeof(Severity)]), [typeof(Guarded)]));

    private static IEnumerable<string> All(ValuePool pool, Type[] types) =>
        new Func<ParameterInfo, IEnumerable<object?>>[] { BadInput.NumbersFor, BadInput.DatesFor, BadInput.EnumsFor, BadInput.NullsFor }
            .SelectMany(bad => BadInput.NotRefused(pool, types, bad));

    private static void AssertNone(Func<ParameterInfo, IEnumerable<object?>> bad)
    {
        string[] found =
        [
            .. BadInput.NotRefused(Pool, Types, bad)
                .Where(line => !MeantToBeAccepted.Any(meant => line.StartsWith(meant, StringComparison.Ordinal))),
        ];
        Assert.True(found.Length == 0, string.Join('\n', found));
    }
}
