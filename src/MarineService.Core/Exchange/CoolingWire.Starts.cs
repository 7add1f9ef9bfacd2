using System.Text.Json;
using MarineService.Core.Cooling;

namespace MarineService.Core.Exchange;

/// <content>What was seen after a start.</content>
internal static partial class CoolingWire
{
    private static readonly MemberNames StartMembers = new("elapsed", "pressure", "water", "wrong");
    private static readonly MemberNames WaterMembers = new("outlet", "after");
    private static readonly MemberNames WrongMembers = new("what", "after");

    internal static StartTimes? ReadStart(ref JsonCursor json)
    {
        if (!json.BeginObject("what was seen after a start, with the time elapsed"))
        {
            return null;
        }

        int before = json.FaultCount;
        (double? elapsed, double? pressure) = (null, null);
        List<KeyValuePair<string, double>> water = [];
        List<KeyValuePair<string, double>> wrong = [];
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(StartMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: elapsed = ReadSeconds(ref json); break;
                case 1: pressure = ReadSeconds(ref json); break;
                case 2: ReadMoments(ref json, WaterMembers, water, eachOnce: true); break;
                default: ReadMoments(ref json, WrongMembers, wrong, eachOnce: false); break;
            }

            json.EndMember();
        }

        json.Require(StartMembers, seen, 0);
        if (json.FaultCount > before || elapsed is not double watched)
        {
            return null;
        }

        StartTimes times = StartTimes.UntilSeconds(watched);
        times = pressure is double came ? times.PressureCameAfter(came) : times;
        times = water.Aggregate(times, (all, one) => all.WaterCameAfter(one.Key, one.Value));
        return wrong.Aggregate(times, (all, one) => all.WentWrongAfter(one.Key, one.Value));
    }

    internal static void Write(Utf8JsonWriter writer, StartTimes times)
    {
        JsonEncodedText[] names = StartMembers.Encoded;
        writer.WriteStartObject();
        writer.Quantity(names[0], times.ElapsedSeconds, WireUnits.ShortTime);
        writer.Quantity(names[1], times.PressureSeconds, WireUnits.ShortTime);
        WriteMoments(writer, names[2], WaterMembers, times.WaterSeconds);
        WriteMoments(writer, names[3], WrongMembers, times.WrongSeconds);
        writer.WriteEndObject();
    }

    private static double? ReadSeconds(ref JsonCursor json) => json.Quantity(WireUnits.ShortTime, 0, StartTimes.MostSeconds);

    private static void ReadMoments(ref JsonCursor json, MemberNames members, List<KeyValuePair<string, double>> moments, bool eachOnce)
    {
        if (!json.BeginArray($"a list of {members.Names[0]} and after"))
        {
            return;
        }

        while (json.NextItem())
        {
            if (!json.BeginObject($"an object with {members.Names[0]} and after"))
            {
                continue;
            }

            string? name = null;
            double? after = null;
            ulong seen = 0;
            int last = -1;
            int member;
            while ((member = json.NextMember(members, ref seen, ref last)) >= 0)
            {
                if (member == 0)
                {
                    name = json.NotBlank();
                }
                else
                {
                    after = ReadSeconds(ref json);
                }

                json.EndMember();
            }

            json.Require(members, seen, 0, 1);
            if (name is not null && eachOnce && moments.Exists(one => one.Key == name))
            {
                json.NoteMeaning($"/{members.Names[0]}", $"'{name}'", "each of them once");
            }
            else if (name is not null && after is double seconds)
            {
                moments.Add(new(name, seconds));
            }
        }
    }

    private static void WriteMoments(Utf8JsonWriter writer, JsonEncodedText name, MemberNames members, IReadOnlyList<KeyValuePair<string, double>> moments)
    {
        if (moments.Count == 0)
        {
            return;
        }

        writer.WriteStartArray(name);
        foreach (KeyValuePair<string, double> one in moments)
        {
            writer.WriteStartObject();
            writer.Text(members.Encoded[0], one.Key);
            writer.Quantity(members.Encoded[1], one.Value, WireUnits.ShortTime);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
    }
}
