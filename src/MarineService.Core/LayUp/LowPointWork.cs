using MarineService.Core.Internal;

namespace MarineService.Core.LayUp;

/// <summary>What was done at one low point, or read at the exhaust: drained, or proved by a refractometer.</summary>
public sealed class LowPointWork
{
    /// <summary>The id that stands for the exhaust outlet, which is no low point.</summary>
    public const string Exhaust = "exhaust";

    private LowPointWork(string pointId, int? rodded, int? ran, RefractometerReading? reading) =>
        (PointId, Rodded, Ran, Reading) = (pointId, rodded, ran, reading);

    /// <summary>The id of the low point, or <see cref="Exhaust"/>.</summary>
    public string PointId { get; }

    /// <summary>How many of its drains were rodded clear, or null for a reading.</summary>
    public int? Rodded { get; }

    /// <summary>How many of its drains were seen running until they ran dry, or null for a reading.</summary>
    public int? Ran { get; }

    /// <summary>What the refractometer showed, or null for a draining.</summary>
    public RefractometerReading? Reading { get; }

    /// <summary>Drains opened at a low point.</summary>
    /// <param name="pointId">The id of the low point; not blank, not <see cref="Exhaust"/>.</param>
    /// <param name="rodded">How many of its drains were rodded clear, from 0 to 20.</param>
    /// <param name="ran">How many of its drains were seen running until they ran dry, from 0 to 20.</param>
    /// <returns>The work.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="pointId"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="pointId"/> is blank or stands for the exhaust.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A count is outside its range.</exception>
    public static LowPointWork Drained(string pointId, int rodded, int ran) =>
        Guard.NotBlank(pointId) == Exhaust
            ? throw new ArgumentException("The exhaust outlet has no drain; name the low point.", nameof(pointId))
            : new(pointId, Guard.InRange(rodded, 0, 20, "drains"), Guard.InRange(ran, 0, 20, "drains"), null);

    /// <summary>A sample taken at a low point's drain, or at the exhaust outlet, after the antifreeze went in.</summary>
    /// <param name="pointId">The id of the low point, or <see cref="Exhaust"/>; not blank.</param>
    /// <param name="reading">What the refractometer showed.</param>
    /// <returns>The work.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="pointId"/> or <paramref name="reading"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="pointId"/> is blank.</exception>
    public static LowPointWork Read(string pointId, RefractometerReading reading) =>
        new(Guard.NotBlank(pointId), null, null, Guard.NotNull(reading));

    /// <summary>Where and what.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() =>
        Reading is not null ? $"{PointId}: {Reading}" : FormattableString.Invariant($"{PointId}: {Rodded} drains rodded, {Ran} ran");
}
