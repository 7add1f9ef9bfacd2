using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core;

/// <summary>A volume as it was measured: how much, at which temperature, and how sure.</summary>
/// <remarks>Kept in litres and degrees Celsius. Two are equal when all three parts are.</remarks>
public sealed record MeasuredVolume
{
    // 10 m3 is far beyond any sump, tank or cooling circuit of a small craft; more is a typing mistake.
    private const double MaxLiters = 10_000;
    private const double MinCelsius = -60;
    private const double MaxCelsius = 200;

    private readonly double _liters;
    private readonly double? _celsius;
    private readonly double? _sigmaLiters;

    private MeasuredVolume(double liters, double? celsius, double? sigmaLiters) =>
        (_liters, _celsius, _sigmaLiters) = (liters, celsius, sigmaLiters);

    /// <summary>The volume as read, at the temperature of the measurement.</summary>
    public Volume Volume => Volume.FromLiters(_liters);

    /// <summary>The temperature of the fluid when it was measured, or null when it was not taken.</summary>
    public Temperature? Temperature => _celsius is double celsius ? UnitsNet.Temperature.FromDegreesCelsius(celsius) : null;

    /// <summary>The standard uncertainty (one standard deviation) of the reading, or null when it is not known.</summary>
    public Volume? StandardUncertainty => _sigmaLiters is double sigma ? Volume.FromLiters(sigma) : null;

    internal double Liters => _liters;

    internal double? Celsius => _celsius;

    internal double? SigmaLiters => _sigmaLiters;

    /// <summary>A measured volume.</summary>
    /// <param name="volume">From 0 to 10,000 L.</param>
    /// <param name="temperature">From -60 to 200 °C, or null when it was not taken.</param>
    /// <param name="standardUncertainty">One standard deviation, from 0 to 10,000 L, or null when it is not known.</param>
    /// <returns>The measured volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range; the message names it.</exception>
    /// <example><code>MeasuredVolume.Of(Volume.FromLiters(5.5), Temperature.FromDegreesCelsius(70), Volume.FromLiters(0.05));</code></example>
    public static MeasuredVolume Of(Volume volume, Temperature? temperature = null, Volume? standardUncertainty = null) =>
        new(
            Guard.InRange(Canonical.Liters(volume), 0, MaxLiters, "L", nameof(volume)),
            temperature is Temperature t ? Guard.InRange(Canonical.Celsius(t), MinCelsius, MaxCelsius, "°C", nameof(temperature)) : null,
            standardUncertainty is Volume u ? Guard.InRange(Canonical.Liters(u), 0, MaxLiters, "L", nameof(standardUncertainty)) : null);

    /// <summary>The volume with temperature and uncertainty, metric and invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => ToString(DisplayUnits.Metric);

    /// <summary>The volume with temperature and uncertainty, invariant.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public string ToString(DisplayUnits units)
    {
        Guard.Defined(units);
        string text = FigureUnit.Liter.Write(_liters, units);
        if (_sigmaLiters is double sigma)
        {
            text += $" ± {FigureUnit.Liter.Write(sigma, units)}";
        }

        return _celsius is double celsius ? $"{text} at {FigureUnit.DegreeCelsius.Write(celsius, units)}" : text;
    }
}
