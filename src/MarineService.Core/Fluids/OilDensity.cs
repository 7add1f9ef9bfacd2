using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Fluids;

/// <summary>The density of a lubricating oil, and how its volume and density change with temperature.</summary>
/// <remarks>
/// <para>VCF = exp(-αΔt(1 + 0.8αΔt)) with α = 0.6278/ρ at 15 °C, or 0.34878/ρ per °F at 60 °F. Volume at the base
/// temperature = volume × VCF; density = base density × VCF. Source: API MPMS chapter 11.1 / ASTM D1250, lubricating-oil
/// group, constants as in independent public programs. The rounding rules of the 2004 edition and its shift of the
/// temperature scale are left out; they change the factor by less than 0.0001.</para>
/// <para>Oils of the same density but different origin expand differently, so no correction is better than about ± 10 %
/// of itself. Not for water, coolant or fuel.</para>
/// </remarks>
public sealed class OilDensity
{
    /// <summary>Where the formula and its constants come from.</summary>
    internal static readonly Citation Source =
        Citation.Published("API MPMS chapter 11.1 / ASTM D1250", "1980 tables and 2004 edition", "lubricating-oil group, K1");

    private readonly double _density;
    private readonly double _baseCelsius;
    private readonly double _alpha;
    private readonly double _exponentAt15C;

    private OilDensity(double density, double baseCelsius, double alpha)
    {
        (_density, _baseCelsius, _alpha) = (density, baseCelsius, alpha);
        _exponentAt15C = VolumeCorrectionMath.Exponent(alpha, 15 - baseCelsius);
    }

    /// <summary>880 kg/m³ at 15 °C, a middling engine oil: used when the oil's own density is not given (project choice).</summary>
    /// <remarks>Between 830 and 940 kg/m³ the factor at 70 °C differs by 0.5 % of the volume.</remarks>
    public static OilDensity Typical { get; } = At15C(Density.FromKilogramsPerCubicMeter(880));

    /// <summary>The density at <see cref="BaseTemperature"/>.</summary>
    public Density BaseDensity => Density.FromKilogramsPerCubicMeter(_density);

    /// <summary>15 °C or 60 °F.</summary>
    public Temperature BaseTemperature => Temperature.FromDegreesCelsius(_baseCelsius);

    /// <summary>The density at 15 °C, kg/m³, whatever the base; the densest oil of the group at 60 °F stays in the group.</summary>
    internal double DensityAt15C => Math.Min(VolumeCorrectionMath.MaxBaseDensity, _density * Math.Exp(_exponentAt15C));

    /// <summary>Share of the volume that one degree Celsius adds at the base temperature, per °C.</summary>
    internal double AlphaPerCelsius => _alpha;

    /// <summary>An oil by its density at 15 °C, as data sheets print it.</summary>
    /// <param name="density">From 800.9 to 1163.5 kg/m³, the range of the standard's group.</param>
    /// <returns>The oil.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="density"/> is outside its range.</exception>
    public static OilDensity At15C(Density density)
    {
        double value = InGroup(Canonical.KilogramsPerCubicMeter(density), nameof(density));
        return new(value, 15, VolumeCorrectionMath.AlphaAt15C(value));
    }

    /// <summary>An oil by its density at 60 °F.</summary>
    /// <param name="density">From 800.9 to 1163.5 kg/m³, the range of the standard's group.</param>
    /// <returns>The oil.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="density"/> is outside its range.</exception>
    public static OilDensity At60F(Density density)
    {
        double value = InGroup(Canonical.KilogramsPerCubicMeter(density), nameof(density));
        return new(value, VolumeCorrectionMath.SixtyFahrenheitInCelsius, VolumeCorrectionMath.AlphaAt60F(value));
    }

    /// <summary>An oil by a density observed at any temperature, brought to 15 °C by the inverse of the formula.</summary>
    /// <param name="density">Observed density; must come to 800.9 to 1163.5 kg/m³ at 15 °C.</param>
    /// <param name="temperature">From -50 to 150 °C.</param>
    /// <returns>The oil.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <example><code>OilDensity.Observed(Density.FromKilogramsPerCubicMeter(954), Temperature.FromDegreesCelsius(150)); // 1040.5 kg/m³ at 15 °C</code></example>
    public static OilDensity Observed(Density density, Temperature temperature)
    {
        double observed = Guard.InRange(Canonical.KilogramsPerCubicMeter(density), 500, 2000, "kg/m³", nameof(density));
        double celsius = InScope(Canonical.Celsius(temperature), nameof(temperature));
        return At15C(Density.FromKilogramsPerCubicMeter(
            InGroup(VolumeCorrectionMath.DensityAt15C(observed, celsius), nameof(density))));
    }

    /// <summary>Volume at the base temperature divided by volume at a temperature.</summary>
    /// <param name="temperature">From -50 to 150 °C (limits from memory).</param>
    /// <returns>Below 1 for hot oil, above 1 for cold oil.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="temperature"/> is outside its range.</exception>
    public double VolumeCorrectionRatio(Temperature temperature) =>
        VolumeCorrectionRatio(InScope(Canonical.Celsius(temperature), nameof(temperature)));

    /// <summary>Same as <see cref="VolumeCorrectionRatio(Temperature)"/>, for loops.</summary>
    /// <param name="temperatureCelsius">From -50 to 150 °C.</param>
    /// <returns>Below 1 for hot oil, above 1 for cold oil.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="temperatureCelsius"/> is outside its range.</exception>
    public double VolumeCorrectionRatio(double temperatureCelsius)
    {
        // Tested here and not by the guard alone: the guard is too large to be inlined into a loop.
        if (!CoversCelsius(temperatureCelsius))
        {
            InScope(temperatureCelsius, nameof(temperatureCelsius));
        }

        return VolumeCorrectionMath.Factor(_alpha, temperatureCelsius - _baseCelsius);
    }

