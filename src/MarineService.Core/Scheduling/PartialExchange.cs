using MarineService.Core.Internal;

namespace MarineService.Core.Scheduling;

/// <summary>What a change of only part of a fluid is worth.</summary>
public sealed record PartialExchange
{
    private PartialExchange(decimal? thresholdFraction) => ThresholdFraction = thresholdFraction;

    /// <summary>Counts as a full change from nine tenths upwards, else as nothing: the default of this project.</summary>
    public static PartialExchange Default { get; } = AllOrNothing(0.90m);

    /// <summary>The old fluid left behind keeps its age: new and old are taken as perfectly mixed.</summary>
    public static PartialExchange ProRata { get; } = new(thresholdFraction: null);

    /// <summary>The fraction from which a change counts as full, or null under <see cref="ProRata"/>.</summary>
    public decimal? ThresholdFraction { get; }

    /// <summary>Counts as a full change from a fraction upwards, else as nothing.</summary>
    /// <param name="thresholdFraction">From 0.01 to 1.</param>
    /// <returns>The rule.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="thresholdFraction"/> is outside its range.</exception>
    public static PartialExchange AllOrNothing(decimal thresholdFraction) =>
        new(Guard.InRange(thresholdFraction, 0.01m, 1m, "(fraction)"));

    /// <summary>The rule in words.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => ThresholdFraction is decimal threshold
        ? FormattableString.Invariant($"all or nothing from {threshold * 100:0.##} %")
        : "pro rata";
}
