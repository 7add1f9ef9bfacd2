using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Oils;

/// <summary>How thick one oil or fuel is at any temperature, from its viscosity at two.</summary>
/// <remarks>
/// <para>
/// Rule: log log Z = A - B log T with Z = ν + 0.7 + a low-viscosity term, ν in mm²/s, T in kelvins. Source: ASTM D341 as reproduced
/// publicly. For a Newtonian hydrocarbon between about its cloud point and first boiling. Between the two points it is good to about
/// 1 % (common practice, no source); below 0 °C a polymer-thickened oil is only indicated.
/// </para>
/// <para>It cannot tell whether an engine cranks or an oil pump fills in the cold: see <see cref="CrankingViscosityAt"/>.</para>
/// </remarks>
public sealed class ViscosityLine
{
    private const double LeastSpanKelvins = 1;

    private readonly double _a;
    private readonly double _b;
    private readonly bool _isLong;
    private readonly double _coldCelsius;
    private readonly double _coldKinematic;
    private readonly double _warmCelsius;
    private readonly double _warmKinematic;
    private readonly double _coldestCelsius;
    private readonly double _warmestCelsius;

    private ViscosityLine(double coldCelsius, double coldKinematic, double warmCelsius, double warmKinematic, D341Form form)
    {
        (_coldCelsius, _coldKinematic, _warmCelsius, _warmKinematic) = (coldCelsius, coldKinematic, warmCelsius, warmKinematic);
        (Form, _isLong) = (form, form == D341Form.LongZ);
        (_a, _b) = D341Math.Line(
            D341Math.LnLnZ(coldKinematic, _isLong), D341Math.Kelvin0Celsius + coldCelsius,
            D341Math.LnLnZ(warmKinematic, _isLong), D341Math.Kelvin0Celsius + warmCelsius);

        // The line ends where Z leaves its range, or where no engine's oil is.
        _coldestCelsius = Math.Max(OilGuard.ColdestCelsius, CelsiusFor(D341Math.MostKinematic));
        _warmestCelsius = Math.Min(OilGuard.WarmestCelsius, CelsiusFor(D341Math.LeastKinematic));
    }

    /// <summary>Which Z the line uses.</summary>
    public D341Form Form { get; }

    /// <summary>The coldest temperature that the line answers for: -60 °C, or where the viscosity reaches 2·10⁷ mm²/s.</summary>
    public Temperature Coldest => Temperature.FromDegreesCelsius(_coldestCelsius);

    /// <summary>The warmest temperature that the line answers for: 200 °C, or where the viscosity falls to 0.21 mm²/s.</summary>
    public Temperature Warmest => Temperature.FromDegreesCelsius(_warmestCelsius);

    /// <summary>A of the line in base-10 logarithms.</summary>
    internal double CoefficientA => D341Math.Base10A(_a);

    /// <summary>B of the line; the same in any base. Steeper is a lower viscosity index.</summary>
    internal double CoefficientB => _b;

    internal double ColdCelsius => _coldCelsius;

    internal double ColdKinematic => _coldKinematic;

    internal double WarmCelsius => _warmCelsius;

    internal double WarmKinematic => _warmKinematic;

