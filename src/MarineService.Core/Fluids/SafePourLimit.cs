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
}
