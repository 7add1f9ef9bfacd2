using System.Globalization;
using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Belts;

/// <summary>A ribbed belt of the PK profile: ribs, effective length, and the few dimensions that geometry and tension need.</summary>
public sealed class RibbedBelt
{
    internal const int MostRibs = 30;
    internal const double LongestMm = 20_000;
    internal const double ThickestMm = 30;
    internal const double WidestToleranceMm = 200;
    internal const double WidestOffsetMm = 10;
    internal const double HeaviestKilogramsPerMeter = 1;

    private readonly double? _effectiveLengthMm;
    private readonly double? _toleranceMm;

    private RibbedBelt(
        int? ribs, double? effectiveLengthMm, double? toleranceMm, double differentialMm, double backToPitchMm, double thicknessMm, double massPerRib)
    {
        (Ribs, _effectiveLengthMm, _toleranceMm) = (ribs, effectiveLengthMm, toleranceMm);
        (EffectiveLineDifferentialMm, BackToPitchLineMm, ThicknessMm) = (differentialMm, backToPitchMm, thicknessMm);
        MassPerRibKilogramsPerMeter = massPerRib;
    }

    /// <summary>A PK belt of which neither ribs nor length are known; enough for shape, wraps and senses.</summary>
    public static RibbedBelt Unmeasured { get; } = new(
        null,
        null,
        null,
        PkProfile.EffectiveLineDifferentialMm,
        PkProfile.BackToPitchLineMm,
        PkProfile.ThicknessMm,
        PkProfile.MassPerRibKilogramsPerMeter);

    /// <summary>The number of ribs, or null when not known.</summary>
    public int? Ribs { get; }

    /// <summary>The effective length, as printed on the belt, or null when not known.</summary>
    public Length? EffectiveLength => _effectiveLengthMm is double mm ? Length.FromMillimeters(mm) : null;

    /// <summary>How far the real length may lie from the printed one, each way; null when no length is known.</summary>
    /// <remarks>When the caller gives none, the usual figure from memory of ISO 9981: 5 mm up to 1000 mm, up to 11 mm above 2500 mm.</remarks>
    public Length? Tolerance => _effectiveLengthMm is null ? null : Length.FromMillimeters(ToleranceMm);

    /// <summary>Distance from the effective line out to the pitch line [mm].</summary>
    public double EffectiveLineDifferentialMm { get; }

    /// <summary>Distance from the belt's back to the pitch line [mm].</summary>
    public double BackToPitchLineMm { get; }

    /// <summary>Thickness from rib tip to back [mm].</summary>
    public double ThicknessMm { get; }

    /// <summary>Mass of one rib's width of belt.</summary>
    public LinearDensity MassPerRib => LinearDensity.FromKilogramsPerMeter(MassPerRibKilogramsPerMeter);

    internal double MassPerRibKilogramsPerMeter { get; }

    internal double? EffectiveLengthMm => _effectiveLengthMm;

    internal double ToleranceMm => _toleranceMm ?? PkProfile.UsualLengthToleranceMm(_effectiveLengthMm ?? 0);

    internal bool ToleranceIsGiven => _toleranceMm is not null;

    /// <summary>The width of the belt [mm], or null when the ribs are not known.</summary>
    internal double? WidthMm => Ribs * PkProfile.RibPitchMm;

    internal double? MassKilogramsPerMeter => Ribs * MassPerRibKilogramsPerMeter;

    /// <summary>A PK belt with a number of ribs and the usual dimensions; its length not known yet.</summary>
    /// <param name="ribs">From 1 to 30.</param>
    /// <returns>The belt.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="ribs"/> is outside its range.</exception>
    public static RibbedBelt Pk(int ribs) => Unmeasured.With(ribs: Guard.InRange(ribs, 1, MostRibs, "ribs"));

