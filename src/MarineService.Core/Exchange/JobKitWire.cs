using System.Text.Json;
using MarineService.Core.Jobs;
using MarineService.Core.Parts;

namespace MarineService.Core.Exchange;

/// <summary>The kit, the purchases and the loose parts of a job card; written only.</summary>
internal static class JobKitWire
{
    private static readonly MemberNames LineMembers = new(
        "part", "title", "unit", "tool", "wanted", "reserve", "aboard", "total", "fromShelf", "toBuy", "toGather", "wantedBy");

    private static readonly MemberNames PurchaseMembers = new("part", "amount", "packs", "price", "leftOver");
    private static readonly MemberNames BoughtMembers = new("name", "count", "price");
    private static readonly MemberNames FilterMembers = new("part", "kind", "mayBePrefilled", "thread", "verdict", "decidedBy");

    internal static void WriteKit(Utf8JsonWriter writer, JsonEncodedText name, JobKit kit)
    {
        if (!kit.List.IsKnown)
        {
            return;
        }

        writer.WriteStartArray(name);
        foreach (KitLine line in kit.List.Value.Lines)
        {
            JsonEncodedText[] names = LineMembers.Encoded;
            writer.WriteStartObject();
            writer.Text(names[0], line.Part.Number);
            writer.Text(names[1], line.Part.Title);
            writer.Text(names[2], line.Part.Unit);
            if (line.Part.IsTool)
            {
                writer.Word(names[3], line.Part.IsBoughtWhenMissing ? ToolSource.Bought : ToolSource.Gathered);
            }

            writer.WriteNumber(names[4], line.Wanted);
            writer.WriteNumber(names[5], line.Reserve);
            writer.WriteNumber(names[6], line.Aboard);
            writer.WriteNumber(names[7], line.Total);
            writer.WriteNumber(names[8], line.FromShelf);
            writer.WriteNumber(names[9], line.ToBuy);
            writer.WriteNumber(names[10], line.ToGather);
            writer.Texts(names[11], line.WantedBy);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
    }

    internal static void WritePurchases(Utf8JsonWriter writer, JsonEncodedText name, JsonEncodedText priceName, JobKit kit)
    {
        if (!kit.List.IsKnown)
        {
            return;
        }

        JsonEncodedText[] names = PurchaseMembers.Encoded;
        writer.WriteStartArray(name);
        foreach (PartPurchase one in kit.Purchases)
        {
            writer.WriteStartObject();
            writer.Text(names[0], one.Line.Part.Number);
            writer.WriteNumber(names[1], one.Line.ToBuy);
            if (one.Packs.IsKnown)
            {
                writer.WriteStartArray(names[2]);
                foreach (PackLine pack in one.Packs.Value.Lines)
                {
                    writer.WriteStartObject();
                    writer.Text(BoughtMembers.Encoded[0], pack.Pack.Name);
                    writer.WriteNumber(BoughtMembers.Encoded[1], pack.Count);
                    writer.WriteNumber(BoughtMembers.Encoded[2], pack.Price);
                    writer.WriteEndObject();
                }

                writer.WriteEndArray();
                writer.WriteNumber(names[3], one.Packs.Value.Price);
                writer.WriteNumber(names[4], one.Packs.Value.Surplus);
            }

            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        if (kit.Price.IsKnown)
        {
            writer.WriteNumber(priceName, kit.Price.Value);
        }
    }

    internal static void WriteComesOff(Utf8JsonWriter writer, JsonEncodedText name, JobKit kit)
    {
        if (!kit.ComesOff.IsKnown)
        {
            return;
        }

        writer.WriteStartArray(name);
        foreach (LooseItem item in kit.ComesOff.Value)
        {
            PartsWire.Write(writer, item);
        }

        writer.WriteEndArray();
    }

    internal static void WriteFilters(Utf8JsonWriter writer, JsonEncodedText name, JobKit kit)
    {
        if (kit.Filters.Count == 0)
        {
            return;
        }

        JsonEncodedText[] names = FilterMembers.Encoded;
        writer.WriteStartArray(name);
        foreach (FilterBase one in kit.Filters)
        {
            writer.WriteStartObject();
            writer.Text(names[0], one.Part);
            writer.Word(names[1], one.Need.Kind);
            writer.WriteBoolean(names[2], one.Need.MayBePrefilled);
            writer.Text(names[3], one.Need.Thread?.ToString());
            if (one.Comparison.IsKnown)
            {
                writer.Word(names[4], one.Comparison.Value.Verdict);
                writer.Text(names[5], one.Comparison.Value.DecidedBy?.Name);
            }

            writer.WriteEndObject();
        }

        writer.WriteEndArray();
    }
}
