namespace MarineService.Core.Fluids;

/// <summary>How the boat lay when the dipstick was read or its marks were made.</summary>
public enum BoatAttitude
{
    /// <summary>Afloat in her usual trim. The default value.</summary>
    Afloat = 0,

    /// <summary>On the trailer.</summary>
    OnTrailer = 1,

    /// <summary>Chocked up ashore, engine level fore and aft and athwart.</summary>
    LevelAshore = 2,
}
