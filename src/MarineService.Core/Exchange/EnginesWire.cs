using System.Text.Json;
using MarineService.Core.Engines;

namespace MarineService.Core.Exchange;

/// <summary>Engines, meters and boats in documents.</summary>
internal static class EnginesWire
{
    private static readonly MemberNames EngineMembers = new("designation", "fuel", "cooling", "rotation", "rawWaterPump", "serialNumber");
    private static readonly MemberNames MeterMembers = new("modulus", "drivenBy");
    private static readonly MemberNames BoatMembers = new("name", "kept", "water", "seacock");

    internal static Engine? ReadEngine(ref JsonCursor json)
    {
        if (!json.BeginObject("an engine"))
        {
            return null;
        }

        string? designation = null;
        string? serial = null;
        Fuel? fuel = null;
        CoolingKind? cooling = null;
        HandOfRotation? rotation = null;
        RawWaterPumpDrive? pump = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(EngineMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: designation = json.NotBlank(); break;
                case 1: fuel = json.Word<Fuel>(); break;
                case 2: cooling = json.Word<CoolingKind>(); break;
                case 3: rotation = json.Word<HandOfRotation>(); break;
                case 4: pump = json.Word<RawWaterPumpDrive>(); break;
                default: serial = json.NotBlank(); break;
            }

            json.EndMember();
        }

        json.Require(EngineMembers, seen, 0);
        return designation is null ? null : Engine.Of(designation, fuel ?? default, cooling ?? default, rotation ?? default, pump ?? default, serial);
    }

    internal static void Write(Utf8JsonWriter writer, Engine engine)
    {
        JsonEncodedText[] names = EngineMembers.Encoded;
        writer.WriteStartObject();
        writer.Text(names[0], engine.Designation);
        writer.WordUnlessDefault(names[1], engine.Fuel);
        writer.WordUnlessDefault(names[2], engine.Cooling);
        writer.WordUnlessDefault(names[3], engine.Rotation);
        writer.WordUnlessDefault(names[4], engine.PumpDrive);
        writer.Text(names[5], engine.SerialNumber);
        writer.WriteEndObject();
    }

    internal static HourMeter? ReadMeter(ref JsonCursor json)
    {
        if (!json.BeginObject("an hour meter"))
        {
            return null;
        }

        EngineHours? modulus = null;
        MeterDrive? drive = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(MeterMembers, ref seen, ref last)) >= 0)
        {
            if (member == 0)
            {
                modulus = json.Hours(100m);
            }
            else
            {
                drive = json.Word<MeterDrive>();
            }

            json.EndMember();
        }

        return HourMeter.Of(modulus, drive ?? default);
    }

    internal static void Write(Utf8JsonWriter writer, HourMeter meter)
    {
        writer.WriteStartObject();
        writer.Hours(MeterMembers.Encoded[0], meter.Modulus);
        writer.WordUnlessDefault(MeterMembers.Encoded[1], meter.Drive);
        writer.WriteEndObject();
    }

    internal static bool IsPlain(HourMeter meter) => meter.Modulus is null && meter.Drive == MeterDrive.NotStated;

    internal static Boat? ReadBoat(ref JsonCursor json)
    {
        if (!json.BeginObject("a boat"))
        {
            return null;
        }

        string? name = null;
        KeptWhere? kept = null;
        WaterKind? water = null;
        bool? seacock = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(BoatMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: name = json.NotBlank(); break;
                case 1: kept = json.Word<KeptWhere>(); break;
                case 2: water = json.Word<WaterKind>(); break;
                default: seacock = json.YesOrNo(); break;
            }

            json.EndMember();
        }

        json.Require(BoatMembers, seen, 0);
        return name is null ? null : Boat.Of(name, kept ?? default, water ?? default, seacock);
    }

    internal static void Write(Utf8JsonWriter writer, Boat boat)
    {
        JsonEncodedText[] names = BoatMembers.Encoded;
        writer.WriteStartObject();
        writer.Text(names[0], boat.Name);
        writer.WordUnlessDefault(names[1], boat.Kept);
        writer.WordUnlessDefault(names[2], boat.Water);
        if (boat.HasSeacock is bool seacock)
        {
            writer.WriteBoolean(names[3], seacock);
        }

        writer.WriteEndObject();
    }
}
