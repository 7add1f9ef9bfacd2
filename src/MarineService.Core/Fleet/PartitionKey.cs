using System.Text;
using MarineService.Core.Internal;

namespace MarineService.Core.Fleet;

/// <summary>Which share of the work an engine belongs to: the same on every machine, in every run and in every version.</summary>
/// <remarks>
/// The 64-bit FNV-1a hash of the id in UTF-8. Source: FNV specification, draft-eastlake-fnv, appendix C holds test vectors. It spreads
/// ids evenly; it is no protection against somebody who chooses them.
/// </remarks>
public static class PartitionKey
{
    private const ulong OffsetBasis = 0xCBF2_9CE4_8422_2325;
    private const ulong Prime = 0x0000_0100_0000_01B3;

    /// <summary>The key of an engine.</summary>
    /// <param name="engineId">The engine's id; not blank.</param>
    /// <returns>Any 64-bit number.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="engineId"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="engineId"/> is blank.</exception>
    public static ulong Of(string engineId) => Hash(Encoding.UTF8.GetBytes(Guard.NotBlank(engineId)));

    /// <summary>The share of an engine when the work is split.</summary>
    /// <param name="engineId">The engine's id; not blank.</param>
    /// <param name="partitions">How many shares there are, 1 to 1,000,000.</param>
    /// <returns>From 0 to one less than there are shares.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="engineId"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="engineId"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="partitions"/> is outside 1 to 1,000,000.</exception>
    public static int Of(string engineId, int partitions) => (int)(Of(engineId) % (ulong)Guard.InRange(partitions, 1, 1_000_000, "shares"));

    internal static ulong Hash(ReadOnlySpan<byte> bytes)
    {
        ulong hash = OffsetBasis;
        foreach (byte one in bytes)
        {
            hash = unchecked((hash ^ one) * Prime);
        }

        return hash;
    }
}
