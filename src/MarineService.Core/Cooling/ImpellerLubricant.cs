namespace MarineService.Core.Cooling;

/// <summary>What an impeller was smeared with.</summary>
public enum ImpellerLubricant
{
    /// <summary>Nothing. The default value.</summary>
    None = 0,

    /// <summary>Glycerine.</summary>
    Glycerine = 1,

    /// <summary>Silicone grease.</summary>
    SiliconeGrease = 2,

    /// <summary>Soapy water.</summary>
    SoapyWater = 3,

    /// <summary>Mineral oil or grease, petroleum jelly among them.</summary>
    MineralOilOrGrease = 4,
}
