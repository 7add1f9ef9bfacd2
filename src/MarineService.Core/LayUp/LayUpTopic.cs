namespace MarineService.Core.LayUp;

/// <summary>What a step of a lay-up is about.</summary>
public enum LayUpTopic
{
    /// <summary>Anything else. The default value.</summary>
    Other = 0,

    /// <summary>Fuel, stabilizer and the run that spreads it.</summary>
    Fuel = 1,

    /// <summary>Engine oil.</summary>
    Oil = 2,

    /// <summary>Coolant of a closed circuit.</summary>
    Coolant = 3,

    /// <summary>Draining the raw-water side.</summary>
    Drain = 4,

    /// <summary>Antifreeze in the raw-water side.</summary>
    Antifreeze = 5,

    /// <summary>Proof that no water is left that can freeze.</summary>
    Proof = 6,

    /// <summary>Fogging oil.</summary>
    Fogging = 7,

    /// <summary>The raw-water pump's impeller.</summary>
    Impeller = 8,

    /// <summary>Battery.</summary>
    Battery = 9,

    /// <summary>Openings, bilge, covers and tags.</summary>
    Closing = 10,
}
