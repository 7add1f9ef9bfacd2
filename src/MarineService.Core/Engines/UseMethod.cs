namespace MarineService.Core.Engines;

/// <summary>A way to forecast when hours are reached, for comparison; <see cref="SeasonalUse"/> chooses by itself.</summary>
public enum UseMethod
{
    /// <summary>Each past year's days repeated in turn; the median of the dates. The default value.</summary>
    RepeatedSeasons = 0,

    /// <summary>The mean daily rate of each calendar month.</summary>
    SeasonalProfile = 1,

    /// <summary>The straight line from the first reading to the last.</summary>
    MeanRate = 2,

    /// <summary>The straight line through the last two readings; never good alone.</summary>
    LastInterval = 3,

    /// <summary>The straight line with the median of the slopes between all pairs of readings.</summary>
    PairwiseSlopes = 4,
}
