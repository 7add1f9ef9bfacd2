namespace MarineService.Core.Cooling;

/// <summary>What a vane looks like, gravest last.</summary>
public enum VaneState
{
    /// <summary>Whole, bent hard both ways without a crack. The default value.</summary>
    Whole = 0,

    /// <summary>Stays bent after a night out of the pump.</summary>
    Set = 1,

    /// <summary>Cracked at the root or elsewhere.</summary>
    Cracked = 2,

    /// <summary>Torn, with a part of it gone or hanging.</summary>
    Torn = 3,

    /// <summary>Gone down to the hub.</summary>
    Missing = 4,
}
