using System.Runtime.CompilerServices;
using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.LayUp;

/// <summary>Ranges that several parts of this room share.</summary>
internal static class LayUpGuard
{
    internal const double MaxLiters = 10_000;

    /// <summary>Outdoor air; what a freezing point is asked for.</summary>
    internal static double AirCelsius(Temperature temperature, [CallerArgumentExpression(nameof(temperature))] string? name = null) =>
        Guard.InRange(Canonical.Celsius(temperature), -60, 60, "°C", name);

    internal static double LitersFrom0(Volume volume, [CallerArgumentExpression(nameof(volume))] string? name = null) =>
        Guard.InRange(Canonical.Liters(volume), 0, MaxLiters, "L", name);

    internal static double LitersAbove0(Volume volume, [CallerArgumentExpression(nameof(volume))] string? name = null) =>
        Guard.InRange(Guard.Positive(Canonical.Liters(volume), "L", name), 0, MaxLiters, "L", name);
}
