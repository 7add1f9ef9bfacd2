using MarineService.Core.Internal;

namespace MarineService.Core.Belts;

/// <summary>What is published about the PK profile: the ribbed belt with 3.56 mm rib pitch that engines use.</summary>
/// <remarks>Diameters are in millimetres. Each figure says in its remarks how well it is known.</remarks>
public static class PkProfile
{
    /// <summary>Distance from rib to rib [mm].</summary>
    /// <remarks>ISO 9981 and ISO 9982 as summarized by a trade glossary; reproduced from the diameters of SAE J1459.</remarks>
    public const double RibPitchMm = 3.56;

    /// <summary>Smallest effective diameter of a grooved pulley [mm].</summary>
    /// <remarks>ISO 9981:2020, 5.2.</remarks>
    public const double SmallestEffectiveDiameterMm = 45;

    /// <summary>Smallest effective diameter for a fair belt life [mm].</summary>
    /// <remarks>SAE J1596 (cancelled 2019), as summarized by others.</remarks>
    public const double PracticalEffectiveDiameterMm = 50;

    /// <summary>Smallest diameter of a pulley on the belt's back [mm]; engines in service often use less.</summary>
    /// <remarks>SAE J1596 (cancelled 2019), as summarized by others.</remarks>
    public const double SmallestBackDiameterMm = 90;

    /// <summary>Highest belt speed [m/s].</summary>
    /// <remarks>SAE J1596 (cancelled 2019), as summarized by others.</remarks>
    public const double HighestSpeedMetersPerSecond = 50;

    /// <summary>Nominal distance from the effective line out to the pitch line [mm], for speed ratios.</summary>
    /// <remarks>ISO 9981:2020, 5.4. A thin belt's real one is probably smaller.</remarks>
    public const double EffectiveLineDifferentialMm = 2;

    /// <summary>Distance from the belt's back to the pitch line [mm]; 1.0 to 1.5 is usual.</summary>
    /// <remarks>From memory: no published figure was found.</remarks>
    public const double BackToPitchLineMm = 1.2;

    /// <summary>Thickness of the belt from rib tip to back [mm]; 4.3 to 5.3 is usual on engines.</summary>
    /// <remarks>From memory: no published figure was found.</remarks>
    public const double ThicknessMm = 4.8;

    /// <summary>Mass of one rib's width of belt [kg/m]; figures from 0.016 to 0.021 are about.</summary>
    /// <remarks>From memory: no published figure was found.</remarks>
    public const double MassPerRibKilogramsPerMeter = 0.018;

    internal const double InstallationNewtonsPerKilowatt = 60;

    private const double BallsToEffectiveMm = 0.990;
    private const double BallsToTip40Mm = 1.875;
    private const double BallsToTip37Mm = 1.805;

    internal static Citation Diameters { get; } = Citation.Secondary("SAE J1459", "2022", "table of diameters");

    internal static Citation SmallestEffectiveDiameter { get; } = Citation.Published("ISO 9981", "2020", "5.2");

    internal static Citation Differential { get; } = Citation.Published("ISO 9981", "2020", "5.4");

    internal static Citation J1596 { get; } = Citation.Secondary("SAE J1596", "cancelled 2019", "as a whole");

    /// <summary>The effective diameter from the diameter measured over 2.50 mm balls laid in the grooves.</summary>
    /// <remarks>SAE J1459-2022 as summarized by others: 0.990 mm less, for both groove angles.</remarks>
    /// <param name="overBallsMm">Diameter over balls; above 0.99 and up to 1000 mm.</param>
    /// <returns>The effective diameter [mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="overBallsMm"/> is outside its range.</exception>
    public static double EffectiveFromOverBallsMm(double overBallsMm) =>
        Effective(Guard.Finite(overBallsMm, "mm") - BallsToEffectiveMm, overBallsMm, nameof(overBallsMm));

    /// <summary>The effective diameter from the outside diameter over the groove tips, as a caliper reads it.</summary>
    /// <remarks>SAE J1459-2022 as summarized by others: 0.885 mm more at 40 degrees, 0.815 mm more at 37 degrees.</remarks>
    /// <param name="outsideMm">Outside diameter; above 0 and up to 999 mm.</param>
    /// <param name="angle">The groove angle.</param>
    /// <returns>The effective diameter [mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static double EffectiveFromOutsideMm(double outsideMm, GrooveAngle angle = GrooveAngle.Degrees40) =>
        Effective(Guard.Positive(outsideMm, "mm") + OutsideBelowEffectiveMm(angle), outsideMm, nameof(outsideMm));

    /// <summary>Friction of a rib in its groove from the friction of flat rubber: the flanks wedge.</summary>
    /// <remarks>Textbook rule for V-belts: the coefficient divided by the sine of half the groove angle.</remarks>
    /// <param name="flatFrictionRatio">Coefficient on a flat surface, from 0 to 5.</param>
    /// <param name="angle">The groove angle.</param>
    /// <returns>The effective coefficient.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static double WedgedFrictionRatio(double flatFrictionRatio, GrooveAngle angle = GrooveAngle.Degrees40) =>
        Guard.InRange(flatFrictionRatio, 0, 5, "(ratio)") / Math.Sin(HalfAngleRad(angle));

    /// <summary>How much the outside diameter is below the effective diameter.</summary>
    internal static double OutsideBelowEffectiveMm(GrooveAngle angle) =>
        (Guard.Defined(angle) == GrooveAngle.Degrees40 ? BallsToTip40Mm : BallsToTip37Mm) - BallsToEffectiveMm;

    /// <summary>The usual tolerance on effective length, from memory of ISO 9981's table.</summary>
    internal static double UsualLengthToleranceMm(double effectiveLengthMm) => effectiveLengthMm switch
    {
        <= 1000 => 5,
        <= 1200 => 6,
        <= 1500 => 8,
        <= 2000 => 9,
        <= 2500 => 10,
        _ => 11,
    };

    private static double HalfAngleRad(GrooveAngle angle) => (Guard.Defined(angle) == GrooveAngle.Degrees40 ? 20 : 18.5) * Math.PI / 180;

    private static double Effective(double effectiveMm, double givenMm, string name) =>
        effectiveMm > 0 && effectiveMm <= Pulley.LargestDiameterMm
            ? effectiveMm
            : throw new ArgumentOutOfRangeException(name, givenMm, "Must give an effective diameter above 0 and up to 1000 mm.");
}
