namespace MarineService.Core.Engines;

/// <summary>What the engine burns.</summary>
public enum Fuel
{
    /// <summary>Not stated. The default value; nothing is assumed from it.</summary>
    NotStated = 0,

    /// <summary>Petrol (gasoline); its vapour explodes in a closed engine space.</summary>
    Petrol = 1,

    /// <summary>Diesel oil.</summary>
    Diesel = 2,
}
