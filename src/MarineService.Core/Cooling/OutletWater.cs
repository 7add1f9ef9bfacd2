namespace MarineService.Core.Cooling;

/// <summary>What comes out of one exhaust outlet while the engine runs.</summary>
public enum OutletWater
{
    /// <summary>Water keeps coming, about as strong as yesterday. The default value.</summary>
    KeepsComing = 0,

    /// <summary>Water comes in gulps, as a water-lift muffler gives it; healthy with one.</summary>
    Gulps = 1,

    /// <summary>Much less than yesterday.</summary>
    Weak = 2,

    /// <summary>Steam with strong water, as on a cold day.</summary>
    SteamAndStrongWater = 3,

    /// <summary>Steam with little water: starved.</summary>
    SteamAndLittleWater = 4,

    /// <summary>Water came and stopped.</summary>
    Stopped = 5,

    /// <summary>No water.</summary>
    None = 6,
}
