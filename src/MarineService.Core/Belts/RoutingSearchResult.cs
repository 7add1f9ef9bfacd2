using MarineService.Core.Internal;

namespace MarineService.Core.Belts;

/// <summary>Every routing that the pulleys of a drive allow, so that an owner without a diagram can find the one that fits.</summary>
/// <remarks>
/// What the geometry allows is not yet what the engine's maker meant: where more than one is plausible, only the maker's diagram decides.
/// Judged with the tensioner's pulley where it is drawn.
/// </remarks>
public sealed class RoutingSearchResult
{
    private RoutingCandidate[]? _ranked;

    internal RoutingSearchResult(BeltDrive drive, RoutingSearchOptions options, List<RoutingTree.Found> found)
    {
        (Drive, Options) = (drive, options);
        RoutingCandidate[] candidates = new RoutingCandidate[found.Count];
        for (int i = 0; i < candidates.Length; i++)
        {
            candidates[i] = new RoutingCandidate(drive, found[i]);
        }

        Candidates = Array.AsReadOnly(candidates);
        Considered = Count(drive.Pulleys.Count, options);
    }

    /// <summary>The drive.</summary>
    public BeltDrive Drive { get; }

    /// <summary>What was looked for.</summary>
    public RoutingSearchOptions Options { get; }

    /// <summary>Every feasible routing, in the order in which the search came to it.</summary>
    public IReadOnlyList<RoutingCandidate> Candidates { get; }

    /// <summary>How many orders and faces there are, feasible or not.</summary>
    public long Considered { get; }

    /// <summary>The candidates, the likeliest first: required senses, belt length, faces, pulleys missed, length apart, smallest wrap.</summary>
    public IReadOnlyList<RoutingCandidate> Ranked => _ranked ??=
    [
        .. Candidates
            .OrderByDescending(candidate => candidate.SensesAreRight)
            .ThenByDescending(candidate => candidate.BeltFits.OrElse(true))
            .ThenByDescending(candidate => candidate.FacesAreRight)
            .ThenBy(candidate => candidate.MissedPulleys)
            .ThenBy(candidate => candidate.BeltOverPath.IsKnown ? Math.Abs(Canonical.Millimeters(candidate.BeltOverPath.Value)) : 0)
            .ThenByDescending(candidate => candidate.SmallestWrapDegrees),
    ];

    /// <summary>The candidates that nothing known speaks against. One is an answer; several need the maker's diagram.</summary>
    public IReadOnlyList<RoutingCandidate> Plausible => [.. Ranked.Where(candidate => candidate.IsPlausible)];

    /// <summary>How many there are, and the likeliest.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new(Plausible.Count switch
        {
            0 => FormattableString.Invariant($"None of {Candidates.Count} possible routings agrees with all that is known."),
            1 => FormattableString.Invariant($"One routing agrees with all that is known: {Plausible[0].Routing}."),
            _ => FormattableString.Invariant($"{Plausible.Count} routings agree with all that is known: only the maker's diagram decides."),
        });
        lines.Add("considered", FormattableString.Invariant($"{Considered} orders and faces, {Candidates.Count} possible"));
        foreach (RoutingCandidate candidate in Ranked)
        {
            lines.Add(candidate.IsPlausible ? "plausible" : "possible", $"{candidate.Routing}: {FigureUnit.Millimeter.Write(candidate.EffectiveLengthMm, units)}");
        }

        return lines.Build(BeltRules.Geometry);
    }

    /// <summary>The answer in one line.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Explain(DisplayUnits.Metric).Answer;

    // Orders of the others, times faces, over every number of others when pulleys may be missed.
    private static long Count(int pulleys, RoutingSearchOptions options)
    {
        long total = 0;
        long orders = 1;
        for (int others = 1; others < pulleys; others++)
        {
            orders *= (pulleys - others) * (options.Faces == FaceChoice.Either ? 2 : 1);
            total += options.AllowsMissedPulleys || others == pulleys - 1 ? orders : 0;
        }

        return total;
    }
}
