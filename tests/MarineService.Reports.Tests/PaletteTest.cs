using MarineService.Reports.Internal;

namespace MarineService.Reports.Tests;

/// <summary>Contrast by the formula of WCAG 2.2 (relative luminance of sRGB, W3C Recommendation of 5 October 2023).</summary>
public sealed class PaletteTest
{
    [Theory]
    [InlineData(Palette.Ink)]
    [InlineData(Palette.Quiet)]
    [InlineData(Palette.Blue)]
    [InlineData(Palette.Red)]
    [InlineData(Palette.Amber)]
    [InlineData(Palette.Green)]
    public void Color_OnPaperAndOnTint_IsLegibleAsText(string color)
    {
        Assert.True(Contrast.Of(color, Palette.Paper) >= 4.5, $"{color} on paper: {Contrast.Of(color, Palette.Paper):0.00}");
        Assert.True(Contrast.Of(color, Palette.Tint) >= 4.5, $"{color} on tint: {Contrast.Of(color, Palette.Tint):0.00}");
    }

    /// <summary>WCAG's own example: black on white is 21:1, and the grey #767676 the lightest that reaches 4.5:1 (technique G18).</summary>
    [Fact]
    public void Contrast_OfKnownPairs_IsAsPublished()
    {
        Assert.Equal(21.0, Contrast.Of("#000000", "#ffffff"), 6);
        Assert.True(Contrast.Of("#767676", "#ffffff") >= 4.5);
        Assert.True(Contrast.Of("#777777", "#ffffff") < 4.5);
    }
}
