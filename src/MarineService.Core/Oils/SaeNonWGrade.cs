using UnitsNet;

namespace MarineService.Core.Oils;

/// <summary>A grade of SAE J300 without W, such as 40: how thick the oil is hot.</summary>
/// <remarks>
/// A closed published list. The kinematic viscosity at 100 °C must be at least the lower bound and below the upper one, and the
/// high-shear viscosity at 150 °C and 10⁶ s⁻¹ at least its limit. The thin grades 8 to 20 overlap. Says nothing of the cold.
/// Source: SAE J300 table 1, limits of the 2015 and 2021 revisions.
/// </remarks>
public sealed class SaeNonWGrade
{
    private readonly double _highShearMin;
    private readonly double _highShearMinWithThinW;

    private SaeNonWGrade(int index, string designation, double kv100Min, double kv100Max, double highShearMin, double? withThinW = null) =>
        (Index, Designation, Kv100Min, Kv100Max, _highShearMin, _highShearMinWithThinW) =
            (index, designation, kv100Min, kv100Max, highShearMin, withThinW ?? highShearMin);

    /// <summary>SAE 8, since January 2015.</summary>
    public static SaeNonWGrade Sae8 { get; } = new(0, "8", 4.0, 6.1, 1.7);

    /// <summary>SAE 12, since January 2015.</summary>
    public static SaeNonWGrade Sae12 { get; } = new(1, "12", 5.0, 7.1, 2.0);

    /// <summary>SAE 16, since April 2013.</summary>
    public static SaeNonWGrade Sae16 { get; } = new(2, "16", 6.1, 8.2, 2.3);

    /// <summary>SAE 20; its lower bound was 5.6 mm²/s before April 2013.</summary>
    public static SaeNonWGrade Sae20 { get; } = new(3, "20", 6.9, 9.3, 2.6);

    /// <summary>SAE 30.</summary>
    public static SaeNonWGrade Sae30 { get; } = new(4, "30", 9.3, 12.5, 2.9);

    /// <summary>SAE 40; the high-shear limit is 3.5 mPa·s with 0W, 5W and 10W, and 3.7 with the others and alone.</summary>
    public static SaeNonWGrade Sae40 { get; } = new(5, "40", 12.5, 16.3, 3.7, withThinW: 3.5);

    /// <summary>SAE 50.</summary>
    public static SaeNonWGrade Sae50 { get; } = new(6, "50", 16.3, 21.9, 3.7);

    /// <summary>SAE 60.</summary>
    public static SaeNonWGrade Sae60 { get; } = new(7, "60", 21.9, 26.1, 3.7);

    /// <summary>All grades without W, thinnest first.</summary>
    public static IReadOnlyList<SaeNonWGrade> All { get; } =
        Array.AsReadOnly([Sae8, Sae12, Sae16, Sae20, Sae30, Sae40, Sae50, Sae60]);

    /// <summary>The grade as a label writes it: "40".</summary>
    public string Designation { get; }

    /// <summary>The least kinematic viscosity at 100 °C, inclusive.</summary>
    public KinematicViscosity LeastViscosityAt100C => KinematicViscosity.FromCentistokes(Kv100Min);

    /// <summary>The kinematic viscosity at 100 °C that the oil must stay below, exclusive.</summary>
    public KinematicViscosity ViscosityAt100CBelow => KinematicViscosity.FromCentistokes(Kv100Max);

    internal int Index { get; }

    internal double Kv100Min { get; }

    internal double Kv100Max { get; }

    /// <summary>The least high-shear viscosity at 150 °C and 10⁶ s⁻¹ (ASTM D4683), inclusive.</summary>
    /// <param name="labelledWith">The winter grade on the same label, or null for a single grade.</param>
    /// <returns>The limit.</returns>
    public DynamicViscosity HighShearLimit(SaeWGrade? labelledWith) => DynamicViscosity.FromMillipascalSeconds(HighShearMin(labelledWith));

    /// <summary>The grades whose bounds hold a viscosity measured at 100 °C.</summary>
    /// <remarks>Rule: least ≤ ν &lt; below. The thin grades overlap, so the answer is a list. High shear is not looked at.</remarks>
    /// <param name="at100C">Kinematic viscosity at 100 °C, from 0.2 to 1,000 mm²/s.</param>
    /// <returns>Thinnest first; empty when no grade fits.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="at100C"/> is outside its range.</exception>
    /// <example><code>SaeNonWGrade.Holding(KinematicViscosity.FromCentistokes(11)); // 30</code></example>
    public static IReadOnlyList<SaeNonWGrade> Holding(KinematicViscosity at100C)
    {
        double kv100 = OilGuard.Kinematic(at100C, OilTestReport.LeastKv100, OilTestReport.MostKv100);
        return [.. All.Where(grade => grade.Holds(kv100))];
    }

    /// <summary>The grade as a label writes it.</summary>
    /// <returns>Same as <see cref="Designation"/>.</returns>
    public override string ToString() => Designation;

    internal bool Holds(double kv100) => kv100 >= Kv100Min && kv100 < Kv100Max;

    internal double HighShearMin(SaeWGrade? labelledWith) =>
        labelledWith is not null && labelledWith.Index <= SaeWGrade.Sae10W.Index ? _highShearMinWithThinW : _highShearMin;
}