    /// <summary>The line through two measured viscosities, in either order.</summary>
    /// <param name="first">From 0.21 to 20,000,000 mm²/s.</param>
    /// <param name="at">The temperature of <paramref name="first"/>, from -60 to 200 °C.</param>
    /// <param name="second">From 0.21 to 20,000,000 mm²/s; the smaller one at the higher temperature.</param>
    /// <param name="secondAt">The temperature of <paramref name="second"/>, from -60 to 200 °C, at least 1 K from <paramref name="at"/>.</param>
    /// <param name="form">Which Z to use; they agree within 0.4 % from 0.3 to 5 mm²/s and are one above that.</param>
    /// <returns>The line.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">The points have one temperature, or the viscosity does not fall with temperature.</exception>
    /// <example><code>
    /// ViscosityLine oil = ViscosityLine.Through(
    ///     KinematicViscosity.FromCentistokes(110), Temperature.FromDegreesCelsius(40),
    ///     KinematicViscosity.FromCentistokes(14.5), Temperature.FromDegreesCelsius(100));
    /// oil.At(Temperature.FromDegreesCelsius(70)); // 33.6 mm²/s
    /// </code></example>
    public static ViscosityLine Through(
        KinematicViscosity first, Temperature at, KinematicViscosity second, Temperature secondAt, D341Form form = D341Form.ShortZ)
    {
        double firstKinematic = OilGuard.Kinematic(first, D341Math.LeastKinematic, D341Math.MostKinematic);
        double firstCelsius = OilGuard.Celsius(at);
        double secondKinematic = OilGuard.Kinematic(second, D341Math.LeastKinematic, D341Math.MostKinematic);
        double secondCelsius = OilGuard.Celsius(secondAt);
        Guard.Defined(form);
        if (Math.Abs(firstCelsius - secondCelsius) < LeastSpanKelvins)
        {
            throw new ArgumentException(
                FormattableString.Invariant($"Must be at least {LeastSpanKelvins} K from the first temperature, {firstCelsius} °C, but is {secondCelsius} °C: one temperature gives no line."),
                nameof(secondAt));
        }

        bool isFirstCold = firstCelsius < secondCelsius;
        if (isFirstCold ? firstKinematic <= secondKinematic : secondKinematic <= firstKinematic)
        {
            throw new ArgumentException(
                FormattableString.Invariant($"Viscosity must fall with temperature, but is {firstKinematic} mm²/s at {firstCelsius} °C and {secondKinematic} mm²/s at {secondCelsius} °C."),
                nameof(second));
        }

        return isFirstCold
            ? new(firstCelsius, firstKinematic, secondCelsius, secondKinematic, form)
            : new(secondCelsius, secondKinematic, firstCelsius, firstKinematic, form);
    }

    /// <summary>The kinematic viscosity at a temperature; allocates nothing.</summary>
    /// <param name="temperature">From -60 to 200 °C, within <see cref="Coldest"/> to <see cref="Warmest"/>.</param>
    /// <returns>The viscosity.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="temperature"/> is outside the line's range.</exception>
    public KinematicViscosity At(Temperature temperature) => KinematicViscosity.FromCentistokes(Kinematic(InRange(temperature)));

    /// <summary>The dynamic viscosity at a temperature: μ = ν·ρ/1000.</summary>
    /// <param name="temperature">From -60 to 200 °C, within <see cref="Coldest"/> to <see cref="Warmest"/>.</param>
    /// <param name="densityAtTemperature">The density of the oil at that temperature, not at 15 °C; from 500 to 1,500 kg/m³.</param>
    /// <returns>The viscosity at low shear.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public DynamicViscosity DynamicAt(Temperature temperature, Density densityAtTemperature) =>
        DynamicViscosity.FromMillipascalSeconds(
            Kinematic(InRange(temperature)) * Guard.InRange(Canonical.KilogramsPerCubicMeter(densityAtTemperature), 500, 1_500, "kg/m³", nameof(densityAtTemperature)) / 1000);

    /// <summary>The temperature at which the oil has a viscosity.</summary>
    /// <param name="viscosity">From 0.21 to 20,000,000 mm²/s.</param>
    /// <returns>The temperature, or not known when it lies outside the line's range.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="viscosity"/> is outside its range.</exception>
    public Answer<Temperature> TemperatureFor(KinematicViscosity viscosity)
    {
        double kinematic = OilGuard.Kinematic(viscosity, D341Math.LeastKinematic, D341Math.MostKinematic);
        double celsius = CelsiusFor(kinematic);
        return celsius >= _coldestCelsius && celsius <= _warmestCelsius
            ? Answer.Known(Temperature.FromDegreesCelsius(celsius))
            : Answer.NotKnown<Temperature>(FormattableString.Invariant(
                $"The line reaches {kinematic} mm²/s at {celsius:0} °C, outside its range of {_coldestCelsius:0} to {_warmestCelsius:0} °C: measure there."));
    }

