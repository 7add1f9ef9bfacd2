using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Oils;
using MarineService.Core.Tests.Reference;
using NodaTime;

namespace MarineService.Core.Tests.Oils;

public sealed class CategoryCoverageTest
{
    [Fact]
    public void Of_EveryPair_StandsOnStatedEdgesOnlyAndNeverGoesBothWays()
    {
        foreach (ServiceCategory claimed in ServiceCategory.All)
        {
            foreach (ServiceCategory required in ServiceCategory.All)
            {
                CategoryCoverage answer = Of(claimed.Name, required.Name);
                Assert.NotEmpty(answer.Reason);
                if (answer.Coverage != Coverage.Covered)
                {
                    Assert.Empty(answer.Path);
                    continue;
                }

                Assert.Equal((claimed, required), (answer.Path[0], answer.Path[answer.Path.Count - 1]));
                Assert.All(
                    answer.Path.Zip(answer.Path.Skip(1)),
                    step => Assert.Contains(CoverageGraph.Edges, edge => edge.From == step.First && edge.To == step.Second));
                Assert.True(claimed == required || Of(required.Name, claimed.Name).Coverage != Coverage.Covered, $"{claimed} and {required}");
            }
        }
    }

    [Law]
    public Property Of_AnyPair_IsNeverCoveredThroughAForbiddenCategory() =>
        Prop.ForAll(AnyCategory().Zip(AnyCategory()).Zip(AnyCategory()).ToArbitrary(), three =>
        {
            ((ServiceCategory claimed, ServiceCategory required), ServiceCategory forbidden) = three;
            CategoryCoverage answer = CategoryCoverage.Of(CategoryClaim.Of(claimed), CategoryClaim.Of(required), null, [forbidden]);
            return (answer.Coverage != Coverage.Covered || !answer.Path.Take(answer.Path.Count - 1).Contains(forbidden)).Label($"{claimed} {required} without {forbidden}");
        });

    [Fact]
    public void Stated_IsExactlyTheReferenceTable()
    {
        List<string> expected = [];
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("service-categories.csv"))
        {
            foreach (string category in row["category"].Split(';'))
            {
                Assert.True(ServiceCategory.TryParse(category, out _), category);
                foreach (string covered in row["stated_to_cover"].Split(';', StringSplitOptions.RemoveEmptyEntries))
                {
                    string name = covered.Replace(" and earlier", "", StringComparison.Ordinal).Replace(" and what CK-4 covers", "", StringComparison.Ordinal);
                    if (name == "earlier S")
                    {
                        expected.AddRange(new[] { "SA", "SB", "SC", "SD", "SE", "SF", "SG", "SH" }.Select(earlier => $"{category} {earlier}"));
                    }
                    else if (ServiceCategory.TryParse(name, out ServiceCategory? known) && row["body"] == "API")
                    {
                        expected.Add($"{category} {known}");
                    }
                }
            }
        }

        Assert.Equal(expected.Order(StringComparer.Ordinal), CoverageGraph.Edges.Select(edge => $"{edge.From} {edge.To}").Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("CK-4", "CI-4", "CK-4 → CI-4")] // API bulletin as reported: CK-4 covers CJ-4, CI-4 PLUS, CI-4, CH-4
    [InlineData("CK-4", "CG-4", "CK-4 → CJ-4 → CG-4")]
    [InlineData("CI-4", "CD", "CI-4 → CD")] // API guide
    [InlineData("SQ", "SH", "SQ → SP → SN → SM → SL → SJ → SH")] // API guide: each later S category covers the earlier ones
    [InlineData("CL-4", "CJ-4", "CL-4 → CK-4 → CJ-4")]
    [InlineData("FB-4", "FA-4", "FB-4 → FA-4")]
    [InlineData("FC-W", "FC-W", "FC-W")]
    public void Of_StatedCoverage_NamesThePath(string claimed, string required, string path)
    {
        CategoryCoverage answer = Of(claimed, required);
        Assert.Equal(Coverage.Covered, answer.Coverage);
        Assert.Equal(path, string.Join(" → ", answer.Path));
    }

