using MarineService.Core.Internal;
using NodaTime;
using NodaTime.Text;
using UnitsNet;

namespace MarineService.Core.LayUp;

/// <summary>The lowest air temperature that was recorded at a site on a date, in whatever year.</summary>
/// <remarks>Two are equal when both parts are.</remarks>
public sealed record SiteMinimum
{
    private SiteMinimum(LocalDate date, double celsius) => (Date, Celsius) = (date, celsius);

    /// <summary>The date.</summary>
    public LocalDate Date { get; }

    /// <summary>The lowest air temperature.</summary>
    public Temperature Temperature => Temperature.FromDegreesCelsius(Celsius);

    internal double Celsius { get; }

    /// <summary>A recorded minimum.</summary>
    /// <param name="date">The date, from 1900 to 2199.</param>
    /// <param name="temperature">The lowest air temperature, from -60 to 60 °C.</param>
    /// <returns>The record.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static SiteMinimum Of(LocalDate date, Temperature temperature) => new(Guard.Date(date), LayUpGuard.AirCelsius(temperature));

    /// <summary>Date and temperature, metric and invariant.</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() => FormattableString.Invariant($"{LocalDatePattern.Iso.Format(Date)} {Celsius:0.#} °C");
}
