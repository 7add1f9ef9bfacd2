using System.Buffers;
using System.Text.Json;
using MarineService.Core.Fleet;
using MarineService.Core.Internal;

namespace MarineService.Core.Exchange;

/// <summary>Reads and writes an engine of a fleet as a JSON document of one line, as NDJSON has it.</summary>
/// <remarks>What a document says never throws: every fault is reported at once, with its place. The schema is <c>fleet-engine.schema.json</c>.</remarks>
public static class FleetEngineJson
{
    /// <summary>Reads a document.</summary>
    /// <param name="utf8">The document in UTF-8.</param>
    /// <param name="limits">How much is read before it is refused; null for the default limits.</param>
    /// <returns>The engine, or every fault.</returns>
    public static ReadResult<FleetEngine> Read(ReadOnlySpan<byte> utf8, ReadLimits? limits = null) => Document.Read(
        utf8, limits, (ref JsonCursor json) => FleetWire.ReadEngine(ref json, new()) is FleetEngineParts parts && json.Faults.Count == 0 ? parts.Build(null) : null);

    /// <summary>Writes a document in one line, without a line end.</summary>
    /// <param name="engine">What to write; its fingerprint is left out, since it is one of the document.</param>
    /// <param name="output">Where to write it, in UTF-8.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static void Write(FleetEngine engine, IBufferWriter<byte> output)
    {
        Guard.NotNull(engine);
        using Utf8JsonWriter writer = Document.LineWriter(output);
        FleetWire.Write(writer, engine);
    }
}
