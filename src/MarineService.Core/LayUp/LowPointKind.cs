namespace MarineService.Core.LayUp;

/// <summary>Where raw water stays when an engine stops.</summary>
public enum LowPointKind
{
    /// <summary>Any other place; its title says which. The default value.</summary>
    Other = 0,

    /// <summary>The block of an engine that is cooled by raw water.</summary>
    EngineBlock = 1,

    /// <summary>A water-cooled exhaust manifold.</summary>
    ExhaustManifold = 2,

    /// <summary>A riser or mixing elbow that holds water.</summary>
    ExhaustElbow = 3,

    /// <summary>The raw-water side of the heat exchanger.</summary>
    HeatExchanger = 4,

    /// <summary>The raw-water pump.</summary>
    RawWaterPump = 5,

    /// <summary>The strainer at the inlet.</summary>
    Strainer = 6,

    /// <summary>The cavity behind the ball of a seacock: it holds water when the valve is shut.</summary>
    SeacockBallValve = 7,

    /// <summary>A water-lift muffler.</summary>
    WaterLiftMuffler = 8,

    /// <summary>An engine-oil cooler.</summary>
    OilCooler = 9,

    /// <summary>A gear-oil cooler.</summary>
    GearOilCooler = 10,

    /// <summary>A power-steering cooler.</summary>
    SteeringCooler = 11,

    /// <summary>A hose that sags below what it joins.</summary>
    Hose = 12,
}
