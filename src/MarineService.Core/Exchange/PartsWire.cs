using MarineService.Core.Parts;
using MarineService.Core.Scheduling;

namespace MarineService.Core.Exchange;

/// <summary>The parts of an engine in documents: catalogue, what tasks take and take off, spares, packs with prices, filter bases.</summary>
internal static partial class PartsWire
{
    private static readonly MemberNames SheetMembers = new("catalogue", "tasks", "sparesAboard", "filterBases");
    private static readonly MemberNames PartMembers = new("number", "title", "unit", "tool", "reserve", "companions", "packs");
    private static readonly MemberNames ItemMembers = new("part", "quantity", "onceFor");
    private static readonly MemberNames PackMembers = new("name", "amount", "price");
    private static readonly MemberNames TaskMembers = new("task", "takes", "comesOff");
    private static readonly MemberNames LooseMembers = new("name", "kind", "place", "count", "captiveWashers");
    private static readonly MemberNames BaseMembers = new("part", "needs", "filter");

    /// <summary>Reads a parts sheet; the tasks that it names come back in the order of the document, null where one could not be read.</summary>
    internal static PartsSheet? Read(ref JsonCursor json, out List<string?> taskIds)
    {
        PartsParts parts = new();
        taskIds = parts.TaskIds;
        if (!json.BeginObject("the parts of an engine, with their catalogue"))
        {
            return null;
        }

        int before = json.FaultCount;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(SheetMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: ReadCatalogue(ref json, parts); break;
                case 1: ReadTasks(ref json, parts); break;
                case 2: parts.Spares.AddRange(ReadItems(ref json, parts, "/sparesAboard")); break;
                default: ReadBases(ref json, parts); break;
            }

            json.EndMember();
        }

        json.Require(SheetMembers, seen, 0);
        if ((seen & 1) != 0)
        {
            parts.CheckReferences(ref json);
        }

