using MarineService.Core.Engines;
using MarineService.Core.Fluids;
using MarineService.Core.LayUp;
using UnitsNet;

namespace MarineService.Core.Tests.Surface;

/// <content>What the lay-up room needs to be asked anything.</content>
internal static partial class Samples
{
    private static IEnumerable<object> OfLayUp()
    {
        RawWaterSide side = RawWaterSide.Of(LowPoint.Of("block", LowPointKind.EngineBlock, 2, Volume.FromLiters(5))).WithCircuit(Volume.FromLiters(9));
        Antifreeze glycol = Antifreeze.Of("winter mix", AntifreezeBase.PropyleneGlycol, 0.5, isReadyMixed: true);
        FreezeDecision freeze = FreezeDecision.ForLow(Temperature.FromDegreesCelsius(-20));
        LowPointWork work = LowPointWork.Read("block", RefractometerReading.Of(GlycolKind.Propylene, Temperature.FromDegreesCelsius(-25)));
        LayUpPlan plan = LayUpPlan.For(Engine.Of("Corrie 24P", Fuel.Petrol, CoolingKind.RawWater), freeze)
            .WithRawWaterSide(side).WithAntifreeze(glycol).WithCylinders(Cylinders.Of(4, Volume.FromLiters(2.4), 9.4));
        return
        [
            ElectricPotential.FromVolts(12.5), side, glycol, freeze, work, plan, plan.Fill!, plan.Fill!.Fill.Value, plan.Fogging, plan.Steps[0],
            plan.Prove([work]).Value, plan.Prove([work]).Value.Points[0],
            BatteryReading.OfVoltage(BatteryKind.FloodedLead, ElectricPotential.FromVolts(12.5), 24), FuelTank.Of(Fuel.Petrol, Volume.FromLiters(90)), LayUpSheet.Empty.With(side),
        ];
    }
}
