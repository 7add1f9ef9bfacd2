namespace MarineService.Core.Engines;

/// <summary>Engine hours on a date: the estimate, the bounds that the readings leave open, and how well it is known.</summary>
/// <remarks>Two are equal when all four parts are.</remarks>
public sealed record HoursEstimate
{
    internal HoursEstimate(long lower, long estimate, long upper, ReadingQuality quality) =>
        (Lower, Estimate, Upper, Quality) =
            (EngineHours.FromThousandths(lower), EngineHours.FromThousandths(estimate), EngineHours.FromThousandths(upper), quality);

    /// <summary>The hours cannot be fewer than this.</summary>
    public EngineHours Lower { get; }

    /// <summary>The best estimate; always between the bounds.</summary>
    public EngineHours Estimate { get; }

    /// <summary>The hours cannot be more than this.</summary>
    public EngineHours Upper { get; }

    /// <summary>How well the estimate is known.</summary>
    public ReadingQuality Quality { get; }

    /// <summary>The estimate, with its bounds where they differ.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() =>
        Lower == Upper ? Estimate.ToString() : $"about {Estimate}, {Lower} at least, {Upper} at most";
}
