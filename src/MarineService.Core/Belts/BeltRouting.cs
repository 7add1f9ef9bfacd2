using MarineService.Core.Internal;

namespace MarineService.Core.Belts;

/// <summary>One way in which the belt lies over the pulleys of a drive: an order, from the crank on, and a face for each.</summary>
/// <remarks>Two routings of one drive are equal when they have the same stops in the same order.</remarks>
public sealed partial class BeltRouting : IEquatable<BeltRouting>
{
    private readonly int[] _pulleys;
    private readonly BeltFace[] _faces;
    private readonly OrientedCircle[] _circles;

    internal BeltRouting(BeltDrive drive, (int Pulley, BeltFace Face)[] stops)
    {
        Drive = drive;
        _pulleys = new int[stops.Length];
        _faces = new BeltFace[stops.Length];
        _circles = new OrientedCircle[stops.Length];
        RoutingStop[] named = new RoutingStop[stops.Length];
        for (int i = 0; i < stops.Length; i++)
        {
            (_pulleys[i], _faces[i]) = stops[i];
            _circles[i] = drive.Circle(_pulleys[i], _faces[i], stops[0].Face);
            named[i] = RoutingStop.On(drive.Pulleys[_pulleys[i]].Name, _faces[i]);
        }

        Stops = Array.AsReadOnly(named);
    }

    /// <summary>The drive whose pulleys the belt lies on.</summary>
    public BeltDrive Drive { get; }

    /// <summary>The stops in the direction of the belt's travel, the crank first.</summary>
    public IReadOnlyList<RoutingStop> Stops { get; }

    internal ReadOnlySpan<int> PulleyIndexes => _pulleys;

    internal ReadOnlySpan<BeltFace> Faces => _faces;

    internal ReadOnlySpan<OrientedCircle> Circles => _circles;

    /// <summary>The turning number of a belt that does not cross itself: the sign of the pulleys inside the loop, on the ribbed face.</summary>
    internal int ExpectedTurningNumber => _faces[0] == BeltFace.Ribs ? _circles[0].Sign : -_circles[0].Sign;

    /// <summary>The length of the pitch line, without allocating.</summary>
    /// <param name="pitchLengthMm">The length [mm]; not a number when there is none.</param>
    /// <returns>False when two pulleys in a row leave no room for a span.</returns>
    public bool TryGetPitchLength(out double pitchLengthMm) => BeltMath.TryPitchLengthMm(_circles, out pitchLengthMm);

    /// <summary>Tangent points, spans and wraps, written into the caller's memory without allocating.</summary>
    /// <param name="into">As many places as there are stops, or more.</param>
    /// <param name="pitchLengthMm">The length of the pitch line [mm]; not a number when there is none.</param>
    /// <returns>False when two pulleys in a row leave no room for a span.</returns>
    /// <exception cref="ArgumentException"><paramref name="into"/> has fewer places than there are stops.</exception>
    public bool TryGetGeometry(Span<StopGeometry> into, out double pitchLengthMm) =>
        into.Length >= _circles.Length
            ? BeltMath.TryGeometry(_circles, into, out pitchLengthMm)
            : throw new ArgumentException("Must have a place for each stop.", nameof(into));

    /// <summary>The measured pitch line: contacts, spans and lengths. Says nothing of whether it is possible: see <see cref="Check"/>.</summary>
    /// <returns>The geometry, or not known when two pulleys in a row leave no room for a span.</returns>
    public Answer<RoutingGeometry> Measure() =>
        TryMeasure() is RoutingGeometry geometry
            ? Answer.Known(geometry)
            : Answer.NotKnown<RoutingGeometry>("Centres and diameters that leave room for a span between each two pulleys in a row.");

    /// <summary>Which way the pulley of a stop turns.</summary>
    /// <param name="stop">The stop's place in the list, from 0.</param>
    /// <returns>The sense, seen from the pulley end.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="stop"/> is not a place in the list.</exception>
    public Rotation TurningOf(int stop) => Rotation.FromSign(_circles[Place(stop)].Sign);

    /// <summary>How fast the pulley of a stop turns for each turn of the crank; negative against the crank.</summary>
    /// <remarks>By pitch radii. Effective diameters would be several per cent out on small pulleys (SAE J1459, as summarized by others).</remarks>
    /// <param name="stop">The stop's place in the list, from 0.</param>
    /// <returns>The ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="stop"/> is not a place in the list.</exception>
    public double SpeedRatio(int stop) => _circles[0].SignedRadiusMm / _circles[Place(stop)].SignedRadiusMm;

    /// <summary>Whether both have the same stops in the same order, whatever drives they belong to.</summary>
    /// <param name="other">The other routing.</param>
    /// <returns>True when equal.</returns>
    public bool Equals(BeltRouting? other) => other is not null && Stops.SequenceEqual(other.Stops);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as BeltRouting);

    /// <inheritdoc/>
    public override int GetHashCode() => Stops.Aggregate(Stops.Count, (hash, stop) => (hash * 31) + stop.GetHashCode());

    /// <summary>The stops as a list that <see cref="BeltDrive.ReadRouting"/> reads: "crank, tensioner(back), alternator".</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => string.Join(", ", Written());

    internal string NameOf(int stop) => Stops[stop].PulleyName;

    internal RoutingGeometry? TryMeasure()
    {
        StopGeometry[] stops = new StopGeometry[_circles.Length];
        return BeltMath.TryGeometry(_circles, stops, out double lengthMm)
            ? new RoutingGeometry(stops, lengthMm, Drive.Belt.EffectiveLineDifferentialMm, ExpectedTurningNumber)
            : null;
    }

    /// <summary>The pulleys that the belt passes by, each as if touched by the face it is made for.</summary>
    internal int[] UnroutedPulleys() => [.. Enumerable.Range(0, Drive.Pulleys.Count).Where(pulley => Array.IndexOf(_pulleys, pulley) < 0)];

    internal OrientedCircle[] Obstacles(int[] unrouted) =>
        [.. unrouted.Select(pulley => Drive.Circle(pulley, Drive.Pulleys[pulley].IntendedFace, _faces[0]))];

    // The bare name is enough where the face is the one that the rim is made for, except that the back is always said.
    internal IEnumerable<string> Written() => Stops.Select((stop, place) =>
        stop.Face == BeltFace.Ribs && Drive.Pulleys[_pulleys[place]].Surface == PulleySurface.Smooth ? $"{stop.PulleyName}(ribs)" : stop.ToString());

    private int Place(int stop) => Guard.InRange(stop, 0, _circles.Length - 1, "(place)", nameof(stop));
}
