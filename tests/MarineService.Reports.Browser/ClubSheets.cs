using MarineService.Core;
using MarineService.Core.Jobs;
using MarineService.Core.Specifications;
using MarineService.Reports.Drawings;
using MarineService.Reports.Sheets;
using MarineService.Reports.Tests;
using NodaTime;
using UnitsNet;

namespace MarineService.Reports.Browser;

/// <summary>Every sheet of the club's launches, each under a name of its own.</summary>
internal static class ClubSheets
{
    internal static IReadOnlyDictionary<string, Func<Paper, Sheet>> All { get; } = Sheets().ToDictionary(one => one.Name, one => one.Of);

    internal static JobCard Card(string boat)
    {
        BoatSpecification specification = Club.Boat(boat);
        string[] wanted = ["engine-oil", "fuel-filter", "impeller-inspect", "belt-inspect", "strainer", "coolant"];
        return JobCard.PrepareFor(
            specification,
            Club.Log(boat),
            new LocalDate(2027, 4, 20),
            specification.Engines[0].Specification.Tasks.Select(task => task.Id).Where(wanted.Contains),
            JobConditions.NotStated.WithWeather(Temperature.FromDegreesCelsius(-4), Temperature.FromDegreesCelsius(24))).Value;
    }

    private static IEnumerable<(string Name, Func<Paper, Sheet> Of)> Sheets()
    {
        foreach (string name in Club.Boats)
        {
            BoatSpecification boat = Club.Boat(name);
            yield return ($"{name}-service-sheet", paper => ServiceSheet.Of(Card(name), Drawings(name), paper: paper));
            yield return ($"{name}-logbook", paper => Logbook.Of(boat, Club.Log(name), Club.Today, paper: paper));
            yield return ($"{name}-compliance-statement", paper => ComplianceStatement.Of(boat, Club.Log(name).Compliance(boat.Engines[0].Specification, Club.Today), paper: paper));
        }
    }

    // As a club would hang them up: the belt as it belongs, where the launch has one, and the cover of its pump.
    private static IEnumerable<Drawing> Drawings(string boat)
    {
        EngineSpecification engine = Club.Boat(boat).Engines[0].Specification;
        if (engine.BeltDrive is { EngineRouting.IsKnown: true } drive)
        {
            yield return BeltDrawing.Of(drive.EngineRouting.Value, DisplayUnits.Metric);
        }

        if (engine.Covers.Count > 0)
        {
            yield return BoltPatternDrawing.Of(engine.Covers[0].FitOfItself().Value);
        }
    }
}