    /// <summary>The density at a temperature.</summary>
    /// <param name="temperature">From -50 to 150 °C.</param>
    /// <returns>The density.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="temperature"/> is outside its range.</exception>
    public Density At(Temperature temperature) =>
        Density.FromKilogramsPerCubicMeter(_density * VolumeCorrectionRatio(temperature));

    /// <summary>What a volume becomes when it is heated or cooled.</summary>
    /// <param name="volume">From 0 to 10,000 L.</param>
    /// <param name="from">From -50 to 150 °C.</param>
    /// <param name="to">From -50 to 150 °C.</param>
    /// <returns>The volume at <paramref name="to"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <example><code>OilDensity.Typical.Brought(Volume.FromLiters(8.2), from: Temperature.FromDegreesCelsius(70), to: Temperature.FromDegreesCelsius(15)); // 7.875 L</code></example>
    public Volume Brought(Volume volume, Temperature from, Temperature to)
    {
        double liters = Guard.InRange(Canonical.Liters(volume), 0, 10_000, "L", nameof(volume));
        double fromCelsius = InScope(Canonical.Celsius(from), nameof(from));
        double toCelsius = InScope(Canonical.Celsius(to), nameof(to));
        return Volume.FromLiters(liters * VolumeCorrectionRatio(fromCelsius) / VolumeCorrectionRatio(toCelsius));
    }

    /// <summary>A measured volume brought to 15 °C with its standard uncertainty.</summary>
    /// <remarks>u² = (VCF·u_V)² + (V15·α·u_t)²; a reading without a standard uncertainty keeps that part unknown.</remarks>
    /// <param name="measured">The volume as it was measured.</param>
    /// <param name="temperatureUncertainty">Standard uncertainty of the temperature, 0 to 100 K.</param>
    /// <returns>The volume at 15 °C, or not known when its temperature was not taken or lies outside -50 to 150 °C.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="measured"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="temperatureUncertainty"/> is outside its range.</exception>
    public Answer<MeasuredVolume> To15C(MeasuredVolume measured, TemperatureDelta temperatureUncertainty)
    {
        Guard.NotNull(measured);
        double kelvins = Guard.InRange(Canonical.Kelvins(temperatureUncertainty), 0, 100, "K", nameof(temperatureUncertainty));
        if (measured.Celsius is not double celsius)
        {
            return Answer.NotKnown<MeasuredVolume>("The temperature of the oil when it was measured.");
        }

        if (!CoversCelsius(celsius))
        {
            return Answer.NotKnown<MeasuredVolume>("A measurement between -50 and 150 °C, which the standard covers.");
        }

        double factor = FactorTo15C(celsius);
        double liters = measured.Liters * factor;
        double? sigma = measured.SigmaLiters is double s ? FluidMath.RootSumSquare(factor * s, liters * _alpha * kelvins) : null;
        return Answer.Known(MeasuredVolume.Of(
            Volume.FromLiters(liters),
            Temperature.FromDegreesCelsius(15),
            sigma is double u ? Volume.FromLiters(u) : null));
    }

    /// <summary>The density and where its behaviour comes from.</summary>
    /// <param name="temperature">The temperature asked about, from -50 to 150 °C.</param>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not defined.</exception>
    public Explanation Explain(Temperature temperature, DisplayUnits units)
    {
        Guard.Defined(units);
        double celsius = InScope(Canonical.Celsius(temperature), nameof(temperature));
        double factor = VolumeCorrectionRatio(celsius);
        return new ExplanationBuilder(
                $"Oil at {FigureUnit.DegreeCelsius.Write(celsius, units)} has {FigureUnit.KilogramPerCubicMeter.Write(_density * factor, units)}.")
            .Add("base", $"{FigureUnit.KilogramPerCubicMeter.Write(_density, units)} at {FigureUnit.DegreeCelsius.Write(_baseCelsius, units)}")
            .Add("factor", $"{FigureUnit.Number.Write(factor, units)} = volume at the base temperature over volume as it is")
            .Add("doubt", "about 10 % of the correction: oils of one density do not all expand alike")
            .Build(Source);
    }

    /// <summary>Density and base temperature, metric and invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{FigureUnit.KilogramPerCubicMeter.Write(_density, DisplayUnits.Metric)} at {FigureUnit.DegreeCelsius.Write(_baseCelsius, DisplayUnits.Metric)}";

    internal static bool CoversCelsius(double celsius) =>
        celsius >= VolumeCorrectionMath.MinCelsius && celsius <= VolumeCorrectionMath.MaxCelsius;

    /// <summary>Volume at 15 °C over volume at a temperature that <see cref="CoversCelsius"/> has passed, whatever the base.</summary>
    internal double FactorTo15C(double celsius) =>
        Math.Exp(VolumeCorrectionMath.Exponent(_alpha, celsius - _baseCelsius) - _exponentAt15C);

    /// <summary>Volume at one temperature over volume at another, both covered.</summary>
    internal double FactorBetween(double celsius, double toCelsius) =>
        Math.Exp(VolumeCorrectionMath.Exponent(_alpha, celsius - _baseCelsius) - VolumeCorrectionMath.Exponent(_alpha, toCelsius - _baseCelsius));

    private static double InGroup(double density, string name) =>
        Guard.InRange(density, VolumeCorrectionMath.MinBaseDensity, VolumeCorrectionMath.MaxBaseDensity, "kg/m³ at the base temperature", name);

    private static double InScope(double celsius, string name) =>
        Guard.InRange(celsius, VolumeCorrectionMath.MinCelsius, VolumeCorrectionMath.MaxCelsius, "°C", name);
}
