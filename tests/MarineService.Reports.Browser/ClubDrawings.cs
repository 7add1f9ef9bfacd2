using MarineService.Core;
using MarineService.Core.Belts;
using MarineService.Core.Fluids;
using MarineService.Core.Oils;
using MarineService.Core.Parts;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using MarineService.Reports.Charts;
using MarineService.Reports.Drawings;
using MarineService.Reports.Tests;
using NodaTime;
using UnitsNet;

namespace MarineService.Reports.Browser;

/// <summary>Every drawing and chart of the club's launches, each under a name of its own.</summary>
internal static class ClubDrawings
{
    /// <summary>Ways in which a belt has been found on this drive: the right one, and wrong ones.</summary>
    private static readonly (string Name, string Lies)[] Curlew =
    [
        ("tensioner-missed", "crank, raw-water pump, alternator, circulating pump(back), steering pump, idler(back)"),
        ("ribs-on-smooth", "crank, tensioner(ribs), raw-water pump, alternator, circulating pump(ribs), steering pump, idler(back)"),
        ("crossed", "crank, tensioner(back), alternator, raw-water pump, circulating pump(back), steering pump, idler(back)"),
        ("four-pulleys", "crank, idler(back), steering pump, alternator"),
    ];

    internal static IReadOnlyDictionary<string, Func<Drawing>> All { get; } = Pictures().ToDictionary(one => one.Name, one => one.Of);

    /// <summary>Each belt of the club as it may be found to lie.</summary>
    internal static IReadOnlyDictionary<string, BeltRouting> Belts { get; } = Routings().ToDictionary(one => one.Name, one => one.Routing);

    internal static BeltExamination Examine(BeltRouting routing) => BeltExamination.Of(routing, RotationalSpeed.FromRevolutionsPerMinute(3000));

    private static IEnumerable<(string Name, BeltRouting Routing)> Routings()
    {
        foreach (string boat in Club.Boats)
        {
            if (Engine(boat).BeltDrive is not BeltDrive drive)
            {
                continue;
            }

            yield return ($"{boat}-belt-right", drive.EngineRouting.Value);
            foreach ((string name, string lies) in boat == "curlew" ? Curlew : [])
            {
                yield return ($"{boat}-belt-{name}", drive.ReadRouting(lies).Value);
            }
        }
    }

    private static IEnumerable<(string Name, Func<Drawing> Of)> Pictures()
    {
        foreach ((string name, BeltRouting routing) in Routings())
        {
            yield return (name, () => BeltDrawing.Of(Examine(routing)));
        }

        foreach (string boat in Club.Boats)
        {
            EngineSpecification engine = Engine(boat);
            if (engine.Covers.Count > 0)
            {
                CoverFit fit = engine.Covers[0].FitOfItself().Value;
                yield return ($"{boat}-cover-fits", () => BoltPatternDrawing.Of(fit));
                yield return ($"{boat}-cover-held-wrong", () => BoltPatternDrawing.Of(fit.AsHeld(Angle.FromDegrees(57)).Value, DisplayUnits.Metric));
            }

            yield return ($"{boat}-dipstick", () => DipstickDrawing.Of(Poured(engine.Sump!)));
            yield return ($"{boat}-dipstick-overfilled", () => DipstickDrawing.Of(Poured(engine.Sump!).Poured(Liters(1.2, 15)).Settled(DipstickReading.OfRange(1.9)).Balance(), DisplayUnits.UsCustomary));
            yield return ($"{boat}-dipstick-not-known", () => DipstickDrawing.Of(OilChange.BeginWithoutReading(engine.Sump!)));
            yield return ($"{boat}-visits", () => Visits(boat));
            yield return ($"{boat}-use", () => UseChart.Of(Club.Log(boat).History(engine, Club.Today), Club.Log(boat).DueList(engine, Club.Today)));
            yield return ($"{boat}-viscosity", () => ViscosityChart.Of(engine.ChooseOil().Value.ForNights(Nights), Nights, DisplayUnits.Metric));
        }

        EngineSpecification first = Engine("curlew");
        BoltPattern even = BoltPattern.EvenlySpaced(Length.FromMillimeters(34), 6);
        yield return ("even-cover", () => BoltPatternDrawing.Of(even.Fit(even, ScrewClearance.OnTappedHole(Length.FromMillimeters(5.5), Length.FromMillimeters(5)), CoverLocation.Centered, 1)));
        yield return ("viscosity-measured", () => ViscosityChart.Of(first.ChooseOil().Value.ForNights(Nights).Selection, Measured, Nights, DisplayUnits.UsCustomary));
    }

    private static NightMinimum[] Nights { get; } =
        [.. Enumerable.Range(0, 120).Select(day => NightMinimum.Of(new LocalDate(2026, 10, 12).PlusDays(day), Temperature.FromDegreesCelsius(6 - (day % 17))))];

    private static LabelledOil Measured => LabelledOil.Of(
        SaeGrade.Parse("15W-40"), null, OilViscosity.Of(KinematicViscosity.FromCentistokes(110), KinematicViscosity.FromCentistokes(14.5)));

    private static EngineSpecification Engine(string boat) => Club.Boat(boat).Engines[0].Specification;

    private static OilChange Poured(Sump sump) => OilChange.Begin(sump, DipstickReading.OfRange(0.6))
        .Drained(Liters(0.9 * sump.ServiceFill.Liters, 70)).FilterChanged(oldEmptiedIntoMeasure: true)
        .Poured(Liters(0.75 * sump.ServiceFill.Liters, 15)).Ran().Settled(DipstickReading.OfRange(0.35));

    private static MeasuredVolume Liters(double liters, double celsius) => MeasuredVolume.Of(
        Volume.FromLiters(liters), Temperature.FromDegreesCelsius(celsius), standardUncertainty: Volume.FromLiters(0.05));

    private static Drawing Visits(string boat)
    {
        VisitPlanner planner = VisitPlanner.From(Club.Today, 60m).Blocked(new LocalDate(2026, 12, 20), new LocalDate(2027, 1, 4)).LaidUp(new LocalDate(2027, 11, 1), new LocalDate(2028, 3, 31));
        VisitTask[] tasks = [.. Club.Log(boat).DueList(Engine(boat), Club.Today).Tasks
            .Where(task => task.Forecast.Expected is not null)
            .Select(task => VisitTask.Of(task.TaskId, LocalDate.Max(Club.Today, task.Forecast.Expected!.Value), 0.5m, 2m))];
        return VisitPlanDrawing.Of(planner.LeastCost(tasks).Value, planner);
    }
}
