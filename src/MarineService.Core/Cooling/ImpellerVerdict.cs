namespace MarineService.Core.Cooling;

/// <summary>What to do with an impeller that was looked at.</summary>
public enum ImpellerVerdict
{
    /// <summary>It goes back in and is looked at again; the limit after which it is replaced whatever it looks like stays. The default value.</summary>
    InspectAgain = 0,

    /// <summary>A new one goes in.</summary>
    Replace = 1,

    /// <summary>A new one goes in, and not before the missing rubber is found.</summary>
    ReplaceAndSearch = 2,
}
