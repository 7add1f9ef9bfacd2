using System.Text.Json;
using MarineService.Core.Parts;

namespace MarineService.Core.Exchange;

/// <content>Writing filters.</content>
internal static partial class FiltersWire
{
    internal static void Write(Utf8JsonWriter writer, FilterNeed need)
    {
        const int First = 3;
        JsonEncodedText[] names = NeedMembers.Encoded;
        writer.WriteStartObject();
        writer.Word(names[0], need.Kind);
        writer.WordUnlessDefault(names[1], need.Mounted);
        writer.Text(names[2], need.Thread?.ToString());
        for (int i = 0; i < Asked.Length; i++)
        {
            double? least = need.Least(Asked[i].Property);
            double? most = need.Most(Asked[i].Property);
            if (Asked[i].Demand == FilterDemand.Range && !Asked[i].Property.IsYesOrNo && least is not null)
            {
                writer.WriteStartObject(names[First + i]);
                Write(writer, RangeMembers.Encoded[0], Asked[i], least);
                Write(writer, RangeMembers.Encoded[1], Asked[i], most);
                writer.WriteEndObject();
            }
            else
            {
                Write(writer, names[First + i], Asked[i], least ?? most);
            }
        }

        writer.Quantity(names[First + Asked.Length], need.FlowLitersPerMinute, WireUnits.VolumeFlow);
        writer.Quantity(names[First + Asked.Length + 1], need.ParticleMicrometers, WireUnits.ParticleSize);
        writer.WriteEndObject();
    }

    internal static void Write(Utf8JsonWriter writer, FilterSpecification filter)
    {
        JsonEncodedText[] names = FilterMembers.Encoded;
        int count = FilterAttribute.All.Length;
        writer.WriteStartObject();
        writer.Text(names[0], filter.Thread?.ToString());
        for (int i = 0; i < count; i++)
        {
            Write(writer, names[1 + i], FilterAttribute.All[i], filter.Value(FilterAttribute.All[i].Property));
        }

        writer.Quantity(names[1 + count], filter.FlowLitersPerMinute, WireUnits.VolumeFlow);
        writer.Quantity(names[2 + count], filter.ParticleMicrometers, WireUnits.ParticleSize);
        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, JsonEncodedText name, FilterAttribute attribute, double? value)
    {
        if (value is not double amount)
        {
            return;
        }

        if (attribute.Property.IsYesOrNo)
        {
            writer.WriteBoolean(name, amount > 0);
        }
        else if (attribute.Units is not null)
        {
            writer.Quantity(name, amount, attribute.Units);
        }
        else if (attribute.IsCount)
        {
            writer.WriteNumber(name, (long)amount);
        }
        else
        {
            writer.Real(name, amount);
        }
    }
}
