namespace MarineService.Core.Oils;

/// <summary>Which Z of ASTM D341 a viscosity line uses.</summary>
public enum D341Form
{
    /// <summary>Z = ν + 0.7 + exp(-1.47 - 1.84ν - 0.51ν²), from 0.21 mm²/s. The default value.</summary>
    ShortZ = 0,

    /// <summary>Z = ν + 0.7 + C - D + E - F + G - H with stepwise ranges, from 0.21 mm²/s; constants from memory, checked against the short form.</summary>
    LongZ = 1,
}
