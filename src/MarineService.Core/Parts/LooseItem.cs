using MarineService.Core.Internal;

namespace MarineService.Core.Parts;

/// <summary>So many loose parts of one kind that come off together.</summary>
public sealed record LooseItem
{
    private LooseItem(LoosePart part, int count) => (Part, Count) = (part, count);

    /// <summary>The kind of part.</summary>
    public LoosePart Part { get; }

    /// <summary>How many come off; from 1 to 10,000.</summary>
    public int Count { get; }

    /// <summary>So many loose parts of one kind.</summary>
    /// <param name="part">The kind of part.</param>
    /// <param name="count">How many come off; from 1 to 10,000.</param>
    /// <returns>The item.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="part"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is outside its range.</exception>
    public static LooseItem Of(LoosePart part, int count) => new(Guard.NotNull(part), Guard.InRange(count, 1, LooseParts.Most, "parts"));

    /// <summary>Count, name and place.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{Count} x {Part}{(Part.CaptiveWashers == 0 ? string.Empty : $", {Part.CaptiveWashers} captive {(Part.CaptiveWashers == 1 ? "washer" : "washers")} on each")}");
}
