namespace MarineService.Core.Fluids;

/// <summary>Which glycol a coolant or antifreeze is made of. They are tested with different scales and never mixed on purpose.</summary>
public enum GlycolKind
{
    /// <summary>Ethylene glycol: poisonous; engine coolant. The default value.</summary>
    Ethylene = 0,

    /// <summary>Propylene glycol: the kind used where the fluid goes overboard at commissioning.</summary>
    Propylene = 1,
}
