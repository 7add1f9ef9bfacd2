using MarineService.Core.Internal;

namespace MarineService.Core.Parts;

/// <summary>The tally of everything that was taken off; it must return to zero.</summary>
/// <remarks>Built by methods that each return a copy. Only the sums count, so the order in which things are entered does not matter.</remarks>
/// <example><code>
/// LoosePart screw = LoosePart.Of("M6 x 20 screw", LoosePartKind.Screw, "pump cover", captiveWashers: 1);
/// LooseParts.Empty.TakenOff(screw, 6).PutBack(screw, 6, captiveWashers: 6).IsZero; // true
/// </code></example>
public sealed class LooseParts
{
    internal const int Most = 10_000;
    internal const int MostWashers = 40_000;

    private readonly Dictionary<LoosePart, (long Off, long Astray)> _counts;

    private LooseParts(Dictionary<LoosePart, (long Off, long Astray)> counts) => _counts = counts;

    /// <summary>Nothing was taken off.</summary>
    public static LooseParts Empty { get; } = new([]);

    /// <summary>What is not at zero, by place, then by name.</summary>
    public IReadOnlyList<LoosePartCount> Open =>
    [
        .. _counts.Select(pair => new LoosePartCount(pair.Key, pair.Value.Off, pair.Value.Astray))
            .OrderBy(count => count.Part.Place, StringComparer.Ordinal)
            .ThenBy(count => count.Part.Name, StringComparer.Ordinal)
            .ThenBy(count => count.Part.Kind)
            .ThenBy(count => count.Part.CaptiveWashers),
    ];

    /// <summary>Whether everything is back and nothing is astray.</summary>
    public bool IsZero => _counts.Count == 0;

    /// <summary>A copy with parts taken off, their captive washers counted too.</summary>
    /// <param name="part">The kind of part.</param>
    /// <param name="count">How many; from 1 to 10,000.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="part"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is outside its range.</exception>
    public LooseParts TakenOff(LoosePart part, int count) =>
        With(Guard.NotNull(part), Count(count), 0, part.CaptiveWashers * count);

    /// <summary>A copy with parts put back.</summary>
    /// <param name="part">The kind of part.</param>
    /// <param name="count">How many; from 1 to 10,000.</param>
    /// <param name="captiveWashers">How many captive washers were seen on them, from 0 to 40,000; those that nobody counted stay on the tally.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="part"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A count is outside its range.</exception>
    public LooseParts PutBack(LoosePart part, int count, int captiveWashers = 0)
    {
        Guard.NotNull(part);
        return PutBackCounted(part, Count(count), Guard.InRange(captiveWashers, 0, MostWashers, "washers", nameof(captiveWashers)));
    }

    /// <summary>A copy with new parts put on in place of old ones.</summary>
    /// <param name="part">The kind of part; its captive washers come new with it.</param>
    /// <param name="count">How many; from 1 to 10,000.</param>
    /// <param name="oldInHand">Whether the old ones are in the hand; those that are not stay on the tally as astray.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="part"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is outside its range.</exception>
    public LooseParts Renewed(LoosePart part, int count, bool oldInHand) =>
        With(Guard.NotNull(part), -Count(count), oldInHand ? 0 : count, -part.CaptiveWashers * count);

    /// <summary>A copy with parts found that were astray.</summary>
    /// <param name="part">The kind of part.</param>
    /// <param name="count">How many; from 1 to 10,000.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="part"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is outside its range.</exception>
    public LooseParts Found(LoosePart part, int count) => With(Guard.NotNull(part), 0, -Count(count), 0);

    /// <summary>Two tallies of one visit as one.</summary>
    /// <param name="other">The other tally.</param>
    /// <returns>Their sum.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="other"/> is null.</exception>
    public LooseParts And(LooseParts other)
    {
        Dictionary<LoosePart, (long Off, long Astray)> counts = new(_counts);
        foreach (KeyValuePair<LoosePart, (long Off, long Astray)> pair in Guard.NotNull(other)._counts)
        {
            Add(counts, pair.Key, pair.Value.Off, pair.Value.Astray);
        }

        return new(counts);
    }

    /// <summary>What stands against closing up; empty when the tally is at zero.</summary>
    /// <returns>The findings, by place, then by name.</returns>
    public IReadOnlyList<Finding> Judge()
    {
        List<Finding> findings = [];
        foreach (LoosePartCount open in Open)
        {
            if (open.Off != 0)
            {
                findings.Add((open.Off > 0 ? TallyRules.StillOff : TallyRules.TooMany).On(open.Part.ToString(), Figure.Of("count", Math.Abs(open.Off), FigureUnit.Number)));
            }

            if (open.Astray != 0)
            {
                findings.Add((open.Astray > 0 ? TallyRules.Astray : TallyRules.FoundTooMany).On(open.Part.ToString(), Figure.Of("count", Math.Abs(open.Astray), FigureUnit.Number)));
            }
        }

        return findings.AsReadOnly();
    }

    /// <summary>What is open.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => IsZero ? "everything is back" : string.Join("; ", Open);

    /// <summary>As <see cref="PutBack"/>, with counts that were checked and may be 0.</summary>
    internal LooseParts PutBackCounted(LoosePart part, int count, int captiveWashers) => With(part, -count, 0, -captiveWashers);

    private static int Count(int count) => Guard.InRange(count, 1, Most, "parts");

    private static void Add(Dictionary<LoosePart, (long Off, long Astray)> counts, LoosePart part, long off, long astray)
    {
        counts.TryGetValue(part, out (long Off, long Astray) old);
        (long, long) sum = (old.Off + off, old.Astray + astray);
        if (sum == (0, 0))
        {
            counts.Remove(part);
        }
        else
        {
            counts[part] = sum;
        }
    }

    private LooseParts With(LoosePart part, int off, int astray, int washersOff)
    {
        Dictionary<LoosePart, (long Off, long Astray)> counts = new(_counts);
        Add(counts, part, off, astray);
        if (washersOff != 0)
        {
            Add(counts, part.Washer, washersOff, 0);
        }

        return new(counts);
    }
}
