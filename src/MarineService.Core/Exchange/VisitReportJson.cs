using System.Buffers;
using System.Text.Json;
using MarineService.Core.Internal;
using MarineService.Core.Jobs;

namespace MarineService.Core.Exchange;

/// <summary>Reads and writes what was done and measured at a visit as a JSON document.</summary>
/// <remarks>What a document says never throws: every fault is reported at once, with its place. The schema is <c>visit-report.schema.json</c>.</remarks>
public static class VisitReportJson
{
    private static readonly DocumentHead Head = new("marine-service/visit-report");

    /// <summary>Reads a document.</summary>
    /// <param name="utf8">The document in UTF-8.</param>
    /// <param name="limits">How much is read before it is refused; null for the default limits.</param>
    /// <returns>The value, or every fault.</returns>
    public static ReadResult<VisitReport> Read(ReadOnlySpan<byte> utf8, ReadLimits? limits = null) =>
        Document.Read<VisitReport>(utf8, limits, ReadReport);

    /// <summary>Reads a document from a stream, to its end.</summary>
    /// <param name="stream">The document in UTF-8; left open.</param>
    /// <param name="limits">How much is read before it is refused; null for the default limits.</param>
    /// <returns>The value, or every fault.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="stream"/> is null.</exception>
    public static ReadResult<VisitReport> ReadFrom(Stream stream, ReadLimits? limits = null)
    {
        Guard.NotNull(stream);
        return Document.Read<VisitReport>(stream, limits, ReadReport);
    }

    /// <summary>Writes a document.</summary>
    /// <param name="report">What to write.</param>
    /// <param name="output">Where to write it, in UTF-8.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static void Write(VisitReport report, IBufferWriter<byte> output)
    {
        Guard.NotNull(report);
        using Utf8JsonWriter writer = Document.Writer(output);
        writer.WriteStartObject();
        Head.Write(writer);
        JobsWire.Write(writer, report);
        writer.WriteEndObject();
    }

    /// <summary>The document as text.</summary>
    /// <param name="report">What to write.</param>
    /// <returns>The document, indented by two spaces, lines ending in a line feed.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="report"/> is null.</exception>
    public static string ToText(VisitReport report)
    {
        Guard.NotNull(report);
        return Document.ToText(output => Write(report, output));
    }

    private static VisitReport? ReadReport(ref JsonCursor json) => JobsWire.ReadReport(ref json, Head);
}
