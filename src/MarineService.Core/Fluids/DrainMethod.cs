namespace MarineService.Core.Fluids;

/// <summary>How the old oil leaves the sump; each way leaves its own residual.</summary>
public enum DrainMethod
{
    /// <summary>By gravity through the drain plug or a drain hose. The default value.</summary>
    DrainPlug = 0,

    /// <summary>Drawn out by a pump through the dipstick tube.</summary>
    Extractor = 1,
}
