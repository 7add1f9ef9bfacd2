namespace MarineService.Core.Engines;

/// <summary>What turns the raw-water pump.</summary>
public enum RawWaterPumpDrive
{
    /// <summary>Not stated. The default value.</summary>
    NotStated = 0,

    /// <summary>A belt.</summary>
    Belt = 1,

    /// <summary>A gear or the crankshaft itself; no belt to take off.</summary>
    Gear = 2,
}
