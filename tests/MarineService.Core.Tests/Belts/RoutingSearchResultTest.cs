using MarineService.Core.Belts;
using MarineService.Core.Tests.Reference;
using UnitsNet;

namespace MarineService.Core.Tests.Belts;

/// <summary>Recognition against the reference's candidates and its count after each test.</summary>
public sealed class RoutingSearchResultTest
{
    public static TheoryData<string, bool> Searches => new(
        from layout in new[] { "S04", "S05", "S06", "S07" }
        from free in new[] { false, true }
        select (layout, free));

    [Theory]
    [MemberData(nameof(Searches))]
    public void FindRoutings_OfReferenceLayout_GivesExactlyItsCandidates(string layout, bool free)
    {
        RoutingSearchResult result = Layouts.Drive(layout).FindRoutings(Options(free));
        IReadOnlyDictionary<string, string>[] rows = Rows(layout, free);
        Assert.Equal((long)rows[0].Number("candidates"), result.Considered);
        Assert.Equal((int)rows[0].Number("left_after_spans_cross"), result.Candidates.Count);
        Assert.Equal(
            rows.Select(row => row["routing"]).Order(StringComparer.Ordinal),
            result.Candidates.Select(candidate => Layouts.Starred(candidate.Routing)).Order(StringComparer.Ordinal));
        foreach (RoutingCandidate candidate in result.Candidates)
        {
            IReadOnlyDictionary<string, string> row = rows.Single(r => r["routing"] == Layouts.Starred(candidate.Routing));
            Assert.Equal(row.Number("pitch_length_mm"), candidate.EffectiveLength.Millimeters + (4 * Math.PI), 1e-6);
            Assert.Equal(row.Number("min_wrap_deg"), candidate.SmallestWrapDegrees, 1e-6);
        }
    }

    [Theory]
    [MemberData(nameof(Searches))]
    public void Tests_OnCompleteRoutings_LeaveTheReferencesCounts(string layout, bool free)
    {
        BeltDrive drive = Layouts.Drive(layout);
        int turning = 0;
        int through = 0;
        int crossing = 0;
        foreach (BeltRouting routing in BruteForce.Routings(drive, free, subsets: false))
        {
            HashSet<FindingRule> rules = [.. routing.Check().Findings.Select(finding => finding.Rule)];
            if (rules.Contains(BeltRules.TurningNumber))
            {
                continue;
            }

            turning++;
            if (rules.Contains(BeltRules.SpanThroughPulley))
            {
                continue;
            }

            through++;
            crossing += rules.Contains(BeltRules.SpansCross) ? 0 : 1;
        }

        IReadOnlyDictionary<string, string> row = Rows(layout, free)[0];
        Assert.Equal((int)row.Number("left_after_turning_number"), turning);
        Assert.Equal((int)row.Number("left_after_span_through_pulley"), through);
        Assert.Equal((int)row.Number("left_after_spans_cross"), crossing);
    }

    [Fact]
    public void Considered_IsTheCountOfOrdersAndFaces()
    {
        // (n-1)!, (n-1)! 2^(n-1), and the same over all subsets with the crank and at least one other.
        (int Pulleys, long Fixed, long Free, long FixedSubsets, long FreeSubsets)[] table =
        [
            (3, 2, 8, 4, 12), (4, 6, 48, 15, 78), (5, 24, 384, 64, 632), (6, 120, 3840, 325, 6330), (7, 720, 46080, 1956, 75972),
        ];
        foreach ((int pulleys, long fixedFaces, long free, long fixedSubsets, long freeSubsets) in table)
        {
            BeltDriveBuilder builder = BeltDrive.SeenFromPulleyEnd(Sense.Clockwise);
            for (int i = 0; i < pulleys; i++)
            {
                builder = builder.Grooved($"p{i}", 200 * i, 0, 60);
            }

            BeltDrive drive = builder.Build();
            RoutingSearchOptions either = RoutingSearchOptions.Default.WithFaces(FaceChoice.Either);
            Assert.Equal(fixedFaces, drive.FindRoutings().Considered);
            Assert.Equal(free, drive.FindRoutings(either).Considered);
            Assert.Equal(fixedSubsets, drive.FindRoutings(RoutingSearchOptions.Default.WithMissedPulleys()).Considered);
            Assert.Equal(freeSubsets, drive.FindRoutings(either.WithMissedPulleys()).Considered);
        }
    }

    [Fact]
    public void Plausible_OfS07WithItsBelt_IsTheDesignAlone()
    {
        BeltDrive drive = Layouts.S07WithArm().WithBelt(
            RibbedBelt.Pk(6, Length.FromMillimeters(1910)).WithThickness(2, 1.2, 4.8));
        RoutingSearchResult result = drive.FindRoutings(Options(free: true));
        Assert.Equal("CRK TEN* RWP ALT WP* PS IDL*", Layouts.Starred(Assert.Single(result.Plausible).Routing));
        Assert.Equal(result.Plausible[0], result.Ranked[0]);
        Assert.Equal(22, result.Ranked.Count);
    }

    [Fact]
    public void Plausible_OfS07WithoutABeltLength_ShowsBothCandidates()
    {
        RoutingSearchResult result = Layouts.Drive("S07").FindRoutings();
        Assert.Equal(2, result.Plausible.Count);
        Assert.False(result.Plausible[0].BeltFits.IsKnown);
        double[] lengths = [.. result.Candidates.Select(candidate => candidate.EffectiveLength.Millimeters)];
        Assert.Equal(422.37, Math.Abs(lengths[0] - lengths[1]), 0.005);
        Assert.Contains("only the maker's diagram decides", result.Explain(DisplayUnits.Metric).Answer, StringComparison.Ordinal);
    }

    [Fact]
    public void Ranked_PutsRequiredSensesFirst()
    {
        BeltDrive drive = Layouts.Drive("S07");
        BeltDrive strict = drive.WithPulley(drive.Find("RWP")!.WithRequiredRotation(Rotation.Of(Sense.CounterClockwise, Viewpoint.PulleyEnd)));
        RoutingSearchResult result = strict.FindRoutings(Options(free: true));
        Assert.True(result.Ranked[0].SensesAreRight);
        Assert.Contains("RWP*", Layouts.Starred(result.Ranked[0].Routing), StringComparison.Ordinal);
        Assert.Empty(result.Plausible);
    }

    [Fact]
    public void TooManyPulleys_AreRefused()
    {
        BeltDriveBuilder builder = BeltDrive.SeenFromPulleyEnd(Sense.Clockwise);
        for (int i = 0; i < 10; i++)
        {
            builder = builder.Grooved($"p{i}", 200 * i, 0, 60);
        }

        Assert.Throws<InvalidOperationException>(() => builder.Build().FindRoutings());
    }

    private static RoutingSearchOptions Options(bool free) =>
        RoutingSearchOptions.Default.WithFaces(free ? FaceChoice.Either : FaceChoice.AsRimsAreMade);

    private static IReadOnlyDictionary<string, string>[] Rows(string layout, bool free) =>
        [.. ReferenceTable.Read("belts-candidates.csv").Where(row => row["layout"] == layout && row["sides"].StartsWith("free", StringComparison.Ordinal) == free)];
}
