using MarineService.Core.Parts;
using MarineService.Core.Specifications;

namespace MarineService.Core.Jobs;

/// <summary>What a visit takes along, what of it to buy, and what comes off and has to go back on.</summary>
/// <remarks>
/// The union over the tasks of the card. A task that another one of the card includes takes nothing of its own, since its work is part of
/// the other's. What several tasks take off at one place comes off once.
/// </remarks>
public sealed class JobKit
{
    private readonly PartsSheet? _sheet;
    private readonly TaskLooseParts[] _off = [];
    private IReadOnlyList<PartPurchase>? _purchases;

    private JobKit(EngineSpecification engine, JobTask[] tasks, IReadOnlyList<KitItem>? shelf)
    {
        _sheet = engine.PartsSheet;
        string[] ids = [.. tasks.Where(task => task.How is not null && task.CoveredBy is null).Select(task => task.TaskId)];
        if (_sheet is null)
        {
            string[] nothing = [$"The parts sheet of '{engine}': kit, purchases and loose parts."];
            (List, ComesOff) = (Answer.NotKnown<KitList>(nothing), Answer.NotKnown<IReadOnlyList<LooseItem>>(nothing));
            (Missing, Tally) = (Array.AsReadOnly(nothing), LooseParts.Empty);
            return;
        }

        TaskKit[] kits = [.. _sheet.Kits.Where(kit => ids.Contains(kit.TaskId))];
        _off = [.. _sheet.ComesOff.Where(task => ids.Contains(task.TaskId))];
        string[] withoutKit = [.. ids.Where(id => !kits.Any(kit => kit.TaskId == id))];
        string[] withoutCount = [.. ids.Where(id => !_off.Any(task => task.TaskId == id))];
        List = kits.Length == 0 && ids.Length > 0
            ? Answer.NotKnown<KitList>([.. withoutKit.Select(NoKit)])
            : Answer.Known(KitList.For(_sheet.Catalogue, kits, _sheet.SparesAboard, shelf));
        ComesOff = _off.Length == 0 && ids.Length > 0
            ? Answer.NotKnown<IReadOnlyList<LooseItem>>([.. withoutCount.Select(NoCount)])
            : Answer.Known(TaskLooseParts.Together(_off));
        Tally = ComesOff.IsKnown
            ? ComesOff.Value.Aggregate(LooseParts.Empty, (tally, item) => tally.TakenOff(item.Part, item.Count))
            : LooseParts.Empty;
        Missing = Array.AsReadOnly<string>(
        [
            .. withoutKit.Select(NoKit),
            .. withoutCount.Select(NoCount),
            .. Filters.SelectMany(one => one.Comparison.Missing),
            .. List.IsKnown && shelf is null && List.Value.Lines.Count > 0 ? ["What the shelf holds; the kit counts everything as lacking."] : Array.Empty<string>(),
        ]);
    }

    /// <summary>What the visit takes along, less what the shelf holds; not known when the data sheet states no kit for any of its tasks.</summary>
    public Answer<KitList> List { get; }

    /// <summary>What to buy, by part number; empty when the kit is not known.</summary>
    public IReadOnlyList<PartPurchase> Purchases => _purchases ??= Array.AsReadOnly<PartPurchase>(List.IsKnown ? [.. List.Value.ToBuy.Select(Buy)] : []);

    /// <summary>What all purchases cost together, in the currency of the data sheet's prices; not known while one of them is not.</summary>
    public Answer<decimal> Price
    {
        get
        {
            IReadOnlyList<PartPurchase> all = Purchases;
            string[] missing = [.. List.Missing, .. all.SelectMany(one => one.Packs.Missing)];
            return missing.Length > 0 ? Answer.NotKnown<decimal>(missing) : Answer.Known(all.Sum(one => one.Packs.Value.Price));
        }
    }

    /// <summary>The screws, clips, pins and washers that come off, by place, then by name; not known when the data sheet states them for none of the tasks.</summary>
    public Answer<IReadOnlyList<LooseItem>> ComesOff { get; }

    /// <summary>The tally when all of that is off, captive washers counted too: what a proof has to bring back to zero.</summary>
    public LooseParts Tally { get; }

    /// <summary>The filter bases whose filters are changed at this visit, each with what it needs; none when the data sheet does not say.</summary>
    public IReadOnlyList<FilterBase> Filters => _sheet is null || !List.IsKnown
        ? []
        : [.. _sheet.FilterBases.Where(one => List.Value[one.Part] is { Wanted: > 0 })];

    /// <summary>What stands against the filters of the kit before the old ones are off: whatever of them fails or is not known.</summary>
    public IReadOnlyList<Finding> Findings => [.. Filters.Where(one => one.Comparison.IsKnown).SelectMany(one => one.Comparison.Value.Findings)];

    /// <summary>What is not known, and what would settle it.</summary>
    public IReadOnlyList<string> Missing { get; }

    /// <summary>The kit and the loose parts in one line.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => $"{(List.IsKnown ? List.Value.ToString() : "kit not known")}; {(ComesOff.IsKnown ? Tally.IsZero ? "nothing comes off" : $"off: {string.Join(", ", ComesOff.Value)}" : "loose parts not known")}";

    internal static JobKit Of(EngineSpecification engine, JobTask[] tasks, IReadOnlyList<KitItem>? shelf) => new(engine, tasks, shelf);

    /// <summary>The counts of a report as a tally of their own; what names no part of the card and does not say that it came off is told.</summary>
    internal LooseParts TallyOf(IReadOnlyList<TallyLine> lines, Action<string> strange)
    {
        LooseParts tally = LooseParts.Empty;
        IReadOnlyList<LooseItem> known = ComesOff.IsKnown ? ComesOff.Value : [];
        foreach (TallyLine line in lines)
        {
            LoosePart? part = known.FirstOrDefault(item => item.Part.Name == line.Name && item.Part.Place == line.Place)?.Part;
            if (part is null && line.TakenOff == 0)
            {
                strange($"the card has no '{line.Name}' of '{line.Place}' that comes off, and the report does not say that it did");
            }
            else
            {
                tally = line.AddTo(tally, part ?? LoosePart.Of(line.Name, LoosePartKind.Other, line.Place));
            }
        }

        return tally;
    }

    /// <summary>What the tasks that were done took off, and those of which the count speaks.</summary>
    internal LooseParts TallyFor(string[] done, LooseParts? told)
    {
        HashSet<LoosePart> named = [.. told?.Open.Select(count => count.Part) ?? []];
        return TaskLooseParts.Together(_off.Where(task => done.Contains(task.TaskId) || task.Items.Any(item => named.Contains(item.Part))))
            .Aggregate(LooseParts.Empty, (tally, item) => tally.TakenOff(item.Part, item.Count));
    }

    internal bool TakesOff(string taskId) => Array.Exists(_off, task => task.TaskId == taskId && task.Items.Count > 0);

    private static string NoKit(string taskId) => $"What '{taskId}' takes: the parts sheet has no kit for it.";

    private static string NoCount(string taskId) => $"What '{taskId}' takes off: the parts sheet does not count it.";

    private PartPurchase Buy(KitLine line) => new(
        line,
        _sheet!.Offers.FirstOrDefault(offers => offers.Part == line.Part.Number)?.Cover(line.ToBuy)
            ?? Answer.NotKnown<Purchase>($"The packs in which '{line.Part}' is sold, with their prices."));
}
