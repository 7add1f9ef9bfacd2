using MarineService.Core.Internal;
using MarineService.Core.Scheduling;

namespace MarineService.Reports.Drawings;

/// <summary>The visits of the seasons ahead on one line for each year: numbered days, the days on which tasks are due, and the days without visits.</summary>
public static class VisitPlanDrawing
{
    /// <summary>Draws a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="planner">What it was made with: its first day, and the days that were blocked or laid up.</param>
    /// <returns>The picture; below it stands each visit with its tasks and why.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static Drawing Of(VisitPlan plan, VisitPlanner planner) => new VisitScene(Guard.NotNull(plan), Guard.NotNull(planner)).Draw();
}
