using UnitsNet;

namespace MarineService.Core;

/// <summary>The unit of a figure in a finding or an explanation, with the unit it is shown in for US readers.</summary>
/// <remarks>A closed list. Symbols are UCUM codes; documents use the same ones. Converting is UnitsNet's work.</remarks>
public sealed class FigureUnit
{
    private readonly Func<double, double> _toUs;
    private readonly string _format;
    private readonly string _usFormat;

    private FigureUnit(string symbol, string shown, string format)
        : this(symbol, shown, format, shown, format, value => value)
    {
    }

    private FigureUnit(string symbol, string shown, string format, string usShown, string usFormat, Func<double, double> toUs) =>
        (Symbol, Shown, _format, UsShown, _usFormat, _toUs) = (symbol, shown, format, usShown, usFormat, toUs);

    /// <summary>A bare number: a count or a ratio.</summary>
    public static FigureUnit Number { get; } = new("1", "", "0.######");

    /// <summary>A share of one, shown in percent.</summary>
    public static FigureUnit Fraction { get; } = new("1", "%", "0.0");

    /// <summary>Hours of running or of time.</summary>
    public static FigureUnit Hour { get; } = new("h", "h", "0.0##");

    /// <summary>Minutes of time.</summary>
    public static FigureUnit Minute { get; } = new("min", "min", "0.0");

    /// <summary>Seconds of time.</summary>
    public static FigureUnit Second { get; } = new("s", "s", "0.0");

    /// <summary>Days of the calendar.</summary>
    public static FigureUnit Day { get; } = new("d", "d", "0");

    /// <summary>Whole months of the calendar.</summary>
    public static FigureUnit Month { get; } = new("mo", "months", "0");

    /// <summary>Litres; US quarts.</summary>
    public static FigureUnit Liter { get; } = new("L", "L", "0.00", "US qt", "0.00", value => Volume.FromLiters(value).UsQuarts);

    /// <summary>Millilitres; US fluid ounces.</summary>
    public static FigureUnit Milliliter { get; } =
        new("mL", "mL", "0", "US fl oz", "0.0", value => Volume.FromMilliliters(value).UsOunces);

    /// <summary>Litres an hour; US gallons an hour.</summary>
    public static FigureUnit LiterPerHour { get; } =
        new("L/h", "L/h", "0", "US gal/h", "0", value => VolumeFlow.FromLitersPerHour(value).UsGallonsPerHour);

    /// <summary>Litres a minute; US gallons a minute.</summary>
    public static FigureUnit LiterPerMinute { get; } =
        new("L/min", "L/min", "0.0", "US gal/min", "0.0", value => VolumeFlow.FromLitersPerMinute(value).UsGallonsPerMinute);

    /// <summary>Millimetres; inches.</summary>
    public static FigureUnit Millimeter { get; } = new("mm", "mm", "0.0", "in", "0.000", value => Length.FromMillimeters(value).Inches);

    /// <summary>Hundredths of millimetres, for fits; ten thousandths of inches.</summary>
    public static FigureUnit FineMillimeter { get; } = new("mm", "mm", "0.00", "in", "0.0000", value => Length.FromMillimeters(value).Inches);

    /// <summary>Millimetres aside for each 100 mm along; inches a foot.</summary>
    public static FigureUnit MillimeterPerDecimeter { get; } =
        new("mm/dm", "mm per 100 mm", "0.00", "in/ft", "0.000", value => value * (12 / 100.0));

    /// <summary>Millimetres for each degree; inches for each degree.</summary>
    public static FigureUnit MillimeterPerDegree { get; } =
        new("mm/deg", "mm per degree", "0.00", "in per degree", "0.0000", value => Length.FromMillimeters(value).Inches);

    /// <summary>Metres a second; feet a minute.</summary>
    public static FigureUnit MeterPerSecond { get; } =
        new("m/s", "m/s", "0.0", "ft/min", "0", value => Speed.FromMetersPerSecond(value).FeetPerMinute);

