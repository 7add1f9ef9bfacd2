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
        Assert.True(Contrast(color, Palette.Paper) >= 4.5, $"{color} on paper: {Contrast(color, Palette.Paper):0.00}");
        Assert.True(Contrast(color, Palette.Tint) >= 4.5, $"{color} on tint: {Contrast(color, Palette.Tint):0.00}");
    }

    /// <summary>WCAG's own example: black on white is 21:1, and the grey #767676 the lightest that reaches 4.5:1 (technique G18).</summary>
    [Fact]
    public void Contrast_OfKnownPairs_IsAsPublished()
    {
        Assert.Equal(21.0, Contrast("#000000", "#ffffff"), 6);
        Assert.True(Contrast("#767676", "#ffffff") >= 4.5);
        Assert.True(Contrast("#777777", "#ffffff") < 4.5);
    }

    internal static double Contrast(string one, string other)
    {
        (double a, double b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(string color)
    {
        double Channel(int at)
        {
            double value = Convert.ToInt32(color.Substring(at, 2), 16) / 255.0;
            return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
        }

        return (0.2126 * Channel(1)) + (0.7152 * Channel(3)) + (0.0722 * Channel(5));
    }
}
