using MarineService.Core.Belts;
using MarineService.Core.Tests.Reference;
using UnitsNet;

namespace MarineService.Core.Tests.Belts;

/// <summary>The arm of layout S07: pivot (-222, -31), arm 85 mm, drawn at 25.057615 degrees.</summary>
public sealed class TensionerCheckTest
{
    private const double DesignLengthMm = 1907.658958675;

    public static TheoryData<double> ArmAngles => [.. ReferenceTable.Read("belts-tensioner-s07.csv").Select(row => row.Number("arm_angle_deg"))];

    [Theory]
    [MemberData(nameof(ArmAngles))]
    public void Geometry_AtArmAngle_GivesTheTablesRow(double degrees)
    {
        IReadOnlyDictionary<string, string> row = ReferenceTable.Read("belts-tensioner-s07.csv").Single(r => r.Number("arm_angle_deg") == degrees);
        BeltDrive drive = Layouts.S07WithArm();
        Pulley pulley = drive.Find("TEN")!;
        Assert.Equal(row.Number("tensioner_x"), -222 + (85 * Math.Cos(degrees * Math.PI / 180)), 1e-6);
        BeltDrive moved = drive.WithPulley(pulley.MovedTo(row.Number("tensioner_x"), row.Number("tensioner_y")));
        RoutingGeometry geometry = Whole(moved).Measure().Value;
        Assert.Equal(row.Number("pitch_length"), geometry.PitchLength.Millimeters, 1e-6);
        Assert.Equal(row.Number("effective_length"), geometry.EffectiveLength.Millimeters, 1e-6);
        Assert.Equal(row.Number("wrap_tensioner_deg"), geometry.Stops[1].WrapDegrees, 1e-6);
        Assert.Equal(row.Number("wrap_crank_deg"), geometry.Stops[0].WrapDegrees, 1e-6);
        Assert.Equal(row.Number("wrap_raw_water_pump_deg"), geometry.Stops[2].WrapDegrees, 1e-6);
    }

    [Theory]
    [MemberData(nameof(ArmAngles))]
    public void Arm_ForTheTablesLength_StandsAtTheTablesAngleWithItsSlope(double degrees)
    {
        IReadOnlyDictionary<string, string> row = ReferenceTable.Read("belts-tensioner-s07.csv").Single(r => r.Number("arm_angle_deg") == degrees);

        // At the stops themselves the printed digits may round to just outside: step a nanometre inside.
        double inside = degrees <= -20 ? 1e-6 : degrees >= 45 ? -1e-6 : 0;
        ArmPosition arm = Check(row.Number("effective_length") + inside).Arm.Value;
        Assert.Equal(degrees, arm.ArmDegrees, 1e-5);
        Assert.Equal(row.Number("dL_dphi_mm_per_rad"), arm.TakeUpMmPerDegree * 180 / Math.PI, 1e-5);
        Assert.Equal(row.Number("wrap_tensioner_deg"), arm.WrapDegrees, 1e-5);
        Assert.True(arm.IsTightenedBySpring);
        Assert.Equal(row.Number("tensioner_x"), arm.CenterXMm, 1e-5);
        Assert.Equal(row.Number("tensioner_y"), arm.CenterYMm, 1e-5);
    }

    // Arm angle, wrap and slope for a belt of a given length: worked out independently by bisection on the same closed form,
    // slope checked by differences of polygon lengths.
    [Theory]
    [InlineData(1880, 6.097656512, 71.688328, 82.280706)]
    [InlineData(1890, 12.970522425, 80.624723, 83.950354)]
    [InlineData(1900, 19.799814889, 87.718418, 83.686637)]
    [InlineData(1907.658958675, 25.057615418, 92.628880, 83.267325)]
    [InlineData(1910, 26.669161672, 94.129811, 83.204604)]
    [InlineData(1920, 33.541814416, 101.004943, 83.840395)]
    [InlineData(1930, 40.259155742, 109.755901, 87.557790)]
    public void Arm_ForABeltLength_StandsWhereWorkedOut(double lengthMm, double degrees, double wrap, double slope)
    {
        ArmPosition arm = Check(lengthMm).Arm.Value;
        Assert.Equal(degrees, arm.ArmDegrees, 1e-8);
        Assert.Equal(wrap, arm.WrapDegrees, 1e-6);
        Assert.Equal(slope, arm.TakeUpMmPerDegree * 180 / Math.PI, 1e-6);
    }

