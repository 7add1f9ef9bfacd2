namespace MarineService.Core.Fluids;

/// <summary>What the oil looked or smelled like, on the stick or in the drain pan.</summary>
public enum OilAppearance
{
    /// <summary>As used oil looks: brown to black, no smell of fuel. The default value.</summary>
    Usual = 0,

    /// <summary>Milky or foamy: water is mixed into it.</summary>
    Milky = 1,

    /// <summary>Water stands below the oil, or came out before it.</summary>
    WaterBelow = 2,

    /// <summary>Smells of fuel, or runs off the stick like fuel.</summary>
    SmellsOfFuel = 3,

    /// <summary>Glitters or feels gritty.</summary>
    MetalInIt = 4,
}
