namespace MarineService.Core.Belts;

/// <summary>What the rim of a pulley is made for.</summary>
public enum PulleySurface
{
    /// <summary>Grooved, for the ribbed face of the belt. The default value.</summary>
    Grooved = 0,

    /// <summary>Smooth, for the back of the belt.</summary>
    Smooth = 1,
}
