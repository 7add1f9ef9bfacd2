using System.Buffers;
using System.Text.Json;
using MarineService.Core.Internal;
using MarineService.Core.Records;

namespace MarineService.Core.Exchange;

/// <summary>Reads and writes a service log as a JSON document.</summary>
/// <remarks>What a document says never throws: every fault is reported at once, with its place. The schema is <c>service-log.schema.json</c>.</remarks>
public static class ServiceLogJson
{
    private static readonly DocumentHead Head = new("marine-service/service-log");

    /// <summary>Reads a document.</summary>
    /// <param name="utf8">The document in UTF-8.</param>
    /// <param name="limits">How much is read before it is refused; null for the default limits.</param>
    /// <returns>The value, or every fault.</returns>
    public static ReadResult<ServiceLog> Read(ReadOnlySpan<byte> utf8, ReadLimits? limits = null) =>
        Document.Read<ServiceLog>(utf8, limits, ReadLog);

    /// <summary>Reads a document from a stream, to its end.</summary>
    /// <param name="stream">The document in UTF-8; left open.</param>
    /// <param name="limits">How much is read before it is refused; null for the default limits.</param>
    /// <returns>The value, or every fault.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="stream"/> is null.</exception>
    public static ReadResult<ServiceLog> ReadFrom(Stream stream, ReadLimits? limits = null)
    {
        Guard.NotNull(stream);
        return Document.Read<ServiceLog>(stream, limits, ReadLog);
    }

    /// <summary>Writes a document.</summary>
    /// <param name="log">What to write.</param>
    /// <param name="output">Where to write it, in UTF-8.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static void Write(ServiceLog log, IBufferWriter<byte> output)
    {
        Guard.NotNull(log);
        using Utf8JsonWriter writer = Document.Writer(output);
        WriteLog(writer, log);
    }

    /// <summary>The document as text.</summary>
    /// <param name="log">What to write.</param>
    /// <returns>The document, indented by two spaces, lines ending in a line feed.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="log"/> is null.</exception>
    public static string ToText(ServiceLog log)
    {
        Guard.NotNull(log);
        return Document.ToText(output => Write(log, output));
    }

    /// <summary>The document, by itself or inside another.</summary>
    internal static ServiceLog? ReadLog(ref JsonCursor json) => RecordsWire.ReadLog(ref json, Head);

    /// <summary>The document, by itself or inside another.</summary>
    internal static void WriteLog(Utf8JsonWriter writer, ServiceLog log)
    {
        writer.WriteStartObject();
        Head.Write(writer);
        RecordsWire.Write(writer, log);
        writer.WriteEndObject();
    }
}
