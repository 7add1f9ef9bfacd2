using System.Buffers;
using System.Text.Json;
using MarineService.Core.Internal;
using MarineService.Core.Jobs;

namespace MarineService.Core.Exchange;

/// <summary>Reads and writes a procedure, with the tasks that it does, as a JSON document.</summary>
/// <remarks>
/// What a document says never throws: every fault is reported at once, with its place. A procedure whose steps wait for each other in
/// a circle is refused with the circle, and so is one that allows an order that would do harm. The schema is <c>procedure.schema.json</c>.
/// </remarks>
public static class ProcedureJson
{
    private static readonly DocumentHead Head = new("marine-service/procedure");

    /// <summary>Reads a document.</summary>
    /// <param name="utf8">The document in UTF-8.</param>
    /// <param name="limits">How much is read before it is refused; null for the default limits.</param>
    /// <returns>The value, or every fault.</returns>
    public static ReadResult<ProcedurePage> Read(ReadOnlySpan<byte> utf8, ReadLimits? limits = null) =>
        Document.Read<ProcedurePage>(utf8, limits, ReadPage);

    /// <summary>Reads a document from a stream, to its end.</summary>
    /// <param name="stream">The document in UTF-8; left open.</param>
    /// <param name="limits">How much is read before it is refused; null for the default limits.</param>
    /// <returns>The value, or every fault.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="stream"/> is null.</exception>
    public static ReadResult<ProcedurePage> ReadFrom(Stream stream, ReadLimits? limits = null)
    {
        Guard.NotNull(stream);
        return Document.Read<ProcedurePage>(stream, limits, ReadPage);
    }

    /// <summary>Writes a document.</summary>
    /// <param name="page">What to write.</param>
    /// <param name="output">Where to write it, in UTF-8.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static void Write(ProcedurePage page, IBufferWriter<byte> output)
    {
        Guard.NotNull(page);
        using Utf8JsonWriter writer = Document.Writer(output);
        writer.WriteStartObject();
        Head.Write(writer);
        ProceduresWire.Write(writer, page);
        writer.WriteEndObject();
    }

    /// <summary>The document as text.</summary>
    /// <param name="page">What to write.</param>
    /// <returns>The document, indented by two spaces, lines ending in a line feed.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="page"/> is null.</exception>
    public static string ToText(ProcedurePage page)
    {
        Guard.NotNull(page);
        return Document.ToText(output => Write(page, output));
    }

    private static ProcedurePage? ReadPage(ref JsonCursor json) => ProceduresWire.ReadPage(ref json, Head);
}
