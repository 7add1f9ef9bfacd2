namespace MarineService.Core.Oils;

/// <summary>A rule for the viscosity of a mix of two liquids.</summary>
public enum BlendingMethod
{
    /// <summary>ln ln(ν + 0.7) adds by share; the form of the handbook chart. The default value.</summary>
    DoubleLog = 0,

    /// <summary>The blending index 14.534 ln ln(ν + 0.8) + 10.975 adds by share.</summary>
    BlendingIndex = 1,

    /// <summary>ln ν adds by share; the other bracket, thicker than the double log.</summary>
    SingleLog = 2,
}
