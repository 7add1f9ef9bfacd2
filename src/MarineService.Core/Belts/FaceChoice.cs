namespace MarineService.Core.Belts;

/// <summary>Which faces of the belt a search tries on a pulley.</summary>
public enum FaceChoice
{
    /// <summary>Ribs in grooves, the back on smooth rims. The default value.</summary>
    AsRimsAreMade = 0,

    /// <summary>Both faces on every pulley but the crank's, as when the rims were not looked at.</summary>
    Either = 1,
}
