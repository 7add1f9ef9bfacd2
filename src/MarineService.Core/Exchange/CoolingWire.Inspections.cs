using System.Text.Json;
using MarineService.Core.Cooling;
using NodaTime;
using UnitsNet;

namespace MarineService.Core.Exchange;

/// <content>Impeller inspections in logs.</content>
internal static partial class CoolingWire
{
    private static readonly MemberNames InspectionMembers = new("vanes", "seen", "faults", "pieces", "fittedOn");
    private static readonly MemberNames VaneMembers = new("number", "state", "missing", "bend");
    private static readonly MemberNames PieceMembers = new("share", "where");

    internal static ImpellerParts? ReadImpeller(ref JsonCursor json)
    {
        if (!json.BeginObject("an inspection with the number of vanes"))
        {
            return null;
        }

        ImpellerParts parts = new();
        int before = json.Faults.Count;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(InspectionMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: parts.Vanes = json.WholeNumber(Impeller.FewestVanes, Impeller.MostVanes) ?? 0; break;
                case 1: parts.Seen = ReadVanes(ref json); break;
                case 2: parts.Faults = ReadFaults(ref json); break;
                case 3: parts.Pieces = ReadPieces(ref json); break;
                default: parts.FittedOn = json.Date(); break;
            }

            json.EndMember();
        }

        json.Require(InspectionMembers, seen, 0);
        if (json.Faults.Count == before && ImpellerInspection.Fault(parts.Vanes, parts.Seen) is string vane)
        {
            json.NoteMeaning("/seen", vane, "each vane of the impeller once at most");
        }

        if (json.Faults.Count == before && ImpellerInspection.MorePiecesThanVanes(parts.Vanes, parts.Pieces) is string pieces)
        {
            json.NoteMeaning("/pieces", pieces, "no more pieces than vanes");
        }

        return parts;
    }

    /// <summary>Notes an impeller that was fitted after the day on which it was looked at.</summary>
    internal static void CheckFitted(ref JsonCursor json, ImpellerParts? impeller, LocalDate? looked)
    {
        if (impeller?.FittedOn is LocalDate fitted && looked is LocalDate day && fitted > day)
        {
            json.NoteMeaning("/impeller/fittedOn", NodaTime.Text.LocalDatePattern.Iso.Format(fitted), "a date on or before the date of the inspection");
        }
    }

    internal static void Write(Utf8JsonWriter writer, ImpellerInspection inspection)
    {
        JsonEncodedText[] names = InspectionMembers.Encoded;
        writer.WriteStartObject();
        writer.WriteNumber(names[0], inspection.NewVanes);
        if (inspection.Vanes.Count > 0)
        {
            writer.WriteStartArray(names[1]);
            for (int i = 0; i < inspection.Vanes.Count; i++)
            {
                Write(writer, inspection.Vanes[i]);
            }

            writer.WriteEndArray();
        }

        if (inspection.Faults.Count > 0)
        {
            writer.WriteStartArray(names[2]);
            for (int i = 0; i < inspection.Faults.Count; i++)
            {
                writer.WriteStringValue(WireEnum<ImpellerFault>.Word(inspection.Faults[i]));
            }

            writer.WriteEndArray();
        }

        if (inspection.Pieces.Count > 0)
        {
            writer.WriteStartArray(names[3]);
            for (int i = 0; i < inspection.Pieces.Count; i++)
            {
                writer.WriteStartObject();
                writer.Number(PieceMembers.Encoded[0], inspection.Pieces[i].Thousandths / 1000m);
                writer.Text(PieceMembers.Encoded[1], inspection.Pieces[i].Where);
                writer.WriteEndObject();
            }

            writer.WriteEndArray();
        }

        writer.Date(names[4], inspection.FittedOn);
        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, VaneRecord vane)
    {
        writer.WriteStartObject();
        writer.WriteNumber(VaneMembers.Encoded[0], vane.Number);
        writer.Word(VaneMembers.Encoded[1], vane.State);
        writer.Number(VaneMembers.Encoded[2], vane.State == VaneState.Torn ? vane.MissingThousandths / 1000m : null);
        writer.Quantity(VaneMembers.Encoded[3], vane.SetDegrees, WireUnits.Angle);
        writer.WriteEndObject();
    }

    private static List<VaneRecord> ReadVanes(ref JsonCursor json)
    {
        List<VaneRecord> vanes = [];
        if (json.BeginArray("a list of vanes"))
        {
            while (json.NextItem())
            {
                if (ReadVane(ref json) is VaneRecord vane)
                {
                    vanes.Add(vane);
                }
            }
        }

        return vanes;
    }

    private static VaneRecord? ReadVane(ref JsonCursor json)
    {
        if (!json.BeginObject("a vane with number and state"))
        {
            return null;
        }

        int? number = null;
        VaneState? state = null;
        decimal? missing = null;
        double? bend = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(VaneMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: number = json.WholeNumber(1, Impeller.MostVanes); break;
                case 1: state = json.Word<VaneState>(); break;
                case 2: missing = json.Number(0m, 0.999m); break;
                default: bend = json.Quantity(WireUnits.Angle, 0, 90); break;
            }

            json.EndMember();
        }

        json.Require(VaneMembers, seen, 0, 1);
        if (number is not int vane || state is not VaneState what)
        {
            return null;
        }

        if (missing is not null && what != VaneState.Torn)
        {
            json.NoteMeaning("/missing", "present", "no such member unless the vane is torn");
        }

        if ((bend is not null) != (what == VaneState.Set))
        {
            json.NoteMeaning("/bend", bend is null ? "nothing" : "present", "the bend of a set vane, and of no other");
        }

        return what switch
        {
            VaneState.Set => VaneRecord.Set(vane, Angle.FromDegrees(bend ?? 0)),
            VaneState.Cracked => VaneRecord.Cracked(vane),
            VaneState.Torn => VaneRecord.Torn(vane, (double)(missing ?? 0)),
            VaneState.Missing => VaneRecord.Missing(vane),
            _ => VaneRecord.Whole(vane),
        };
    }

    private static List<ImpellerFault> ReadFaults(ref JsonCursor json)
    {
        List<ImpellerFault> faults = [];
        if (json.BeginArray("a list of faults"))
        {
            while (json.NextItem())
            {
                if (json.Word<ImpellerFault>() is ImpellerFault fault)
                {
                    faults.Add(fault);
                }
            }
        }

        return faults;
    }

    private static List<FoundPiece> ReadPieces(ref JsonCursor json)
    {
        List<FoundPiece> pieces = [];
        if (!json.BeginArray("a list of pieces"))
        {
            return pieces;
        }

        while (json.NextItem())
        {
            if (!json.BeginObject("a piece with share and where"))
            {
                continue;
            }

            decimal? share = null;
            string? where = null;
            ulong seen = 0;
            int last = -1;
            int member;
            while ((member = json.NextMember(PieceMembers, ref seen, ref last)) >= 0)
            {
                if (member == 0)
                {
                    share = json.Number(0.001m, 1m);
                }
                else
                {
                    where = json.NotBlank();
                }

                json.EndMember();
            }

            json.Require(PieceMembers, seen, 0, 1);
            if (share is decimal part && where is not null)
            {
                pieces.Add(FoundPiece.Of((double)part, where));
            }
        }

        return pieces;
    }
}
