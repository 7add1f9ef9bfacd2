namespace MarineService.Reports.Tests;

/// <summary>How far two colours stand apart, by the formula of WCAG 2.2 (relative luminance of sRGB, W3C Recommendation of 5 October 2023).</summary>
internal static class Contrast
{
    /// <summary>From 1 for the same colour to 21 for black and white; colours as #rrggbb.</summary>
    internal static double Of(string one, string other)
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
