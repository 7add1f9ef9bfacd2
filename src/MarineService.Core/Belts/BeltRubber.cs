namespace MarineService.Core.Belts;

/// <summary>What a belt is made of, as far as it decides how wear shows.</summary>
public enum BeltRubber
{
    /// <summary>Not known: looked at as the newer kind, which hides its wear. The default value.</summary>
    Unknown = 0,

    /// <summary>Older chloroprene rubber: it cracks as it ages.</summary>
    Chloroprene = 1,

    /// <summary>Newer ethylene propylene rubber: it wears away without cracking, so rib depth must be gauged.</summary>
    EthylenePropylene = 2,
}