    [Theory]
    [InlineData("CJ-4", "CF")] // indirect injection: no newer category is stated to cover CF
    [InlineData("CK-4", "CF-2")]
    [InlineData("SN", "SP")] // an earlier one does not cover a later one
    [InlineData("CI-4", "CI-4 PLUS")]
    [InlineData("SH", "SG")] // obsolete, no statement of its own
    [InlineData("A7/B7", "A5/B5")] // "built on" is not coverage
    [InlineData("E8", "E6")] // superseding is not coverage
    [InlineData("E11", "E9")]
    [InlineData("SP", "CK-4")]
    [InlineData("FC-W Catalyst Compatible", "FC-W")]
    public void Of_NothingStated_NamesTheMissingEdge(string claimed, string required)
    {
        CategoryCoverage answer = Of(claimed, required);
        Assert.Equal(Coverage.NoneStated, answer.Coverage);
        Assert.Contains($"no published statement that {claimed} covers {required}", answer.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("FA-4", "CK-4", "not backward compatible with any C category")]
    [InlineData("FA-4", "CD", "not backward compatible with any C category")]
    [InlineData("FB-4", "CI-4", "not for engines that ask for a C category")]
    [InlineData("GF-6B", "GF-6A", "0W-16 only")]
    [InlineData("GF-7B", "GF-7A", "0W-16 only")]
    [InlineData("SQ", "FC-W", "does not imply")]
    [InlineData("TC-W3", "FC-W", "two-stroke")]
    [InlineData("TC-W3", "SN", "two-stroke")]
    [InlineData("F8", "E8", "not interchangeable")]
    public void Of_StatedExceptions_AreExcluded(string claimed, string required, string why)
    {
        CategoryCoverage answer = Of(claimed, required);
        Assert.Equal(Coverage.Excluded, answer.Coverage);
        Assert.Contains(why, answer.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_AMakersMustNot_OverridesCoverage()
    {
        ServiceCategory cj4 = ServiceCategory.Parse("CJ-4");
        CategoryCoverage outright = CategoryCoverage.Of(CategoryClaim.Parse("CJ-4"), CategoryClaim.Parse("CJ-4"), null, [cj4]);
        Assert.Equal(Coverage.Excluded, outright.Coverage);
        Assert.Contains("maker forbids CJ-4", outright.Reason, StringComparison.Ordinal);
        CategoryCoverage through = CategoryCoverage.Of(CategoryClaim.Parse("CL-4"), CategoryClaim.Parse("CI-4"), null, [ServiceCategory.Parse("CK-4")]);
        Assert.Equal(Coverage.NoneStated, through.Coverage);
        Assert.Contains("leads through CK-4", through.Reason, StringComparison.Ordinal);
        CategoryCoverage around = CategoryCoverage.Of(CategoryClaim.Parse("CK-4"), CategoryClaim.Parse("CI-4"), null, [cj4]);
        Assert.Equal(Coverage.Covered, around.Coverage);
        Assert.Contains(around.Cautions, caution => caution.Contains("covers CJ-4, which the engine's maker forbids", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_AceaIssues_TheYearMatters()
    {
        Assert.Equal(Coverage.Covered, Of("E7-16", "E7-16").Coverage);
        Assert.Equal(Coverage.Covered, Of("E7-22", "E7").Coverage);
        Assert.Equal(Coverage.NoneStated, Of("E7-22", "E7-16").Coverage);
        Assert.Contains("names no year", Of("E7", "E7-16").Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_ADate_CautionsAboutClaimsThatDoNotExistYetOrAnyMore()
    {
        CategoryCoverage Asked(string claimed, LocalDate on) => CategoryCoverage.Of(CategoryClaim.Parse(claimed), CategoryClaim.Parse(claimed), on);
        Assert.Contains(Asked("CL-4", new LocalDate(2026, 12, 31)).Cautions, c => c.Contains("starts 2027-01-01", StringComparison.Ordinal));
        Assert.DoesNotContain(Asked("CL-4", new LocalDate(2027, 1, 1)).Cautions, c => c.Contains("starts", StringComparison.Ordinal));
        Assert.Contains(Asked("E6", new LocalDate(2025, 1, 1)).Cautions, c => c.Contains("until 2024-12-31", StringComparison.Ordinal));
        Assert.DoesNotContain(Asked("E6", new LocalDate(2024, 12, 31)).Cautions, c => c.Contains("until", StringComparison.Ordinal));
        Assert.Contains(Asked("CF", new LocalDate(2026, 10, 12)).Cautions, c => c.Contains("until 2010-12-30", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("CK-5")]
    [InlineData("E99")]
    [InlineData("")]
    [InlineData("15W-40")]
    [InlineData("CK-4-16")]
    [InlineData("E9-1")]
    public void Parse_UnknownCategory_NamesTheKnownOnes(string text)
    {
        ArgumentException fault = Assert.Throws<ArgumentException>(nameof(text), () => CategoryClaim.Parse(text));
        Assert.Contains("expected one of", fault.Message, StringComparison.Ordinal);
        Assert.Contains("CK-4", fault.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>("name", () => ServiceCategory.Parse(text));
    }

    [Theory]
    [InlineData("API CK-4", "CK-4", null)]
    [InlineData("ci-4 plus", "CI-4 PLUS", null)]
    [InlineData("ACEA A3/B4-16", "A3/B4", 2016)]
    [InlineData("E9-2016", "E9", 2016)]
    [InlineData("E4-99", "E4", 1999)]
    [InlineData("E4-2100", "E4", 2100)]
    [InlineData("fc-w", "FC-W", null)]
    public void Parse_OfALabel_GivesCategoryAndYear(string text, string name, int? year)
    {
        CategoryClaim claim = CategoryClaim.Parse(text);
        Assert.Equal((name, year), (claim.Category.Name, claim.IssueYear));
        Assert.Equal(claim, CategoryClaim.Parse(claim.ToString()));
    }

    [Fact]
    public void Of_BadInput_Throws()
    {
        CategoryClaim claim = CategoryClaim.Parse("CK-4");
        Assert.Throws<ArgumentNullException>("claimed", () => CategoryCoverage.Of(null!, claim));
        Assert.Throws<ArgumentNullException>("required", () => CategoryCoverage.Of(claim, null!));
        Assert.Throws<ArgumentException>("forbidden", () => CategoryCoverage.Of(claim, claim, null, [null!]));
        Assert.Throws<ArgumentOutOfRangeException>("asOf", () => CategoryCoverage.Of(claim, claim, default(LocalDate)));
        Assert.Throws<ArgumentException>("issueYear", () => CategoryClaim.Of(ServiceCategory.Parse("CK-4"), 2016));
        Assert.Throws<ArgumentOutOfRangeException>("issueYear", () => CategoryClaim.Of(ServiceCategory.Parse("E9"), 1900));
        Assert.Throws<ArgumentNullException>("category", () => CategoryClaim.Of(null!));
        Assert.Throws<ArgumentNullException>("name", () => ServiceCategory.Parse(null!));
    }

    [Fact]
    public void Explain_NamesPathAndSource()
    {
        string text = Of("CK-4", "CG-4").Explain(DisplayUnits.Metric).ToString();
        Assert.Contains("CK-4 → CJ-4 → CG-4", text, StringComparison.Ordinal);
        Assert.Contains("API engine oil guide", text, StringComparison.Ordinal);
        Assert.Contains("viscosity grade must match", text, StringComparison.Ordinal);
    }

    private static CategoryCoverage Of(string claimed, string required) => CategoryCoverage.Of(CategoryClaim.Parse(claimed), CategoryClaim.Parse(required));

    private static Gen<ServiceCategory> AnyCategory() => Gen.Elements(ServiceCategory.All.ToArray());
}
