using MarineService.Core.Engines;
using MarineService.Core.Internal;

namespace MarineService.Core.LayUp;

/// <summary>Whether the raw-water side of an engine is safe from frost, low point by low point, by what was done.</summary>
/// <remarks>
/// <para>A low point is proved when every one of its drains was rodded and seen running until it ran dry, or when a refractometer for
/// the glycol in use shows at its drain a freezing point below the lowest temperature by the margin. A reading that is too weak
/// outweighs a draining before it.</para>
/// <para>Once antifreeze went in, block and manifolds are proved at their own drains, by reading or by draining after it: with the
/// thermostat shut the bypass sends antifreeze to the exhaust while the block stays full of water.</para>
/// </remarks>
public sealed class WinterProof
{
    private WinterProof(IReadOnlyList<LowPointProof> points, IReadOnlyList<Finding> findings) => (Points, Findings) = (points, findings);

    /// <summary>Every low point, in the order of the raw-water side.</summary>
    public IReadOnlyList<LowPointProof> Points { get; }

    /// <summary>Everything that stands against it, low point by low point, then the whole.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>True when every low point is proved, none is missing from the list, and nothing else must be put right.</summary>
    public bool IsProved => Points.Count > 0 && Points.All(point => point.Verdict == LowPointVerdict.Proved) && Findings.All(finding => finding.Severity < Severity.Act);

    /// <summary>The proof, low point by low point.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        int proved = Points.Count(point => point.Verdict == LowPointVerdict.Proved);
        ExplanationBuilder lines = new(FormattableString.Invariant(
            $"{(IsProved ? "Proved" : "Not proved")}: {proved} of {Points.Count} low points are safe from frost."));
        foreach (LowPointProof point in Points)
        {
            lines.Add(point.Point.Title, Words(point.Verdict));
        }

        foreach (Finding finding in Findings)
        {
            lines.Add(finding.Code, finding.Message(units));
        }

        return lines.Add("void", "from the next start, or when water gets in: then prove it again").Build(LayUpSources.VesselPreservation, Citation.CommonPractice);
    }

    /// <summary>How many low points are proved.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Explain(DisplayUnits.Metric).Answer;

    internal static WinterProof Of(
        Engine engine, Boat? boat, RawWaterSide side, FreezeDecision freeze, Antifreeze? antifreeze, IReadOnlyList<LowPointWork> works, LayUpLimits limits)
    {
        WinterProofJudge judge = new(freeze, antifreeze, works, limits);
        LowPointProof[] points = [.. side.LowPoints.Select(judge.Judge)];
        List<Finding> findings = [.. points.SelectMany(point => point.Findings)];
        foreach (LowPointWork work in works.Where(work => work.PointId != LowPointWork.Exhaust && !side.LowPoints.Any(point => point.Id == work.PointId)))
        {
            findings.Add(LayUpRules.UnknownLowPoint.On($"low point '{work.PointId}'"));
        }

        foreach (LowPointKind kind in side.NotAccountedFor(engine, boat))
        {
            findings.Add(LayUpRules.NotAccountedFor.On(LowPoint.Words(kind)));
        }

        if (judge.ExhaustPassed && points.Any(point => WinterProofJudge.HidesFromTheExhaust(point.Point.Kind) && point.Verdict != LowPointVerdict.Proved))
        {
            findings.Add(LayUpRules.OnlyAtExhaust.On("exhaust outlet"));
        }

        return new(Array.AsReadOnly(points), findings);
    }

    /// <summary>The same proof with something that undid it.</summary>
    internal WinterProof Voided(Finding finding) => new(Points, [.. Findings, finding]);

    private static string Words(LowPointVerdict verdict) => verdict switch
    {
        LowPointVerdict.Proved => "proved",
        LowPointVerdict.NotProved => "not proved",
        LowPointVerdict.TooWeak => "too weak",
        _ => "nothing done: full of water",
    };
}
