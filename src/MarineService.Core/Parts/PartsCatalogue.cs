using System.Diagnostics.CodeAnalysis;
using MarineService.Core.Internal;

namespace MarineService.Core.Parts;

/// <summary>The parts that kits may name, each once, with companions that are there too.</summary>
public sealed class PartsCatalogue
{
    private readonly Dictionary<string, ServicePart> _byNumber;

    private PartsCatalogue(IReadOnlyList<ServicePart> parts) =>
        (Parts, _byNumber) = (parts, parts.ToDictionary(part => part.Number, StringComparer.Ordinal));

    /// <summary>The parts, in the order given.</summary>
    public IReadOnlyList<ServicePart> Parts { get; }

    /// <summary>A part by its number.</summary>
    /// <param name="number">The number.</param>
    /// <returns>The part.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="number"/> is null.</exception>
    /// <exception cref="KeyNotFoundException">There is no such part.</exception>
    public ServicePart this[string number] => TryFind(Guard.NotNull(number), out ServicePart? part)
        ? part
        : throw new KeyNotFoundException($"There is no part '{number}'.");

    /// <summary>A catalogue.</summary>
    /// <param name="parts">Numbers distinct; every companion is one of the parts and has no companions of its own.</param>
    /// <returns>The catalogue.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="parts"/> is null.</exception>
    /// <exception cref="ArgumentException">An item is null, a number is used twice, or a companion is not there, has companions, or is counted in whole pieces and has a broken quantity.</exception>
    public static PartsCatalogue Of(params ServicePart[] parts)
    {
        IReadOnlyList<ServicePart> all = Guard.Items(parts);
        IReadOnlyList<ListFault> faults = Check(all);
        return faults.Count == 0
            ? new(all)
            : throw new ArgumentException($"Part {faults[0].Index}, '{faults[0].Value}': must be {faults[0].Expected}.", nameof(parts));
    }

    /// <summary>How many parts there are.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{Parts.Count} parts");

    internal static PartsCatalogue OfChecked(IReadOnlyList<ServicePart> parts) => new(parts);

    internal static IReadOnlyList<ListFault> Check(IReadOnlyList<ServicePart> parts)
    {
        List<ListFault> faults = [];
        Dictionary<string, ServicePart> known = new(StringComparer.Ordinal);
        for (int i = 0; i < parts.Count; i++)
        {
            if (known.ContainsKey(parts[i].Number))
            {
                faults.Add(new ListFault("part", i, "number", parts[i].Number, "a number that is used once"));
            }
            else
            {
                known.Add(parts[i].Number, parts[i]);
            }
        }

        for (int i = 0; i < parts.Count; i++)
        {
            for (int j = 0; j < parts[i].Companions.Count; j++)
            {
                KitItem companion = parts[i].Companions[j];
                if (!known.TryGetValue(companion.Part, out ServicePart? other) || other.Companions.Count > 0)
                {
                    faults.Add(new ListFault("part", i, FormattableString.Invariant($"companions/{j}/part"), companion.Part, "the number of a part that is there and has no companions of its own"));
                }
                else if (IsBroken(other, companion))
                {
                    faults.Add(new ListFault("part", i, FormattableString.Invariant($"companions/{j}/quantity"), FormattableString.Invariant($"{companion.Quantity}"), "a whole number of pieces"));
                }
            }
        }

        return faults;
    }

    /// <summary>What is wrong with an item of a kit, or null.</summary>
    internal string? Fault(KitItem item) =>
        !TryFind(item.Part, out ServicePart? part) ? $"There is no part '{item.Part}' in the catalogue."
        : IsBroken(part, item) ? FormattableString.Invariant($"'{item.Part}' is counted in whole pieces, and {item.Quantity} is not whole.")
        : null;

    /// <summary>Whether a part that is counted in whole pieces is asked for in broken ones.</summary>
    internal static bool IsBroken(ServicePart part, KitItem item) => part.Unit is null && decimal.Truncate(item.Quantity) != item.Quantity;

    internal bool TryFind(string number, [NotNullWhen(true)] out ServicePart? part) => _byNumber.TryGetValue(number, out part);
}