    /// <summary>The viscosity at a temperature with how sure it is; the uncertainty grows outside the measured points.</summary>
    /// <param name="temperature">From -60 to 200 °C, within <see cref="Coldest"/> to <see cref="Warmest"/>.</param>
    /// <param name="pointUncertaintyFraction">
    /// One standard deviation of each measured point as a share of it, from 0 to 1; 0.01 is a project choice.
    /// </param>
    /// <param name="modelUncertaintyFraction">
    /// One standard deviation of the equation between the points, from 0 to 1; 0.01 is common practice. Outside the points it grows
    /// with the lever arm.
    /// </param>
    /// <returns>The estimate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public ViscosityEstimate EstimateAt(
        Temperature temperature, double pointUncertaintyFraction = 0.01, double modelUncertaintyFraction = 0.01) =>
        new(this, InRange(temperature), OilGuard.Fraction(pointUncertaintyFraction), OilGuard.Fraction(modelUncertaintyFraction));

    /// <summary>Refuses to predict the cranking viscosity (ASTM D5293), saying why.</summary>
    /// <param name="temperature">From -60 to 200 °C, within <see cref="Coldest"/> to <see cref="Warmest"/>.</param>
    /// <returns>Never known.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="temperature"/> is outside the line's range.</exception>
    public Answer<DynamicViscosity> CrankingViscosityAt(Temperature temperature) => Refused(InRange(temperature), "cranking viscosity (ASTM D5293)");

    /// <summary>Refuses to predict the pumping viscosity (ASTM D4684), saying why.</summary>
    /// <param name="temperature">From -60 to 200 °C, within <see cref="Coldest"/> to <see cref="Warmest"/>.</param>
    /// <returns>Never known.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="temperature"/> is outside the line's range.</exception>
    public Answer<DynamicViscosity> PumpingViscosityAt(Temperature temperature) => Refused(InRange(temperature), "pumping viscosity (ASTM D4684)");

    /// <summary>The two points, metric and invariant.</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() => FormattableString.Invariant(
        $"{_coldKinematic:0.####} mm²/s at {_coldCelsius:0.##} °C, {_warmKinematic:0.####} mm²/s at {_warmCelsius:0.##} °C");

    internal double Kinematic(double celsius) =>
        _isLong
            ? D341Math.KinematicFromZLong(Math.Exp(Math.Exp(_a - (_b * Math.Log(celsius + D341Math.Kelvin0Celsius)))))
            : D341Math.KinematicShort(_a, _b, celsius + D341Math.Kelvin0Celsius);

    private Answer<DynamicViscosity> Refused(double celsius, string test) => Answer.NotKnown<DynamicViscosity>(
        FormattableString.Invariant($"A measured {test} at {celsius:0.#} °C."),
        FormattableString.Invariant($"The line would say {Kinematic(celsius):0} mm²/s there, but it is for a Newtonian oil at low shear: in the cold the test shears the polymer and wax comes out, so it misleads either way."));

    private double InRange(Temperature temperature)
    {
        double celsius = Canonical.Celsius(temperature);
        return celsius >= _coldestCelsius && celsius <= _warmestCelsius
            ? celsius
            : throw OutOfRange(celsius, nameof(temperature));
    }

    // Apart, so that the hot path stays small enough to be inlined.
    private ArgumentOutOfRangeException OutOfRange(double celsius, string paramName) =>
        new(paramName, celsius, FormattableString.Invariant($"Must lie from {_coldestCelsius:0.##} to {_warmestCelsius:0.##} °C, where this line holds."));

    private double CelsiusFor(double kinematic) =>
        D341Math.Kelvin(_a, _b, D341Math.LnLnZ(kinematic, _isLong)) - D341Math.Kelvin0Celsius;
}
