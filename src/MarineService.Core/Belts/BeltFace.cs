namespace MarineService.Core.Belts;

/// <summary>Which face of the belt touches a pulley.</summary>
public enum BeltFace
{
    /// <summary>The ribbed face; the pulley turns with the crank. The default value.</summary>
    Ribs = 0,

    /// <summary>The smooth back; the pulley turns against the crank.</summary>
    Back = 1,
}
