namespace MarineService.Core.Engines;

/// <summary>An accepted reading on the scale of the engine's hours in all, in thousandths of an hour.</summary>
internal readonly struct MeterPoint(int day, long dial, long lower, long estimate, long upper, ReadingQuality quality)
{
    internal int Day { get; } = day;

    internal ReadingQuality Quality { get; } = quality;

    internal long Dial { get; } = dial;

    internal long Lower { get; } = lower;

    internal long Estimate { get; } = estimate;

    internal long Upper { get; } = upper;

    internal HoursEstimate ToEstimate() => new(Lower, Estimate, Upper, Quality);
}
