namespace MarineService.Core.Engines;

/// <summary>What makes the hour meter count.</summary>
public enum MeterDrive
{
    /// <summary>Not stated. The default value.</summary>
    NotStated = 0,

    /// <summary>The ignition key: counts whenever the key is on, running or not.</summary>
    Key = 1,

    /// <summary>An oil-pressure switch: counts while the engine runs.</summary>
    OilPressure = 2,

    /// <summary>The alternator: counts while it charges.</summary>
    ChargingSignal = 3,

    /// <summary>The engine's own computer.</summary>
    EngineComputer = 4,
}
