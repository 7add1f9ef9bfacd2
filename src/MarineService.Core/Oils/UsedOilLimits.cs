using System.Runtime.CompilerServices;
using MarineService.Core.Internal;

namespace MarineService.Core.Oils;

/// <summary>When a used oil is worth a caution and when it is condemned; every limit may be changed, and says where it comes from.</summary>
/// <remarks>
/// No uniform set of limits exists (a tribology society's article, May 2012): own statistics and trends, and the engine maker's figures,
/// outrank all of these. Changes of viscosity are against the measured new oil at the same temperature.
/// </remarks>
public sealed record UsedOilLimits
{
    private UsedOilLimits(
        double thinnerCaution, double thinnerCritical, double thickerCaution, double thickerCritical,
        double fuelCaution, double fuelCritical, double waterCaution, double waterCritical, Citation citation)
    {
        (ThinnerCautionFraction, ThinnerCriticalFraction) = (thinnerCaution, thinnerCritical);
        (ThickerCautionFraction, ThickerCriticalFraction) = (thickerCaution, thickerCritical);
        (FuelCautionFraction, FuelCriticalFraction) = (fuelCaution, fuelCritical);
        (WaterCautionFraction, WaterCriticalFraction) = (waterCaution, waterCritical);
        Citation = citation;
    }

    /// <summary>Viscosity -10 and +15 % caution, -20 and +25 % critical; fuel 4 %; water 0.2 and 0.5 %. A project choice.</summary>
    public static UsedOilLimits ProjectDefault { get; } = new(0.10, 0.20, 0.15, 0.25, 0.04, 0.04, 0.002, 0.005, Citation.ProjectChoice);

    /// <summary>An oil laboratory's guide for diesel engines: viscosity -10 and +20, -20 and +30 %; fuel 3.5 and 7 %; water 0.3 and 0.5 %.</summary>
    public static UsedOilLimits LaboratoryGuideDiesel { get; } =
        new(0.10, 0.20, 0.20, 0.30, 0.035, 0.07, 0.003, 0.005, Citation.Secondary("Oil laboratory guide", null, "diesel engines"));

    /// <summary>The same guide for petrol engines: fuel 2.5 and 5 %, the rest as for diesel.</summary>
    public static UsedOilLimits LaboratoryGuidePetrol { get; } =
        new(0.10, 0.20, 0.20, 0.30, 0.025, 0.05, 0.003, 0.005, Citation.Secondary("Oil laboratory guide", null, "petrol engines"));

    /// <summary>Thinning that is worth a caution, as a share of the new oil's viscosity.</summary>
    public double ThinnerCautionFraction { get; }

    /// <summary>Thinning that condemns.</summary>
    public double ThinnerCriticalFraction { get; }

    /// <summary>Thickening that is worth a caution.</summary>
    public double ThickerCautionFraction { get; }

    /// <summary>Thickening that condemns.</summary>
    public double ThickerCriticalFraction { get; }

    /// <summary>Fuel that is worth a caution, as a share of the volume.</summary>
    public double FuelCautionFraction { get; }

    /// <summary>Fuel that condemns.</summary>
    public double FuelCriticalFraction { get; }

    /// <summary>Water that is worth a caution, as a share of the volume.</summary>
    public double WaterCautionFraction { get; }

    /// <summary>Water that condemns.</summary>
    public double WaterCriticalFraction { get; }

    /// <summary>Where the limits come from.</summary>
    public Citation Citation { get; }

    /// <summary>Limits of one's own: the engine maker's, a laboratory's.</summary>
    /// <param name="thinnerCautionFraction">From 0 to 1.</param>
    /// <param name="thinnerCriticalFraction">From 0 to 1, at least the caution.</param>
    /// <param name="thickerCautionFraction">From 0 to 1.</param>
    /// <param name="thickerCriticalFraction">From 0 to 1, at least the caution.</param>
    /// <param name="fuelCautionFraction">From 0 to 1.</param>
    /// <param name="fuelCriticalFraction">From 0 to 1, at least the caution.</param>
    /// <param name="waterCautionFraction">From 0 to 1.</param>
    /// <param name="waterCriticalFraction">From 0 to 1, at least the caution.</param>
    /// <param name="citation">Where they come from; <see cref="Citation.GivenByCaller"/> when null.</param>
    /// <returns>The limits.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or a critical limit lies before its caution.</exception>
    public static UsedOilLimits Of(
        double thinnerCautionFraction, double thinnerCriticalFraction, double thickerCautionFraction, double thickerCriticalFraction,
        double fuelCautionFraction, double fuelCriticalFraction, double waterCautionFraction, double waterCriticalFraction, Citation? citation = null) =>
        new(
            OilGuard.Fraction(thinnerCautionFraction), NotBefore(thinnerCautionFraction, thinnerCriticalFraction),
            OilGuard.Fraction(thickerCautionFraction), NotBefore(thickerCautionFraction, thickerCriticalFraction),
            OilGuard.Fraction(fuelCautionFraction), NotBefore(fuelCautionFraction, fuelCriticalFraction),
            OilGuard.Fraction(waterCautionFraction), NotBefore(waterCautionFraction, waterCriticalFraction),
            citation ?? Citation.GivenByCaller);

    private static double NotBefore(double caution, double critical, [CallerArgumentExpression(nameof(critical))] string? name = null) =>
        Guard.InRange(critical, OilGuard.Fraction(caution), 1, "(a share of one, at least the caution)", name);
}
