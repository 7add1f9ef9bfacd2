using UnitsNet;

namespace MarineService.Core.Tests.Oils;

/// <summary>Short names for the quantities that oil tests are made of.</summary>
internal static class OilUnits
{
    /// <summary>The rounding grain of the room: a millionth of the unit.</summary>
    internal const double Grain = 1e-6;

    internal static KinematicViscosity Kv(double mm2PerS) => KinematicViscosity.FromCentistokes(mm2PerS);

    internal static DynamicViscosity Mu(double mPaS) => DynamicViscosity.FromMillipascalSeconds(mPaS);

    internal static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    internal static Temperature F(double fahrenheit) => Temperature.FromDegreesFahrenheit(fahrenheit);

    internal static TemperatureDelta K(double kelvins) => TemperatureDelta.FromKelvins(kelvins);

    /// <summary>What no public number may accept.</summary>
    internal static readonly double[] NotNumbers = [double.NaN, double.PositiveInfinity, double.NegativeInfinity];
}
