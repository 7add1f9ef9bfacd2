using System.Runtime.CompilerServices;
using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Oils;

/// <summary>The room's ranges, and the one rounding that keeps a unit conversion from deciding at a limit.</summary>
internal static class OilGuard
{
    internal const double ColdestCelsius = -60;
    internal const double WarmestCelsius = 200;

    /// <summary>Outdoor air: hotter than ever measured where boats float is a typing mistake.</summary>
    internal const double HottestAmbientCelsius = 60;

    /// <summary>One rounding grain, a millionth: far below any reading, far above the noise of a conversion.</summary>
    private const int GrainDecimals = 6;

    internal static double Celsius(Temperature value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        Round(Guard.InRange(Canonical.Celsius(value), ColdestCelsius, WarmestCelsius, "°C", name));

    internal static double AmbientCelsius(Temperature value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        Round(Guard.InRange(Canonical.Celsius(value), ColdestCelsius, HottestAmbientCelsius, "°C", name));

    internal static double Allowance(TemperatureDelta value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        Round(Guard.InRange(Canonical.Kelvins(value), 0, 40, "K", name));

    /// <summary>Kinematic viscosity of an oil or a fuel.</summary>
    internal static double Kinematic(KinematicViscosity value, double least, double most, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        Round(Guard.InRange(Canonical.MillimetersSquaredPerSecond(value), least, most, "mm²/s", name));

    internal static double Dynamic(DynamicViscosity value, double least, double most, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        Round(Guard.InRange(Canonical.MillipascalSeconds(value), least, most, "mPa·s", name));

    internal static double Fraction(double value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        Guard.InRange(value, 0, 1, "(a share of one)", name);

    internal static double Round(double value) => Math.Round(value, GrainDecimals);
}
