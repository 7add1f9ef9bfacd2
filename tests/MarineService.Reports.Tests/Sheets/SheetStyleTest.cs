using System.Reflection;
using System.Text.RegularExpressions;
using MarineService.Reports.Internal;
using MarineService.Reports.Sheets;

namespace MarineService.Reports.Tests.Sheets;

/// <summary>Contrast by WCAG 2.2: 4.5:1 for text (1.4.3), 3:1 for marks (1.4.11).</summary>
public sealed partial class SheetStyleTest
{
    [Fact]
    public void Style_UsesThePalettesColoursOnly()
    {
        HashSet<string> palette = [.. typeof(Palette).GetFields(BindingFlags.NonPublic | BindingFlags.Static).Select(field => (string)field.GetValue(null)!)];
        string[] used = [.. Color().Matches(SheetStyle.For(Paper.A4)).Select(match => match.Value)];

        Assert.NotEmpty(used);
        Assert.All(used, color => Assert.Contains(color, palette));
    }

    [Fact]
    public void Text_IsLegibleOnWhatItStandsOn_AndEveryMarkIsSeen()
    {
        int texts = 0;
        foreach (Match rule in Rule().Matches(SheetStyle.For(Paper.A4)))
        {
            Dictionary<string, string> said = rule.Groups["body"].Value.Split(';').Select(one => one.Split(':', 2)).Where(one => one.Length == 2)
                .GroupBy(one => one[0].Trim()).ToDictionary(one => one.Key, one => one.Last()[1].Trim());
            string ground = said.TryGetValue("background", out string? given) && given.StartsWith('#') ? given : Palette.Paper;
            if (said.TryGetValue("color", out string? text))
            {
                texts++;
                Assert.True(Contrast.Of(text, ground) >= 4.5, rule.Value);
            }

            foreach (string mark in said.Where(one => one.Key.StartsWith("border", StringComparison.Ordinal)).SelectMany(one => Color().Matches(one.Value).Select(match => match.Value)))
            {
                Assert.True(Contrast.Of(mark, Palette.Paper) >= 3, rule.Value);
            }
        }

        Assert.True(texts > 10);
    }

    [Theory]
    [InlineData(Paper.OfPrinter, "@page { margin: 13mm 14mm 15mm; }")]
    [InlineData(Paper.A4, "@page { size: A4; margin: 13mm 14mm 15mm; }")]
    [InlineData(Paper.Letter, "@page { size: letter; margin: 13mm 14mm 15mm; }")]
    public void Paper_SetsThePage_OrLeavesItToThePrinter(Paper paper, string rule) =>
        Assert.StartsWith(rule + "\n", SheetStyle.For(paper), StringComparison.Ordinal);

    [GeneratedRegex("#[0-9a-fA-F]{3,8}\\b")]
    private static partial Regex Color();

    [GeneratedRegex("(?<head>[^{}]+)\\{(?<body>[^{}]*)\\}")]
    private static partial Regex Rule();
}
