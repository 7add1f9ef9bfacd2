using MarineService.Core.Internal;

namespace MarineService.Core.Exchange;

/// <summary>How a document is read: how much of it before it is refused, and whether comments may stand in it.</summary>
public sealed class ReadLimits
{
    private ReadLimits(int depth, int bytes, int faults, bool comments) => (MaxDepth, MaxBytes, MaxFaults, AllowsComments) = (depth, bytes, faults, comments);

    /// <summary>A depth of 32, 64 MiB, 1,000 faults, no comments.</summary>
    public static ReadLimits Default { get; } = new(32, 64 * 1024 * 1024, 1000, comments: false);

    /// <summary>How deep objects and arrays may nest: a number from 8 to 256.</summary>
    public int MaxDepth { get; }

    /// <summary>How long a document may be: a number of bytes from 2 to 1 GiB.</summary>
    public int MaxBytes { get; }

    /// <summary>How many faults are listed: a number from 1 to 1,000,000.</summary>
    public int MaxFaults { get; }

    /// <summary>Whether comments (/* */ and //) are passed over; JSON knows none (RFC 8259), so a document that has them is for people's own files.</summary>
    public bool AllowsComments { get; }

    /// <summary>The same limits for files that people write by hand.</summary>
    /// <returns>Limits under which comments (/* */ and //) are passed over wherever white space may stand.</returns>
    public ReadLimits AllowingComments() => new(MaxDepth, MaxBytes, MaxFaults, comments: true);

    /// <summary>Limits of the caller's.</summary>
    /// <param name="maxDepth">How deep objects and arrays may nest, from 8 to 256.</param>
    /// <param name="maxBytes">How long a document may be, from 2 bytes to 1 GiB.</param>
    /// <param name="maxFaults">How many faults are listed, from 1 to 1,000,000.</param>
    /// <returns>The limits; no comments.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A limit is outside its range.</exception>
    public static ReadLimits Of(int maxDepth, int maxBytes, int maxFaults) =>
        new(
            Guard.InRange(maxDepth, 8, 256, "levels"),
            Guard.InRange(maxBytes, 2, 1024 * 1024 * 1024, "bytes"),
            Guard.InRange(maxFaults, 1, 1_000_000, "faults"),
            comments: false);
}
