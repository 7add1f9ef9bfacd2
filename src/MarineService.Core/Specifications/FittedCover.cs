using MarineService.Core.Internal;
using MarineService.Core.Parts;
using UnitsNet;

namespace MarineService.Core.Specifications;

/// <summary>A cover of one engine in its data sheet: how its screws are tightened, and where the holes that it goes on are.</summary>
/// <remarks>
/// The cover of a raw-water pump is opened at every look at the impeller; with the pattern an app can ask whether a cover fits as it is held,
/// and whether it also goes on the wrong way round.
/// </remarks>
/// <example><code>
/// FittedCover cover = FittedCover.Of(Joint.Of("raw-water pump cover", JointSeat.FlatGasket, ThreadMaterial.Bronze, MetricThread.M6))
///     .WithPattern(BoltPattern.Of(Length.FromMillimeters(34), 0, 110, 235), Length.FromMillimeters(6.6), firstHoleOn: 1);
/// Console.WriteLine(cover.FitOfItself().Value);   // Fits at one of 3 rotations: hole 1 on hole 1.
/// Console.WriteLine(cover.Joint.Tightening());    // raw-water pump cover: to contact, then no more.
/// </code></example>
public sealed class FittedCover
{
    internal const double LargestHoleMm = 100;

    private FittedCover(Joint joint, BoltPattern? pattern, double? holeMm, CoverLocation location, int? firstHoleOn) =>
        (Joint, Pattern, HoleMm, Location, FirstHoleOn) = (joint, pattern, holeMm, location, firstHoleOn);

    /// <summary>What the cover is called: the name of its joint.</summary>
    public string Name => Joint.Name;

    /// <summary>What the screws press together, and what the engine's maker says of it.</summary>
    public Joint Joint { get; }

    /// <summary>The tapped holes that the cover goes on, seen from outside; null when they are not stated.</summary>
    public BoltPattern? Pattern { get; }

    /// <summary>The diameter of the clear holes in the cover; null when it is not stated.</summary>
    public Length? CoverHole => HoleMm is double hole ? Length.FromMillimeters(hole) : null;

    /// <summary>What holds the cover in its place while the screws go in.</summary>
    public CoverLocation Location { get; }

    /// <summary>The number of the hole on which the cover's hole 1 belongs; null when nobody knows.</summary>
    public int? FirstHoleOn { get; }

    internal double? HoleMm { get; }

    /// <summary>A cover of which only the joint is stated.</summary>
    /// <param name="joint">What the screws press together; its name is the cover's.</param>
    /// <returns>The cover.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="joint"/> is null.</exception>
    public static FittedCover Of(Joint joint) => new(Guard.NotNull(joint), null, null, CoverLocation.Centered, null);

    /// <summary>A copy with the holes that it goes on.</summary>
    /// <param name="pattern">The tapped holes, seen from outside.</param>
    /// <param name="coverHole">Diameter of the clear holes in the cover, wider than the screws and up to 100 mm; null when it is not stated.</param>
    /// <param name="location">What holds the cover in its place while the screws go in.</param>
    /// <param name="firstHoleOn">The number of the hole on which the cover's hole 1 belongs, from 1; null when nobody knows.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="pattern"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The hole is no wider than the screws, <paramref name="location"/> is not a defined value, or there is no such hole.</exception>
    public FittedCover WithPattern(BoltPattern pattern, Length? coverHole = null, CoverLocation location = CoverLocation.Centered, int? firstHoleOn = null)
    {
        Guard.NotNull(pattern);
        double? hole = coverHole is Length given
            ? Guard.InRange(Guard.Positive(Canonical.Millimeters(given), "mm", nameof(coverHole)), 0, LargestHoleMm, "mm", nameof(coverHole))
            : null;
        return HoleFault(Joint.Thread, hole) is string fault
            ? throw new ArgumentOutOfRangeException(nameof(coverHole), hole, $"Must be {fault}.")
            : new(
                Joint,
                pattern,
                hole,
                Guard.Defined(location),
                firstHoleOn is int first ? Guard.InRange(first, 1, pattern.HoleCount, "(number of a hole)", nameof(firstHoleOn)) : null);
    }

    /// <summary>At which rotations a cover with these holes fits.</summary>
    /// <param name="cover">The holes of the cover at hand, seen from outside.</param>
    /// <returns>Every rotation with those that fit; not known when pattern, thread or hole is not stated.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="cover"/> is null.</exception>
    public Answer<CoverFit> Fit(BoltPattern cover)
    {
        Guard.NotNull(cover);
        string[] missing =
        [
            .. Pattern is null ? [$"The bolt pattern of '{Name}'."] : Array.Empty<string>(),
            .. Joint.Thread is null ? [$"The thread of the screws of '{Name}'."] : Array.Empty<string>(),
            .. HoleMm is null ? [$"The diameter of the holes in '{Name}'."] : Array.Empty<string>(),
        ];
        return missing.Length > 0
            ? Answer.NotKnown<CoverFit>(missing)
            : Answer.Known(Pattern!.Fit(
                cover, ScrewClearance.OnTappedHole(Length.FromMillimeters(HoleMm!.Value), Joint.Thread!.Diameter), Location, FirstHoleOn));
    }

    /// <summary>At which rotations the engine's own cover fits: more than one is a chance to close it wrongly.</summary>
    /// <returns>Every rotation with those that fit; not known when pattern, thread or hole is not stated.</returns>
    public Answer<CoverFit> FitOfItself() => Pattern is BoltPattern own ? Fit(own) : Answer.NotKnown<CoverFit>($"The bolt pattern of '{Name}'.");

    /// <summary>The name.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Name;

    /// <summary>What a hole must be that these screws do not go through, or null.</summary>
    internal static string? HoleFault(MetricThread? thread, double? holeMm) =>
        thread is not null && holeMm <= thread.DiameterMm ? FormattableString.Invariant($"wider than the screws, {thread.DiameterMm} mm") : null;
}
