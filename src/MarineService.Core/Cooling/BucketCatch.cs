using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Cooling;

/// <summary>What a bucket caught under one exhaust outlet.</summary>
public sealed class BucketCatch
{
    internal const double LeastSeconds = 1;
    internal const double MostSeconds = 600;

    private BucketCatch(string outlet, MeasuredVolume volume, double seconds) => (Outlet, Volume, Seconds) = (outlet, volume, seconds);

    /// <summary>The outlet.</summary>
    public string Outlet { get; }

    /// <summary>What was caught.</summary>
    public MeasuredVolume Volume { get; }

    /// <summary>How long the bucket was held under it.</summary>
    public Duration Time => Duration.FromSeconds(Seconds);

    internal double Seconds { get; }

    internal double LitersPerMinute => Volume.Liters * 60 / Seconds;

    /// <summary>A catch.</summary>
    /// <param name="outlet">The outlet's name in the circuit; not blank.</param>
    /// <param name="volume">What was caught; above 0 L.</param>
    /// <param name="time">How long the bucket was held under it, from 1 to 600 s.</param>
    /// <returns>The catch.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="outlet"/> or <paramref name="volume"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="outlet"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static BucketCatch Of(string outlet, MeasuredVolume volume, Duration time)
    {
        Guard.NotBlank(outlet);
        Guard.Positive(Guard.NotNull(volume).Liters, "L", nameof(volume));
        return new(outlet, volume, Guard.InRange(Canonical.Seconds(time), LeastSeconds, MostSeconds, "s", nameof(time)));
    }

    /// <summary>The square of the standard uncertainty of the flow.</summary>
    internal double Variance(double timingSeconds)
    {
        double byVolume = (Volume.SigmaLiters ?? 0) / Volume.Liters;
        double byTime = timingSeconds / Seconds;
        return LitersPerMinute * LitersPerMinute * ((byVolume * byVolume) + (byTime * byTime));
    }
}
