using System.Buffers;
using System.Text.Json;
using MarineService.Core.Fleet;
using MarineService.Core.Internal;

namespace MarineService.Core.Exchange;

/// <summary>Writes what came of an engine as a JSON document of one line, for programs that read it; it is never read back.</summary>
/// <remarks>The schema is <c>fleet-result.schema.json</c>.</remarks>
public static class FleetResultJson
{
    internal const long MostLines = 1_000_000_000_000;

    /// <summary>Writes a document in one line, without a line end.</summary>
    /// <param name="result">What to write.</param>
    /// <param name="output">Where to write it, in UTF-8.</param>
    /// <param name="line">The line of the input that the record was on, 1 to 1,000,000,000,000; null when it was not on a line.</param>
    /// <exception cref="ArgumentNullException"><paramref name="result"/> or <paramref name="output"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="line"/> is outside 1 to 1,000,000,000,000.</exception>
    public static void Write(FleetResult result, IBufferWriter<byte> output, long? line = null)
    {
        Guard.NotNull(result);
        if (line is < 1 or > MostLines)
        {
            throw new ArgumentOutOfRangeException(nameof(line), line, FormattableString.Invariant($"Must be a line number, 1 to {MostLines}."));
        }

        using Utf8JsonWriter writer = Document.LineWriter(output);
        FleetWire.Write(writer, result, line);
    }
}
