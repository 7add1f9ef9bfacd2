using MarineService.Core.Internal;
using NodaTime;
using UnitsNet;

namespace MarineService.Core.Oils;

/// <summary>The lowest air temperature expected on a date.</summary>
/// <remarks>Two are equal when both parts are.</remarks>
public sealed record NightMinimum
{
    private NightMinimum(LocalDate date, double celsius) => (Date, Celsius) = (date, celsius);

    /// <summary>The date.</summary>
    public LocalDate Date { get; }

    /// <summary>The lowest air temperature.</summary>
    public Temperature Temperature => Temperature.FromDegreesCelsius(Celsius);

    internal double Celsius { get; }

    /// <summary>A night's minimum.</summary>
    /// <param name="date">The date, from 1900 to 2199.</param>
    /// <param name="temperature">The lowest air temperature, from -60 to 60 °C.</param>
    /// <returns>The night.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static NightMinimum Of(LocalDate date, Temperature temperature) => new(Guard.Date(date), OilGuard.AmbientCelsius(temperature));

    /// <summary>Date and temperature, metric and invariant.</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() => FormattableString.Invariant($"{NodaTime.Text.LocalDatePattern.Iso.Format(Date)} {Celsius:0.#} °C");
}
