namespace MarineService.Core.LayUp;

/// <summary>What keeps an antifreeze from freezing.</summary>
public enum AntifreezeBase
{
    /// <summary>Not stated. The default value; nothing is worked out from it.</summary>
    NotStated = 0,

    /// <summary>Propylene glycol alone: the kind for the raw-water side, which empties into the water at commissioning.</summary>
    PropyleneGlycol = 1,

    /// <summary>Ethylene glycol: poisonous, for closed coolant circuits only.</summary>
    EthyleneGlycol = 2,

    /// <summary>Propylene glycol with ethanol: burns, and a glycol refractometer misreads it.</summary>
    PropyleneGlycolWithEthanol = 3,

    /// <summary>Ethanol: burns, and a glycol refractometer misreads it.</summary>
    Ethanol = 4,
}
