using System.Collections.ObjectModel;
using MarineService.Core.Internal;

namespace MarineService.Core.Parts;

/// <summary>The parts of one engine: the catalogue, what each task takes and takes off, the spares aboard, the packs and their prices, the filter bases.</summary>
/// <remarks>Built by With methods; each returns a copy. Every part that is named is in the catalogue. The engine's own manual outranks it.</remarks>
/// <example><code>
/// PartsSheet sheet = PartsSheet.Of(PartsCatalogue.Of(ServicePart.Of("LV-IMP-1", "impeller")))
///     .With(TaskKit.Of("impeller-replace", KitItem.Of("LV-IMP-1")))
///     .With(TaskLooseParts.Of("impeller-replace", LooseItem.Of(LoosePart.Of("M6 x 20 screw", LoosePartKind.Screw, "pump cover"), 6)));
/// </code></example>
public sealed class PartsSheet
{
    private PartsSheet(PartsCatalogue catalogue) => Catalogue = catalogue;

    private PartsSheet(PartsSheet other)
        : this(other.Catalogue) =>
        (Kits, ComesOff, SparesAboard, Offers, FilterBases) = (other.Kits, other.ComesOff, other.SparesAboard, other.Offers, other.FilterBases);

    /// <summary>The parts.</summary>
    public PartsCatalogue Catalogue { get; }

    /// <summary>What tasks take, by task. A task without a kit is not known; one that takes nothing has an empty kit.</summary>
    public IReadOnlyList<TaskKit> Kits { get; private set; } = [];

    /// <summary>What tasks take off, by task. A task that is not there is not known; one that takes nothing off has an empty list.</summary>
    public IReadOnlyList<TaskLooseParts> ComesOff { get; private set; } = [];

    /// <summary>The spares that must be aboard when a visit is over, without their companions, which go with them.</summary>
    public IReadOnlyList<KitItem> SparesAboard { get; private set; } = [];

    /// <summary>The packs in which parts are sold, by part number.</summary>
    public IReadOnlyList<PartOffers> Offers { get; private set; } = [];

    /// <summary>The bases on which spin-on filters go, in the order given.</summary>
    public IReadOnlyList<FilterBase> FilterBases { get; private set; } = [];

    /// <summary>A sheet that holds a catalogue alone.</summary>
    /// <param name="catalogue">The parts.</param>
    /// <returns>The sheet.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="catalogue"/> is null.</exception>
    public static PartsSheet Of(PartsCatalogue catalogue) => new(Guard.NotNull(catalogue));

    /// <summary>A copy with more kits.</summary>
    /// <param name="kits">The kits; each task once, also among those already there; every part in the catalogue.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="kits"/> is null.</exception>
    /// <exception cref="ArgumentException">An item is null, a task is there twice, a part is unknown, or is counted in whole pieces and has a broken quantity.</exception>
    public PartsSheet With(params TaskKit[] kits)
    {
        IReadOnlyList<TaskKit> all = Array.AsReadOnly<TaskKit>([.. Kits, .. Guard.Items(kits)]);
        Names.Distinct(all.Select(kit => kit.TaskId), nameof(kits));
        RefuseFaults(all.SelectMany(kit => kit.Items), nameof(kits));
        return new(this) { Kits = Sorted(all, kit => kit.TaskId) };
    }

    /// <summary>A copy with more of what tasks take off.</summary>
    /// <param name="tasks">What comes off; each task once, also among those already there.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tasks"/> is null.</exception>
    /// <exception cref="ArgumentException">An item is null, a task is there twice, or two tasks say of one name at one place that it is another kind or has other washers.</exception>
    public PartsSheet With(params TaskLooseParts[] tasks)
    {
        IReadOnlyList<TaskLooseParts> all = Array.AsReadOnly<TaskLooseParts>([.. ComesOff, .. Guard.Items(tasks)]);
        Names.Distinct(all.Select(task => task.TaskId), nameof(tasks));
        Dictionary<(string, string), LoosePart> known = [];
        foreach (LoosePart part in all.SelectMany(task => task.Items).Select(item => item.Part))
        {
            if (!IsTheSame(known, part))
            {
                throw new ArgumentException($"'{part}' has another kind or other washers in another task.", nameof(tasks));
            }
        }

        return new(this) { ComesOff = Sorted(all, task => task.TaskId) };
    }

    /// <summary>A copy with more spares that must be aboard when a visit is over.</summary>
    /// <param name="spares">The spares; each part once, also among those already there; companions need not be named.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="spares"/> is null.</exception>
    /// <exception cref="ArgumentException">An item is null, a part is there twice, is unknown, or is counted in whole pieces and has a broken quantity.</exception>
    public PartsSheet WithSparesAboard(params KitItem[] spares)
    {
        IReadOnlyList<KitItem> all = Array.AsReadOnly<KitItem>([.. SparesAboard, .. Guard.Items(spares)]);
        Names.Distinct(all.Select(item => item.Part), nameof(spares));
        RefuseFaults(all, nameof(spares));
        return new(this) { SparesAboard = all };
    }

    /// <summary>A copy with the packs of parts; those of a part that has some already are replaced, so that new prices can be given.</summary>
    /// <param name="offers">The packs; each part once and in the catalogue.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="offers"/> is null.</exception>
    /// <exception cref="ArgumentException">An item is null, or a part is there twice or unknown.</exception>
    public PartsSheet With(params PartOffers[] offers)
    {
        HashSet<string> given = [.. Names.Distinct(Guard.Items(offers).Select(offer => offer.Part), nameof(offers))];
        RefuseUnknown(given, nameof(offers));
        return new(this) { Offers = Sorted([.. Offers.Where(offer => !given.Contains(offer.Part)), .. offers], offer => offer.Part) };
    }

    /// <summary>A copy with more filter bases.</summary>
    /// <param name="bases">The bases; the part of each in the catalogue, and on one base only.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="bases"/> is null.</exception>
    /// <exception cref="ArgumentException">An item is null, or a part is there twice or unknown.</exception>
    public PartsSheet With(params FilterBase[] bases)
    {
        IReadOnlyList<FilterBase> all = Array.AsReadOnly<FilterBase>([.. FilterBases, .. Guard.Items(bases)]);
        RefuseUnknown(Names.Distinct(all.Select(one => one.Part), nameof(bases)), nameof(bases));
        return new(this) { FilterBases = all };
    }

    /// <summary>How much the sheet holds.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{Catalogue}, {Kits.Count} kits");

    /// <summary>Whether a loose part is what an earlier one of its name and place was said to be; the first is kept.</summary>
    internal static bool IsTheSame(Dictionary<(string Name, string Place), LoosePart> known, LoosePart part)
    {
        if (known.TryGetValue((part.Name, part.Place), out LoosePart? other))
        {
            return other == part;
        }

        known.Add((part.Name, part.Place), part);
        return true;
    }

    private static ReadOnlyCollection<T> Sorted<T>(IEnumerable<T> items, Func<T, string> key) => Array.AsReadOnly<T>([.. items.OrderBy(key, StringComparer.Ordinal)]);

    private void RefuseFaults(IEnumerable<KitItem> items, string argument)
    {
        if (items.Select(Catalogue.Fault).FirstOrDefault(fault => fault is not null) is string first)
        {
            throw new ArgumentException(first, argument);
        }
    }

    private void RefuseUnknown(IEnumerable<string> numbers, string argument)
    {
        if (numbers.FirstOrDefault(number => !Catalogue.TryFind(number, out _)) is string strange)
        {
            throw new ArgumentException($"There is no part '{strange}' in the catalogue.", argument);
        }
    }
}
