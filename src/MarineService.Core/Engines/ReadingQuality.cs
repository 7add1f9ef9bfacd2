namespace MarineService.Core.Engines;

/// <summary>How well a number of engine hours is known.</summary>
public enum ReadingQuality
{
    /// <summary>Read off a dial on that date. The default value.</summary>
    Measured = 0,

    /// <summary>Between two readings, spread evenly over the days.</summary>
    Interpolated = 1,

    /// <summary>Rests on a person's estimate, or on the last reading carried forward.</summary>
    Estimated = 2,
}
