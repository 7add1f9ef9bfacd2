namespace MarineService.Core.Fluids;

/// <summary>What keeps the next pour from being larger.</summary>
public enum SafePourLimit
{
    /// <summary>The chance of passing the full mark. The default value.</summary>
    OverfillRisk = 0,

    /// <summary>The first pour after a drain is only a share of the plan.</summary>
    FirstPour = 1,

    /// <summary>Later pours are only a share of the range between the marks.</summary>
    LaterPour = 2,

    /// <summary>Water was seen, or more is in the engine than was left and topped up, and nobody knows yet why: nothing is poured on it.</summary>
    CauseNotFound = 3,
}
