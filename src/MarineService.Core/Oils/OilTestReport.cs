using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Oils;

/// <summary>What a laboratory measured of a new engine oil, as far as SAE J300 asks for it. Never changes; each With gives a new one.</summary>
/// <remarks>
/// Compared unrounded, except that values are kept to a millionth of their unit so that a conversion never decides at a limit.
/// </remarks>
public sealed class OilTestReport
{
    internal const double LeastKv100 = 0.2;
    internal const double MostKv100 = 1_000;

    private const double MostMillipascalSeconds = 10_000_000;

    private readonly double?[] _cranking;
    private readonly double?[] _pumping;
    private readonly bool[] _yieldStress;

    private OilTestReport(double?[] cranking, double?[] pumping, bool[] yieldStress, double? kv100, double? highShear) =>
        (_cranking, _pumping, _yieldStress, Kv100, HighShear) = (cranking, pumping, yieldStress, kv100, highShear);

    /// <summary>A report in which nothing was measured.</summary>
    public static OilTestReport Empty { get; } =
        new(new double?[SaeWGrade.All.Count], new double?[SaeWGrade.All.Count], new bool[SaeWGrade.All.Count], null, null);

    internal double? Kv100 { get; }

    internal double? HighShear { get; }

    /// <summary>Adds an apparent viscosity from the cold-cranking simulator (ASTM D5293).</summary>
    /// <param name="viscosity">Above 0, at most 10,000,000 mPa·s.</param>
    /// <param name="at">One of the test temperatures of SAE J300: -35, -30, -25, -20, -15 or -10 °C.</param>
    /// <returns>A report with the value; a former one at this temperature is replaced.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or no grade is tested at this temperature.</exception>
    public OilTestReport WithCranking(DynamicViscosity viscosity, Temperature at)
    {
        double value = OilGuard.Dynamic(viscosity, 1e-3, MostMillipascalSeconds);
        int index = IndexOf(at, pumping: false);
        return new(Replaced(_cranking, index, value), _pumping, _yieldStress, Kv100, HighShear);
    }

    /// <summary>Adds an apparent viscosity from the mini-rotary viscometer (ASTM D4684).</summary>
    /// <param name="viscosity">Above 0, at most 10,000,000 mPa·s.</param>
    /// <param name="at">One of the test temperatures of SAE J300: -40, -35, -30, -25, -20 or -15 °C.</param>
    /// <param name="yieldStressFound">True when the report states a yield stress: that fails the grade whatever the viscosity.</param>
    /// <returns>A report with the value; a former one at this temperature is replaced.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or no grade is tested at this temperature.</exception>
    public OilTestReport WithPumping(DynamicViscosity viscosity, Temperature at, bool yieldStressFound)
    {
        double value = OilGuard.Dynamic(viscosity, 1e-3, MostMillipascalSeconds);
        int index = IndexOf(at, pumping: true);
        return new(_cranking, Replaced(_pumping, index, value), Replaced(_yieldStress, index, yieldStressFound), Kv100, HighShear);
    }

    /// <summary>Adds the kinematic viscosity at 100 °C (ASTM D445 or an equal method).</summary>
    /// <param name="viscosity">From 0.2 to 1,000 mm²/s.</param>
    /// <returns>A report with the value; a former one is replaced.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="viscosity"/> is outside its range.</exception>
    public OilTestReport WithViscosityAt100C(KinematicViscosity viscosity) =>
        new(_cranking, _pumping, _yieldStress, OilGuard.Kinematic(viscosity, LeastKv100, MostKv100), HighShear);

    /// <summary>Adds the high-shear viscosity at 150 °C and 10⁶ s⁻¹ (ASTM D4683 is the referee method).</summary>
    /// <param name="viscosity">Above 0, at most 1,000 mPa·s.</param>
    /// <returns>A report with the value; a former one is replaced.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="viscosity"/> is outside its range.</exception>
    public OilTestReport WithHighShear(DynamicViscosity viscosity) =>
        new(_cranking, _pumping, _yieldStress, Kv100, OilGuard.Dynamic(viscosity, 1e-3, 1_000));

    /// <summary>Classifies the oil by SAE J300. Nothing is allocated until an explanation is asked for.</summary>
    /// <returns>Which grades are met, which may be labelled, what is missing.</returns>
    public OilClassification Classify() => new(this);

    internal double? Cranking(SaeWGrade grade) => _cranking[grade.Index];

    internal double? Pumping(SaeWGrade grade) => _pumping[grade.Index];

    internal bool HasYieldStress(SaeWGrade grade) => _yieldStress[grade.Index];

    private static int IndexOf(Temperature at, bool pumping)
    {
        double celsius = OilGuard.Round(Guard.Finite(Canonical.Celsius(at), "°C", nameof(at)));
        foreach (SaeWGrade grade in SaeWGrade.All)
        {
            if (celsius == (pumping ? grade.PumpingCelsius : grade.CrankingCelsius))
            {
                return grade.Index;
            }
        }

        string expected = string.Join(", ", SaeWGrade.All.Select(grade => pumping ? grade.PumpingCelsius : grade.CrankingCelsius));
        throw new ArgumentOutOfRangeException(
            nameof(at), celsius, $"Must be a {(pumping ? "pumping" : "cranking")} test temperature of SAE J300: {expected} °C.");
    }

    private static T[] Replaced<T>(T[] values, int index, T value)
    {
        T[] copy = (T[])values.Clone();
        copy[index] = value;
        return copy;
    }
}
