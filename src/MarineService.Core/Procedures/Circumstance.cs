namespace MarineService.Core.Procedures;

/// <summary>What decides whether a step is needed on this boat, or turns out to be while the work goes on.</summary>
public enum Circumstance
{
    /// <summary>The engine, or another aboard with shared spaces, runs on petrol. The default value.</summary>
    Petrol = 0,

    /// <summary>A belt drives the raw-water pump and lies in front of its cover.</summary>
    BeltBeforePump = 1,

    /// <summary>The raw water comes through a seacock.</summary>
    Seacock = 2,

    /// <summary>Pieces of the old impeller are missing. Found while the work goes on.</summary>
    PiecesMissing = 3,

    /// <summary>The oil was looked at cold and is not fit to run. Found while the work goes on.</summary>
    OilUnfit = 4,

    /// <summary>Raw water runs through the block and the manifolds.</summary>
    RawWaterCooled = 5,
}
