using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Belts;

/// <summary>One pulley of a drive: where it stands, how large it is, what its rim is made for, and what it must do.</summary>
/// <remarks>
/// Coordinates are in millimetres, x to the right and y up, seen from the pulley end of the engine. Nothing here says how the belt lies:
/// that is a <see cref="BeltRouting"/>. Pulleys that overlap are a verdict on the drive, never refused here.
/// </remarks>
public sealed class Pulley
{
    internal const double LargestDiameterMm = 1000;
    internal const double FarthestMm = 5000;
    internal const double HighestLoadKilowatts = 500;
    internal const double WidestMm = 300;
    internal const double SteepestLeanRatio = 0.2;

    private readonly Traits _traits;

    private Pulley(string name, PulleySurface surface, double xMm, double yMm, double diameterMm, Traits traits)
    {
        (Name, Surface, XMm, YMm, DiameterMm) = (name, surface, xMm, yMm, diameterMm);
        _traits = traits;
    }

    /// <summary>The pulley's name, unique within its drive.</summary>
    public string Name { get; }

    /// <summary>What the rim is made for.</summary>
    public PulleySurface Surface { get; }

    /// <summary>The centre, across [mm].</summary>
    public double XMm { get; }

    /// <summary>The centre, up [mm].</summary>
    public double YMm { get; }

    /// <summary>The effective diameter of a grooved pulley, the outside diameter of a smooth one [mm].</summary>
    public double DiameterMm { get; }

    /// <summary>What the pulley is there for.</summary>
    public PulleyDuty Duty => _traits.Duty;

    /// <summary>The sense in which it must turn, with its viewpoint; null when either sense will do.</summary>
    public Rotation? MustTurn => _traits.MustTurn;

    /// <summary>The power it takes from the belt, or null when not known.</summary>
    public Power? Load => _traits.LoadKilowatts is double kilowatts ? Power.FromKilowatts(kilowatts) : null;

    /// <summary>The width of the rim [mm], or null when not known.</summary>
    public double? WidthMm => _traits.WidthMm;

    /// <summary>The middle of the rim along the crankshaft's axis [mm], positive away from the engine; null when not known.</summary>
    public double? AxialPositionMm => _traits.AxialMm;

    /// <summary>How much the pulley's plane leans away from the engine for each millimetre to the right.</summary>
    public double LeanAcrossRatio => _traits.LeanAcross;

    /// <summary>How much the pulley's plane leans away from the engine for each millimetre upwards.</summary>
    public double LeanUpRatio => _traits.LeanUp;

    /// <summary>The least wrap its maker asks for [degrees], or null when not given.</summary>
    public double? LeastWrapDegrees => _traits.LeastWrapDegrees;

    /// <summary>The face of the belt that the rim is made for.</summary>
    public BeltFace IntendedFace => Surface == PulleySurface.Grooved ? BeltFace.Ribs : BeltFace.Back;

    internal double? LoadKilowatts => _traits.LoadKilowatts;

    /// <summary>The radius of the hard rim: what a passing belt would rub on.</summary>
    internal double RimRadiusMm =>
        (Surface == PulleySurface.Grooved ? DiameterMm - PkProfile.OutsideBelowEffectiveMm(GrooveAngle.Degrees40) : DiameterMm) / 2;

    /// <summary>A grooved pulley, by its effective diameter.</summary>
    /// <remarks>A caliper reads the outside diameter: convert it with <see cref="PkProfile.EffectiveFromOutsideMm"/>.</remarks>
    /// <param name="name">Its name; not blank, without commas and brackets.</param>
    /// <param name="xMm">Centre, across; from -5000 to 5000 mm.</param>
    /// <param name="yMm">Centre, up; from -5000 to 5000 mm.</param>
    /// <param name="effectiveDiameterMm">Effective diameter; above 0 and up to 1000 mm.</param>
    /// <returns>The pulley.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank or holds a comma or a bracket.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static Pulley Grooved(string name, double xMm, double yMm, double effectiveDiameterMm) =>
        Create(Guard.NotBlank(name), PulleySurface.Grooved, xMm, yMm, effectiveDiameterMm, nameof(effectiveDiameterMm));

    /// <summary>A smooth pulley, by its outside diameter.</summary>
    /// <param name="name">Its name; not blank, without commas and brackets.</param>
    /// <param name="xMm">Centre, across; from -5000 to 5000 mm.</param>
    /// <param name="yMm">Centre, up; from -5000 to 5000 mm.</param>
    /// <param name="diameterMm">Outside diameter; above 0 and up to 1000 mm.</param>
    /// <returns>The pulley.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank or holds a comma or a bracket.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static Pulley Smooth(string name, double xMm, double yMm, double diameterMm) =>
        Create(Guard.NotBlank(name), PulleySurface.Smooth, xMm, yMm, diameterMm, nameof(diameterMm));

    /// <summary>The same pulley with its duty.</summary>
    /// <param name="duty">What it is there for.</param>
    /// <returns>A new pulley.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="duty"/> is not a defined value.</exception>
    public Pulley WithDuty(PulleyDuty duty) => With(_traits with { Duty = Guard.Defined(duty) });

