using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Fluids;

/// <summary>The density of fresh water against temperature.</summary>
/// <remarks>Air-free water at one atmosphere, 0 to 150 °C. Source: G. S. Kell, J. Chem. Eng. Data 20 (1975) 97.</remarks>
public static class Water
{
    internal static readonly Citation Source = Citation.Secondary("G. S. Kell, Journal of Chemical and Engineering Data 20, 97", "1975");

    /// <summary>The density of fresh water.</summary>
    /// <param name="temperature">Any temperature from -60 to 200 °C.</param>
    /// <returns>The density, or not known outside 0 to 100 °C, where water at one atmosphere is not a liquid.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="temperature"/> is outside -60 to 200 °C.</exception>
    public static Answer<Density> DensityAt(Temperature temperature)
    {
        double celsius = Guard.InRange(Canonical.Celsius(temperature), -60, 200, "°C", nameof(temperature));
        return DensityAtCelsius(celsius);
    }

    internal static Answer<Density> DensityAtCelsius(double celsius) =>
        celsius is >= 0 and <= 100
            ? Answer.Known(Density.FromKilogramsPerCubicMeter(KilogramsPerCubicMeter(celsius)))
            : Answer.NotKnown<Density>("A temperature from 0 to 100 °C, between ice and steam.");

    internal static double KilogramsPerCubicMeter(double t)
    {
        // The divisor's 16.879850e-3 is often printed as 16.897850e-3; with that, water at 100 °C comes out at 957.7, not 958.4.
        double numerator = 999.83952 + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 + t * -280.54253e-12))));
        return numerator / (1 + 16.879850e-3 * t);
    }
}
