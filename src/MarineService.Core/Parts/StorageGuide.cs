using MarineService.Core.Internal;

namespace MarineService.Core.Parts;

/// <summary>A guide that says how long rubber may lie in store. Its figures are storage limits only, never a service life.</summary>
/// <remarks>A closed list. All three are known by other people's reproductions.</remarks>
public sealed class StorageGuide
{
    private static readonly StorageLimit Unlimited = new(null, 0, null);
    private static readonly StorageLimit Fifteen = new(15, 0, null);

    private readonly IReadOnlyDictionary<Polymer, StorageLimit> _limits;

    private StorageGuide(string name, Citation source, params (StorageLimit Limit, Polymer[] Polymers)[] rows) =>
        (Name, Source, _limits) = (name, source, rows.SelectMany(row => row.Polymers.Select(polymer => (polymer, row.Limit))).ToDictionary(pair => pair.polymer, pair => pair.Limit));

    /// <summary>ISO 2230: groups A, B and C, each with an extension after inspection.</summary>
    public static StorageGuide Iso2230 { get; } = new(
        "ISO 2230",
        Citation.Secondary("ISO 2230 Rubber products - Guidelines for storage", "2002", "group table as reproduced by seal makers"),
        (new(5, 2, "A"), [Polymer.NaturalRubber, Polymer.StyreneButadiene, Polymer.PolyesterUrethane, Polymer.PolyetherUrethane]),
        (new(7, 3, "B"), [Polymer.Nitrile, Polymer.HydrogenatedNitrile, Polymer.Chloroprene, Polymer.Butyl, Polymer.Polyacrylate]),
        (new(10, 5, "C"), [Polymer.EthylenePropylene, Polymer.Fluorocarbon, Polymer.Silicone, Polymer.ChlorosulfonatedPolyethylene]));

    /// <summary>SAE ARP5316: 5 or 15 years, or no limit.</summary>
    public static StorageGuide SaeArp5316 { get; } = new(
        "SAE ARP5316",
        Citation.Secondary("SAE ARP5316", null, "storage table as reproduced by seal suppliers"),
        (new(5, 0, null), [Polymer.PolyesterUrethane, Polymer.PolyetherUrethane]),
        (Fifteen, [Polymer.Nitrile, Polymer.Chloroprene, Polymer.HydrogenatedNitrile, Polymer.StyreneButadiene, Polymer.Polyacrylate]),
        (Unlimited, [Polymer.EthylenePropylene, Polymer.Fluorocarbon, Polymer.Silicone, Polymer.Butyl]));

    /// <summary>MIL-HDBK-695: 15 years for chloroprene and nitrile, 3 for styrene-butadiene; its other rows were not seen.</summary>
    public static StorageGuide MilHdbk695 { get; } = new(
        "MIL-HDBK-695",
        Citation.Secondary("MIL-HDBK-695", "E", "list as reproduced by seal suppliers"),
        (Fifteen, [Polymer.Chloroprene, Polymer.Nitrile]),
        (new(3, 0, null), [Polymer.StyreneButadiene]));

    /// <summary>The guides, the strictest for most rubbers first.</summary>
    public static IReadOnlyList<StorageGuide> All { get; } = Array.AsReadOnly<StorageGuide>([Iso2230, SaeArp5316, MilHdbk695]);

    /// <summary>Its number.</summary>
    public string Name { get; }

    /// <summary>Where its figures were read.</summary>
    public Citation Source { get; }

    /// <summary>How long a polymer may lie in store.</summary>
    /// <param name="polymer">The polymer.</param>
    /// <returns>The limit, or not known where the guide, as far as it was seen, says nothing.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="polymer"/> is not a defined value.</exception>
    public Answer<StorageLimit> LimitFor(Polymer polymer) =>
        Guard.Defined(polymer) == Polymer.NotStated ? Answer.NotKnown<StorageLimit>("What the part is made of.")
        : _limits.TryGetValue(polymer, out StorageLimit? limit) ? Answer.Known(limit)
        : Answer.NotKnown<StorageLimit>($"The storage limit of {polymer}: {Name}, as far as it was seen, does not state it.");

    /// <summary>The guide's number.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Name;
}
