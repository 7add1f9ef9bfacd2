using MarineService.Core.Internal;

namespace MarineService.Core.Cooling;

/// <summary>Which exhaust outlets must show water, and what was seen at each while the engine ran on its supply.</summary>
/// <remarks>"Water keeps coming" is the proof, not "steady": a healthy water-lift muffler gulps. Keep people off the stern meanwhile.</remarks>
public sealed class ExhaustCheck
{
    private readonly bool _hasMuffler;
    private readonly IReadOnlyDictionary<string, OutletWater> _seen;

    private ExhaustCheck(IReadOnlyList<string> outlets, bool hasMuffler, IReadOnlyDictionary<string, OutletWater> seen) =>
        (Outlets, _hasMuffler, _seen) = (outlets, hasMuffler, seen);

    /// <summary>The outlets that are expected to show water.</summary>
    public IReadOnlyList<string> Outlets { get; }

    /// <summary>How many outlets were seen with water that keeps coming.</summary>
    public int OutletsWithWater => _seen.Values.Count(water => water is not OutletWater.None and not OutletWater.Stopped and not OutletWater.SteamAndLittleWater);

    /// <summary>True when every outlet was seen and nothing must be put right.</summary>
    public bool IsProved => Findings.All(finding => finding.Severity < Severity.Act);

    /// <summary>What was found, outlet by outlet.</summary>
    public IReadOnlyList<Finding> Findings => Array.AsReadOnly<Finding>([.. Outlets.Select(Judge).OfType<Finding>()]);

    /// <summary>Expects water at every outlet of a circuit.</summary>
    /// <param name="circuit">The circuit, with its outlets.</param>
    /// <returns>A check without observations; not known when the circuit names no outlet.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="circuit"/> is null.</exception>
    public static Answer<ExhaustCheck> Of(RawWaterCircuit circuit) => Guard.NotNull(circuit).Outlets.Count == 0
        ? Answer.NotKnown<ExhaustCheck>("The exhaust outlets of the circuit.")
        : Answer.Known(new ExhaustCheck(
            Array.AsReadOnly<string>([.. circuit.Outlets.Select(outlet => outlet.Name)]),
            circuit.HasWaterLiftMuffler,
            new Dictionary<string, OutletWater>(StringComparer.Ordinal)));

    /// <summary>What was seen at an outlet; a later look replaces an earlier one.</summary>
    /// <param name="outlet">One of the outlets.</param>
    /// <param name="water">What comes out of it.</param>
    /// <returns>A new check.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="outlet"/> is null.</exception>
    /// <exception cref="ArgumentException">There is no such outlet.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="water"/> is not a defined value.</exception>
    public ExhaustCheck Seen(string outlet, OutletWater water)
    {
        Dictionary<string, OutletWater> seen = _seen.ToDictionary(pair => pair.Key, pair => pair.Value, StringComparer.Ordinal);
        seen[Known(Outlets, outlet)] = Guard.Defined(water);
        return new(Outlets, _hasMuffler, seen);
    }

    /// <summary>How many of how many outlets show water.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{OutletsWithWater} of {Outlets.Count} outlets with water");

    internal static string Known(IReadOnlyList<string> outlets, string outlet) =>
        outlets.Contains(Guard.NotNull(outlet)) ? outlet : throw new ArgumentException($"'{outlet}' is none of {string.Join(", ", outlets)}.", nameof(outlet));

    private Finding? Judge(string outlet)
    {
        string subject = $"outlet '{outlet}'";
        return !_seen.TryGetValue(outlet, out OutletWater water) ? ExhaustRules.NotSeen.On(subject)
            : water switch
            {
                OutletWater.None => ExhaustRules.NoWater.On(subject, Figure.Of("seen", "no water comes")),
                OutletWater.Stopped => ExhaustRules.NoWater.On(subject, Figure.Of("seen", "water came and stopped")),
                OutletWater.SteamAndLittleWater => ExhaustRules.Starved.On(subject),
                OutletWater.Weak => ExhaustRules.Weak.On(subject),
                OutletWater.Gulps when !_hasMuffler => ExhaustRules.GulpsWithoutMuffler.On(subject),
                _ => null,
            };
    }
}
