using MarineService.Core.Belts;
using UnitsNet;

namespace MarineService.Core.Tests.Belts;

/// <summary>Reach and wear on layout S07; dead points on an arm that swings through the middle of a span between equal pulleys.</summary>
public sealed class TensionerFindingsTest
{
    [Theory]
    [InlineData(1930, 5, null)]
    [InlineData(1935, 5, "BELT-015")]
    [InlineData(1941, 5, "BELT-015")]
    [InlineData(1945, 5, "BELT-012")]
    [InlineData(1852, 5, "BELT-015")]
    [InlineData(1844, 5, "BELT-013")]
    public void Length_NearTheEndOfTheReach_IsAtTheLimitWithinItsTolerance(double lengthMm, double toleranceMm, string? code)
    {
        // The arm takes 1850.195 to 1937.527 mm: worked out independently.
        BeltCheck check = Check(lengthMm, toleranceMm);
        Assert.Equal(code, check.Findings.Select(finding => finding.Code).SingleOrDefault(found => found is "BELT-012" or "BELT-013" or "BELT-015"));
    }

    /// <summary>1937.527 mm less the belt against a hundredth of it: 19.53 and 18.53 against 19.18 and 19.19.</summary>
    [Theory]
    [InlineData(1918, false)]
    [InlineData(1919, true)]
    public void TakeUp_LessThanOnePercent_LeavesNoAllowanceForWear(double lengthMm, bool found) =>
        Assert.Equal(found, Check(lengthMm, 0).Findings.Any(finding => finding.Rule == TensionerRules.WearAllowance));

    [Fact]
    public void ArmThroughTheMiddle_HasADeadPointThere_AndTwoPlacesForOneBelt()
    {
        // By symmetry the path is longest with the arm square to the span, at 180 degrees, and the two places mirror each other.
        TensionerCheck check = Swinging(150, 210, 160, null).CheckTensioner(At160()).Value;
        Assert.Equal(180, Assert.Single(check.DeadPointsDegrees), 1e-6);
        Assert.Equal([160.0, 200.0], check.Positions.Select(position => Math.Round(position.ArmDegrees, 6)));
        Assert.Equal([true, false], check.Positions.Select(position => position.IsTightenedBySpring));
        Assert.Contains(check.Findings, finding => finding.Rule == TensionerRules.DeadPoint);
        Assert.Contains(check.Findings, finding => finding.Rule == TensionerRules.TwoPositions);
        Assert.Equal(Sense.Clockwise, check.Release.Value.Sense);
    }

    [Fact]
    public void ArmPastItsDeadPoint_IsSlackenedByItsSpring()
    {
        TensionerCheck check = Swinging(185, 210, 200, Sense.CounterClockwise).CheckTensioner(At160()).Value;
        Assert.False(check.Arm.IsKnown);
        Assert.Contains(check.Findings, finding => finding.Rule == TensionerRules.SpringSlackens);
    }

    [Fact]
    public void SpringNearTheDeadPoint_HasNoPullThatCouldBeMeant()
    {
        BeltRouting routing = Swinging(150, 210, 179.999, null);
        Assert.False(routing.CheckTensioner(routing.Measure().Value.EffectiveLength).Value.BeltTension.IsKnown);
        BeltDrive drive = routing.Drive.WithBelt(RibbedBelt.Pk(6, routing.Measure().Value.EffectiveLength));
        Assert.False(BeltExamination.Of(drive.Route("crank", "tensioner", "pump"), RotationalSpeed.FromRevolutionsPerMinute(2000)).Tension.IsKnown);
    }

    /// <summary>A bracket's small roller stands in the middle of the arm's way: belts of lengths on either side of it have a place, one between has none.</summary>
    [Theory]
    [InlineData(148, null)]
    [InlineData(160, "BELT-030")]
    [InlineData(172, null)]
    public void BeltLength_InAGapOfTheTravel_HasNoPlaceForTheArm(double armDegrees, string? code)
    {
        Length length = PastARoller(armDegrees, roller: false).Route("crank", "tensioner", "pump").Measure().Value.EffectiveLength;
        BeltCheck check = PastARoller(148, roller: true).WithBelt(RibbedBelt.Pk(6, length, Length.Zero)).Route("crank", "tensioner", "pump").Check();
        Assert.Equal(code, check.Findings.Select(finding => finding.Code).SingleOrDefault(found => found is "BELT-012" or "BELT-013" or "BELT-015" or "BELT-030"));
        Assert.Equal(code is null, check.Tensioner.Value.Arm.IsKnown);
    }

    private static BeltDrive PastARoller(double drawnDegrees, bool roller)
    {
        (double sin, double cos) = Math.SinCos(drawnDegrees * Math.PI / 180);
        (double rollerSin, double rollerCos) = Math.SinCos(160 * Math.PI / 180);
        BeltDriveBuilder builder = BeltDrive.SeenFromPulleyEnd(Sense.CounterClockwise).WithCentersKnownTo(0)
            .Grooved("crank", 0, 0, 100)
            .Grooved("pump", 0, 300, 100)
            .Smooth("tensioner", 115 + (60 * cos), 150 + (60 * sin), 40);
        return (roller ? builder.Smooth("roller", 115 + (33.5 * rollerCos), 150 + (33.5 * rollerSin), 10) : builder)
            .WithTensioner(Tensioner.Automatic("tensioner", 115, 150, 145, 175))
            .Build();
    }

    private static Length At160() => Swinging(150, 210, 160, null).Measure().Value.EffectiveLength;

    private static BeltRouting Swinging(double from, double to, double drawnDegrees, Sense? pushes)
    {
        double drawn = drawnDegrees * Math.PI / 180;
        return BeltDrive.SeenFromPulleyEnd(Sense.CounterClockwise).WithCentersKnownTo(0)
            .Grooved("crank", 0, 0, 100)
            .Grooved("pump", 0, 300, 100)
            .Smooth("tensioner", 140 + (60 * Math.Cos(drawn)), 150 + (60 * Math.Sin(drawn)), 80)
            .WithTensioner(Tensioner.Automatic("tensioner", 140, 150, from, to).WithSpring(Torque.FromNewtonMeters(30), pushes: pushes))
            .Build()
            .Route("crank", "tensioner", "pump");
    }

    private static BeltCheck Check(double lengthMm, double toleranceMm) => Layouts.Builder("S07")
        .WithTensioner(Tensioner.Automatic("TEN", pivotXMm: -222, pivotYMm: -31, fromDegrees: -20, toDegrees: 45))
        .WithBelt(RibbedBelt.Pk(6, Length.FromMillimeters(lengthMm), Length.FromMillimeters(toleranceMm)).WithThickness(2, 1.2, 4.8))
        .Build().Route("CRK", "TEN", "RWP", "ALT", "WP", "PS", "IDL").Check();
}
