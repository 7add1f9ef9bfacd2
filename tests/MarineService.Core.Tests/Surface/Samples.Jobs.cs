using MarineService.Core.Cooling;
using MarineService.Core.Engines;
using MarineService.Core.Jobs;
using MarineService.Core.Parts;
using MarineService.Core.Procedures;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using NodaTime;

namespace MarineService.Core.Tests.Surface;

/// <content>What only job cards make.</content>
internal static partial class Samples
{
    private static IEnumerable<object> OfJobs()
    {
        EngineSpecification bare = EngineSpecification.Named("Brae 16D").With(ServiceTask.Replace("engine-oil", ServiceInterval.OfMonths(24)));
        BoatSpecification boat = BoatSpecification.Of(Boat.Of("Tern")).WithEngine("main", bare);
        JobCard card = JobCard.Prepare(boat, ServiceLog.Empty, new LocalDate(2026, 10, 12)).Value;
        JobMeasurements given = JobMeasurements.Of(WorkRecord.Begin(card.Procedure, new LocalDate(2026, 10, 12)));
        return
        [
            boat, card, card.Tasks[0], card.Tasks[0].How!, card.Oil!, given, card.Prove(given), card.Prove(given).Complete(ServiceLog.Empty),
            ProcedurePage.Of(card.Procedure), StartTimes.Until(UnitsNet.Duration.FromSeconds(30)), ImpellerInspection.Of(6, new LocalDate(2026, 10, 12)),
            card.Kit, Kitted(), TallyLine.Of("M6 screw", "pump cover", 6, 6), JobConditions.NotStated, ProcedureBook.Usual, new[] { StepAct.Ventilate },
            VisitEvent.Step("read-dial"), VisitReport.Of(card.Id, new LocalDate(2026, 10, 12), [VisitEvent.Step("read-dial")]), new Dictionary<string, bool> { ["impeller-inspect"] = true },
            VisitPlanner.From(new LocalDate(2026, 10, 12), 10m).LeastCost([VisitTask.Of("engine-oil", new LocalDate(2026, 10, 12), 1m, 1m)]).Value.Visits[0],
        ];
    }

    private static PartPurchase Kitted()
    {
        PartsSheet sheet = PartsSheet.Of(PartsCatalogue.Of(ServicePart.Of("LV-1", "filter"))).With(TaskKit.Of("engine-oil", KitItem.Of("LV-1")));
        EngineSpecification engine = EngineSpecification.Named("Brae 16D").With(ServiceTask.Replace("engine-oil", ServiceInterval.OfMonths(24))).WithPartsSheet(sheet);
        return JobCard.Prepare(BoatSpecification.Of(Boat.Of("Tern")).WithEngine("main", engine), ServiceLog.Empty, new LocalDate(2026, 10, 12)).Value.Kit.Purchases[0];
    }
}
