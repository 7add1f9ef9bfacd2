using MarineService.Core.Internal;

namespace MarineService.Core.Tests.Root;

public sealed class ExplanationTest
{
    [Fact]
    public void Text_HasTheAnswerFirst_AlignedLabels_AndTheSourcesLast()
    {
        Explanation explanation = new ExplanationBuilder("Due 2026-09-14, by hours.")
            .Add("interval", "100 h or 12 months, first wins")
            .Add("by the calendar", "2027-04-01")
            .AddIf(false, "tolerance", () => throw new InvalidOperationException("Never asked for."))
            .AddIf(true, "by hours", () => "512.0 h")
            .Build(Citation.GivenByCaller, Citation.CommonPractice);
        Assert.Equal(
            """
            Due 2026-09-14, by hours.
              interval         100 h or 12 months, first wins
              by the calendar  2027-04-01
              by hours         512.0 h
              source           given by the caller
              source           common practice, no source
            """.ReplaceLineEndings("\n"),
            explanation.ToString());
        Assert.Equal(["interval", "by the calendar", "by hours"], explanation.Lines.Select(line => line.Label));
        Assert.Equal([Citation.GivenByCaller, Citation.CommonPractice], explanation.Citations);
    }

    [Fact]
    public void Text_WithoutLines_IsTheAnswerAndTheSource() =>
        Assert.Equal("Nothing is due.\n  source      given by the caller", new ExplanationBuilder("Nothing is due.").Build(Citation.GivenByCaller).ToString());

    [Fact]
    public void Answer_Blank_IsRefused() =>
        Assert.Throws<ArgumentException>(() => new ExplanationBuilder(" ").Build(Citation.GivenByCaller));

    [Fact]
    public void Lines_WithEqualWords_AreEqual()
    {
        Assert.Equal(new ExplanationLine("by hours", "512.0 h"), new ExplanationLine("by hours", "512.0 h"));
        Assert.NotEqual(new ExplanationLine("by hours", "512.0 h"), new ExplanationLine("by hours", "513.0 h"));
        Assert.Equal("by hours: 512.0 h", new ExplanationLine("by hours", "512.0 h").ToString());
    }
}
