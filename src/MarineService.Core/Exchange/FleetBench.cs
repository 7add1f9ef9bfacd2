using System.Security.Cryptography;
using System.Text.Json;
using MarineService.Core.Fleet;

namespace MarineService.Core.Exchange;

/// <summary>What a worker needs for a stretch of lines, used again for the next one.</summary>
internal sealed class FleetBench : IDisposable
{
    internal FleetBench() => Writer = Document.LineWriter(Output);

    internal IncrementalHash Hash { get; } = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);

    internal KnownTexts Texts { get; } = new();

    internal List<FleetResult> Results { get; } = [];

    internal ByteBuffer Output { get; } = new();

    internal Utf8JsonWriter Writer { get; }

    /// <summary>Leaves nothing of the last stretch, whole or broken off.</summary>
    internal void Clear()
    {
        Results.Clear();
        Writer.Reset();
        Output.Clear();
    }

    public void Dispose()
    {
        Writer.Dispose();
        Output.Dispose();
        Hash.Dispose();
    }
}
