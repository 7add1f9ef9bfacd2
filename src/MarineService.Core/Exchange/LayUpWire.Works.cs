using System.Text.Json;
using MarineService.Core.Fluids;
using MarineService.Core.LayUp;
using UnitsNet;

namespace MarineService.Core.Exchange;

/// <content>What was done against frost, in log entries.</content>
internal static partial class LayUpWire
{
    private static readonly MemberNames WorkMembers = new("point", "rodded", "ran", "scale", "freezingPoint");

    /// <summary>The works of one entry; null when any is at fault.</summary>
    internal static List<LowPointWork>? ReadWorks(ref JsonCursor json)
    {
        if (!json.BeginArray("a list of drainings and readings"))
        {
            return null;
        }

        List<LowPointWork> works = [];
        int before = json.Faults.Count;
        bool isEmpty = true;
        while (json.NextItem())
        {
            isEmpty = false;
            if (ReadWork(ref json) is LowPointWork work)
            {
                works.Add(work);
            }
        }

        if (isEmpty)
        {
            json.Note("", "an empty list", "at least one draining or reading");
        }

        return json.Faults.Count == before ? works : null;
    }

    internal static void Write(Utf8JsonWriter writer, JsonEncodedText name, IReadOnlyList<LowPointWork> works)
    {
        JsonEncodedText[] names = WorkMembers.Encoded;
        writer.WriteStartArray(name);
        for (int i = 0; i < works.Count; i++)
        {
            writer.WriteStartObject();
            writer.Text(names[0], works[i].PointId);
            if (works[i].Reading is RefractometerReading reading)
            {
                writer.Word(names[3], reading.Scale);
                writer.Quantity(names[4], reading.Celsius, WireUnits.Temperature);
            }
            else
            {
                writer.WriteNumber(names[1], works[i].Rodded!.Value);
                writer.WriteNumber(names[2], works[i].Ran!.Value);
            }

            writer.WriteEndObject();
        }

        writer.WriteEndArray();
    }

    private static LowPointWork? ReadWork(ref JsonCursor json)
    {
        if (!json.BeginObject("a draining or a reading"))
        {
            return null;
        }

        string? point = null;
        int? rodded = null;
        int? ran = null;
        GlycolKind? scale = null;
        double? celsius = null;
        int before = json.Faults.Count;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(WorkMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: point = json.NotBlank(); break;
                case 1: rodded = json.WholeNumber(0, 20); break;
                case 2: ran = json.WholeNumber(0, 20); break;
                case 3: scale = json.Word<GlycolKind>(); break;
                default: celsius = json.Quantity(WireUnits.Temperature, -60, 0); break;
            }

            json.EndMember();
        }

        json.Require(WorkMembers, seen, 0);
        bool isReading = (seen & 0b11000) != 0;
        json.Require(WorkMembers, seen, isReading ? [3, 4] : [1, 2]);
        if (isReading && (seen & 0b00110) != 0)
        {
            json.Note("", "rodded or ran beside a reading", "either a draining or a reading");
        }

        if (!isReading && point == LowPointWork.Exhaust)
        {
            json.Note("/point", "'exhaust'", "a low point: the exhaust outlet has no drain");
        }

        return json.Faults.Count > before ? null
            : isReading ? LowPointWork.Read(point!, RefractometerReading.Of(scale!.Value, Temperature.FromDegreesCelsius(celsius!.Value)))
            : LowPointWork.Drained(point!, rodded!.Value, ran!.Value);
    }
}