    /// <summary>The same pulley with the sense in which it must turn, as cast or arrowed on the device.</summary>
    /// <remarks>A pump read from its cover may be seen from the other end: say so in the rotation.</remarks>
    /// <param name="rotation">The sense with its viewpoint.</param>
    /// <returns>A new pulley.</returns>
    public Pulley WithRequiredRotation(Rotation rotation) => With(_traits with { MustTurn = rotation });

    /// <summary>The same pulley with the power it takes from the belt.</summary>
    /// <param name="load">From 0 to 500 kW.</param>
    /// <returns>A new pulley.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="load"/> is outside its range.</exception>
    public Pulley WithLoad(Power load) =>
        With(_traits with { LoadKilowatts = Guard.InRange(Canonical.Kilowatts(load), 0, HighestLoadKilowatts, "kW", nameof(load)) });

    /// <summary>The same pulley with the width of its rim.</summary>
    /// <param name="widthMm">Above 0 and up to 300 mm.</param>
    /// <returns>A new pulley.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="widthMm"/> is outside its range.</exception>
    public Pulley WithWidth(double widthMm) =>
        With(_traits with { WidthMm = Guard.InRange(Guard.Positive(widthMm, "mm"), 0, WidestMm, "mm", nameof(widthMm)) });

    /// <summary>The same pulley with the position of its groove plane along the crankshaft.</summary>
    /// <param name="axialPositionMm">Middle of the rim, positive away from the engine; from -5000 to 5000 mm.</param>
    /// <param name="leanAcrossRatio">Lean of the plane for each millimetre to the right, from -0.2 to 0.2.</param>
    /// <param name="leanUpRatio">Lean of the plane for each millimetre upwards, from -0.2 to 0.2.</param>
    /// <returns>A new pulley.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public Pulley WithAxialPosition(double axialPositionMm, double leanAcrossRatio = 0, double leanUpRatio = 0) => With(_traits with
    {
        AxialMm = Guard.InRange(axialPositionMm, -FarthestMm, FarthestMm, "mm"),
        LeanAcross = Guard.InRange(leanAcrossRatio, -SteepestLeanRatio, SteepestLeanRatio, "(ratio)"),
        LeanUp = Guard.InRange(leanUpRatio, -SteepestLeanRatio, SteepestLeanRatio, "(ratio)"),
    });

    /// <summary>The same pulley with the least wrap that its maker asks for.</summary>
    /// <param name="degrees">From 0 to 360 degrees.</param>
    /// <returns>A new pulley.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="degrees"/> is outside its range.</exception>
    public Pulley WithLeastWrap(double degrees) =>
        With(_traits with { LeastWrapDegrees = Guard.InRange(degrees, 0, 360, "degrees") });

    /// <summary>The same pulley at another centre.</summary>
    /// <param name="xMm">Centre, across; from -5000 to 5000 mm.</param>
    /// <param name="yMm">Centre, up; from -5000 to 5000 mm.</param>
    /// <returns>A new pulley.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public Pulley MovedTo(double xMm, double yMm) => new(
        Name, Surface, Guard.InRange(xMm, -FarthestMm, FarthestMm, "mm"), Guard.InRange(yMm, -FarthestMm, FarthestMm, "mm"), DiameterMm, _traits);

    /// <summary>Name and size: "'alternator', grooved 60 mm".</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() =>
        FormattableString.Invariant($"'{Name}', {(Surface == PulleySurface.Grooved ? "grooved" : "smooth")} {DiameterMm:0.###} mm");

    /// <summary>The radius of the pitch line when a face of the belt lies on this pulley.</summary>
    internal double PitchRadiusMm(BeltFace face, RibbedBelt belt) =>
        (DiameterMm / 2) + (face == BeltFace.Ribs ? belt.EffectiveLineDifferentialMm : belt.BackToPitchLineMm);

    /// <summary>Whether a routing can be written with this name: commas and brackets separate its entries.</summary>
    internal static bool IsName(string name) => name.IndexOfAny([',', '(', ')']) < 0;

    private static Pulley Create(string name, PulleySurface surface, double xMm, double yMm, double diameterMm, string diameterName)
    {
        if (!IsName(name))
        {
            throw new ArgumentException("Must not hold commas or brackets, which separate the entries of a routing.", nameof(name));
        }

        return new(
            name.Trim(),
            surface,
            Guard.InRange(xMm, -FarthestMm, FarthestMm, "mm"),
            Guard.InRange(yMm, -FarthestMm, FarthestMm, "mm"),
            Guard.InRange(Guard.Positive(diameterMm, "mm", diameterName), 0, LargestDiameterMm, "mm", diameterName),
            default);
    }

    private Pulley With(Traits traits) => new(Name, Surface, XMm, YMm, DiameterMm, traits);

    private readonly record struct Traits(
        PulleyDuty Duty,
        Rotation? MustTurn,
        double? LoadKilowatts,
        double? WidthMm,
        double? AxialMm,
        double LeanAcross,
        double LeanUp,
        double? LeastWrapDegrees);
}
