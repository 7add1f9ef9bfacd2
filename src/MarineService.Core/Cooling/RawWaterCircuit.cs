using MarineService.Core.Internal;

namespace MarineService.Core.Cooling;

/// <summary>The raw-water side of one engine: its places in the order of flow.</summary>
/// <remarks>Where the circuit forks, as on the two banks of a V engine, the branches stand one after the other.</remarks>
/// <example><code>
/// RawWaterCircuit circuit = RawWaterCircuit.Of(
///     CircuitPlaceKind.Seacock, CircuitPlaceKind.Strainer, CircuitPlaceKind.RawWaterPump, CircuitPlaceKind.HeatExchanger,
///     CircuitPlaceKind.MixingElbow, CircuitPlaceKind.ExhaustOutlet);
/// </code></example>
public sealed class RawWaterCircuit
{
    private RawWaterCircuit(IReadOnlyList<CircuitPlace> places, int pump) => (Places, PumpIndex) = (places, pump);

    /// <summary>The places in the order of flow.</summary>
    public IReadOnlyList<CircuitPlace> Places { get; }

    /// <summary>Whether a seacock is among them; without one the boat must not be opened below the water line afloat.</summary>
    public bool HasSeacock => Places.Any(place => place.Kind == CircuitPlaceKind.Seacock);

    /// <summary>Whether the exhaust has a water-lift muffler, which gulps.</summary>
    public bool HasWaterLiftMuffler => Places.Any(place => place.Kind == CircuitPlaceKind.WaterLiftMuffler);

    /// <summary>The exhaust outlets, each of which must show water; empty when they are not stated.</summary>
    public IReadOnlyList<CircuitPlace> Outlets =>
        Array.AsReadOnly<CircuitPlace>([.. Places.Where(place => place.Kind == CircuitPlaceKind.ExhaustOutlet)]);

    private int PumpIndex { get; }

    /// <summary>A circuit.</summary>
    /// <param name="places">The places in the order of flow: one raw-water pump, names distinct, outlets last.</param>
    /// <returns>The circuit.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="places"/> or an item is null.</exception>
    /// <exception cref="ArgumentException">There is not exactly one pump, a name occurs twice, or something comes after an outlet.</exception>
    public static RawWaterCircuit Of(params CircuitPlace[] places)
    {
        IReadOnlyList<CircuitPlace> all = Guard.Items(places);
        IReadOnlyList<ListFault> faults = Check(all);
        return faults.Count > 0 ? throw new ArgumentException(faults[0].ToString(), nameof(places)) : OfChecked(all);
    }

    /// <summary>A circuit of places that need no names of their own.</summary>
    /// <param name="kinds">The kinds in the order of flow: one raw-water pump, none twice, outlet last.</param>
    /// <returns>The circuit.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="kinds"/> is null.</exception>
    /// <exception cref="ArgumentException">There is not exactly one pump, a kind occurs twice, or something comes after the outlet.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A kind is not a defined value.</exception>
    public static RawWaterCircuit Of(params CircuitPlaceKind[] kinds)
    {
        foreach (CircuitPlaceKind kind in Guard.NotNull(kinds))
        {
            Guard.Defined(kind, nameof(kinds));
        }

        CircuitPlace[] places = Array.ConvertAll(kinds, kind => CircuitPlace.Of(kind));
        IReadOnlyList<ListFault> faults = Check(places);
        return faults.Count > 0 ? throw new ArgumentException(faults[0].ToString(), nameof(kinds)) : OfChecked(Array.AsReadOnly(places));
    }

    /// <summary>Where to look for a missing piece: in the pump, then with the flow to the outlets, then back on the suction side.</summary>
    /// <remarks>Common practice, described in yachting magazines; owners do find the piece in the heat exchanger.</remarks>
    /// <returns>Every place once, first things first.</returns>
    public IReadOnlyList<SearchPlace> WhereToSearch()
    {
        List<SearchPlace> search = [];
        void Add(CircuitPlace place, bool isDownstream, string reason) => search.Add(new(search.Count + 1, place, isDownstream, reason));
        Add(Places[PumpIndex], true, "the housing, the port behind the cam, and the outlet hose");
        bool sieved = false;
        foreach (CircuitPlace place in Places.Skip(PumpIndex + 1))
        {
            Add(place, true, Reason(place, sieved));
            sieved |= place.IsSieve;
        }

        foreach (CircuitPlace place in Places.Take(PumpIndex).Reverse())
        {
            Add(place, false, "suction side: pieces fall back when the pump stops");
        }

        return search.AsReadOnly();
    }

    /// <summary>The places with arrows between them.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => string.Join(" > ", Places);

    /// <summary>Everything that is wrong with a list of places.</summary>
    internal static IReadOnlyList<ListFault> Check(IReadOnlyList<CircuitPlace> places)
    {
        List<ListFault> faults = [];
        HashSet<string> names = new(StringComparer.Ordinal);
        int pumps = 0;
        for (int i = 0; i < places.Count; i++)
        {
            CircuitPlace place = places[i];
            if (!names.Add(place.Name))
            {
                faults.Add(new("Place", i, "name", place.Name, "a name that no other place has"));
            }

            if (place.Kind == CircuitPlaceKind.RawWaterPump && ++pumps > 1)
            {
                faults.Add(new("Place", i, "kind", place.Name, "one raw-water pump only"));
            }

            if (i > 0 && places[i - 1].Kind == CircuitPlaceKind.ExhaustOutlet && place.Kind != CircuitPlaceKind.ExhaustOutlet)
            {
                faults.Add(new("Place", i, "kind", place.Name, "only exhaust outlets after an exhaust outlet"));
            }
        }

        if (pumps == 0)
        {
            faults.Add(new("Place", Math.Max(0, places.Count - 1), "kind", places.Count == 0 ? "nothing" : places[places.Count - 1].Name, "one raw-water pump among the places"));
        }

        return faults;
    }

    internal static RawWaterCircuit OfChecked(IReadOnlyList<CircuitPlace> places) =>
        new(places, places.ToList().FindIndex(place => place.Kind == CircuitPlaceKind.RawWaterPump));

    private static string Reason(CircuitPlace place, bool sieved) => place.Kind switch
    {
        _ when place.IsSieve && !sieved => "inlet cap off: its tubes are the first sieve after the pump, the likeliest place",
        _ when place.IsSieve => "inlet cap off: a piece that slipped through the first sieve stops here",
        CircuitPlaceKind.Block => "circulating pump and passages: a piece here can starve a cylinder of water",
        CircuitPlaceKind.ThermostatHousing => "a piece can hold the thermostat open or shut",
        CircuitPlaceKind.MixingElbow => "the injection holes are narrow and are the last ones",
        CircuitPlaceKind.AntiSiphonValve => "a piece can hold the valve open or shut",
        CircuitPlaceKind.WaterLiftMuffler => "drain it and look at what comes out",
        CircuitPlaceKind.ExhaustOutlet => "only when everything before it is clear: then it may have gone overboard",
        _ => "look into both ends, and into the hose before it",
    };
}