    /// <summary>Degrees of angle.</summary>
    public static FigureUnit Degree { get; } = new("deg", "deg", "0.0");

    /// <summary>Degrees Celsius; degrees Fahrenheit.</summary>
    public static FigureUnit DegreeCelsius { get; } =
        new("Cel", "°C", "0.#", "°F", "0.#", value => Temperature.FromDegreesCelsius(value).DegreesFahrenheit);

    /// <summary>A temperature difference in kelvins; in Fahrenheit degrees.</summary>
    public static FigureUnit Kelvin { get; } =
        new("K", "K", "0.#", "°F difference", "0.#", value => TemperatureDelta.FromKelvins(value).DegreesFahrenheit);

    /// <summary>Kinematic viscosity; both readers use mm²/s, the same as centistokes.</summary>
    public static FigureUnit SquareMillimeterPerSecond { get; } = new("mm2/s", "mm²/s", "0.00#");

    /// <summary>Dynamic viscosity; both readers use mPa·s, the same as centipoises.</summary>
    public static FigureUnit MillipascalSecond { get; } = new("mPa.s", "mPa·s", "0.##");

    /// <summary>Density; pounds a US gallon.</summary>
    public static FigureUnit KilogramPerCubicMeter { get; } =
        new("kg/m3", "kg/m³", "0.0", "lb/US gal", "0.000", value => Density.FromKilogramsPerCubicMeter(value).PoundsPerUSGallon);

    /// <summary>Force in newtons; pounds of force.</summary>
    public static FigureUnit Newton { get; } = new("N", "N", "0", "lbf", "0", value => Force.FromNewtons(value).PoundsForce);

    /// <summary>Torque in newton metres; foot pounds.</summary>
    public static FigureUnit NewtonMeter { get; } =
        new("N.m", "N·m", "0.0", "lbf·ft", "0.0", value => Torque.FromNewtonMeters(value).PoundForceFeet);

    /// <summary>Pressure in kilopascals; pounds a square inch.</summary>
    public static FigureUnit Kilopascal { get; } =
        new("kPa", "kPa", "0.0", "psi", "0.0", value => Pressure.FromKilopascals(value).PoundsForcePerSquareInch);

    /// <summary>Power in kilowatts; mechanical horsepower.</summary>
    public static FigureUnit Kilowatt { get; } =
        new("kW", "kW", "0.0", "hp", "0.0", value => (double)Power.FromKilowatts(value).MechanicalHorsepower);

    /// <summary>Electric potential in volts.</summary>
    public static FigureUnit Volt { get; } = new("V", "V", "0.00");

    /// <summary>Frequency in hertz.</summary>
    public static FigureUnit Hertz { get; } = new("Hz", "Hz", "0.0");

    /// <summary>Turns a minute.</summary>
    public static FigureUnit RevolutionPerMinute { get; } = new("/min", "rpm", "0");

    /// <summary>The UCUM code of the unit that the figure is stored in.</summary>
    public string Symbol { get; }

    /// <summary>The unit as metric readers see it; empty for a bare number.</summary>
    public string Shown { get; }

    /// <summary>The unit as US readers see it; empty for a bare number.</summary>
    public string UsShown { get; }

    /// <summary>The UCUM code of the unit.</summary>
    /// <returns>Same as <see cref="Symbol"/>.</returns>
    public override string ToString() => Symbol;

    internal string Write(double value, DisplayUnits units)
    {
        bool us = units == DisplayUnits.UsCustomary;
        double shown = us ? _toUs(value) : value;
        if (ReferenceEquals(this, Fraction))
        {
            shown *= 100;
        }

        string number = shown.ToString(us ? _usFormat : _format, System.Globalization.CultureInfo.InvariantCulture);
        if (number[0] == '-' && number.Trim('-', '0', '.').Length == 0)
        {
            number = number.Substring(1);
        }

        string unit = us ? UsShown : Shown;
        return unit.Length == 0 ? number : $"{number} {unit}";
    }
}
