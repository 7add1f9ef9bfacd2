namespace MarineService.Core.Scheduling;

/// <summary>Where the methods of planning visits come from.</summary>
internal static class VisitSources
{
    private static readonly Citation Grouping = Citation.Secondary("European Journal of Operational Research 99 (1997) 530-551", clause: "a dynamic policy for grouping maintenance activities, abstract");
    private static readonly Citation Path = Citation.Derived("costs that rise on both sides of the due day: a task takes one of its two nearest visits; checked against every partition");
    private static readonly Citation Bound = Citation.Derived("sharing a visit's set-up among the tasks that may use it never overstates the least cost");
    private static readonly Citation Horizon = Citation.Derived("given the visit days, each task that comes round is a shortest path from one time to the next; the days are searched, the result is held against the bound");
    private static readonly Citation Windows = Citation.Derived("some visit must fall in the window that ends first, and its last day serves most of the others");

    internal static Citation[] Of(VisitMethod method) => method switch
    {
        VisitMethod.ShortestPath => [Grouping, Path],
        VisitMethod.SharedAccess => [Grouping, Path, Bound],
        VisitMethod.RepeatedTasks => [Horizon, Grouping, Bound],
        _ => [Windows],
    };
}
