using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Fluids;

/// <summary>A rectangular sump and where the dipstick meets its floor.</summary>
/// <remarks>
/// Real pans are stepped and rounded: a measured fill (<see cref="Dipstick.CalibratedBy"/>) beats this geometry. Positions
/// count from the center of the floor, aft and starboard positive. Derived, no published source.
/// </remarks>
public sealed class SumpShape
{
    internal static readonly Citation Source = Citation.Derived("the geometry of a rectangular sump with vertical walls");

    // Beyond this, tan(roll) is no longer independent of the pitch within 3.5 %; and no boat should be serviced so.
    private const double MaxTiltDegrees = 15;

    private readonly double _lengthMm;
    private readonly double _widthMm;
    private readonly double? _heightMm;
    private readonly double _stickXMm;
    private readonly double _stickYMm;
    private readonly double _leanRad;

    private SumpShape(double lengthMm, double widthMm, double? heightMm, double stickXMm, double stickYMm, double leanRad) =>
        (_lengthMm, _widthMm, _heightMm, _stickXMm, _stickYMm, _leanRad) = (lengthMm, widthMm, heightMm, stickXMm, stickYMm, leanRad);

    /// <summary>Inside length, fore and aft.</summary>
    public Length Length => Length.FromMillimeters(_lengthMm);

    /// <summary>Inside width, athwart.</summary>
    public Length Width => Length.FromMillimeters(_widthMm);

    /// <summary>Inside height, or null when it was not given.</summary>
    public Length? Height => _heightMm is double height ? Length.FromMillimeters(height) : null;

    /// <summary>How far aft of the center the stick stands; negative forward.</summary>
    public Length StickAft => Length.FromMillimeters(_stickXMm);

    /// <summary>How far to starboard of the center the stick stands; negative to port.</summary>
    public Length StickStarboard => Length.FromMillimeters(_stickYMm);

    /// <summary>How far the stick leans from the vertical on its floor.</summary>
    public Angle StickLean => Angle.FromRadians(_leanRad);

    internal double LengthMm => _lengthMm;

    internal double WidthMm => _widthMm;

    internal double? HeightMm => _heightMm;

    internal double StickXMm => _stickXMm;

    internal double StickYMm => _stickYMm;

    internal double LeanRad => _leanRad;

    internal double AreaMm2 => _lengthMm * _widthMm;

    /// <summary>A sump by its inside measures, the stick upright at the center of the floor.</summary>
    /// <param name="length">Fore and aft, above 0, at most 5 m.</param>
    /// <param name="width">Athwart, above 0, at most 5 m.</param>
    /// <param name="height">Above 0, at most 5 m, or null.</param>
    /// <returns>The shape.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public static SumpShape Rectangular(Length length, Length width, Length? height = null) =>
        new(Side(length, nameof(length)), Side(width, nameof(width)), height is Length h ? Side(h, nameof(height)) : null, 0, 0, 0);

    /// <summary>The same sump with the stick elsewhere.</summary>
    /// <param name="aft">From the center of the floor, at most half the length; negative forward.</param>
    /// <param name="starboard">From the center of the floor, at most half the width; negative to port.</param>
    /// <param name="lean">0 to 60° from the vertical; null for upright.</param>
    /// <returns>A new shape.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public SumpShape WithStickAt(Length aft, Length starboard, Angle? lean = null) =>
        new(
            _lengthMm,
            _widthMm,
            _heightMm,
            Guard.InRange(Canonical.Millimeters(aft), -0.5 * _lengthMm, 0.5 * _lengthMm, "mm", nameof(aft)),
            Guard.InRange(Canonical.Millimeters(starboard), -0.5 * _widthMm, 0.5 * _widthMm, "mm", nameof(starboard)),
            lean is Angle angle ? Guard.InRange(Canonical.Radians(angle), 0, Math.PI / 3, "rad", nameof(lean)) : 0);

    /// <summary>The oil between two marks.</summary>
    /// <param name="between">Distance between the marks along the stick; above 0, at most 5 m.</param>
    /// <returns>The volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="between"/> is outside its range.</exception>
    public Volume VolumeBetweenMarks(Length between) =>
        Volume.FromLiters(LitersAlongStick(Side(between, nameof(between))));

