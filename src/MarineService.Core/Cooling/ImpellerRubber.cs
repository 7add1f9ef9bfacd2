namespace MarineService.Core.Cooling;

/// <summary>What an impeller is made of.</summary>
public enum ImpellerRubber
{
    /// <summary>Not stated. The default value; no oil is taken to be harmless to it.</summary>
    NotStated = 0,

    /// <summary>Chloroprene (neoprene), the usual one.</summary>
    Chloroprene = 1,

    /// <summary>Nitrile, which bears oil and diesel.</summary>
    Nitrile = 2,

    /// <summary>Natural rubber.</summary>
    NaturalRubber = 3,

    /// <summary>Ethylene-propylene (EPDM).</summary>
    EthylenePropylene = 4,

    /// <summary>Polyurethane.</summary>
    Polyurethane = 5,
}
