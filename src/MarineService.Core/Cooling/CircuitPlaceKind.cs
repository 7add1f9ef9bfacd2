namespace MarineService.Core.Cooling;

/// <summary>What stands at a place of the raw-water circuit.</summary>
public enum CircuitPlaceKind
{
    /// <summary>The inlet through the hull, or the pick-up of a drive leg. The default value.</summary>
    HullInlet = 0,

    /// <summary>The valve at the hull inlet.</summary>
    Seacock = 1,

    /// <summary>The strainer.</summary>
    Strainer = 2,

    /// <summary>The raw-water pump; each circuit has exactly one.</summary>
    RawWaterPump = 3,

    /// <summary>A fuel cooler.</summary>
    FuelCooler = 4,

    /// <summary>An engine-oil cooler.</summary>
    OilCooler = 5,

    /// <summary>A gearbox-oil cooler.</summary>
    GearOilCooler = 6,

    /// <summary>A power-steering cooler.</summary>
    SteeringCooler = 7,

    /// <summary>A charge-air cooler.</summary>
    ChargeAirCooler = 8,

    /// <summary>The heat exchanger of a fresh-water cooled engine.</summary>
    HeatExchanger = 9,

    /// <summary>The thermostat housing of a raw-water cooled engine.</summary>
    ThermostatHousing = 10,

    /// <summary>The block of a raw-water cooled engine, with its circulating pump.</summary>
    Block = 11,

    /// <summary>An exhaust manifold that raw water runs through.</summary>
    Manifold = 12,

    /// <summary>The anti-siphon valve.</summary>
    AntiSiphonValve = 13,

    /// <summary>Riser or elbow where raw water joins the exhaust.</summary>
    MixingElbow = 14,

    /// <summary>The water-lift muffler.</summary>
    WaterLiftMuffler = 15,

    /// <summary>An exhaust outlet through the hull; only other outlets come after it.</summary>
    ExhaustOutlet = 16,
}
