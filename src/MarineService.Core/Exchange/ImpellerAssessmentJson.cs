using System.Buffers;
using System.Text.Json;
using MarineService.Core.Cooling;
using MarineService.Core.Internal;

namespace MarineService.Core.Exchange;

/// <summary>Writes what to do with an impeller as a JSON document, for programs that read it; it is never read back.</summary>
/// <remarks>
/// What is not known is left out, and <c>missing</c> says what would settle it. Words in findings follow the units asked for. The schema is
/// <c>impeller-assessment.schema.json</c>.
/// </remarks>
public static class ImpellerAssessmentJson
{
    private static readonly DocumentHead Head = new("marine-service/impeller-assessment");

    private static readonly MemberNames Members = new("date", "verdict", "missing", "decidedBy", "account", "search", "findings");

    private static readonly MemberNames AccountMembers = new("newVanes", "notLookedAt", "gone", "found", "outstanding", "closed");

    private static readonly MemberNames SearchMembers = new("order", "place", "kind", "downstream", "reason");

    /// <summary>Writes a document.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <param name="circuit">The engine's circuit, for where to search; null when it is not stated.</param>
    /// <param name="output">Where to write it, in UTF-8.</param>
    /// <param name="units">Which units the sentences of findings are written in.</param>
    /// <exception cref="ArgumentNullException"><paramref name="assessment"/> or <paramref name="output"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public static void Write(ImpellerAssessment assessment, RawWaterCircuit? circuit, IBufferWriter<byte> output, DisplayUnits units = DisplayUnits.Metric)
    {
        Guard.NotNull(assessment);
        Guard.NotNull(output);
        Guard.Defined(units);
        JsonEncodedText[] names = Members.Encoded;
        using Utf8JsonWriter writer = Document.Writer(output);
        writer.WriteStartObject();
        Head.Write(writer);
        writer.Date(names[0], assessment.Inspection.Date);
        if (assessment.Verdict.IsKnown)
        {
            writer.Word(names[1], assessment.Verdict.Value);
        }
        else
        {
            writer.Texts(names[2], assessment.Verdict.Missing);
        }

        writer.Text(names[3], assessment.DecidedBy?.Code);
        Write(writer, assessment.Account);
        writer.WriteStartArray(names[5]);
        foreach (SearchPlace place in circuit is null ? [] : assessment.WhereToSearch(circuit))
        {
            writer.WriteStartObject();
            writer.WriteNumber(SearchMembers.Encoded[0], place.Order);
            writer.Text(SearchMembers.Encoded[1], place.Place.Name);
            writer.Word(SearchMembers.Encoded[2], place.Place.Kind);
            writer.WriteBoolean(SearchMembers.Encoded[3], place.IsDownstream);
            writer.Text(SearchMembers.Encoded[4], place.Reason);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        DueListJson.WriteFindings(writer, names[6], assessment.Findings, units);
        writer.WriteEndObject();
    }

    /// <summary>The document as text.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <param name="circuit">The engine's circuit, for where to search; null when it is not stated.</param>
    /// <param name="units">Which units the sentences of findings are written in.</param>
    /// <returns>The document, indented by two spaces, lines ending in a line feed.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="assessment"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public static string ToText(ImpellerAssessment assessment, RawWaterCircuit? circuit = null, DisplayUnits units = DisplayUnits.Metric)
    {
        Guard.NotNull(assessment);
        Guard.Defined(units);
        return Document.ToText(output => Write(assessment, circuit, output, units));
    }

    private static void Write(Utf8JsonWriter writer, VaneAccount account)
    {
        JsonEncodedText[] names = AccountMembers.Encoded;
        writer.WriteStartObject(Members.Encoded[4]);
        writer.WriteNumber(names[0], account.NewVanes);
        writer.WriteNumber(names[1], account.NotLookedAt);
        writer.Real(names[2], account.MissingVanesRatio);
        writer.Real(names[3], account.FoundVanesRatio);
        if (account.OutstandingVanesRatio.IsKnown)
        {
            writer.Real(names[4], account.OutstandingVanesRatio.Value);
        }

        writer.WriteBoolean(names[5], account.IsClosed);
        writer.WriteEndObject();
    }
}
