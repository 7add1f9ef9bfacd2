namespace MarineService.Core.Parts;

/// <summary>What a screw presses together.</summary>
public enum JointSeat
{
    /// <summary>Not stated. The default value; nothing is worked out from it.</summary>
    NotStated = 0,

    /// <summary>Metal on metal, an O-ring in a groove included.</summary>
    Metal = 1,

    /// <summary>A flat gasket of paper, fibre or rubber that the screws squeeze.</summary>
    FlatGasket = 2,

    /// <summary>A rubber washer or a rubber mount.</summary>
    RubberWasher = 3,

    /// <summary>A part of plastic.</summary>
    Plastic = 4,
}
