using MarineService.Core.Belts;

namespace MarineService.Core.Tests.Belts;

/// <summary>What is no drive and no routing is refused; what is a bad drive is a verdict.</summary>
public sealed class BeltDriveTest
{
    private static readonly BeltDriveBuilder Two = BeltDrive.SeenFromPulleyEnd(Sense.Clockwise).Grooved("crank", 0, 0, 150).Grooved("pump", 0, 300, 100);

    [Fact]
    public void Problems_OfABuilder_AreAllTold_AndBuildThrowsTheFirst()
    {
        BeltDriveBuilder builder = Two.Grooved("PUMP", 200, 0, 60).Grooved("crank", 0, 500, 60)
            .WithTensioner(Tensioner.Automatic("idler", 0, 0, 0, 90));
        Assert.Equal(
            ["The name 'PUMP' is given to two pulleys.", "The name 'crank' is given to two pulleys.", "The tensioner's pulley 'idler' is not in the drive."],
            builder.Problems());
        Assert.Equal("The name 'PUMP' is given to two pulleys.", Assert.Throws<InvalidOperationException>(builder.Build).Message);
    }

    [Fact]
    public void OnePulley_IsNoDrive() =>
        Assert.Equal(["A drive has at least two pulleys."], BeltDrive.SeenFromPulleyEnd(Sense.Clockwise).Grooved("crank", 0, 0, 150).Problems());

    [Fact]
    public void Tensioner_OnTheCrank_OrWithoutAnArm_IsRefused()
    {
        Assert.Equal(["The crank's pulley cannot sit on the tensioner's arm."], Two.WithTensioner(Tensioner.Automatic("crank", 50, 0, 0, 90)).Problems());
        Assert.Equal(
            ["The tensioner's pivot stands at the centre of its pulley: the arm must be 1 mm long or more."],
            Two.WithTensioner(Tensioner.Automatic("pump", 0, 300.5, 0, 90)).Problems());
    }

    [Fact]
    public void Builder_IsNeverChanged_ByTheNextStep()
    {
        BeltDriveBuilder three = Two.Smooth("idler", 200, 150, 80);
        Assert.Equal(2, Two.Build().Pulleys.Count);
        Assert.Equal(3, three.Build().Pulleys.Count);
    }

    [Fact]
    public void ReadRouting_TellsEveryFault_AndRouteThrowsTheFirst()
    {
        BeltDrive drive = Two.Build();
        Assert.Equal(
            ["No pulley 'pmp'; the drive has crank, pump.", "Cannot read 'pump(left'; write a pulley's name, then (ribs) or (back) where needed.", "Pulley 'crank' is named twice; the belt comes to each pulley once."],
            drive.ReadRouting("crank, pmp, pump(left, Crank").Missing);
        ArgumentException thrown = Assert.Throws<ArgumentException>("stops", () => drive.Route("crank", "pmp", "crank"));
        Assert.StartsWith("No pulley 'pmp'", thrown.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>("stops", () => drive.Route("pump"));
        Assert.Throws<ArgumentException>("stops", () => drive.Route("pump", "pump"));
    }

    [Fact]
    public void Routing_IsReadFromAnyStart_WithFacesAsPeopleWriteThem() =>
        Assert.Equal("crank, idler(back), pump", Two.Smooth("idler", 90, 150, 80).Build().Route(" Pump (ribs)", "CRANK(rib)", "idler").ToString());

    [Fact]
    public void OverlappingPulleys_AreAVerdict_NotARefusal()
    {
        BeltDrive overlapping = Two.Grooved("alternator", 0, 290, 60).Build();
        Assert.Equal(BeltVerdict.Contained, overlapping.Route("crank", "pump", "alternator").Check().Verdict);
        Assert.Equal(BeltVerdict.Overlap, Two.Grooved("alternator", 0, 230, 60).WithCentersKnownTo(0).Build().Route("crank", "pump", "alternator").Check().Verdict);
    }

    [Fact]
    public void Sense_IsTheSameTurning_FromEitherEnd()
    {
        Rotation rotation = Rotation.Of(Sense.Clockwise, Viewpoint.FlywheelEnd);
        Assert.Equal(Sense.CounterClockwise, rotation.AsSeenFrom(Viewpoint.PulleyEnd));
        Assert.True(rotation.IsSameTurningAs(Rotation.Of(Sense.CounterClockwise, Viewpoint.PulleyEnd)));
        Assert.NotEqual(rotation, Rotation.Of(Sense.CounterClockwise, Viewpoint.PulleyEnd));

        // A left-hand engine is described by its own crank: the same routing, all senses the other way.
        BeltRouting left = BeltDrive.SeenFromPulleyEnd(Rotation.Of(Sense.Clockwise, Viewpoint.FlywheelEnd)).Grooved("crank", 0, 0, 150).Grooved("pump", 0, 300, 100).Build().Route("crank", "pump");
        Assert.Equal(Sense.CounterClockwise, left.TurningOf(1).Sense);
    }

    [Theory]
    [InlineData(GrooveAngle.Degrees40)]
    [InlineData(GrooveAngle.Degrees37)]
    public void OutsideAndOverBallsDiameters_GiveTheSameEffectiveOne(GrooveAngle angle)
    {
        // Geometry of a 2.50 mm ball in a groove of 3.56 mm pitch with tips rounded to 0.48 mm; 0.001 mm as the table is printed.
        double half = (angle == GrooveAngle.Degrees40 ? 20 : 18.5) * Math.PI / 180;
        double tipBelowBalls = 1.25 + (1.25 / Math.Sin(half)) - (3.56 / (2 * Math.Tan(half))) + (0.48 * ((1 / Math.Sin(half)) - 1));
        const double overBalls = 120.99;
        Assert.Equal(120, PkProfile.EffectiveFromOverBallsMm(overBalls), 9);
        Assert.Equal(120, PkProfile.EffectiveFromOutsideMm(overBalls - (2 * tipBelowBalls), angle), 0.001);
    }
}
