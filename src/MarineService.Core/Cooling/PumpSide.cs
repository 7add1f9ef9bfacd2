namespace MarineService.Core.Cooling;

/// <summary>From where a person looks at the raw-water pump.</summary>
public enum PumpSide
{
    /// <summary>At the cover, with the impeller before the eyes. The default value.</summary>
    Cover = 0,

    /// <summary>At the pulley or gear; every sense reads the other way round from here.</summary>
    Drive = 1,
}