    [Fact]
    public void Reach_BetweenStops_IsTheWorkedRange()
    {
        TensionerCheck check = Check(DesignLengthMm);
        Assert.Equal(1850.195430921, check.Shortest.Value.Millimeters, 1e-6);
        Assert.Equal(1937.526625501, check.Longest.Value.Millimeters, 1e-6);
        Assert.Equal(1937.526625501 - DesignLengthMm, check.TakeUpLeft.Value.Millimeters, 1e-6);
        Assert.Empty(check.DeadPointsDegrees);
        Assert.Empty(check.Findings);
        Assert.Single(check.Positions);
    }

    [Fact]
    public void Tolerance_Of1910Belt_SpreadsTheArmAsWorkedOut()
    {
        TensionerCheck check = Check(1910);
        Assert.Equal(20.485, check.ArmFor(Length.FromMillimeters(1901)).Value.ArmDegrees, 5e-4);
        Assert.Equal(32.858, check.ArmFor(Length.FromMillimeters(1919)).Value.ArmDegrees, 5e-4);
    }

    [Fact]
    public void Stretch_OfOnePercent_MovesTheArmThirteenDegrees() =>
        Assert.Equal(13.04, Check(DesignLengthMm).ArmTravelForStretch(0.01).Value.Degrees, 0.005);

    [Fact]
    public void Release_IsAgainstTheSpring_ClockwiseFromThePulleyEnd()
    {
        TensionerCheck check = Check(DesignLengthMm);
        Assert.Equal(Rotation.Of(Sense.CounterClockwise, Viewpoint.PulleyEnd), check.Tightens.Value);
        Assert.Equal(Rotation.Of(Sense.Clockwise, Viewpoint.PulleyEnd), check.Release.Value);
        Assert.Equal(Sense.CounterClockwise, check.Release.Value.AsSeenFrom(Viewpoint.FlywheelEnd));
    }

    [Fact]
    public void Moment_For400Newtons_IsTheWorkedOne_AndBack()
    {
        Assert.Equal(33.307, Check(DesignLengthMm).MomentFor(Force.FromNewtons(400)).Value.NewtonMeters, 5e-4);
        BeltDrive sprung = Layouts.Builder("S07")
            .WithTensioner(Tensioner.Automatic("TEN", -222, -31, -20, 45).WithSpring(Torque.FromNewtonMeters(33.30692993960)))
            .Build();
        TensionerCheck check = Whole(sprung).CheckTensioner(Length.FromMillimeters(DesignLengthMm)).Value;
        Assert.Equal(400, check.BeltTension.Value.Newtons, 1e-6);
    }

    [Fact]
    public void SpringRate_AddsMomentAsTheArmIsPushedBack()
    {
        BeltDrive sprung = Layouts.Builder("S07")
            .WithTensioner(Tensioner.Automatic("TEN", -222, -31, -20, 45).WithSpring(Torque.FromNewtonMeters(30), rateNewtonMetersPerDegree: 0.2))
            .Build();
        TensionerCheck shorter = Whole(sprung).CheckTensioner(Length.FromMillimeters(1900)).Value;

        // The arm stands 25.057615 - 19.799815 degrees back against the spring; slope 83.686637 mm/rad.
        double torque = 30 + (0.2 * (25.057615418 - 19.799814889));
        Assert.Equal(torque * 1000 / 83.686637, shorter.BeltTension.Value.Newtons, 1e-4);
    }

    [Fact]
    public void PoorPivot_TakesUpHalfAMillimetreADegree()
    {
        // The same pulley on a pivot at (-196, -63): the arm looks well placed and has almost no take-up.
        BeltDrive drive = Layouts.Builder("S07").WithTensioner(Tensioner.Automatic("TEN", -196, -63, 40, 60)).Build();
        TensionerCheck check = Whole(drive).CheckTensioner(Length.FromMillimeters(DesignLengthMm), BeltCheckLimits.Default.WithLeastTakeUp(0.6)).Value;
        Assert.Equal(0.54, Math.Abs(check.Arm.Value.TakeUpMmPerDegree), 0.005);
        Assert.Contains(check.Findings, finding => finding.Rule == TensionerRules.LittleTakeUp);
    }

    [Theory]
    [InlineData(1800, "BELT-013")]
    [InlineData(2000, "BELT-012")]
    public void Belt_OutsideTheReach_IsNamedTooLongOrTooShort(double lengthMm, string code)
    {
        TensionerCheck check = Check(lengthMm);
        Assert.False(check.Arm.IsKnown);
        Assert.Equal(code, Assert.Single(check.Findings).Code);
    }

    private static TensionerCheck Check(double lengthMm) => Whole(Layouts.S07WithArm()).CheckTensioner(Length.FromMillimeters(lengthMm)).Value;

    private static BeltRouting Whole(BeltDrive drive) => drive.Route("CRK", "TEN", "RWP", "ALT", "WP", "PS", "IDL");
}
