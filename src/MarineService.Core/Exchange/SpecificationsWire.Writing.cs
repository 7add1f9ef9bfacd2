using System.Text.Json;
using MarineService.Core.Specifications;

namespace MarineService.Core.Exchange;

/// <content>Writing data sheets.</content>
internal static partial class SpecificationsWire
{
    internal static void Write(Utf8JsonWriter writer, EngineSpecification specification)
    {
        JsonEncodedText[] names = InnerSheet.Encoded;
        writer.WritePropertyName(names[0]);
        EnginesWire.Write(writer, specification.Engine);
        if (!EnginesWire.IsPlain(specification.Meter))
        {
            writer.WritePropertyName(names[1]);
            EnginesWire.Write(writer, specification.Meter);
        }

        if (specification.Variants.Count > 0)
        {
            writer.WriteStartArray(names[2]);
            for (int i = 0; i < specification.Variants.Count; i++)
            {
                Write(writer, specification.Variants[i]);
            }

            writer.WriteEndArray();
        }

        writer.WritePropertyName(names[3]);
        SchedulingWire.Write(writer, specification.Tasks);
        writer.Part(names[4], specification.PermittedOils, OilsWire.Write);
        writer.Part(names[5], specification.FittedOil, OilsWire.Write);
        writer.Part(names[6], specification.BeltDrive, BeltsWire.Write);
        writer.Part(names[7], specification.Sump, FluidsWire.Write);
        writer.Text(names[8], specification.OilTaskId == EngineSpecification.EngineOilTask ? null : specification.OilTaskId);
        writer.Part(names[9], specification.RawWater, CoolingWire.Write);
        writer.Part(names[10], specification.LayUp, LayUpWire.Write);
        if (specification.Covers.Count > 0)
        {
            writer.WriteStartArray(names[11]);
            for (int i = 0; i < specification.Covers.Count; i++)
            {
                CoversWire.Write(writer, specification.Covers[i]);
            }

            writer.WriteEndArray();
        }

        writer.Part(names[12], specification.PartsSheet, PartsWire.Write);
    }

    internal static void Write(Utf8JsonWriter writer, BoatSpecification specification)
    {
        writer.WritePropertyName(BoatSheet.Encoded[2]);
        EnginesWire.Write(writer, specification.Boat);
        writer.WriteStartArray(BoatSheet.Encoded[3]);
        for (int i = 0; i < specification.Engines.Count; i++)
        {
            writer.WriteStartObject();
            writer.Text(FittedMembers.Encoded[0], specification.Engines[i].Id);
            writer.WriteStartObject(FittedMembers.Encoded[1]);
            Write(writer, specification.Engines[i].Specification);
            writer.WriteEndObject();
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        if (specification.Tasks.Count > 0)
        {
            writer.WritePropertyName(BoatSheet.Encoded[4]);
            SchedulingWire.Write(writer, specification.Tasks);
        }
    }

    private static void Write(Utf8JsonWriter writer, EngineVariant variant)
    {
        writer.WriteStartObject();
        writer.Text(VariantMembers.Encoded[0], variant.Designation);
        writer.Quantity(VariantMembers.Encoded[1], variant.RatedKilowatts, WireUnits.Power);
        writer.Quantity(VariantMembers.Encoded[2], variant.RatedRevolutionsPerMinute, WireUnits.RotationalSpeed);
        writer.WriteEndObject();
    }
}
