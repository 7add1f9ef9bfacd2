using System.IO.Pipelines;
using MarineService.Core.Fleet;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using NodaTime;

namespace MarineService.Core.Tests.Surface;

/// <content>What a fleet is asked, and what it answers.</content>
internal static partial class Samples
{
    private static IEnumerable<object> OfFleet()
    {
        EngineSpecification sheet = EngineSpecification.Named("Corrie 60P").With(ServiceTask.Replace("engine-oil", ServiceInterval.OfMonths(12)));
        FleetSpecification specification = FleetSpecification.Of("crank", sheet, PartNeed.Of("engine-oil", "oil filter A"));
        FleetEvaluation evaluation = FleetEvaluation.Of(FleetCatalogue.Of(specification), new LocalDate(2026, 10, 12));
        FleetEngine engine = FleetEngine.Of("E-1", "crank", ServiceLog.Empty.With(Completion.Of("engine-oil", new LocalDate(2026, 4, 1))));
        FleetResult result = evaluation.Evaluate(engine);
        FleetTally tally = new();
        tally.Add(result);
        FleetSummary summary = tally.ToSummary();
        return
        [
            specification, specification.Parts[0], evaluation, evaluation.Catalogue, engine, result, result.Tasks[0], summary, summary.DueDates[0], summary.Parts[0], tally,
            evaluation.Evaluate(FleetEngine.Of("E-1", "none", ServiceLog.Empty)).Faults[0],
            new DueLimitTable(),
            CancellationToken.None,
            PipeReader.Create(new MemoryStream([1])), PipeWriter.Create(new MemoryStream()), new Progress<long>(), None(),
            PreparedDue.Of(sheet.Plan, engine.Log.History(sheet, new LocalDate(2026, 10, 12)), new DueLimitTable()),
        ];
    }

    private static async IAsyncEnumerable<FleetEngine> None()
    {
        await Task.CompletedTask;
        yield break;
    }
}
