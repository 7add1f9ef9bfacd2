using MarineService.Core.Parts;
using MarineService.Core.Tests.Reference;
using UnitsNet;

namespace MarineService.Core.Tests.Parts;

public sealed class CoverFitTest
{
    private static readonly ScrewClearance M5Medium = ScrewClearance.OfStandardHole(MetricThread.M5, ClearanceSeries.Medium).Value;

    private static readonly BoltPattern Six = Circle(0, 58, 121, 180, 238.3, 301);

    [Fact]
    public void Rotations_OfTheWorkedPatterns_AreThose()
    {
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("bolt-pattern-checks.csv"))
        {
            CoverFit fit = Circle(Angles(row["block"])).Fit(Circle(Angles(row["cover"])), M5Medium);
            IReadOnlyList<CoverRotation> all = row["face"] == "d" ? fit.FaceDown : fit.Rotations;
            CoverRotation rotation = all.Single(one => Apart(one.TurnDegrees, row.Number("turn")) < 0.005);
            Assert.InRange(Math.Abs(rotation.WorstOffMm - row.Number("off")), 0, 0.0005);
            Assert.InRange(Math.Abs(rotation.Pairs.Max(pair => Math.Abs(pair.TurnOffDegrees)) - row.Number("halfRange")), 0, 0.0005);
            Assert.Equal(row["fits"] == "yes", rotation.Fits);
        }
    }

    [Fact]
    public void Turns_OfTheScannedPatterns_FitExactlyThere()
    {
        foreach (IGrouping<string, IReadOnlyDictionary<string, string>> scan in ReferenceTable.Read("bolt-pattern-scans.csv").GroupBy(row => row["case"]))
        {
            IReadOnlyDictionary<string, string> angles = ReferenceTable.Read("bolt-pattern-checks.csv").First(row => row["case"] == scan.Key);
            CoverFit fit = Circle(Angles(angles["block"])).Fit(Circle(Angles(angles["cover"])), M5Medium);
            for (double turn = 0.025; turn < 360; turn += 0.05)
            {
                bool inside = scan.Any(row => turn > row.Number("from") + 0.01 && turn < row.Number("to") - 0.01);
                bool outside = scan.All(row => turn < row.Number("from") - 0.01 || turn > row.Number("to") + 0.01);
                if (inside || outside)
                {
                    Assert.Equal(inside, fit.AsHeld(Angle.FromDegrees(turn)).Value.Goes);
                }
            }
        }
    }

    /// <summary>Common practice, no source: a three-bolt cover whose holes are not an equal triangle fits in one of three rotations.</summary>
    [Fact]
    public void ThreeBoltCover_NotAnEqualTriangle_FitsInOneOfThree()
    {
        CoverFit fit = Circle(0, 110, 240).Fit(Circle(0, 110, 240), M5Medium);
        Assert.Equal(3, fit.Rotations.Count);
        Assert.Equal(1, Assert.Single(fit.Fitting).FirstHoleOn);
        Assert.Empty(fit.Findings);
    }

    [Fact]
    public void ThreeBoltCover_FaceDown_IsFoundByItsMirrorImage()
    {
        // Two equal gaps make a pattern its own mirror image; three different gaps do not.
        Assert.Equal("FIT-006", Assert.Single(Circle(0, 110, 220).Fit(Circle(0, 110, 220), M5Medium).Findings).Code);
        BoltPattern mirrored = Circle(0, 120, 250);
        Finding found = Assert.Single(Circle(0, 110, 240).Fit(mirrored, M5Medium).Findings);
        Assert.Equal("FIT-003", found.Code);
    }

    [Fact]
    public void EqualSpacing_FitsNTimes_AndTheHolesDoNotSayWhichIsRight()
    {
        for (int holes = 2; holes <= 12; holes++)
        {
            BoltPattern even = BoltPattern.EvenlySpaced(Length.FromMillimeters(34), holes);
            CoverFit fit = even.Fit(even, M5Medium);
            Assert.Equal(holes, fit.Fitting.Count);
            Assert.Equal(["FIT-005", "FIT-006"], fit.Findings.Select(finding => finding.Code));
            Assert.Equal(holes - 1, even.Fit(even, M5Medium, firstHoleOn: 1).Findings.Count(finding => finding.Code == "FIT-004"));
        }
    }

    [Fact]
    public void WrongFit_IsFound_WithItsTurnAndItsHole()
    {
        CoverFit fit = Six.Fit(Six, M5Medium, firstHoleOn: 1);
        Assert.True(fit.AdmitsWrongFit);
        Finding found = Assert.Single(fit.Findings);
        Assert.Equal("FIT-004", found.Code);
        Assert.Equal(4, found["on"]!.Number);
        Assert.Equal(180, found["turn"]!.Number!.Value, 6);
        Assert.Equal(0.178, found["off"]!.Number!.Value, 3);
    }

    [Fact]
    public void Pairs_SayWhichScrewGoesWhere()
    {
        CoverRotation half = Six.Fit(Six, M5Medium).Fitting[1];
        Assert.Equal([4, 5, 6, 1, 2, 3], half.Pairs.Select(pair => pair.BlockHole));
        Assert.Equal([1, 2, 3, 4, 5, 6], half.Pairs.Select(pair => pair.CoverHole));
        Assert.Equal("cover 1 on block 4", half.Pairs[0].ToString());
    }

    [Theory]
    [InlineData(57, 3.0, "clockwise")]
    [InlineData(-8, 8.0, "counter-clockwise")]
    public void Held_NextToNoFit_IsToldHowFarToTurn(double turn, double by, string sense)
    {
        // Of three unequal gaps only 0 fits: from 57 degrees back by 57, from -8 on by 8.
        HeldCover held = Circle(0, 110, 240).Fit(Circle(0, 110, 240), M5Medium).AsHeld(Angle.FromDegrees(turn)).Value;
        Assert.False(held.Goes);
        Finding found = Assert.Single(held.Findings);
        Assert.Equal("FIT-007", found.Code);
        Assert.Equal(sense, found["sense"]!.Word);
        Assert.Equal(turn > 0 ? turn : by, found["turn"]!.Number!.Value, 9);
        Assert.Equal(-turn, held.TurnToFitDegrees.Value, 9);
    }

    [Fact]
    public void Held_InTheWrongFit_IsFound()
    {
        CoverFit fit = Six.Fit(Six, M5Medium, firstHoleOn: 1);
        HeldCover held = fit.AsHeld(Angle.FromDegrees(180)).Value;
        Assert.True(held.Goes && held.IsWrongFit);
        Assert.Equal("FIT-008", Assert.Single(held.Findings).Code);
        Assert.Empty(fit.AsHeld(Angle.FromDegrees(0.3)).Value.Findings);
        Assert.Equal("FIT-007", Assert.Single(fit.AsHeld(Angle.FromDegrees(0.43)).Value.Findings).Code);
    }

    [Fact]
    public void Held_BetweenFits_NamesTheWorstHoleAndHowFarItIsOff()
    {
        // Turned by 1 degree every hole is 1 degree off: 2 x 34 mm x sin(0.5 deg) = 0.5934 mm.
        HeldCover held = Six.Fit(Six, M5Medium, firstHoleOn: 1).AsHeld(Angle.FromDegrees(1)).Value;
        Assert.Equal(0.5934, held.WorstOffMm, 4);
        Assert.InRange(held.WorstHole, 1, 6);
    }

    [Fact]
    public void Covers_OfOtherNumbersOrCircles_AreOtherParts()
    {
        CoverFit other = Six.Fit(Circle(0, 72, 144, 216, 288), M5Medium);
        Assert.Equal("FIT-001", Assert.Single(other.Findings).Code);
        Assert.False(other.Best.IsKnown || other.AsHeld(Angle.FromDegrees(0)).IsKnown || other.Fits || other.AdmitsWrongFit);
        CoverFit wider = Six.Fit(BoltPattern.Of(Length.FromMillimeters(34.3), 0, 58, 121, 180, 238.3, 301), M5Medium);
        Assert.Equal("FIT-009", Assert.Single(wider.Findings).Code);
        Assert.True(Six.Fit(BoltPattern.Of(Length.FromMillimeters(34.2), 0, 58, 121, 180, 238.3, 301), M5Medium).Fits);
        Assert.Equal("FIT-002", Assert.Single(Circle(0, 100, 240).Fit(Circle(0, 110, 240), M5Medium).Findings).Code);
    }

    [Fact]
    public void Limit_OnThePlay_BelongsToTheFit()
    {
        // Two holes 181 degrees apart over two 180 degrees apart: half a degree each.
        double limit = 2 * 34 * Math.Sin(0.25 * Math.PI / 180);
        Assert.True(Circle(0, 181).Fit(Circle(0, 180), Play(limit)).Fits);
        Assert.False(Circle(0, 181).Fit(Circle(0, 180), Play(limit - 1e-6)).Fits);
    }

    [Fact]
    public void FreeCover_MayBePushedAside_WhereACentredOneDoesNotFit()
    {
        // Holes 180 and 184 degrees apart lie on chords of 68 and 67.9586 mm: pushed aside, each hole is off by half the difference.
        CoverFit free = Circle(0, 184).Fit(Circle(0, 180), Play(0.05), CoverLocation.Free);
        CoverFit centred = Circle(0, 184).Fit(Circle(0, 180), Play(0.05));
        Assert.False(centred.Fits);
        Assert.True(free.Fits);
        Assert.Equal((68 - (68 * Math.Sin(92 * Math.PI / 180))) / 2, free.Rotations[0].WorstOffMm, 6);
    }

    [Fact]
    public void Crosswise_GoesAcrossEachTime()
    {
        Assert.Equal([1, 4, 2, 5, 3, 6], BoltPattern.EvenlySpaced(Length.FromMillimeters(34), 6).CrosswiseOrder());
        Assert.Equal([1, 3, 2, 4], BoltPattern.EvenlySpaced(Length.FromMillimeters(34), 4).CrosswiseOrder());
        Assert.Equal([1, 2, 3], BoltPattern.EvenlySpaced(Length.FromMillimeters(34), 3).CrosswiseOrder());
    }

    [Fact]
    public void Triangle_OfThreeDistances_IsThePatternOnItsCircle()
    {
        // A 3-4-5 triangle: its circle has half the longest side as radius; the angles at the middle are twice those of the triangle.
        BoltPattern pattern = BoltPattern.OfTriangle(Length.FromMillimeters(30), Length.FromMillimeters(40), Length.FromMillimeters(50));
        Assert.Equal(25, pattern.BoltCircleRadius.Millimeters, 9);
        Assert.Equal(2 * Math.Asin(0.6) * 180 / Math.PI, pattern.GapsDegrees[0], 9);
        Assert.Equal(180, pattern.GapsDegrees[2], 9);
        Assert.Equal(360, pattern.GapsDegrees.Sum(), 9);
    }

    [Theory]
    [InlineData("0 58 58", "at one place")]
    [InlineData("0 58 360", "at one place")]
    [InlineData("0 58 59", "at one place")]
    [InlineData("0 58 40", "not in order")]
    [InlineData("0 58 400", "not in order")]
    [InlineData("0", "1 angles")]
    public void Pattern_OfNoHolesThatCanBeDrilled_IsNamed(string angles, string expected)
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(() => Circle(Angles(angles)));
        Assert.Equal("anglesDegrees", refused.ParamName);
        Assert.Contains(expected, refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(-361)]
    [InlineData(1e300)]
    public void Pattern_OfNoAngle_IsNamed(double angle) =>
        Assert.Equal("anglesDegrees", Assert.Throws<ArgumentOutOfRangeException>(() => Circle(0, angle)).ParamName);

    [Theory]
    [InlineData(10, 20, 31)]
    [InlineData(10, 20, 30)]
    public void Triangle_ThatDoesNotClose_IsNamed(double a, double b, double c) =>
        Assert.Equal(
            "from3To1",
            Assert.Throws<ArgumentOutOfRangeException>(
                () => BoltPattern.OfTriangle(Length.FromMillimeters(a), Length.FromMillimeters(b), Length.FromMillimeters(c))).ParamName);

    [Fact]
    public void ClearanceHoles_OfTheTable_GiveHalfTheirDifference()
    {
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("iso273-holes.csv"))
        {
            MetricThread thread = MetricThread.Coarse.Single(known => known.Diameter.Millimeters == row.Number("thread"));
            foreach ((string column, ClearanceSeries series) in new[] { ("fine", ClearanceSeries.Fine), ("medium", ClearanceSeries.Medium), ("coarse", ClearanceSeries.Coarse) })
            {
                double half = (row.Number(column) - row.Number("thread")) / 2;
                Assert.Equal(half, ScrewClearance.OfStandardHole(thread, series).Value.RadialPlayMm, 9);
                Assert.Equal(half, ScrewClearance.OnTappedHole(Length.FromMillimeters(row.Number(column)), thread.Diameter).RadialPlayMm, 9);
                Assert.Equal(2 * half, ScrewClearance.OnClearHole(Length.FromMillimeters(row.Number(column)), thread.Diameter).RadialPlayMm, 9);
            }
        }

        Assert.False(ScrewClearance.OfStandardHole(MetricThread.Of(Length.FromMillimeters(7), Length.FromMillimeters(1)), ClearanceSeries.Fine).IsKnown);
        Assert.Throws<ArgumentOutOfRangeException>("screw", () => ScrewClearance.OnTappedHole(Length.FromMillimeters(5), Length.FromMillimeters(5)));
    }

    [Fact]
    public void Explanation_ListsEveryRotation()
    {
        string text = Six.Fit(Six, M5Medium, firstHoleOn: 1).Explain(DisplayUnits.UsCustomary).ToString();
        Assert.Equal(6, text.Split('\n').Count(line => line.TrimStart().StartsWith("1 on ", StringComparison.Ordinal)));
        Assert.Contains("0.0070 in", text, StringComparison.Ordinal);
        Assert.Contains("ISO 273", text, StringComparison.Ordinal);
    }

    private static BoltPattern Circle(params double[] angles) => BoltPattern.Of(Length.FromMillimeters(34), angles);

    private static ScrewClearance Play(double mm) => ScrewClearance.OnClearHole(Length.FromMillimeters(5 + mm), Length.FromMillimeters(5));

    private static double[] Angles(string text) => [.. text.Split(' ').Select(angle => double.Parse(angle, System.Globalization.CultureInfo.InvariantCulture))];

    private static double Apart(double a, double b) => Math.Abs(Math.IEEERemainder(a - b, 360));
}
