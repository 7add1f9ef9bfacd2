namespace MarineService.Core.Engines;

/// <summary>How the engine block is cooled.</summary>
public enum CoolingKind
{
    /// <summary>Not stated. The default value; nothing is assumed from it.</summary>
    NotStated = 0,

    /// <summary>Sea, river or lake water runs through block and manifolds.</summary>
    RawWater = 1,

    /// <summary>Coolant in the block (closed circuit); raw water only in heat exchanger and exhaust.</summary>
    FreshWater = 2,
}
