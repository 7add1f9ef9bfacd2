using MarineService.Core.Fleet;

namespace MarineService.Core.Exchange;

/// <summary>The results of a stretch of the input, whole lines only: to be written, counted, and remembered as done.</summary>
public sealed class FleetBatch
{
    internal FleetBatch(ReadOnlyMemory<byte> output, FleetSummary summary, FleetChunk chunk) =>
        (Output, Summary, InputBytes, NextLine) = (output, summary, chunk.InputBytes, chunk.NextLine);

    /// <summary>The results as NDJSON in UTF-8: one line for each record, in the order of the input.</summary>
    public ReadOnlyMemory<byte> Output { get; }

    /// <summary>The summary of these results alone.</summary>
    public FleetSummary Summary { get; }

    /// <summary>Bytes of the input, 0 or more, up to the end of this stretch: where to go on after a break, once the output is safe.</summary>
    public long InputBytes { get; }

    /// <summary>The number of the line after this stretch, 2 or more: with which to go on after a break.</summary>
    public long NextLine { get; }
}
