using MarineService.Core.Engines;

namespace MarineService.Core.LayUp;

/// <summary>What a plan was told; everything but engine and frost may be missing.</summary>
internal sealed record LayUpData
{
    internal LayUpData(Engine engine, FreezeDecision freeze, LayUpLimits limits) => (Engine, Freeze, Limits) = (engine, freeze, limits);

    internal Engine Engine { get; }

    internal FreezeDecision Freeze { get; }

    internal LayUpLimits Limits { get; }

    internal Boat? Boat { get; init; }

    internal RawWaterSide? Side { get; init; }

    internal Antifreeze? Antifreeze { get; init; }

    internal Cylinders? Cylinders { get; init; }

    internal FuelLayUp? Fuel { get; init; }

    internal BatteryReading? Battery { get; init; }

    internal RefractometerReading? Coolant { get; init; }
}
