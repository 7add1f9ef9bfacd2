namespace MarineService.Core.Parts;

/// <summary>How a spin-on filter sits on its base.</summary>
public enum FilterOrientation
{
    /// <summary>Not stated. The default value; nothing is taken to be upright.</summary>
    NotStated = 0,

    /// <summary>Gasket up, the can hanging below the base: it holds its oil by itself and may be filled before it goes on.</summary>
    GasketUp = 1,

    /// <summary>On its side: it drains back unless a valve stops it.</summary>
    Sideways = 2,

    /// <summary>Gasket down, the can above the base: it drains back unless a valve stops it.</summary>
    GasketDown = 3,
}
