using MarineService.Core.Fluids;
using UnitsNet;

namespace MarineService.Core.Tests.Fluids;

/// <summary>Sumps and volumes that several tests share.</summary>
internal static class Changes
{
    /// <summary>Service fill 6.0 L, filter 0.6 L, 1.0 L between the marks.</summary>
    internal static Sump SixLiters { get; } = Sump.Holding(L(6.0), L(0.6), Dipstick.WithRange(L(1.0)));

    internal static Volume L(double liters) => Volume.FromLiters(liters);

    internal static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    /// <summary>Measured at 15 °C, with a standard uncertainty when given.</summary>
    internal static MeasuredVolume At15(double liters, double? sigma = null) =>
        MeasuredVolume.Of(L(liters), C(15), sigma is double s ? L(s) : null);

    internal static MeasuredVolume At(double liters, double celsius, double? sigma = null) =>
        MeasuredVolume.Of(L(liters), C(celsius), sigma is double s ? L(s) : null);

    /// <summary>Nothing is doubtful but what a test says is.</summary>
    internal static OilChangeLimits NoDoubtOfHeat { get; } =
        OilChangeLimits.Default.WithUncertainties(0.015, TemperatureDelta.FromKelvins(0), 0);
}
