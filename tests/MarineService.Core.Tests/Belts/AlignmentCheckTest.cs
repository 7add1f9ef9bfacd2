using MarineService.Core.Belts;

namespace MarineService.Core.Tests.Belts;

/// <summary>Raw-water pump to alternator of layout S07: span 208.865986 mm. Worked out independently.</summary>
public sealed class AlignmentCheckTest
{
    [Theory]
    [InlineData(1.2, 0.329178, 0.5745, true)]
    [InlineData(1.25, 0.342894, 0.5985, false)]
    public void Offset_AtTheEngineLimit_PassesOrFails(double offsetMm, double degrees, double per100, bool fine)
    {
        AlignmentCheck check = Check(offsetMm, leanUp: 0);
        GroovedRun run = check.Runs.Single(r => r.FromPulley == "RWP");
        Assert.Equal("ALT", run.ToPulley);
        Assert.Equal(208.865986, run.FreeLengthMm, 5e-7);
        Assert.Equal(degrees, run.EntryAngleDegrees, 5e-7);
        Assert.Equal(per100, 100 * run.OffsetMm / run.FreeLengthMm, 5e-5);
        Assert.Equal(fine, check.Findings.All(finding => !finding.Subject.Contains("ALT", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(0.004, 0.1777, -0.0350)]
    [InlineData(-0.004, 0.1515, 0.3642)]
    public void Lean_OfTheAlternator_ChangesTheEntryAngle(double leanUp, double atPump, double atAlternator)
    {
        GroovedRun run = Check(0.6, leanUp).Runs.Single(r => r.FromPulley == "RWP");
        Assert.Equal(atPump, run.LeavingAngleDegrees, 5e-5);
        Assert.Equal(atAlternator, run.EntryAngleDegrees, 5e-5);
    }

    [Fact]
    public void Lean_Backwards_FailsThoughTheOffsetIsHalfTheLimit()
    {
        Finding finding = Assert.Single(Check(0.6, -0.004).Findings);
        Assert.Equal("BELT-050", finding.Code);
        Assert.Contains("ALT", finding.Subject, StringComparison.Ordinal);
        Assert.Contains("0.58 mm per 100 mm", finding.Message(DisplayUnits.Metric), StringComparison.Ordinal);
    }

    [Fact]
    public void GroovedPulleys_OverASmoothOne_AreJudgedOverBothSpans()
    {
        GroovedRun run = Check(0, 0).Runs.Single(r => r.FromPulley == "CRK");
        Assert.Equal("RWP", run.ToPulley);
        Assert.Equal(["TEN"], run.OverSmooth);
        Assert.Equal(57.513128936 + 83.173072566, run.FreeLengthMm, 1e-6);
    }

    [Fact]
    public void SmoothPulley_OffTheBeltsTrack_IsFound()
    {
        BeltDrive drive = InLine(Layouts.Drive("S07").WithBelt(RibbedBelt.Pk(6).WithThickness(2, 1.2, 4.8)));
        BeltDrive aside = drive.WithPulley(drive.Find("IDL")!.WithWidth(26).WithAxialPosition(2.2));
        Finding finding = Assert.Single(Whole(aside).CheckAlignment().Value.Findings);
        Assert.Equal("BELT-053", finding.Code);

        // Six ribs are 21.36 mm wide: with 3 mm aside on a rim of 26 mm they hang over by 0.68 mm.
        BeltDrive over = drive.WithPulley(drive.Find("IDL")!.WithWidth(26).WithAxialPosition(3));
        Finding overhang = Assert.Single(Whole(over).CheckAlignment().Value.Findings);
        Assert.Equal("BELT-052", overhang.Code);
        Assert.Equal(0.68, overhang["over"]!.Number!.Value, 1e-9);
    }

    [Fact]
    public void Positions_NotKnown_AreAskedForByName()
    {
        Answer<AlignmentCheck> check = Whole(Layouts.Drive("S07")).CheckAlignment();
        Assert.False(check.IsKnown);
        Assert.Equal(4, check.Missing.Count);
    }

    [Fact]
    public void Limits_AreTheSourcesFigures()
    {
        Assert.Equal(0.3323, AlignmentLimit.EngineDrives.AngleDegrees, 5e-5);
        Assert.Equal(0.33, AlignmentLimit.Chirp.AngleDegrees, 1e-12);
        Assert.Equal(0.25, AlignmentLimit.Industrial.AngleDegrees, 1e-12);
        Assert.Equal(0.5, AlignmentLimit.ClassicalVBelts.AngleDegrees, 1e-12);
    }

    [Fact]
    public void Straightedge_FindsTheOnePulleyThatStandsOut()
    {
        BeltDrive drive = Layouts.Drive("S07");
        StraightedgeSurvey survey = StraightedgeSurvey.Of(
            drive,
            "CRK",
            faceToMiddleMm: 14,
            StraightedgeReading.Of("RWP", gapMm: 2, faceToMiddleMm: 12),
            StraightedgeReading.Of("ALT", gapMm: -1.5, faceToMiddleMm: 14),
            StraightedgeReading.Of("PS", gapMm: 0.2, faceToMiddleMm: 14));
        PulleyMove move = Assert.Single(survey.Moves(toleranceMm: 0.5));
        Assert.Equal("ALT", move.PulleyName);
        Assert.Equal(-1.5, move.AwayFromEngineMm, 0.21);
        Assert.Equal("move 'ALT' 1.5 mm towards the engine", move.ToString());
        Assert.Contains(Whole(survey.Drive).CheckAlignment().Value.Findings, finding => finding.Subject.Contains("ALT", StringComparison.Ordinal));
    }

    [Fact]
    public void Straightedge_WhenAllOthersAgree_PointsAtTheCrank()
    {
        StraightedgeSurvey survey = StraightedgeSurvey.Of(
            Layouts.Drive("S07"),
            "CRK",
            14,
            StraightedgeReading.Of("RWP", 2, 14),
            StraightedgeReading.Of("ALT", 2, 14),
            StraightedgeReading.Of("PS", 2.1, 14));
        PulleyMove move = Assert.Single(survey.Moves(0.5));
        Assert.True(move.IsCrank);
        Assert.Equal(-2, move.AwayFromEngineMm, 0.11);
        Assert.Contains("sits home", move.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Straightedge_AtBothRims_ShowsTheLean()
    {
        BeltDrive drive = BeltDrive.SeenFromPulleyEnd(Sense.Clockwise).Grooved("crank", 0, 0, 150).Grooved("pump", 0, 300, 100.885).Build();

        // The far rim stands 1 mm farther back over 100 mm of rim: the plane leans 1 in 100 towards the engine, upwards.
        StraightedgeSurvey survey = StraightedgeSurvey.Of(drive, "crank", 10, StraightedgeReading.AtBothRims("pump", 0, 1, 10));
        Pulley pump = survey.Drive.Find("pump")!;
        Assert.Equal(-0.01, pump.LeanUpRatio, 1e-12);
        Assert.Equal(0, pump.LeanAcrossRatio, 1e-12);
        Assert.Equal(-10.5, pump.AxialPositionMm!.Value, 1e-12);
    }

    [Theory]
    [InlineData("XYZ")]
    [InlineData("CRK")]
    public void Straightedge_OnAPulleyThatCannotBeRead_IsRefused(string name) =>
        Assert.Throws<ArgumentException>(
            "readings", () => StraightedgeSurvey.Of(Layouts.Drive("S07"), "CRK", 14, StraightedgeReading.Of(name, 1, 14)));

    private static AlignmentCheck Check(double offsetMm, double leanUp)
    {
        BeltDrive drive = InLine(Layouts.Drive("S07"));
        return Whole(drive.WithPulley(drive.Find("ALT")!.WithAxialPosition(offsetMm, 0, leanUp))).CheckAlignment().Value;
    }

    private static BeltDrive InLine(BeltDrive drive) =>
        drive.Pulleys.Aggregate(drive, (built, pulley) => built.WithPulley(pulley.WithAxialPosition(0)));

    private static BeltRouting Whole(BeltDrive drive) => drive.Route("CRK", "TEN", "RWP", "ALT", "WP", "PS", "IDL");
}
