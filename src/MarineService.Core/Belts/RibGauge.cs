namespace MarineService.Core.Belts;

/// <summary>What a rib depth gauge shows when its bar is laid in the grooves of the belt.</summary>
public enum RibGauge
{
    /// <summary>The bar stands proud of the ribs: enough rib is left. The default value.</summary>
    StandsProud = 0,

    /// <summary>The bar lies level with the ribs: at the limit.</summary>
    Level = 1,

    /// <summary>The bar sinks below the ribs: the grooves are worn wide and deep.</summary>
    Sinks = 2,
}
