using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Oils;

/// <summary>A viscosity read from a line, with its standard uncertainty and where it lies against the measured points.</summary>
/// <remarks>
/// <para>
/// Rule: with w the lever arm of the reading on the line (w = 0 at one point, 1 at the other, beyond these outside), the points'
/// uncertainty enters ln ln Z with (1 - w) and w, independent of each other; the equation's own share is multiplied by |1 - w| + |w|,
/// which is 1 between the points and grows outside. Derived by propagation; the growth of the equation's share is a project choice.
/// </para>
/// </remarks>
public sealed class ViscosityEstimate
{
    private readonly ViscosityLine _line;
    private readonly double _celsius;
    private readonly double _pointFraction;
    private readonly double _modelFraction;
    private readonly double _kinematic;

    internal ViscosityEstimate(ViscosityLine line, double celsius, double pointFraction, double modelFraction)
    {
        (_line, _celsius, _pointFraction, _modelFraction) = (line, celsius, pointFraction, modelFraction);
        _kinematic = line.Kinematic(celsius);
        bool isLong = line.Form == D341Form.LongZ;
        double w = LogKelvinRatio(celsius, line.ColdCelsius) / LogKelvinRatio(line.WarmCelsius, line.ColdCelsius);
        double u1 = (1 - w) * pointFraction * LnLnZPerRelative(line.ColdKinematic, isLong);
        double u2 = w * pointFraction * LnLnZPerRelative(line.WarmKinematic, isLong);
        double fromPoints = Math.Sqrt((u1 * u1) + (u2 * u2)) / LnLnZPerRelative(_kinematic, isLong);
        double fromModel = modelFraction * (Math.Abs(1 - w) + Math.Abs(w));
        StandardUncertaintyFraction = Math.Sqrt((fromPoints * fromPoints) + (fromModel * fromModel));
    }

    /// <summary>The viscosity.</summary>
    public KinematicViscosity Viscosity => KinematicViscosity.FromCentistokes(_kinematic);

    /// <summary>The temperature.</summary>
    public Temperature Temperature => Temperature.FromDegreesCelsius(_celsius);

    /// <summary>One standard deviation as a share of the viscosity.</summary>
    public double StandardUncertaintyFraction { get; }

    /// <summary>True when the temperature lies between the measured points or on one.</summary>
    public bool IsBetweenPoints => _celsius >= _line.ColdCelsius && _celsius <= _line.WarmCelsius;

    /// <summary>True when the reading is below 0 °C and colder than both points: for a polymer-thickened oil it only indicates.</summary>
    public bool IsOnlyIndicative => _celsius < 0 && _celsius < _line.ColdCelsius;

    /// <summary>The viscosity, its uncertainty, the points and the rule.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        string value = FigureUnit.SquareMillimeterPerSecond.Write(_kinematic, units);
        return new ExplanationBuilder($"{value} at {FigureUnit.DegreeCelsius.Write(_celsius, units)}, ± {FigureUnit.Fraction.Write(StandardUncertaintyFraction, units)} (one standard deviation).")
            .Add("point", Point(_line.ColdKinematic, _line.ColdCelsius, units))
            .Add("point", Point(_line.WarmKinematic, _line.WarmCelsius, units))
            .Add("lies", IsBetweenPoints ? "between the measured points" : "outside the measured points, where the uncertainty grows")
            .AddIf(IsOnlyIndicative, "caution", () => "below 0 °C a polymer-thickened oil is only indicated; cranking and pumping cannot be told from it")
            .Add("equation", $"log log Z = A - B log T, {(_line.Form == D341Form.LongZ ? "long" : "short")} form of Z, A {FigureUnit.Number.Write(_line.CoefficientA, units)}, B {FigureUnit.Number.Write(_line.CoefficientB, units)}")
            .Add("points ±", FigureUnit.Fraction.Write(_pointFraction, units))
            .Add("equation ±", FigureUnit.Fraction.Write(_modelFraction, units))
            .Build(_line.Form == D341Form.LongZ ? [OilSources.D341, Citation.FromMemory, Citation.ProjectChoice] : [OilSources.D341, Citation.ProjectChoice]);
    }

    /// <summary>Viscosity, temperature and uncertainty, metric and invariant.</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() => Explain(DisplayUnits.Metric).Answer;

    private static string Point(double kinematic, double celsius, DisplayUnits units) =>
        $"{FigureUnit.SquareMillimeterPerSecond.Write(kinematic, units)} at {FigureUnit.DegreeCelsius.Write(celsius, units)}";

    private static double LogKelvinRatio(double celsius, double from) =>
        Math.Log((celsius + D341Math.Kelvin0Celsius) / (from + D341Math.Kelvin0Celsius));

    /// <summary>ν · d(ln ln Z)/dν: how much ln ln Z moves for a relative step of the viscosity.</summary>
    private static double LnLnZPerRelative(double kinematic, bool isLong)
    {
        const double step = 1e-5;
        return (D341Math.LnLnZ(kinematic * (1 + step), isLong) - D341Math.LnLnZ(kinematic * (1 - step), isLong)) / (2 * step);
    }
}
