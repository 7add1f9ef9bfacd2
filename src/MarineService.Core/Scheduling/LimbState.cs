namespace MarineService.Core.Scheduling;

/// <summary>What can be said of one limb of an interval.</summary>
public enum LimbState
{
    /// <summary>The task has no such limb. The default value.</summary>
    NotUsed = 0,

    /// <summary>Due point and present state are known.</summary>
    Known = 1,

    /// <summary>The data cannot tell; see what is missing.</summary>
    Unknown = 2,
}
