namespace MarineService.Core.Cooling;

/// <summary>What to do at a moment after a start.</summary>
public enum StartVerdict
{
    /// <summary>Something is still awaited; keep watching. The default value.</summary>
    Watch = 0,

    /// <summary>Everything has come: it may run.</summary>
    KeepRunning = 1,

    /// <summary>Stop the engine now.</summary>
    StopNow = 2,
}
