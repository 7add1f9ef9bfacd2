namespace MarineService.Core.Engines;

/// <summary>Where the boat is kept in season.</summary>
public enum KeptWhere
{
    /// <summary>Not stated. The default value.</summary>
    NotStated = 0,

    /// <summary>Afloat on a mooring or berth.</summary>
    Afloat = 1,

    /// <summary>On a trailer between outings.</summary>
    OnTrailer = 2,

    /// <summary>Ashore, launched by crane or slip.</summary>
    Ashore = 3,
}
