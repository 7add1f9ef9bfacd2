using System.Text;
using System.Text.Json;

namespace MarineService.Core.Exchange;

/// <summary>The units of one dimension that documents may use, as UCUM codes; the first is the canonical one, in which documents are written.</summary>
internal sealed class WireUnits
{
    private readonly (byte[] Utf8, Func<double, double> ToCanonical)[] _units;

    private WireUnits(params (string Code, Func<double, double> ToCanonical)[] units)
    {
        _units = Array.ConvertAll(units, unit => (Encoding.UTF8.GetBytes(unit.Code), unit.ToCanonical));
        Canonical = units[0].Code;
        CanonicalText = JsonEncodedText.Encode(Canonical);
        List = string.Join(", ", units.Select(unit => unit.Code));
    }

    internal static MemberNames Members { get; } = new("value", "unit");

    internal static WireUnits Power { get; } = new(
        ("kW", value => value),
        ("[HP]", value => (double)UnitsNet.Power.FromMechanicalHorsepower(value).Kilowatts));

    internal static WireUnits RotationalSpeed { get; } = new(("/min", value => value));

    internal static WireUnits Volume { get; } = new(
        ("L", value => value),
        ("mL", value => UnitsNet.Volume.FromMilliliters(value).Liters),
        ("[qt_us]", value => UnitsNet.Volume.FromUsQuarts(value).Liters),
        ("[gal_us]", value => UnitsNet.Volume.FromUsGallons(value).Liters));

    internal static WireUnits Temperature { get; } = new(
        ("Cel", value => value),
        ("[degF]", value => Internal.Canonical.Celsius(UnitsNet.Temperature.FromDegreesFahrenheit(value))));

    internal static WireUnits KinematicViscosity { get; } = new(("mm2/s", value => value), ("cSt", value => value));

    internal static WireUnits Density { get; } = new(("kg/m3", value => value));

    internal static WireUnits Length { get; } = new(
        ("mm", value => value),
        ("[in_i]", value => UnitsNet.Length.FromInches(value).Millimeters));

    internal static WireUnits Angle { get; } = new(("deg", value => value));

    internal static WireUnits Time { get; } = new(
        ("min", value => value),
        ("h", value => 60 * value));

    internal static WireUnits ShortTime { get; } = new(
        ("s", value => value),
        ("min", value => 60 * value));

    internal static WireUnits LinearDensity { get; } = new(("kg/m", value => value), ("g/m", value => value / 1000));

    internal static WireUnits Torque { get; } = new(("N.m", value => value));

    internal static WireUnits Stress { get; } = new(("MPa", value => value));

    internal static WireUnits Pressure { get; } = new(
        ("kPa", value => value),
        ("bar", value => 100 * value),
        ("[psi]", value => UnitsNet.Pressure.FromPoundsForcePerSquareInch(value).Kilopascals));

    internal static WireUnits VolumeFlow { get; } = new(("L/min", value => value));

    internal static WireUnits ParticleSize { get; } = new(("um", value => value));

    internal static WireUnits Mass { get; } = new(("g", value => value), ("kg", value => 1000 * value));

    internal static WireUnits TorquePerAngle { get; } = new(("N.m/deg", value => value));

    internal static WireUnits LengthPerAngle { get; } = new(("mm/deg", value => value));

    internal static WireUnits Speed { get; } = new(("m/s", value => value));

    internal static WireUnits Force { get; } = new(("N", value => value));

    internal static WireUnits TemperatureDifference { get; } = new(("K", value => value));

    internal string Canonical { get; }

    internal JsonEncodedText CanonicalText { get; }

    internal string List { get; }

    internal int Find(ref Utf8JsonReader reader)
    {
        for (int i = 0; i < _units.Length; i++)
        {
            if (reader.Says(_units[i].Utf8))
            {
                return i;
            }
        }

        return -1;
    }

    internal double ToCanonical(int unit, double value) => _units[unit].ToCanonical(value);
}
