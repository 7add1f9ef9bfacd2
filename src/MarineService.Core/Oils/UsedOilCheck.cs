using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Oils;

/// <summary>What the measurements of a used oil say against limits. Never changes; each With gives a new one with its findings.</summary>
/// <remarks>Only what was measured is judged. A clean list means that these measurements show nothing, not that the oil is good.</remarks>
public sealed class UsedOilCheck
{
    private UsedOilCheck(UsedOilLimits limits, IReadOnlyList<Finding> findings, IReadOnlyList<Figure> measured) =>
        (Limits, Findings, Measured) = (limits, findings, measured);

    /// <summary>The limits that are applied.</summary>
    public UsedOilLimits Limits { get; }

    /// <summary>What lies outside the limits, in the order in which it was entered.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>What was measured or worked out, in the order in which it was entered.</summary>
    public IReadOnlyList<Figure> Measured { get; }

    /// <summary>The gravest finding's severity, or null when nothing lies outside the limits.</summary>
    public Severity? Worst => Findings.Count == 0 ? null : Findings.Max(finding => finding.Severity);

    /// <summary>A check in which nothing has been measured.</summary>
    /// <param name="limits">The limits.</param>
    /// <returns>The check.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="limits"/> is null.</exception>
    public static UsedOilCheck Against(UsedOilLimits limits) => new(Guard.NotNull(limits), [], []);

    /// <summary>The change of viscosity: 100(used - new)/new in percent, at one temperature, against the measured new oil.</summary>
    /// <param name="at">The temperature of both measurements, from -60 to 200 °C.</param>
    /// <param name="newOil">Measured viscosity of the new oil, not the grade's bounds; from 0.4 to 100,000 mm²/s.</param>
    /// <param name="usedOil">Viscosity of the used oil, from 0.4 to 100,000 mm²/s.</param>
    /// <returns>The check with this measurement.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public UsedOilCheck WithViscosity(Temperature at, KinematicViscosity newOil, KinematicViscosity usedOil)
    {
        double celsius = OilGuard.Celsius(at);
        double fresh = OilGuard.Kinematic(newOil, BlendMath.LeastKinematic, OilViscosity.Most40);
        double used = OilGuard.Kinematic(usedOil, BlendMath.LeastKinematic, OilViscosity.Most40);

        // Rounded like every reading: (115 - 100)/100 must be the limit of 0.15, not a bit beyond it.
        double change = OilGuard.Round((used - fresh) / fresh);
        bool thinner = change < 0;
        double caution = thinner ? Limits.ThinnerCautionFraction : Limits.ThickerCautionFraction;
        double critical = thinner ? Limits.ThinnerCriticalFraction : Limits.ThickerCriticalFraction;
        FindingRule? rule = Beyond(
            Math.Abs(change), caution, critical,
            thinner ? OilRules.Thinner : OilRules.Thicker, thinner ? OilRules.MuchThinner : OilRules.MuchThicker);
        return With(Figure.Of("change of viscosity", change, FigureUnit.Fraction), rule, "used oil",
            Figure.Of("change", change, FigureUnit.Fraction),
            Figure.Of("limit", Sign(thinner) * (ReferenceEquals(rule, OilRules.Thinner) || ReferenceEquals(rule, OilRules.Thicker) ? caution : critical), FigureUnit.Fraction),
            Figure.Of("temperature", celsius, FigureUnit.DegreeCelsius),
            Figure.Of("new oil", fresh, FigureUnit.SquareMillimeterPerSecond),
            Figure.Of("used", used, FigureUnit.SquareMillimeterPerSecond));
    }