    /// <summary>How far a tilt makes the stick lie.</summary>
    /// <param name="pitch">Against the attitude of the marks, stern down positive; -90 to 90°, both excluded.</param>
    /// <param name="roll">Against the attitude of the marks, starboard down positive; -90 to 90°, both excluded.</param>
    /// <param name="oil">How much oil lies in the sump; above 0, at most 10,000 L.</param>
    /// <returns>
    /// The correction, or not known when a tilt is above 15°, when the floor falls dry at the high corner, or when the oil
    /// reaches the top of the sump at the low one.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Answer<TiltCorrection> CorrectionFor(Angle pitch, Angle roll, Volume oil)
    {
        double pitchRad = Tilt(pitch, nameof(pitch));
        double rollRad = Tilt(roll, nameof(roll));
        double liters = Guard.InRange(Guard.Positive(Canonical.Liters(oil), "L", nameof(oil)), 0, 10_000, "L", nameof(oil));
        return CorrectionFor(pitchRad, rollRad, liters);
    }

    /// <summary>Oil that a tilted floor keeps away from the drain.</summary>
    /// <param name="drainAft">The drain's place from the center of the floor, at most half the length; negative forward.</param>
    /// <param name="drainStarboard">The drain's place from the center of the floor, at most half the width; negative to port.</param>
    /// <param name="pitch">Stern down positive; -15 to 15°.</param>
    /// <param name="roll">Starboard down positive; -15 to 15°.</param>
    /// <returns>The volume that stays; 0 L when the drain is the lowest point or the floor is level.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Volume KeptByTilt(Length drainAft, Length drainStarboard, Angle pitch, Angle roll)
    {
        double limit = MaxTiltDegrees * Math.PI / 180;
        return Volume.FromLiters(DipstickMath.LitersKeptByTilt(
            _lengthMm,
            _widthMm,
            Guard.InRange(Canonical.Millimeters(drainAft), -0.5 * _lengthMm, 0.5 * _lengthMm, "mm", nameof(drainAft)),
            Guard.InRange(Canonical.Millimeters(drainStarboard), -0.5 * _widthMm, 0.5 * _widthMm, "mm", nameof(drainStarboard)),
            Guard.InRange(Canonical.Radians(pitch), -limit, limit, "rad", nameof(pitch)),
            Guard.InRange(Canonical.Radians(roll), -limit, limit, "rad", nameof(roll))));
    }

    /// <summary>The measures, metric and invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{FigureUnit.Millimeter.Write(_lengthMm, DisplayUnits.Metric)} × {FigureUnit.Millimeter.Write(_widthMm, DisplayUnits.Metric)}";

    /// <summary>Liters between two points of the stick; a leaning stick covers less depth than length.</summary>
    internal double LitersAlongStick(double alongStickMm) =>
        DipstickMath.LitersOfDepth(AreaMm2, alongStickMm * Math.Cos(_leanRad));

    internal Answer<TiltCorrection> CorrectionFor(double pitchRad, double rollRad, double liters)
    {
        double limit = MaxTiltDegrees * Math.PI / 180;
        if (Math.Abs(pitchRad) > limit || Math.Abs(rollRad) > limit)
        {
            return Answer.NotKnown<TiltCorrection>("A reading at no more than 15° of tilt.");
        }

        double centerMm = DipstickMath.DepthOfLiters(AreaMm2, liters);
        double cornerMm = DipstickMath.CornerDepthMm(_lengthMm, _widthMm, pitchRad, rollRad);
        if (centerMm < cornerMm)
        {
            return Answer.NotKnown<TiltCorrection>("A reading with less tilt: the high corner of the floor is dry.");
        }

        if (_heightMm is double height && centerMm + cornerMm > height)
        {
            return Answer.NotKnown<TiltCorrection>("A reading with less tilt: the oil reaches the top of the sump at the low corner.");
        }

        double depthMm = DipstickMath.TiltDepthMm(_stickXMm, _stickYMm, pitchRad, rollRad);
        return Answer.Known(new TiltCorrection(depthMm, DipstickMath.LitersOfDepth(AreaMm2, depthMm), pitchRad, rollRad));
    }

    private static double Side(Length length, string name)
    {
        double mm = Guard.Positive(Canonical.Millimeters(length), "mm", name);
        return Guard.InRange(mm, 0, 5000, "mm", name);
    }

    private static double Tilt(Angle angle, string name)
    {
        double rad = Canonical.Radians(angle);
        double right = Math.PI / 2;
        return rad > -right && rad < right
            ? rad
            : throw new ArgumentOutOfRangeException(name, rad, "Must lie between -90 and 90°, both excluded.");
    }
}
