namespace Fleet;

/// <summary>What came of an engine, as the library's documents.</summary>
/// <param name="Output">The result as a line of NDJSON.</param>
/// <param name="Summary">What it adds to the summary.</param>
[GenerateSerializer]
[Alias("Fleet.EngineAnswer")]
public sealed record EngineAnswer([property: Id(0)] ReadOnlyMemory<byte> Output, [property: Id(1)] ReadOnlyMemory<byte> Summary);
