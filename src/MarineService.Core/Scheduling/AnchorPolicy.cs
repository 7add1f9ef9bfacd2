namespace MarineService.Core.Scheduling;

/// <summary>From where the next interval is counted after a completion.</summary>
public enum AnchorPolicy
{
    /// <summary>From the date and hours at which it was done. The default value.</summary>
    DonePoint = 0,

    /// <summary>From the earlier of done and due, each limb for itself: what was late is charged to the next interval.</summary>
    ChargeLateExcess = 1,

    /// <summary>From the due point when done within the tolerance of it, each limb for itself; else from where it was done.</summary>
    SnapWithinWindow = 2,

    /// <summary>From a fixed origin: the dates belong to a third party.</summary>
    FixedGrid = 3,
}
