using MarineService.Core.Internal;

namespace MarineService.Core.Parts;

/// <summary>What a visit takes: the union over its tasks, with reserve and spares, less what the shelf holds.</summary>
/// <remarks>
/// What tasks use up adds up. What they share on one occasion, and tools, are taken along once, in the greatest amount that one of them asks.
/// Companions go with their part, also on top of the same part where a kit lists it too: one piece too many goes back on the shelf, one too
/// few leaves the engine open. Where both are the same piece, say so by one occasion. The order of the tasks does not matter.
/// </remarks>
/// <example><code>KitList.For(catalogue, [oilKit, impellerKit], shelf: [KitItem.Of("LV-OIL-1", 2m)]).ToBuy;</code></example>
public sealed class KitList
{
    private const string SparesAboard = "spares aboard";

    private KitList(IReadOnlyList<KitLine> lines) => Lines = lines;

    /// <summary>The parts, by number.</summary>
    public IReadOnlyList<KitLine> Lines { get; }

    /// <summary>The parts of which something must be bought.</summary>
    public IReadOnlyList<KitLine> ToBuy => [.. Lines.Where(line => line.ToBuy > 0)];

    /// <summary>The tools that the shelf lacks and that are gathered from elsewhere.</summary>
    public IReadOnlyList<KitLine> ToGather => [.. Lines.Where(line => line.ToGather > 0)];

    /// <summary>The line of a part.</summary>
    /// <param name="part">The number of the part.</param>
    /// <returns>The line, or null when the visit does not take it.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="part"/> is null.</exception>
    public KitLine? this[string part]
    {
        get
        {
            Guard.NotNull(part);
            return Lines.FirstOrDefault(line => line.Part.Number == part);
        }
    }

    /// <summary>The kit list of a visit.</summary>
    /// <param name="catalogue">The parts.</param>
    /// <param name="kits">The kits of the visit's tasks; each task once.</param>
    /// <param name="sparesAboard">Spares that must be aboard when the visit is over, with their companions; none when null.</param>
    /// <param name="shelf">What the shelf holds; each part once, parts that the catalogue does not know too; nothing when null.</param>
    /// <returns>The list.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="catalogue"/> or <paramref name="kits"/> is null.</exception>
    /// <exception cref="ArgumentException">An item is null, a task, a spare or a shelf part is there twice, or a part of a kit or a spare is unknown, or is counted in whole pieces and has a broken quantity.</exception>
    public static KitList For(
        PartsCatalogue catalogue, IEnumerable<TaskKit> kits, IEnumerable<KitItem>? sparesAboard = null, IEnumerable<KitItem>? shelf = null)
    {
        Guard.NotNull(catalogue);
        IReadOnlyList<TaskKit> tasks = Guard.Items(kits);
        IReadOnlyList<KitItem> spares = Guard.Items(sparesAboard ?? [], nameof(sparesAboard));
        IReadOnlyList<KitItem> stock = Guard.Items(shelf ?? [], nameof(shelf));
        Names.Distinct(tasks.Select(kit => kit.TaskId), nameof(kits));
        Names.Distinct(spares.Select(item => item.Part), nameof(sparesAboard));
        Names.Distinct(stock.Select(item => item.Part), nameof(shelf));

        ILookup<string, (string By, KitItem Item)> used = tasks
            .SelectMany(kit => kit.Items.SelectMany(item => WithCompanions(catalogue, item, nameof(kits)).Select(each => (By: kit.TaskId, Item: each))))
            .ToLookup(pair => pair.Item.Part, StringComparer.Ordinal);
        ILookup<string, KitItem> kept = spares.SelectMany(item => WithCompanions(catalogue, item, nameof(sparesAboard))).ToLookup(item => item.Part, StringComparer.Ordinal);
        Dictionary<string, decimal> held = stock.ToDictionary(item => item.Part, item => item.Quantity, StringComparer.Ordinal);
        List<KitLine> lines = [];
        foreach (string number in used.Select(pairs => pairs.Key).Union(kept.Select(items => items.Key), StringComparer.Ordinal).OrderBy(n => n, StringComparer.Ordinal))
        {
            ServicePart part = catalogue[number];
            (string By, KitItem Item)[] uses = [.. used[number]];
            decimal aboard = Whole(part, kept[number].Sum(item => item.Quantity));
            string[] by = [.. uses.Select(pair => pair.By).Distinct(StringComparer.Ordinal).OrderBy(name => name, StringComparer.Ordinal)];
            lines.Add(new KitLine(part, Amount(part, uses), aboard, held.TryGetValue(number, out decimal there) ? there : 0m,
                Array.AsReadOnly(aboard > 0 ? [.. by, SparesAboard] : by)));
        }

        return new(lines.AsReadOnly());
    }

    /// <summary>Why: each part with its amounts and who wants it.</summary>
    /// <param name="units">Which units to write; quantities stay in the units of issue.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new(ToString() + ".");
        foreach (KitLine line in Lines)
        {
            string text = line.ToString();
            lines.Add(line.Part.Number, text.Substring(line.Part.ToString().Length + 2));
        }

        return lines.Build(Citation.CommonPractice);
    }

    /// <summary>How many parts, and how many of them must be bought and gathered.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{Lines.Count} {(Lines.Count == 1 ? "part" : "parts")}, {ToBuy.Count} to buy{(ToGather.Count == 0 ? string.Empty : $", {ToGather.Count} to gather")}");

    // The sum of what each task uses for itself, and for each shared occasion the greatest amount that is asked for it.
    private static decimal Amount(ServicePart part, (string By, KitItem Item)[] uses) => Whole(part, part.IsTool
        ? uses.GroupBy(pair => pair.By, StringComparer.Ordinal).Select(task => task.Sum(pair => pair.Item.Quantity)).DefaultIfEmpty(0m).Max()
        : uses.Where(pair => pair.Item.Occasion is null).Sum(pair => pair.Item.Quantity)
            + uses.Where(pair => pair.Item.Occasion is not null)
                .GroupBy(pair => pair.Item.Occasion!, StringComparer.Ordinal)
                .Sum(occasion => occasion.Max(pair => pair.Item.Quantity)));

    // Half a gasket is a gasket: companions of what is measured come to broken pieces.
    private static decimal Whole(ServicePart part, decimal amount) => part.Unit is null ? decimal.Ceiling(amount) : amount;

    private static IEnumerable<KitItem> WithCompanions(PartsCatalogue catalogue, KitItem item, string argument)
    {
        if (catalogue.Fault(item) is string fault)
        {
            throw new ArgumentException(fault, argument);
        }

        yield return item;
        foreach (KitItem companion in catalogue[item.Part].Companions)
        {
            yield return companion.Times(item.Quantity, item.Occasion);
        }
    }
}
