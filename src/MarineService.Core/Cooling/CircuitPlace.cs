using MarineService.Core.Internal;

namespace MarineService.Core.Cooling;

/// <summary>One place of the raw-water circuit; the hose that leads to it belongs to it.</summary>
public sealed class CircuitPlace
{
    private CircuitPlace(CircuitPlaceKind kind, string? name) => (Kind, GivenName) = (kind, name);

    /// <summary>What stands there.</summary>
    public CircuitPlaceKind Kind { get; }

    /// <summary>What it is called: the given name, or the kind in words.</summary>
    public string Name => GivenName ?? Word(Kind);

    /// <summary>True for narrow tubes that hold a piece of rubber back like a sieve.</summary>
    public bool IsSieve => Kind is CircuitPlaceKind.FuelCooler or CircuitPlaceKind.OilCooler or CircuitPlaceKind.GearOilCooler
        or CircuitPlaceKind.SteeringCooler or CircuitPlaceKind.ChargeAirCooler or CircuitPlaceKind.HeatExchanger;

    internal string? GivenName { get; }

    /// <summary>A place.</summary>
    /// <param name="kind">What stands there.</param>
    /// <param name="name">What it is called, when the kind alone does not say; null or not blank.</param>
    /// <returns>The place.</returns>
    /// <exception cref="ArgumentNullException">Never; a name may be left out.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> is not a defined value.</exception>
    public static CircuitPlace Of(CircuitPlaceKind kind, string? name = null) =>
        new(Guard.Defined(kind), name is null ? null : Guard.NotBlank(name));

    /// <summary>The name.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Name;

    private static string Word(CircuitPlaceKind kind) => kind switch
    {
        CircuitPlaceKind.HullInlet => "hull inlet",
        CircuitPlaceKind.Seacock => "seacock",
        CircuitPlaceKind.Strainer => "strainer",
        CircuitPlaceKind.RawWaterPump => "raw-water pump",
        CircuitPlaceKind.FuelCooler => "fuel cooler",
        CircuitPlaceKind.OilCooler => "oil cooler",
        CircuitPlaceKind.GearOilCooler => "gear-oil cooler",
        CircuitPlaceKind.SteeringCooler => "steering cooler",
        CircuitPlaceKind.ChargeAirCooler => "charge-air cooler",
        CircuitPlaceKind.HeatExchanger => "heat exchanger",
        CircuitPlaceKind.ThermostatHousing => "thermostat housing",
        CircuitPlaceKind.Block => "block",
        CircuitPlaceKind.Manifold => "exhaust manifold",
        CircuitPlaceKind.AntiSiphonValve => "anti-siphon valve",
        CircuitPlaceKind.MixingElbow => "mixing elbow",
        CircuitPlaceKind.WaterLiftMuffler => "water-lift muffler",
        _ => "exhaust outlet",
    };
}
