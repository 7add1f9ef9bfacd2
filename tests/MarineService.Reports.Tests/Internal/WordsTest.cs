using MarineService.Core;
using MarineService.Reports.Internal;
using UnitsNet;

namespace MarineService.Reports.Tests.Internal;

public sealed class WordsTest
{
    [Theory]
    [InlineData("holds 6.00 L in all", "holds 6.34 US qt in all", "holds 6.00 L (6.34 US qt) in all")]
    [InlineData("6.00 L", "6.34 US qt", "6.00 L (6.34 US qt)")]
    [InlineData("at 10 °C.", "at 50 °F.", "at 10 °C (50 °F).")]
    [InlineData("10.5 mm", "0.5 in", "10.5 mm (0.5 in)")]
    [InlineData("110 mm left", "10 in left", "110 mm (10 in) left")]
    [InlineData("no units", "no units", "no units")]
    [InlineData("5 L and 5 L", "5 qt and 5 qt", "5 L and 5 L (5 qt and 5 qt)")]
    [InlineData("a a", "a a a", "a a (a a)")]
    [InlineData("", "x", " (x)")]
    public void OtherUnits_StandBesideTheWordsThatTheyChange(string metric, string us, string both) =>
        Assert.Equal(both, Words.InBoth(units => units == DisplayUnits.Metric ? metric : us, DisplayUnits.Metric));

    [Fact]
    public void LeadingUnits_StandFirst() =>
        Assert.Equal("6.34 US qt (6.00 L)", Words.InBoth(Volume.FromLiters(6), DisplayUnits.UsCustomary));
}