    /// <summary>A PK belt as its designation says: 6PK1910 is <c>Pk(6, Length.FromMillimeters(1910))</c>.</summary>
    /// <param name="ribs">From 1 to 30.</param>
    /// <param name="effectiveLength">The printed length; above 0 and up to 20,000 mm.</param>
    /// <param name="tolerance">How far the real length may lie from it, each way, up to 200 mm; null for the usual figure.</param>
    /// <returns>The belt.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static RibbedBelt Pk(int ribs, Length effectiveLength, Length? tolerance = null) =>
        Pk(ribs).OfEffectiveLength(effectiveLength, tolerance);

    /// <summary>The same belt with another effective length.</summary>
    /// <param name="effectiveLength">The printed length; above 0 and up to 20,000 mm.</param>
    /// <param name="tolerance">How far the real length may lie from it, each way, up to 200 mm; null for the usual figure.</param>
    /// <returns>A new belt.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public RibbedBelt OfEffectiveLength(Length effectiveLength, Length? tolerance = null)
    {
        double lengthMm = Guard.Positive(Canonical.Millimeters(effectiveLength), "mm", nameof(effectiveLength));
        Guard.InRange(lengthMm, 0, LongestMm, "mm", nameof(effectiveLength));
        double? toleranceMm = tolerance is Length given ? Guard.InRange(Canonical.Millimeters(given), 0, WidestToleranceMm, "mm", nameof(tolerance)) : null;
        return new(
            Ribs, lengthMm, toleranceMm, EffectiveLineDifferentialMm, BackToPitchLineMm, ThicknessMm, MassPerRibKilogramsPerMeter);
    }

    /// <summary>The same belt with measured dimensions in place of the usual ones.</summary>
    /// <param name="effectiveLineDifferentialMm">Effective line to pitch line, from 0 to 10 mm.</param>
    /// <param name="backToPitchLineMm">Back to pitch line, from 0 to 10 mm.</param>
    /// <param name="thicknessMm">Rib tip to back, from <paramref name="backToPitchLineMm"/> to 30 mm.</param>
    /// <returns>A new belt.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public RibbedBelt WithThickness(double effectiveLineDifferentialMm, double backToPitchLineMm, double thicknessMm) => new(
        Ribs,
        _effectiveLengthMm,
        _toleranceMm,
        Guard.InRange(effectiveLineDifferentialMm, 0, WidestOffsetMm, "mm"),
        Guard.InRange(backToPitchLineMm, 0, WidestOffsetMm, "mm"),
        Guard.InRange(thicknessMm, backToPitchLineMm, ThickestMm, "mm"),
        MassPerRibKilogramsPerMeter);

    /// <summary>The same belt with a weighed mass in place of the usual one.</summary>
    /// <param name="massPerRib">Mass of a metre of belt divided by its ribs; above 0 and up to 1 kg/m.</param>
    /// <returns>A new belt.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mass is outside its range.</exception>
    public RibbedBelt WithMassPerRib(LinearDensity massPerRib) => new(
        Ribs,
        _effectiveLengthMm,
        _toleranceMm,
        EffectiveLineDifferentialMm,
        BackToPitchLineMm,
        ThicknessMm,
        Guard.InRange(
            Guard.Positive(Canonical.KilogramsPerMeter(massPerRib), "kg/m", nameof(massPerRib)), 0, HeaviestKilogramsPerMeter, "kg/m", nameof(massPerRib)));

    /// <summary>The designation, such as "6PK1910", as far as it is known.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() =>
        $"{Ribs?.ToString(CultureInfo.InvariantCulture) ?? "?"}PK{_effectiveLengthMm?.ToString("0.#", CultureInfo.InvariantCulture) ?? "?"}";

    private RibbedBelt With(int ribs) => new(
        ribs,
        _effectiveLengthMm,
        _toleranceMm,
        EffectiveLineDifferentialMm,
        BackToPitchLineMm,
        ThicknessMm,
        MassPerRibKilogramsPerMeter);
}
