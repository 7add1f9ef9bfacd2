namespace MarineService.Core.LayUp;

/// <summary>One low point and whether it is safe from frost.</summary>
public sealed class LowPointProof
{
    internal LowPointProof(LowPoint point, LowPointVerdict verdict, IReadOnlyList<Finding> findings) =>
        (Point, Verdict, Findings) = (point, verdict, findings);

    /// <summary>The low point.</summary>
    public LowPoint Point { get; }

    /// <summary>Whether it is safe.</summary>
    public LowPointVerdict Verdict { get; }

    /// <summary>What stands against it.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The low point and the verdict.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => $"{Point}: {Verdict}";
}
