namespace MarineService.Core.Parts;

/// <summary>What a rubber part is made of, as far as storage guides tell polymers apart.</summary>
public enum Polymer
{
    /// <summary>Not stated. The default value; no limit is taken for it.</summary>
    NotStated = 0,

    /// <summary>Natural rubber (NR).</summary>
    NaturalRubber = 1,

    /// <summary>Styrene-butadiene (SBR).</summary>
    StyreneButadiene = 2,

    /// <summary>Polyester urethane (AU).</summary>
    PolyesterUrethane = 3,

    /// <summary>Polyether urethane (EU).</summary>
    PolyetherUrethane = 4,

    /// <summary>Nitrile (NBR).</summary>
    Nitrile = 5,

    /// <summary>Hydrogenated nitrile (HNBR).</summary>
    HydrogenatedNitrile = 6,

    /// <summary>Chloroprene (CR).</summary>
    Chloroprene = 7,

    /// <summary>Butyl (IIR).</summary>
    Butyl = 8,

    /// <summary>Polyacrylate (ACM).</summary>
    Polyacrylate = 9,

    /// <summary>Ethylene-propylene (EPDM).</summary>
    EthylenePropylene = 10,

    /// <summary>Fluorocarbon (FKM).</summary>
    Fluorocarbon = 11,

    /// <summary>Silicone.</summary>
    Silicone = 12,

    /// <summary>Chlorosulfonated polyethylene (CSM).</summary>
    ChlorosulfonatedPolyethylene = 13,
}
