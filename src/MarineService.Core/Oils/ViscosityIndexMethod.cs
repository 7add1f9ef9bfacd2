namespace MarineService.Core.Oils;

/// <summary>Where L and H of a viscosity index come from.</summary>
public enum ViscosityIndexMethod
{
    /// <summary>The table of ASTM D2270, interpolated, and its equations above 70 mm²/s. The default value.</summary>
    Table = 0,

    /// <summary>The quadratics of appendix X2, for comparison; within about 0.1 % of the table.</summary>
    Quadratics = 1,
}
