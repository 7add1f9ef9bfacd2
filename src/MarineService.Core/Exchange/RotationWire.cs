using System.Text.Json;

namespace MarineService.Core.Exchange;

/// <summary>A sense of rotation with the place from which it is seen, whatever kind of place that is.</summary>
internal static class RotationWire
{
    private static readonly MemberNames Members = new("sense", "seenFrom");

    internal static TRotation? Read<TSide, TRotation>(ref JsonCursor json, string what, Func<Sense, TSide, TRotation> make)
        where TSide : struct, Enum
        where TRotation : struct
    {
        if (!json.BeginObject(what))
        {
            return null;
        }

        Sense? sense = null;
        TSide? side = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(Members, ref seen, ref last)) >= 0)
        {
            if (member == 0)
            {
                sense = json.Word<Sense>();
            }
            else
            {
                side = json.Word<TSide>();
            }

            json.EndMember();
        }

        json.Require(Members, seen, 0, 1);
        return sense is Sense turning && side is TSide from ? make(turning, from) : null;
    }

    internal static void Write<TSide>(Utf8JsonWriter writer, JsonEncodedText name, Sense sense, TSide side)
        where TSide : struct, Enum
    {
        writer.WriteStartObject(name);
        writer.Word(Members.Encoded[0], sense);
        writer.Word(Members.Encoded[1], side);
        writer.WriteEndObject();
    }
}
