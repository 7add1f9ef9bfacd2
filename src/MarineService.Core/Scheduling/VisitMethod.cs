namespace MarineService.Core.Scheduling;

/// <summary>How a visit plan was found.</summary>
public enum VisitMethod
{
    /// <summary>Shortest path over visit days: the least cost, proven. The default value.</summary>
    ShortestPath = 0,

    /// <summary>Search with a lower bound, for tasks that share a removal: the cost lies between the bound and the least.</summary>
    SharedAccess = 1,

    /// <summary>Fewest visits under hard windows, proven; cost decides only who goes on which.</summary>
    FewestVisits = 2,

    /// <summary>Search with a lower bound, for tasks that come round over some years: the cost lies between the bound and the least.</summary>
    RepeatedTasks = 3,
}
