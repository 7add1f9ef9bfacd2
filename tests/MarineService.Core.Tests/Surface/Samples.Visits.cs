using MarineService.Core.Engines;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Tests.Surface;

/// <content>What only planning makes: a visit plan and what it holds.</content>
internal static partial class Samples
{
    private static IEnumerable<object> OfVisits()
    {
        VisitTask oil = VisitTask.Of("engine-oil", new(2026, 7, 20), 0.9m, 2m).Within(new(2026, 4, 1), new(2026, 10, 12));
        VisitPlan plan = VisitPlanner.From(new(2026, 4, 1), 60m).LeastCost([oil]).Value;
        SeasonalUse use = SeasonalUse.Of(
            MeterHistory.Of(HourMeter.Plain, [MeterReading.Of(new(2024, 4, 1), EngineHours.FromHours(1m)), MeterReading.Of(new(2026, 3, 1), EngineHours.FromHours(200m))], []), [], [], new(2026, 4, 1));
        ServiceHistory history = ServiceHistory.Of(
            HourMeter.Plain, [Completion.Of("engine-oil", new(2025, 9, 1), EngineHours.FromHours(100m)), MeterReading.Of(new(2026, 3, 1), EngineHours.FromHours(150m))], new(2026, 4, 1));
        DueList due = DueList.Evaluate(TaskPlan.Of([ServiceTask.Replace("engine-oil", ServiceInterval.FirstOf(EngineHours.FromHours(100m), 18))]), history);
        RepeatedTask repeated = RepeatedTask.Every("engine-oil", new(2026, 7, 20), 12, 85m, 2m);
        return [use, due, due.Tasks[0], due.Tasks[0].Forecast, due.ReadAgain().Value, repeated, new[] { repeated }, oil, plan, plan.Visits[0], plan.Visits[0].Items[0], VisitPlanner.From(new(2026, 4, 1), 60m), new[] { IsoDayOfWeek.Saturday }];
    }
}
