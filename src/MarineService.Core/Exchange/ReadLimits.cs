using MarineService.Core.Internal;

namespace MarineService.Core.Exchange;

/// <summary>How much of a document is read before it is refused.</summary>
public sealed class ReadLimits
{
    private ReadLimits(int depth, int bytes, int faults) => (MaxDepth, MaxBytes, MaxFaults) = (depth, bytes, faults);

    /// <summary>A depth of 32, 64 MiB, and 1,000 faults.</summary>
    public static ReadLimits Default { get; } = new(32, 64 * 1024 * 1024, 1000);

    /// <summary>How deep objects and arrays may nest: a number from 8 to 256.</summary>
    public int MaxDepth { get; }

    /// <summary>How long a document may be: a number of bytes from 2 to 1 GiB.</summary>
    public int MaxBytes { get; }

    /// <summary>How many faults are listed: a number from 1 to 1,000,000.</summary>
    public int MaxFaults { get; }

    /// <summary>Limits of the caller's.</summary>
    /// <param name="maxDepth">How deep objects and arrays may nest, from 8 to 256.</param>
    /// <param name="maxBytes">How long a document may be, from 2 bytes to 1 GiB.</param>
    /// <param name="maxFaults">How many faults are listed, from 1 to 1,000,000.</param>
    /// <returns>The limits.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A limit is outside its range.</exception>
    public static ReadLimits Of(int maxDepth, int maxBytes, int maxFaults) =>
        new(
            Guard.InRange(maxDepth, 8, 256, "levels"),
            Guard.InRange(maxBytes, 2, 1024 * 1024 * 1024, "bytes"),
            Guard.InRange(maxFaults, 1, 1_000_000, "faults"));
}
