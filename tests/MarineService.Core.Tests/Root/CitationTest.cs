namespace MarineService.Core.Tests.Root;

public sealed class CitationTest
{
    [Fact]
    public void Equality_IsThatOfAllFourParts()
    {
        Assert.Equal(Citation.Published("SAE J300", "2021", "table 1"), Citation.Published("SAE J300", "2021", "table 1"));
        Assert.NotEqual(Citation.Published("SAE J300", "2021", "table 1"), Citation.Secondary("SAE J300", "2021", "table 1"));
        Assert.NotEqual(Citation.Published("SAE J300", "2021", "table 1"), Citation.Published("SAE J300", "2015", "table 1"));
        Assert.NotEqual(Citation.Published("SAE J300", "2021", "table 1"), Citation.Published("SAE J300", "2021", "table 2"));
        Assert.NotEqual(Citation.Published("SAE J300", "2021", "table 1"), Citation.Published("SAE J306", "2021", "table 1"));
    }

    public static TheoryData<Citation, CitationStanding, string> Texts => new()
    {
        { Citation.Published("SAE J300", "2021", "table 1"), CitationStanding.Published, "SAE J300, 2021, table 1" },
        { Citation.Published("SAE J300"), CitationStanding.Published, "SAE J300" },
        { Citation.Published("SAE J300", clause: "table 1"), CitationStanding.Published, "SAE J300, table 1" },
        { Citation.Secondary("ISO 9982", "2021"), CitationStanding.Secondary, "ISO 9982, 2021 (as summarized by others)" },
        { Citation.Derived("two circles and a crossed belt"), CitationStanding.Derived, "derived from two circles and a crossed belt" },
        { Citation.CommonPractice, CitationStanding.CommonPractice, "common practice, no source" },
        { Citation.PracticeDescribedIn("a navy maintenance card"), CitationStanding.CommonPractice, "common practice, described in a navy maintenance card" },
        { Citation.ProjectChoice, CitationStanding.ProjectChoice, "project choice, may be changed" },
        { Citation.FromMemory, CitationStanding.FromMemory, "from memory, not confirmed" },
        { Citation.GivenByCaller, CitationStanding.GivenByCaller, "given by the caller" },
    };

    [Theory]
    [MemberData(nameof(Texts))]
    public void Text_SaysHowWellItIsKnown(Citation citation, CitationStanding standing, string expected)
    {
        Assert.Equal(standing, citation.Standing);
        Assert.Equal(expected, citation.ToString());
    }

    [Fact]
    public void Text_IsSayableForEveryStanding() =>
        Assert.Equal(Enum.GetValues<CitationStanding>().Order(), Texts.Select(row => row.Data.Item2).Distinct().Order());

    [Fact]
    public void Document_Blank_IsRefusedByName()
    {
        Assert.Equal("document", Assert.Throws<ArgumentException>(() => Citation.Published(" ")).ParamName);
        Assert.Equal("document", Assert.Throws<ArgumentException>(() => Citation.Secondary("")).ParamName);
        Assert.Equal("from", Assert.Throws<ArgumentException>(() => Citation.Derived("\t")).ParamName);
        Assert.Equal("asDescribedIn", Assert.Throws<ArgumentException>(() => Citation.PracticeDescribedIn("")).ParamName);
        Assert.Equal("document", Assert.Throws<ArgumentNullException>(() => Citation.Published(null!)).ParamName);
    }
}
