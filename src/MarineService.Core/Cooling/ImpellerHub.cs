namespace MarineService.Core.Cooling;

/// <summary>How the hub takes the shaft's turning.</summary>
public enum ImpellerHub
{
    /// <summary>Not stated. The default value.</summary>
    NotStated = 0,

    /// <summary>A key in a slot.</summary>
    Keyed = 1,

    /// <summary>Splines.</summary>
    Splined = 2,

    /// <summary>A flat on the shaft.</summary>
    Flat = 3,

    /// <summary>A pin or a screw through the hub.</summary>
    Pinned = 4,
}