    /// <summary>The fuel that thinning points to: beyond a limit for sure only when the whole bracket is.</summary>
    /// <param name="dilution">The bracket.</param>
    /// <returns>The check with this bracket.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="dilution"/> is null.</exception>
    public UsedOilCheck WithFuel(FuelDilution dilution)
    {
        FractionBracket fuel = Guard.NotNull(dilution).Fuel;
        FindingRule? rule = fuel.LowFraction >= Limits.FuelCriticalFraction ? OilRules.MuchFuel
            : fuel.HighFraction >= Limits.FuelCautionFraction ? OilRules.PerhapsFuel
            : null;
        return With(Figure.Of("fuel at most", fuel.HighFraction, FigureUnit.Fraction), rule, "used oil",
            Figure.Of("fuel", fuel.LowFraction, FigureUnit.Fraction),
            Figure.Of("fuel at most", fuel.HighFraction, FigureUnit.Fraction),
            Figure.Of("limit", ReferenceEquals(rule, OilRules.MuchFuel) ? Limits.FuelCriticalFraction : Limits.FuelCautionFraction, FigureUnit.Fraction));
    }

    /// <summary>Fuel as a laboratory measured it.</summary>
    /// <param name="fuelFraction">Share of the volume, from 0 to 1.</param>
    /// <returns>The check with this measurement.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="fuelFraction"/> is outside its range.</exception>
    public UsedOilCheck WithMeasuredFuel(double fuelFraction)
    {
        double fuel = OilGuard.Fraction(fuelFraction);
        FindingRule? rule = Beyond(fuel, Limits.FuelCautionFraction, Limits.FuelCriticalFraction, OilRules.SomeFuel, OilRules.MuchFuel);
        return With(Figure.Of("fuel", fuel, FigureUnit.Fraction), rule, "used oil",
            Figure.Of("fuel", fuel, FigureUnit.Fraction),
            Figure.Of("limit", ReferenceEquals(rule, OilRules.MuchFuel) ? Limits.FuelCriticalFraction : Limits.FuelCautionFraction, FigureUnit.Fraction));
    }

    /// <summary>Water as a laboratory measured it.</summary>
    /// <param name="waterFraction">Share of the volume, from 0 to 1.</param>
    /// <returns>The check with this measurement.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="waterFraction"/> is outside its range.</exception>
    public UsedOilCheck WithMeasuredWater(double waterFraction)
    {
        double water = OilGuard.Fraction(waterFraction);
        FindingRule? rule = Beyond(water, Limits.WaterCautionFraction, Limits.WaterCriticalFraction, OilRules.SomeWater, OilRules.MuchWater);
        return With(Figure.Of("water", water, FigureUnit.Fraction), rule, "used oil",
            Figure.Of("water", water, FigureUnit.Fraction),
            Figure.Of("limit", ReferenceEquals(rule, OilRules.MuchWater) ? Limits.WaterCriticalFraction : Limits.WaterCautionFraction, FigureUnit.Fraction));
    }

    /// <summary>The measurements, what lies outside the limits, and where the limits come from.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new(Measured.Count == 0 ? "Nothing was measured."
            : Findings.Count == 0 ? "These measurements are within the limits."
            : FormattableString.Invariant($"{Findings.Count} of {Measured.Count} measurements outside the limits; gravest {Worst}."));
        foreach (Figure figure in Measured)
        {
            lines.Add(figure.Name, figure.ToString(units));
        }

        foreach (Finding finding in Findings)
        {
            lines.Add(finding.Code, finding.Message(units));
        }

        return lines.Add("caution", "no uniform limits exist: the engine maker's figures and the oil's own trend outrank these").Build(Limits.Citation);
    }

    private static int Sign(bool thinner) => thinner ? -1 : 1;

    /// <summary>At a limit counts as reached: the careful reading.</summary>
    private static FindingRule? Beyond(double value, double caution, double critical, FindingRule cautionRule, FindingRule criticalRule) =>
        value >= critical ? criticalRule : value >= caution ? cautionRule : null;

    private UsedOilCheck With(Figure measured, FindingRule? rule, string subject, params Figure[] figures) =>
        new(Limits, rule is null ? Findings : [.. Findings, rule.On(subject, [.. figures, Figure.Of("limit from", Limits.Citation.ToString())])], [.. Measured, measured]);
}
