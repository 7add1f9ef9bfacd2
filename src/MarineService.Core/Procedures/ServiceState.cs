namespace MarineService.Core.Procedures;

/// <summary>What is so aboard while the work goes on, as far as an order of steps can do harm.</summary>
public enum ServiceState
{
    /// <summary>Water is proved at the raw-water pump. The default value.</summary>
    WaterAtPump = 0,

    /// <summary>The seacock is shut.</summary>
    SeacockShut = 1,

    /// <summary>The engine space was ventilated and found free of vapour, and nothing was opened since.</summary>
    VapourFree = 2,

    /// <summary>The oil was looked at and is fit to run.</summary>
    OilFit = 3,

    /// <summary>The engine runs.</summary>
    Running = 4,

    /// <summary>The engine is hot.</summary>
    Hot = 5,

    /// <summary>The key is out and the battery cut off.</summary>
    Isolated = 6,

    /// <summary>The bilge pump is off.</summary>
    BilgePumpOff = 7,

    /// <summary>The oil drain is open.</summary>
    DrainOpen = 8,

    /// <summary>The oil filter is off.</summary>
    FilterOff = 9,

    /// <summary>The old oil filter's gasket is in the hand.</summary>
    OldGasketSeen = 10,

    /// <summary>Oil was poured and its level not yet proved after a run.</summary>
    LevelUnproved = 11,

    /// <summary>The belt is off.</summary>
    BeltOff = 12,

    /// <summary>The raw-water side is open.</summary>
    RawSideOpen = 13,

    /// <summary>The fuel system is open.</summary>
    FuelOpen = 14,

    /// <summary>A battery is being charged.</summary>
    Charging = 15,

    /// <summary>The engine was put to rest for the winter in this visit.</summary>
    AtRest = 16,

    /// <summary>The coolant's circuit is open.</summary>
    CoolantOpen = 17,

    /// <summary>Coolant was filled in and its level not yet proved after a run.</summary>
    CoolantUnproved = 18,
}
