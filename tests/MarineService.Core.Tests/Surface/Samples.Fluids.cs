using MarineService.Core.Fluids;
using UnitsNet;

namespace MarineService.Core.Tests.Surface;

/// <content>What the fluids room needs to be asked anything.</content>
internal static partial class Samples
{
    // Sumps that hold together, an account with a reading, and what is asked of it.
    private static IEnumerable<object> OfFluids()
    {
        SumpShape shape = SumpShape.Rectangular(Length.FromMillimeters(600), Length.FromMillimeters(300), Length.FromMillimeters(250));
        Sump sump = Sump.Holding(Volume.FromLiters(6), Volume.FromLiters(0.6), Dipstick.WithRange(Volume.FromLiters(1)));
        OilChange change = OilChange.Begin(sump, DipstickReading.OfRange(0.6))
            .Since(PeriodSinceChange.From(DipstickReading.OfRange(1)).RunFor(EngineHours.FromHours(100m)))
            .Drained(MeasuringVessel.WorkshopJug.Read(Volume.FromLiters(5.5), Temperature.FromDegreesCelsius(20)))
            .FilterChanged(oldEmptiedIntoMeasure: true);
        DrainPath path = DrainPath.ByGravity(Length.FromMillimeters(12), Length.FromMeters(1), Length.FromMillimeters(500));
        return
        [
            shape, sump, change, change.Balance(), change.Balance().Drain.Value, change.Balance().ConsumptionRate.Value, change.Estimate.Value,
            change.NextSafePour().Value, change.Looked(OilAppearance.Milky).NextSafePour().Value,
            change.Looked(OilAppearance.Milky).Balance().Discrepancies[0], OilDensity.Typical, path,
            path.Drain(Volume.FromLiters(5), Area.FromSquareMeters(0.18), KinematicViscosity.FromCentistokes(100)).Value,
            Dipstick.WithRange(Volume.FromLiters(1)), Dipstick.FromMarks(Length.FromMillimeters(100), Length.FromMillimeters(500), shape),
            shape.CorrectionFor(Angle.FromDegrees(1), Angle.FromDegrees(1), Volume.FromLiters(5)).Value,
            WallFilm.Of(KinematicViscosity.FromCentistokes(100), Length.FromMillimeters(300), Area.FromSquareMeters(1)),
            NodaTime.Duration.FromMinutes(15),
        ];
    }
}
