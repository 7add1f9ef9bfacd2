using System.Text.Json;
using MarineService.Core.LayUp;

namespace MarineService.Core.Exchange;

/// <content>Writing what a data sheet knows for the winter.</content>
internal static partial class LayUpWire
{
    internal static void Write(Utf8JsonWriter writer, LayUpSheet sheet)
    {
        JsonEncodedText[] names = SheetMembers.Encoded;
        writer.WriteStartObject();
        if (sheet.RawWaterSide is RawWaterSide side)
        {
            writer.Quantity(names[0], side.CircuitLiters, WireUnits.Volume);
            writer.WriteStartArray(names[1]);
            for (int i = 0; i < side.LowPoints.Count; i++)
            {
                Write(writer, side.LowPoints[i]);
            }

            writer.WriteEndArray();
            if (side.Absent.Count > 0)
            {
                writer.WriteStartArray(names[2]);
                for (int i = 0; i < side.Absent.Count; i++)
                {
                    writer.WriteStringValue(WireEnum<LowPointKind>.Word(side.Absent[i]));
                }

                writer.WriteEndArray();
            }
        }

        if (sheet.Cylinders is Cylinders cylinders)
        {
            writer.WriteStartObject(names[3]);
            writer.WriteNumber(CylinderMembers.Encoded[0], cylinders.Count);
            writer.Quantity(CylinderMembers.Encoded[1], cylinders.DisplacementMilliliters / 1000, WireUnits.Volume);
            if (cylinders.CompressionRatio is double ratio)
            {
                writer.Real(CylinderMembers.Encoded[2], ratio);
            }

            writer.WriteEndObject();
        }

        if (sheet.FuelTank is FuelTank tank)
        {
            writer.WriteStartObject(names[4]);
            writer.WordUnlessDefault(TankMembers.Encoded[0], tank.Fuel);
            writer.Quantity(TankMembers.Encoded[1], tank.CapacityLiters, WireUnits.Volume);
            writer.Text(TankMembers.Encoded[2], tank.Title == FuelTank.PlainTitle ? null : tank.Title);
            writer.WriteEndObject();
        }

        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, LowPoint point)
    {
        JsonEncodedText[] names = PointMembers.Encoded;
        writer.WriteStartObject();
        writer.Text(names[0], point.Id);
        writer.Word(names[1], point.Kind);
        writer.Text(names[2], point.Title == LowPoint.Words(point.Kind) ? null : point.Title);
        writer.WriteNumber(names[3], point.Drains);
        writer.Quantity(names[4], point.HoldsLiters, WireUnits.Volume);
        writer.Quantity(names[5], point.StatedTrappedLiters, WireUnits.Volume);
        writer.WriteEndObject();
    }
}
