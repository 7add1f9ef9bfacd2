using MarineService.Core.Fleet;

namespace Fleet;

/// <summary>Some engines judged, in the order of the input.</summary>
/// <param name="Output">Their results as NDJSON.</param>
/// <param name="Summary">What they come to.</param>
/// <param name="InputBytes">How much of the input is judged with them, counted from where this run began.</param>
/// <param name="NextLine">The line that comes next.</param>
internal sealed record Stretch(ReadOnlyMemory<byte> Output, FleetSummary Summary, long InputBytes, long NextLine);
