using System.Buffers;
using System.Text.Json;
using MarineService.Core.Belts;
using MarineService.Core.Internal;

namespace MarineService.Core.Exchange;

/// <summary>Writes the routings that the pulleys of a drive allow as a JSON document; it is never read back.</summary>
/// <remarks>The likeliest first. Whether the belt fits is left out when its length is not known. The schema is <c>belt-routings.schema.json</c>.</remarks>
public static class RoutingSearchJson
{
    private static readonly DocumentHead Head = new("marine-service/belt-routings");

    private static readonly MemberNames Members = new("considered", "faces", "mayMiss", "plausible", "routings");

    private static readonly MemberNames RoutingMembers = new(
        "routing", "isPlausible", "effectiveLength", "beltOverPath", "beltFits", "sensesAreRight", "facesAreRight", "missedPulleys", "leastWrap");

    /// <summary>Writes a document.</summary>
    /// <param name="search">The routings.</param>
    /// <param name="output">Where to write it, in UTF-8.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static void Write(RoutingSearchResult search, IBufferWriter<byte> output)
    {
        Guard.NotNull(search);
        Guard.NotNull(output);
        using Utf8JsonWriter writer = Document.Writer(output);
        writer.WriteStartObject();
        Head.Write(writer);
        writer.WriteNumber(Members.Encoded[0], search.Considered);
        writer.Word(Members.Encoded[1], search.Options.Faces);
        writer.WriteBoolean(Members.Encoded[2], search.Options.AllowsMissedPulleys);
        writer.WriteNumber(Members.Encoded[3], search.Plausible.Count);
        writer.WriteStartArray(Members.Encoded[4]);
        foreach (RoutingCandidate candidate in search.Ranked)
        {
            Write(writer, candidate);
        }

        writer.WriteEndArray();
        writer.WriteEndObject();
    }

    /// <summary>The document as text.</summary>
    /// <param name="search">The routings.</param>
    /// <returns>The document, indented by two spaces, lines ending in a line feed.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="search"/> is null.</exception>
    public static string ToText(RoutingSearchResult search)
    {
        Guard.NotNull(search);
        return Document.ToText(output => Write(search, output));
    }

    private static void Write(Utf8JsonWriter writer, RoutingCandidate candidate)
    {
        JsonEncodedText[] names = RoutingMembers.Encoded;
        writer.WriteStartObject();
        BeltsWire.Write(writer, names[0], candidate.Routing);
        writer.WriteBoolean(names[1], candidate.IsPlausible);
        writer.Quantity(names[2], candidate.EffectiveLengthMm, WireUnits.Length);
        writer.Quantity(names[3], candidate.BeltOverPath.IsKnown ? Canonical.Millimeters(candidate.BeltOverPath.Value) : null, WireUnits.Length);
        if (candidate.BeltFits.IsKnown)
        {
            writer.WriteBoolean(names[4], candidate.BeltFits.Value);
        }

        writer.WriteBoolean(names[5], candidate.SensesAreRight);
        writer.WriteBoolean(names[6], candidate.FacesAreRight);
        writer.WriteNumber(names[7], candidate.MissedPulleys);
        writer.Quantity(names[8], candidate.SmallestWrapDegrees, WireUnits.Angle);
        writer.WriteEndObject();
    }
}
