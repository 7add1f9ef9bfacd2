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
        return [oil, plan, plan.Visits[0], plan.Visits[0].Items[0], VisitPlanner.From(new(2026, 4, 1), 60m), new[] { IsoDayOfWeek.Saturday }];
    }
}
