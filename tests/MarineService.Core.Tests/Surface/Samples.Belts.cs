using MarineService.Core.Belts;
using UnitsNet;

namespace MarineService.Core.Tests.Surface;

/// <content>A small drive with everything known, as it lies and as it should lie.</content>
internal static partial class Samples
{
    private static IEnumerable<object> OfBelts()
    {
        BeltDriveBuilder builder = BeltDrive.SeenFromPulleyEnd(Sense.Clockwise)
            .Add(Pulley.Grooved("crank", 0, 0, 170).WithDuty(PulleyDuty.Crank).WithAxialPosition(0).WithWidth(26))
            .Add(Pulley.Smooth("tensioner", -145, 5, 90).WithDuty(PulleyDuty.Tensioner).WithAxialPosition(0.2).WithWidth(30))
            .Add(Pulley.Grooved("alternator", -215, 275, 60).WithDuty(PulleyDuty.Alternator).WithLoad(Power.FromKilowatts(2)).WithAxialPosition(0.4))
            .WithTensioner(Tensioner.Automatic("tensioner", -222, -31, -20, 45).WithSpring(Torque.FromNewtonMeters(33), 0.3))
            .RoutedAs("crank", "tensioner", "alternator");
        BeltDrive bare = builder.Build();
        Length length = bare.EngineRouting.Value.Measure().Value.EffectiveLength;
        BeltDrive drive = bare.WithBelt(RibbedBelt.Pk(6, length));
        BeltRouting routing = drive.EngineRouting.Value;
        TensionerCheck arm = routing.CheckTensioner(length).Value;
        BeltRouting missed = drive.Route("crank", "alternator");
        return
        [
            builder, drive, routing, missed, missed.CompareWith(routing), missed.EditsTo(routing)[0],
            drive.Pulleys[0], drive.Pulleys[1], drive.Pulleys[2], drive.Tensioner!, drive.Belt,
            routing.Check(), routing.Measure().Value, arm, arm.Arm.Value, routing.CheckAlignment().Value,
            routing.CheckTension(RotationalSpeed.FromRevolutionsPerMinute(2000), Force.FromNewtons(400)).Value,
            drive.FindRoutings(),
            LinearDensity.FromKilogramsPerMeter(0.108),
            StraightedgeReading.Of("alternator", 0.5, 12),
            StraightedgeSurvey.Of(drive, "crank", 12, StraightedgeReading.Of("alternator", 1.5, 12)),
        ];
    }
}
