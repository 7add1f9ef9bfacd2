using MarineService.Core.Scheduling;
using MarineService.Core.Tests.Architecture;

namespace MarineService.Core.Tests.Scheduling;

public sealed class IntervalRuleTest
{
    public static TheoryData<string> Codes => [.. IntervalRule.All.Select(rule => rule.Code)];

    [Fact]
    public void Codes_AreDistinct() => Assert.Equal(IntervalRule.All.Count, IntervalRule.All.Select(rule => rule.Code).Distinct().Count());

    /// <summary>Each rule stands in docs/intervals.md with a worked line, and with its document, or "ours", or "common practice".</summary>
    [Theory]
    [MemberData(nameof(Codes))]
    public void Rule_IsExplained_InTheDocument(string code)
    {
        IntervalRule rule = IntervalRule.All.Single(r => r.Code == code);
        string row = Assert.Single(
            File.ReadLines(Path.Combine(Repository.Root, "docs", "intervals.md")),
            line => line.StartsWith($"| {code} |", StringComparison.Ordinal));
        string[] cells = [.. row.Split('|').Select(cell => cell.Trim())];
        Assert.True(cells[3].Length > 0, "no worked line");
        string expected = rule.Citation.Standing switch
        {
            CitationStanding.ProjectChoice => "ours",
            CitationStanding.CommonPractice => "common practice",
            _ => rule.Citation.Document!,
        };
        Assert.StartsWith(expected, cells[4], StringComparison.Ordinal);
    }
}
