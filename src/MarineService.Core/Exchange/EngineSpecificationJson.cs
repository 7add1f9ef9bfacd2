using System.Buffers;
using System.Text.Json;
using MarineService.Core.Internal;
using MarineService.Core.Specifications;

namespace MarineService.Core.Exchange;

/// <summary>Reads and writes the data sheet of an engine as a JSON document.</summary>
/// <remarks>What a document says never throws: every fault is reported at once, with its place. The schema is <c>engine-specification.schema.json</c>.</remarks>
public static class EngineSpecificationJson
{
    private static readonly DocumentHead Head = new("marine-service/engine-specification");

    /// <summary>Reads a document.</summary>
    /// <param name="utf8">The document in UTF-8.</param>
    /// <param name="limits">How much is read before it is refused; null for the default limits.</param>
    /// <returns>The value, or every fault.</returns>
    public static ReadResult<EngineSpecification> Read(ReadOnlySpan<byte> utf8, ReadLimits? limits = null) =>
        Document.Read(utf8, limits, (ref JsonCursor json) => SpecificationsWire.ReadEngineSheet(ref json, Head));

    /// <summary>Reads a document from a stream, to its end.</summary>
    /// <param name="stream">The document in UTF-8; left open.</param>
    /// <param name="limits">How much is read before it is refused; null for the default limits.</param>
    /// <returns>The value, or every fault.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="stream"/> is null.</exception>
    public static ReadResult<EngineSpecification> ReadFrom(Stream stream, ReadLimits? limits = null)
    {
        Guard.NotNull(stream);
        return Document.Read(stream, limits, (ref JsonCursor json) => SpecificationsWire.ReadEngineSheet(ref json, Head));
    }

    /// <summary>Writes a document.</summary>
    /// <param name="specification">What to write.</param>
    /// <param name="output">Where to write it, in UTF-8.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static void Write(EngineSpecification specification, IBufferWriter<byte> output)
    {
        Guard.NotNull(specification);
        using Utf8JsonWriter writer = Document.Writer(output);
        writer.WriteStartObject();
        Head.Write(writer);
        SpecificationsWire.Write(writer, specification);
        writer.WriteEndObject();
    }

    /// <summary>The document as text.</summary>
    /// <param name="specification">What to write.</param>
    /// <returns>The document, indented by two spaces, lines ending in a line feed.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="specification"/> is null.</exception>
    public static string ToText(EngineSpecification specification)
    {
        Guard.NotNull(specification);
        return Document.ToText(output => Write(specification, output));
    }
}