        return json.FaultCount == before ? parts.ToSheet() : null;
    }

    /// <summary>Notes the tasks of the sheet that the engine does not have.</summary>
    internal static void CheckTasks(ref JsonCursor json, string place, List<string?> taskIds, List<ServiceTask?> tasks)
    {
        if (tasks.Contains(null))
        {
            return;
        }

        HashSet<string> known = [.. tasks.Select(task => task!.Id)];
        for (int i = 0; i < taskIds.Count; i++)
        {
            if (taskIds[i] is string id && !known.Contains(id))
            {
                json.NoteMeaning(FormattableString.Invariant($"{place}/tasks/{i}/task"), $"'{id}'", "the id of a task of the engine");
            }
        }
    }

    private static void ReadCatalogue(ref JsonCursor json, PartsParts parts)
    {
        if (!json.BeginArray("a list of parts"))
        {
            return;
        }

        for (int i = 0; json.NextItem(); i++)
        {
            ReadPart(ref json, parts, FormattableString.Invariant($"/catalogue/{i}"));
        }
    }

    private static void ReadPart(ref JsonCursor json, PartsParts parts, string place)
    {
        if (!json.BeginObject("a part with number and title"))
        {
            parts.AddPart(null, null, []);
            return;
        }

        int before = json.FaultCount;
        (string? number, string? title, string? unit) = (null, null, null);
        ToolSource? tool = null;
        decimal? reserve = null;
        List<KitItem> companions = [];
        List<PackOffer> packs = [];
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(PartMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: number = json.NotBlank(); break;
                case 1: title = json.NotBlank(); break;
                case 2: unit = json.NotBlank(); break;
                case 3: tool = json.Word<ToolSource>(); break;
                case 4: reserve = json.Number(0m, ServicePart.MostReserve); break;
                case 5: companions = ReadItems(ref json, parts, place + "/companions", areCompanions: true); break;
                default: packs = ReadPacks(ref json); break;
            }

            json.EndMember();
        }

        json.Require(PartMembers, seen, 0, 1);
        if ((seen & (1UL << 2)) != 0 && (seen & (1UL << 3)) != 0)
        {
            json.Note("", "unit and tool", "one of them: tools are counted");
        }

        if (number is not null && parts.PlaceOfCompanion(place, number) is string self)
        {
            json.NoteMeaning(self + "/part", $"'{number}'", "the number of another part");
        }

        if (number is not null && parts.Knows(number))
        {
            json.NoteMeaning("/number", $"'{number}'", "a number that no other part has");
        }

        ServicePart? part = json.FaultCount > before ? null
            : (tool is ToolSource source ? source == ToolSource.Bought ? ServicePart.Tool(number!, title!).BoughtWhenMissing() : ServicePart.Tool(number!, title!)
                : unit is not null ? ServicePart.Measured(number!, title!, unit)
                : ServicePart.Of(number!, title!)).WithReserve(reserve ?? 0m).With([.. companions]);
        parts.AddPart(number, part, packs);
    }

    private static List<PackOffer> ReadPacks(ref JsonCursor json)
    {
        List<PackOffer> packs = [];
        HashSet<string> names = new(StringComparer.Ordinal);
        if (!json.BeginArray("a list of packs"))
        {
            return packs;
        }

        int items = 0;
        while (json.NextItem())
        {
            items++;
            if (!json.BeginObject("a pack with name, amount and price"))
            {
                continue;
            }

            string? name = null;
            decimal? amount = null;
            decimal? price = null;
            ulong seen = 0;
            int last = -1;
            int member;
            while ((member = json.NextMember(PackMembers, ref seen, ref last)) >= 0)
            {
                switch (member)
                {
                    case 0: name = json.NotBlank(); break;
                    case 1: amount = json.Number(PackOffer.LeastAmount, PackOffer.MostAmount, PackOffer.AmountDecimals); break;
                    default: price = json.Number(0m, PackOffer.MostPrice, PackOffer.PriceDecimals); break;
                }

                json.EndMember();
            }

            json.Require(PackMembers, seen, 0, 1, 2);
            if (name is not null && !names.Add(name))
            {
                json.NoteMeaning("/name", $"'{name}'", "a name that no other pack of the part has");
            }
            else if (name is not null && amount is decimal much && price is decimal money)
            {
                packs.Add(PackOffer.Of(name, much, money));
            }
        }

        if (items is 0 or > Purchase.MostOffers)
        {
            json.Note("", FormattableString.Invariant($"{items} packs"), FormattableString.Invariant($"1 to {Purchase.MostOffers} packs"));
        }

        return packs;
    }

    // The place is remembered, so that what the catalogue does not know can be told when all of it is read.
    private static List<KitItem> ReadItems(ref JsonCursor json, PartsParts parts, string place, bool areCompanions = false)
    {
        List<KitItem> items = [];
        HashSet<string> numbers = new(StringComparer.Ordinal);
        if (!json.BeginArray("a list of parts with their quantities"))
        {
            return items;
        }

        for (int i = 0; json.NextItem(); i++)
        {
            if (!json.BeginObject("a part, or so much of it"))
            {
                continue;
            }

            int before = json.FaultCount;
            (string? number, string? occasion) = (null, null);
            decimal? quantity = null;
            ulong seen = 0;
            int last = -1;
            int member;
            while ((member = json.NextMember(ItemMembers, ref seen, ref last)) >= 0)
            {
                switch (member)
                {
                    case 0: number = json.NotBlank(); break;
                    case 1: quantity = json.Number(KitItem.Least, KitItem.Most); break;
                    default: occasion = json.NotBlank(); break;
                }

                json.EndMember();
            }

            json.Require(ItemMembers, seen, 0);
            if (number is not null && !numbers.Add(number))
            {
                json.NoteMeaning("/part", $"'{number}'", "each part once");
            }

            if (json.FaultCount == before)
            {
                KitItem item = KitItem.Of(number!, quantity ?? 1m);
                item = occasion is null ? item : item.OnceFor(occasion);
                parts.Named.Add((FormattableString.Invariant($"{place}/{i}"), item, areCompanions));
                items.Add(item);
            }
        }

        return items;
    }
}
