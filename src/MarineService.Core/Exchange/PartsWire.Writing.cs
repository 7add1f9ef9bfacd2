using System.Text.Json;
using MarineService.Core.Parts;

namespace MarineService.Core.Exchange;

/// <content>Writing parts sheets.</content>
internal static partial class PartsWire
{
    internal static void Write(Utf8JsonWriter writer, PartsSheet sheet)
    {
        JsonEncodedText[] names = SheetMembers.Encoded;
        writer.WriteStartObject();
        Dictionary<string, PartOffers> offers = sheet.Offers.ToDictionary(one => one.Part, StringComparer.Ordinal);
        Dictionary<string, TaskKit> kits = sheet.Kits.ToDictionary(one => one.TaskId, StringComparer.Ordinal);
        Dictionary<string, TaskLooseParts> off = sheet.ComesOff.ToDictionary(one => one.TaskId, StringComparer.Ordinal);
        writer.WriteStartArray(names[0]);
        foreach (ServicePart part in sheet.Catalogue.Parts)
        {
            Write(writer, part, offers.TryGetValue(part.Number, out PartOffers? packs) ? packs : null);
        }

        writer.WriteEndArray();
        string[] tasks = [.. sheet.Kits.Select(kit => kit.TaskId).Concat(sheet.ComesOff.Select(task => task.TaskId)).Distinct(StringComparer.Ordinal).OrderBy(task => task, StringComparer.Ordinal)];
        if (tasks.Length > 0)
        {
            writer.WriteStartArray(names[1]);
            foreach (string task in tasks)
            {
                Write(writer, task, kits.TryGetValue(task, out TaskKit? kit) ? kit : null, off.TryGetValue(task, out TaskLooseParts? loose) ? loose : null);
            }

            writer.WriteEndArray();
        }

        if (sheet.SparesAboard.Count > 0)
        {
            Write(writer, names[2], sheet.SparesAboard);
        }

        if (sheet.FilterBases.Count > 0)
        {
            writer.WriteStartArray(names[3]);
            foreach (FilterBase one in sheet.FilterBases)
            {
                writer.WriteStartObject();
                writer.Text(BaseMembers.Encoded[0], one.Part);
                writer.Part(BaseMembers.Encoded[1], one.Need, FiltersWire.Write);
                writer.Part(BaseMembers.Encoded[2], one.Filter, FiltersWire.Write);
                writer.WriteEndObject();
            }

            writer.WriteEndArray();
        }

        writer.WriteEndObject();
    }

    internal static void Write(Utf8JsonWriter writer, LooseItem item)
    {
        JsonEncodedText[] names = LooseMembers.Encoded;
        writer.WriteStartObject();
        writer.Text(names[0], item.Part.Name);
        writer.WordUnlessDefault(names[1], item.Part.Kind);
        writer.Text(names[2], item.Part.Place);
        writer.WriteNumber(names[3], item.Count);
        if (item.Part.CaptiveWashers > 0)
        {
            writer.WriteNumber(names[4], item.Part.CaptiveWashers);
        }

        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, ServicePart part, PartOffers? offers)
    {
        JsonEncodedText[] names = PartMembers.Encoded;
        writer.WriteStartObject();
        writer.Text(names[0], part.Number);
        writer.Text(names[1], part.Title);
        writer.Text(names[2], part.Unit);
        if (part.IsTool)
        {
            writer.Word(names[3], part.IsBoughtWhenMissing ? ToolSource.Bought : ToolSource.Gathered);
        }

        writer.Number(names[4], part.ReserveFraction == 0 ? null : part.ReserveFraction);
        if (part.Companions.Count > 0)
        {
            Write(writer, names[5], part.Companions);
        }

        if (offers is not null)
        {
            writer.WriteStartArray(names[6]);
            foreach (PackOffer pack in offers.Packs)
            {
                writer.WriteStartObject();
                writer.Text(PackMembers.Encoded[0], pack.Name);
                writer.Number(PackMembers.Encoded[1], pack.Amount);
                writer.Number(PackMembers.Encoded[2], pack.Price);
                writer.WriteEndObject();
            }

            writer.WriteEndArray();
        }

        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, JsonEncodedText name, IReadOnlyList<KitItem> items)
    {
        writer.WriteStartArray(name);
        foreach (KitItem item in items)
        {
            writer.WriteStartObject();
            writer.Text(ItemMembers.Encoded[0], item.Part);
            writer.Number(ItemMembers.Encoded[1], item.Quantity == 1 ? null : item.Quantity);
            writer.Text(ItemMembers.Encoded[2], item.Occasion);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter writer, string task, TaskKit? kit, TaskLooseParts? off)
    {
        writer.WriteStartObject();
        writer.Text(TaskMembers.Encoded[0], task);
        if (kit is not null)
        {
            Write(writer, TaskMembers.Encoded[1], kit.Items);
        }

        if (off is not null)
        {
            writer.WriteStartArray(TaskMembers.Encoded[2]);
            foreach (LooseItem item in off.Items)
            {
                Write(writer, item);
            }

            writer.WriteEndArray();
        }

        writer.WriteEndObject();
    }
}
