namespace MarineService.Core.Procedures;

/// <summary>What a step does to the boat that may harm somebody, the engine or the water if it comes at the wrong time.</summary>
/// <remarks>To crank and to start are different acts: cranking wants the seacock shut, starting wants water at the pump.</remarks>
public enum StepAct
{
    /// <summary>Opens the seacock or the flush water, and proves water at the pump. The default value.</summary>
    SupplyWater = 0,

    /// <summary>Shuts the seacock.</summary>
    ShutSeacock = 1,

    /// <summary>Ventilates, sniffs and looks into the bilge for vapour.</summary>
    Ventilate = 2,

    /// <summary>Looks at the oil cold: level, colour, smell; or clears it again after its fault was found and mended.</summary>
    PassOil = 3,

    /// <summary>Turns the engine without letting it fire.</summary>
    Crank = 4,

    /// <summary>Starts the engine.</summary>
    Start = 5,

    /// <summary>Stops the engine.</summary>
    Stop = 6,

    /// <summary>Lets the engine cool until nothing on it is hot to the hand.</summary>
    CoolDown = 7,

    /// <summary>Takes the key out and cuts the battery off.</summary>
    Isolate = 8,

    /// <summary>Switches the battery on again.</summary>
    Energize = 9,

    /// <summary>Switches the bilge pump off.</summary>
    BilgePumpOff = 10,

    /// <summary>Puts the bilge pump back on automatic and tests it.</summary>
    BilgePumpOn = 11,

    /// <summary>Opens the oil drain, or puts the extractor's tube in.</summary>
    OpenDrain = 12,

    /// <summary>Closes the oil drain, or caps the extractor's port.</summary>
    CloseDrain = 13,

    /// <summary>Takes the old oil filter off and sees its gasket on it.</summary>
    TakeFilterOff = 14,

    /// <summary>Spins the new oil filter on.</summary>
    FitFilter = 15,

    /// <summary>Pours oil into the engine.</summary>
    Pour = 16,

    /// <summary>Reads the settled level after a run and brings it to the target.</summary>
    ProveLevel = 17,

    /// <summary>Takes the belt off.</summary>
    BeltOff = 18,

    /// <summary>Puts the belt on and proves its seat.</summary>
    BeltOn = 19,

    /// <summary>Opens the raw-water side: the pump's cover, a hose, a drain.</summary>
    OpenRawSide = 20,

    /// <summary>Closes the raw-water side.</summary>
    CloseRawSide = 21,

    /// <summary>Opens the fuel system: a filter, a bowl, a pipe.</summary>
    OpenFuel = 22,

    /// <summary>Closes the fuel system and looks for leaks.</summary>
    CloseFuel = 23,

    /// <summary>Tests the ignition with an open spark.</summary>
    TestIgnition = 24,

    /// <summary>Begins to charge a battery.</summary>
    StartCharging = 25,

    /// <summary>Ends charging.</summary>
    StopCharging = 26,

    /// <summary>Signs the work off.</summary>
    SignOff = 27,

    /// <summary>Takes the raw-water pump's cover off, which the belt may hide.</summary>
    TakePumpCoverOff = 28,

    /// <summary>Puts the engine to rest for the winter: drained, filled with antifreeze or fogged.</summary>
    PutToRest = 29,

    /// <summary>Opens and closes a strainer, a hose or an anode of the raw-water side within the one step.</summary>
    OpenStrainer = 30,

    /// <summary>Opens the coolant's circuit: its cap, a drain, a hose.</summary>
    OpenCoolant = 31,

    /// <summary>Closes the drains and hoses of the coolant's circuit.</summary>
    CloseCoolant = 32,

    /// <summary>Fills coolant in.</summary>
    PourCoolant = 33,

    /// <summary>Opens the cap once more, cold after a run, bleeds, and brings the coolant's level to the mark.</summary>
    ProveCoolant = 34,
}
