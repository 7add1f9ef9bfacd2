using System.Text.Json;
using MarineService.Core.Cooling;
using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Exchange;

/// <summary>The raw-water side of an engine in documents.</summary>
internal static partial class CoolingWire
{
    private static readonly MemberNames SystemMembers = new("circuit", "pump", "makersLimit");
    private static readonly MemberNames PlaceMembers = new("kind", "name");
    private static readonly MemberNames PumpMembers = new("impeller", "displacement", "speedRatio");
    private static readonly MemberNames ImpellerMembers = new("vanes", "hub", "rubber", "rotation");

    internal static RawWaterSystem? ReadSystem(ref JsonCursor json)
    {
        if (!json.BeginObject("a raw-water side with its circuit"))
        {
            return null;
        }

        int before = json.Faults.Count;
        RawWaterCircuit? circuit = null;
        RawWaterPump? pump = null;
        double? limit = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(SystemMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: circuit = ReadCircuit(ref json); break;
                case 1: pump = ReadPump(ref json); break;
                default: limit = json.Quantity(WireUnits.Temperature, 30, 95); break;
            }

            json.EndMember();
        }

        json.Require(SystemMembers, seen, 0);
        return circuit is null || json.Faults.Count > before ? null
            : RawWaterSystem.Of(circuit, pump, limit is double celsius ? DischargeLimit.Given(Temperature.FromDegreesCelsius(celsius)) : null);
    }

    internal static void Write(Utf8JsonWriter writer, RawWaterSystem system)
    {
        writer.WriteStartObject();
        writer.WriteStartArray(SystemMembers.Encoded[0]);
        for (int i = 0; i < system.Circuit.Places.Count; i++)
        {
            writer.WriteStartObject();
            writer.Word(PlaceMembers.Encoded[0], system.Circuit.Places[i].Kind);
            writer.Text(PlaceMembers.Encoded[1], system.Circuit.Places[i].GivenName);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        if (system.Pump is RawWaterPump pump)
        {
            writer.WriteStartObject(SystemMembers.Encoded[1]);
            Write(writer, pump.Impeller);
            writer.Quantity(PumpMembers.Encoded[1], pump.LitersPerRevolution, WireUnits.Volume);
            writer.Number(PumpMembers.Encoded[2], pump.SpeedRatio == 1 ? null : (decimal)pump.SpeedRatio);
            writer.WriteEndObject();
        }

        writer.Quantity(SystemMembers.Encoded[2], system.MakersLimit?.Celsius, WireUnits.Temperature);
        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, Impeller impeller)
    {
        writer.WriteStartObject(PumpMembers.Encoded[0]);
        writer.WriteNumber(ImpellerMembers.Encoded[0], impeller.Vanes);
        writer.WordUnlessDefault(ImpellerMembers.Encoded[1], impeller.Hub);
        writer.WordUnlessDefault(ImpellerMembers.Encoded[2], impeller.Rubber);
        if (impeller.Rotation is PumpRotation rotation)
        {
            RotationWire.Write(writer, ImpellerMembers.Encoded[3], rotation.Sense, rotation.SeenFrom);
        }

        writer.WriteEndObject();
    }

    private static RawWaterCircuit? ReadCircuit(ref JsonCursor json)
    {
        List<CircuitPlace> places = [];
        int before = json.Faults.Count;
        if (!json.BeginArray("a list of places in the order of flow"))
        {
            return null;
        }

        while (json.NextItem())
        {
            if (ReadPlace(ref json) is CircuitPlace place)
            {
                places.Add(place);
            }
        }

        if (json.Faults.Count > before)
        {
            return null;
        }

        IReadOnlyList<ListFault> faults = RawWaterCircuit.Check(places);
        foreach (ListFault fault in faults)
        {
            json.NoteMeaning(FormattableString.Invariant($"/{fault.Index}/{fault.Member}"), $"'{fault.Value}'", fault.Expected);
        }

        return faults.Count > 0 ? null : RawWaterCircuit.OfChecked(places.AsReadOnly());
    }

    private static CircuitPlace? ReadPlace(ref JsonCursor json)
    {
        if (!json.BeginObject("a place of the circuit"))
        {
            return null;
        }

        CircuitPlaceKind? kind = null;
        string? name = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(PlaceMembers, ref seen, ref last)) >= 0)
        {
            if (member == 0)
            {
                kind = json.Word<CircuitPlaceKind>();
            }
            else
            {
                name = json.NotBlank();
            }

            json.EndMember();
        }

        json.Require(PlaceMembers, seen, 0);
        return kind is CircuitPlaceKind known ? CircuitPlace.Of(known, name) : null;
    }

    private static RawWaterPump? ReadPump(ref JsonCursor json)
    {
        if (!json.BeginObject("a raw-water pump with its impeller"))
        {
            return null;
        }

        Impeller? impeller = null;
        double? liters = null;
        decimal? ratio = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(PumpMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: impeller = ReadImpellerPart(ref json); break;
                case 1: liters = json.Quantity(WireUnits.Volume, 0.0005, 5); break;
                default: ratio = json.Number(0.1m, 5m); break;
            }

            json.EndMember();
        }

        json.Require(PumpMembers, seen, 0);
        return impeller is null ? null
            : RawWaterPump.Of(impeller, liters is double displacement ? Volume.FromLiters(displacement) : null, (double)(ratio ?? 1));
    }

    private static Impeller? ReadImpellerPart(ref JsonCursor json)
    {
        if (!json.BeginObject("an impeller with its number of vanes"))
        {
            return null;
        }

        int? vanes = null;
        ImpellerHub? hub = null;
        ImpellerRubber? rubber = null;
        PumpRotation? rotation = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(ImpellerMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: vanes = json.WholeNumber(Impeller.FewestVanes, Impeller.MostVanes); break;
                case 1: hub = json.Word<ImpellerHub>(); break;
                case 2: rubber = json.Word<ImpellerRubber>(); break;
                default: rotation = RotationWire.Read<PumpSide, PumpRotation>(ref json, "a sense and the side it is seen from", PumpRotation.Of); break;
            }

            json.EndMember();
        }

        json.Require(ImpellerMembers, seen, 0);
        return vanes is int count ? Impeller.Of(count, hub ?? default, rubber ?? default, rotation) : null;
    }
}
