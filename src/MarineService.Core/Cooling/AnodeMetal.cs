namespace MarineService.Core.Cooling;

/// <summary>What a sacrificial anode is made of.</summary>
public enum AnodeMetal
{
    /// <summary>Not stated. The default value.</summary>
    NotStated = 0,

    /// <summary>Zinc, for salt water.</summary>
    Zinc = 1,

    /// <summary>Aluminium, for salt, brackish and fresh water.</summary>
    Aluminium = 2,

    /// <summary>Magnesium, for fresh water only.</summary>
    Magnesium = 3,
}
