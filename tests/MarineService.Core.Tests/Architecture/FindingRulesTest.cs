using System.Reflection;
using System.Text.RegularExpressions;

namespace MarineService.Core.Tests.Architecture;

/// <summary>Every rule that the library declares: its code, its words, its source.</summary>
public sealed partial class FindingRulesTest
{
    private static readonly (string Where, FindingRule Rule)[] Declared =
    [
        .. from type in Library.Types
           where !type.ContainsGenericParameters
           from member in type.GetMembers(Library.Declared)
           let value = member switch
           {
               PropertyInfo { GetMethod: { IsStatic: true } getter } property when property.PropertyType == typeof(FindingRule) => getter.Invoke(null, null),
               FieldInfo { IsStatic: true } field when field.FieldType == typeof(FindingRule) && !Library.HasGeneratedMark(field) => field.GetValue(null),
               _ => null,
           }
           where value is not null
           select (Library.Describe(member), (FindingRule)value),
    ];

    [Fact]
    public void Codes_AreUpperCaseWithThreeDigits() =>
        AssertAll(rule => CodePattern().IsMatch(rule.Code), "has a code that is not like BELT-004");

    [Fact]
    public void Codes_AreNeverUsedTwice()
    {
        string[] doubled =
        [
            .. Declared.GroupBy(declared => declared.Rule.Code).Where(group => group.Distinct().Count() > 1)
                .Select(group => $"{group.Key}: {string.Join(" and ", group.Select(declared => declared.Where))}"),
        ];
        Assert.True(doubled.Length == 0, string.Join('\n', doubled));
    }

    [Fact]
    public void Citations_NameDocumentAndClause_OrSayThatThereIsNone() =>
        AssertAll(rule => SaysItsSource(rule.Citation), "has a citation without a clause or page; name it, or say that it is practice or memory");

    [Fact]
    public void Remedies_AreGiven_WhereSomethingMustBeDone() =>
        AssertAll(rule => rule.Severity < Severity.Act || !string.IsNullOrWhiteSpace(rule.Remedy), "says Act or Stop and not what to do");

    [Fact]
    public void Placeholders_AreClosed() =>
        AssertAll(
            rule => (rule.Message + rule.Remedy) is string text && Rest(text).IndexOfAny(['{', '}']) < 0,
            "has a brace that is no placeholder");

    [Theory]
    [InlineData("METER-001", true)]
    [InlineData("R-22", false)]
    [InlineData("belt-004", false)]
    public void Code_IsWellFormed_Only(string code, bool expected) => Assert.Equal(expected, CodePattern().IsMatch(code));

    [Fact]
    public void Citation_OfAWholeDocument_IsNotEnough()
    {
        Assert.False(SaysItsSource(Citation.Published("SAE J300", "2021")));
        Assert.True(SaysItsSource(Citation.Published("SAE J300", "2021", "table 1")));
        Assert.True(SaysItsSource(Citation.CommonPractice));
        Assert.True(SaysItsSource(Citation.Derived("the geometry of two circles")));
    }

    private static void AssertAll(Func<FindingRule, bool> holds, string fault)
    {
        string[] broken = [.. Declared.Where(declared => !holds(declared.Rule)).Select(declared => $"{declared.Where} ({declared.Rule}) {fault}")];
        Assert.True(broken.Length == 0, string.Join('\n', broken));
    }

    private static bool SaysItsSource(Citation citation) =>
        citation.Standing is not (CitationStanding.Published or CitationStanding.Secondary) || citation.Clause is not null;

    private static string Rest(string text) => PlaceholderPattern().Replace(text, "");

    [GeneratedRegex("^[A-Z]+(-[A-Z]+)?-[0-9]{3}$")]
    private static partial Regex CodePattern();

    [GeneratedRegex(@"\{[a-zA-Z][^{}]*\}")]
    private static partial Regex PlaceholderPattern();
}
