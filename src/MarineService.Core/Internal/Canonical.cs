using UnitsNet;
using UnitsNet.Units;

namespace MarineService.Core.Internal;

/// <summary>The one door from UnitsNet quantities to the doubles that the library calculates with.</summary>
/// <remarks>
/// Inside, amounts are plain doubles with the unit in the name. A quantity that is a default value, not finite or absurd
/// is refused by the guard that follows the conversion, which names the caller's argument.
/// </remarks>
internal static class Canonical
{
    internal static double Liters(Volume volume) => volume.Liters;

    /// <summary>UnitsNet allocates to convert from degrees Fahrenheit, and goes by way of kelvins, which moves the last digits.</summary>
    internal static double Celsius(Temperature temperature) =>
        temperature.Unit == TemperatureUnit.DegreeFahrenheit ? (temperature.Value - 32) / 1.8 : temperature.DegreesCelsius;

    internal static double Millimeters(Length length) => length.Millimeters;

    internal static double MillimetersSquaredPerSecond(KinematicViscosity viscosity) => viscosity.Centistokes;

    internal static double Kilowatts(Power power) => (double)power.Kilowatts;

    internal static double RevolutionsPerMinute(RotationalSpeed speed) => speed.RevolutionsPerMinute;

    internal static double MillipascalSeconds(DynamicViscosity viscosity) => viscosity.MillipascalSeconds;

    internal static double Kelvins(TemperatureDelta difference) => difference.Kelvins;

    internal static double KilogramsPerCubicMeter(Density density) => density.KilogramsPerCubicMeter;

    internal static double Newtons(Force force) => force.Newtons;

    internal static double NewtonMeters(Torque torque) => torque.NewtonMeters;

    internal static double KilogramsPerMeter(LinearDensity density) => density.KilogramsPerMeter;

    internal static double Volts(ElectricPotential potential) => potential.Volts;

    internal static double Megapascals(Pressure pressure) => pressure.Megapascals;

    internal static double Degrees(Angle angle) => angle.Degrees;

    internal static double LitersPerMinute(VolumeFlow flow) => flow.LitersPerMinute;

    internal static double Seconds(Duration duration) => duration.Seconds;

    internal static double Hertz(Frequency frequency) => frequency.Hertz;

    internal static double Kilopascals(Pressure pressure) => pressure.Kilopascals;

    internal static double Radians(Angle angle) => angle.Radians;

    internal static double SquareMeters(Area area) => area.SquareMeters;

    internal static double Grams(Mass mass) => mass.Grams;
}
