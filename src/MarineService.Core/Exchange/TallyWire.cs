using System.Text.Json;
using MarineService.Core.Jobs;
using MarineService.Core.Parts;

namespace MarineService.Core.Exchange;

/// <summary>The counts of loose parts in reports of visits.</summary>
internal static class TallyWire
{
    private static readonly MemberNames LineMembers = new("name", "place", "putBack", "captiveWashers", "renewed", "oldInHand", "takenOff");

    internal static List<TallyLine> Read(ref JsonCursor json)
    {
        List<TallyLine> lines = [];
        HashSet<(string, string)> names = [];
        if (!json.BeginArray("a list of counts"))
        {
            return lines;
        }

        while (json.NextItem())
        {
            if (!json.BeginObject("a count of loose parts with name, place and putBack"))
            {
                continue;
            }

            int before = json.FaultCount;
            (string? name, string? place) = (null, null);
            int?[] counts = new int?[5];
            ulong seen = 0;
            int last = -1;
            int member;
            while ((member = json.NextMember(LineMembers, ref seen, ref last)) >= 0)
            {
                switch (member)
                {
                    case 0: name = json.NotBlank(); break;
                    case 1: place = json.NotBlank(); break;
                    default: counts[member - 2] = json.WholeNumber(0, member == 3 ? LooseParts.MostWashers : LooseParts.Most); break;
                }

                json.EndMember();
            }

            json.Require(LineMembers, seen, 0, 1, 2);
            (int renewed, int inHand) = (counts[2] ?? 0, counts[3] ?? 0);
            if (inHand > renewed)
            {
                json.NoteMeaning("/oldInHand", FormattableString.Invariant($"{inHand}"), FormattableString.Invariant($"at most the {renewed} that were renewed"));
            }

            if (name is not null && place is not null && !names.Add((name, place)))
            {
                json.NoteMeaning("/name", $"'{name}'", "each name at one place once");
            }

            if (json.FaultCount == before)
            {
                lines.Add(TallyLine.Of(name!, place!, counts[0]!.Value, counts[1] ?? 0).WithRenewed(renewed, inHand).WithTakenOff(counts[4] ?? 0));
            }
        }

        return lines;
    }

    internal static void Write(Utf8JsonWriter writer, JsonEncodedText name, IReadOnlyList<TallyLine> lines)
    {
        if (lines.Count == 0)
        {
            return;
        }

        writer.WriteStartArray(name);
        foreach (TallyLine line in lines)
        {
            writer.WriteStartObject();
            writer.Text(LineMembers.Encoded[0], line.Name);
            writer.Text(LineMembers.Encoded[1], line.Place);
            writer.WriteNumber(LineMembers.Encoded[2], line.PutBack);
            Count(writer, 3, line.CaptiveWashers);
            Count(writer, 4, line.Renewed);
            Count(writer, 5, line.OldInHand);
            Count(writer, 6, line.TakenOff);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
    }

    private static void Count(Utf8JsonWriter writer, int member, int count)
    {
        if (count > 0)
        {
            writer.WriteNumber(LineMembers.Encoded[member], count);
        }
    }
}
