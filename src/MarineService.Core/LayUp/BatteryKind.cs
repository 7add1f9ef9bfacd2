namespace MarineService.Core.LayUp;

/// <summary>How a battery is made.</summary>
public enum BatteryKind
{
    /// <summary>Not stated. The default value; nothing is worked out from it.</summary>
    NotStated = 0,

    /// <summary>Lead and free acid: a hydrometer can be dipped in.</summary>
    FloodedLead = 1,

    /// <summary>Lead, the acid held in glass mats.</summary>
    AbsorbedGlassMat = 2,

    /// <summary>Lead, the acid held as gel.</summary>
    Gel = 3,

    /// <summary>Lithium iron phosphate: must not be charged below freezing.</summary>
    LithiumIronPhosphate = 4,
}
