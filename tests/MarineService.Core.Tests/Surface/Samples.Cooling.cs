using MarineService.Core.Cooling;
using MarineService.Core.Engines;
using NodaTime;
using UnitsNet;
using Duration = UnitsNet.Duration;

namespace MarineService.Core.Tests.Surface;

/// <content>What only a raw-water side makes.</content>
internal static partial class Samples
{
    private static IEnumerable<object> OfCooling()
    {
        RawWaterCircuit circuit = RawWaterCircuit.Of(CircuitPlace.Of(CircuitPlaceKind.RawWaterPump), CircuitPlace.Of(CircuitPlaceKind.ExhaustOutlet, "crank"));
        RawWaterPump pump = RawWaterPump.Of(
            Impeller.Of(6, rotation: PumpRotation.Of(Sense.Clockwise, PumpSide.Cover)), Volume.FromLiters(0.02));
        WaterNeed need = HeatToWater.Of(Power.FromKilowatts(40), Fuel.Diesel).Value.FlowFor(TemperatureDelta.FromKelvins(15), WaterKind.Fresh);
        BucketTest test = BucketTest.Of(
            new LocalDate(2026, 4, 1),
            RotationalSpeed.FromRevolutionsPerMinute(1500),
            [BucketCatch.Of("crank", MeasuredVolume.Of(Volume.FromLiters(5)), Duration.FromSeconds(10))]);
        return
        [
            circuit, pump, need, need.HeatToWater, test, test.Judge(need, RotationalSpeed.FromRevolutionsPerMinute(3000), pump, circuit),
            ImpellerInspection.Of(6, new LocalDate(2026, 4, 1)), ImpellerInspection.Of(6, new LocalDate(2026, 4, 1)).Judge(), VaneRecord.Torn(3, 0.4), FoundPiece.Of(0.4, "heat exchanger"),
            AnodeInspection.Of(new LocalDate(2026, 4, 1), "shaft", AnodeMetal.Zinc, 0.3, 6),
            ExhaustCheck.Of(circuit).Value, StartWatch.Of(circuit).Value, ImpellerFitting.Of(pump.Impeller), RawWaterSystem.Of(circuit, pump),
            new[] { ImpellerFault.HubLoose },
            FlushCheck.Of(
                VolumeFlow.FromLitersPerMinute(12), Fuel.Diesel, VolumeFlow.FromLitersPerHour(1.2), pump, RotationalSpeed.FromRevolutionsPerMinute(800)).Value,
        ];
    }
}
