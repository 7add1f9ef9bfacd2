using MarineService.Core.Internal;

namespace MarineService.Core.Records;

/// <summary>A proof behind an entry: what kind, where it is kept, and the fingerprint of the file.</summary>
public sealed record Evidence
{
    private const int HashLength = 64;

    private Evidence(EvidenceKind kind, string reference, string? sha256) => (Kind, Reference, Sha256) = (kind, reference, sha256);

    /// <summary>What kind of proof it is.</summary>
    public EvidenceKind Kind { get; }

    /// <summary>Where it is kept: a file name, a receipt number.</summary>
    public string Reference { get; }

    /// <summary>The SHA-256 hash of the file in lower-case hexadecimal, or null.</summary>
    public string? Sha256 { get; }

    /// <summary>A proof.</summary>
    /// <param name="kind">What kind of proof it is.</param>
    /// <param name="reference">Where it is kept; not blank.</param>
    /// <param name="sha256">The SHA-256 hash of the file, 64 hexadecimal digits, or null.</param>
    /// <returns>The proof.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="reference"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="reference"/> is blank, or <paramref name="sha256"/> is not a hash.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> is not defined.</exception>
    public static Evidence Of(EvidenceKind kind, string reference, string? sha256 = null)
    {
        if (sha256 is not null && !IsHash(sha256))
        {
            throw new ArgumentException("Must be 64 hexadecimal digits.", nameof(sha256));
        }

        // Lower case is how command-line tools print it.
#pragma warning disable CA1308
        return new(Guard.Defined(kind), Guard.NotBlank(reference), sha256?.ToLowerInvariant());
#pragma warning restore CA1308
    }

    internal static bool IsHash(string text) =>
        text.Length == HashLength && text.All(c => c is (>= '0' and <= '9') or (>= 'a' and <= 'f') or (>= 'A' and <= 'F'));
}
