using MarineService.Core.Engines;
using MarineService.Core.LayUp;
using UnitsNet;

namespace MarineService.Core.Tests.LayUp;

/// <summary>An engine cooled by raw water with every low point accounted for.</summary>
internal static class Winters
{
    internal static Engine RawCooled { get; } = Engine.Of("Corrie 24P", Fuel.Petrol, CoolingKind.RawWater);

    internal static Boat Dipper { get; } = Boat.Of("Dipper", KeptWhere.Afloat, WaterKind.Fresh, hasSeacock: true);

    internal static RawWaterSide Side { get; } = RawWaterSide.Of(
            LowPoint.Of("seacock", LowPointKind.SeacockBallValve, 1),
            LowPoint.Of("strainer", LowPointKind.Strainer, 1),
            LowPoint.Of("pump", LowPointKind.RawWaterPump, 1),
            LowPoint.Of("block", LowPointKind.EngineBlock, 2),
            LowPoint.Of("manifold", LowPointKind.ExhaustManifold, 1),
            LowPoint.Of("muffler", LowPointKind.WaterLiftMuffler, 0, Volume.FromLiters(1.5)))
        .Without(LowPointKind.OilCooler, LowPointKind.GearOilCooler, LowPointKind.SteeringCooler)
        .WithCircuit(Volume.FromLiters(9));

    internal static Antifreeze Glycol { get; } = Antifreeze.Of("winter mix", AntifreezeBase.PropyleneGlycol, 0.50, isReadyMixed: true);

    internal static FreezeDecision Low { get; } = FreezeDecision.ForLow(Temperature.FromDegreesCelsius(-20));

    internal static LayUpPlan Plan { get; } = LayUpPlan.For(RawCooled, Low).WithBoat(Dipper).WithRawWaterSide(Side).WithAntifreeze(Glycol)
        .WithCylinders(Cylinders.Of(4, Volume.FromLiters(2.4), 9.2));
}
