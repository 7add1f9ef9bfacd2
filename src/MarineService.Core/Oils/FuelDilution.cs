using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Oils;

/// <summary>How much fuel a used oil's thinning points to: a bracket, never one number.</summary>
/// <remarks>
/// <para>
/// Rule: the blend rules solved for the share of the fuel, by the double log and by the single log. Two published answers (3 % and 2 %)
/// lie between them. All viscosities at one temperature; 40 and 100 °C give different answers.
/// </para>
/// <para>
/// Soot and oxidation thicken and polymer shear thins, so no change of viscosity does not prove that there is no fuel; petrol evaporates.
/// </para>
/// </remarks>
public sealed class FuelDilution
{
    private readonly double _new;
    private readonly double _used;
    private readonly double _fuel;

    private FuelDilution(double newOil, double usedOil, double fuel) =>
        (_new, _used, _fuel, Fuel) = (newOil, usedOil, fuel, new FractionBracket(
            BlendMath.SecondFraction(BlendingMethod.DoubleLog, newOil, fuel, usedOil),
            BlendMath.SecondFraction(BlendingMethod.SingleLog, newOil, fuel, usedOil)));

    /// <summary>The fuel as a share of the whole volume, if fuel alone thinned the oil.</summary>
    public FractionBracket Fuel { get; }

    /// <summary>The fuel that the thinning points to.</summary>
    /// <param name="newOil">Measured viscosity of the new oil, from 0.4 to 100,000 mm²/s.</param>
    /// <param name="usedOil">Viscosity of the used oil at the same temperature, from 0.4 to 100,000 mm²/s.</param>
    /// <param name="fuel">
    /// Viscosity of the fuel at the same temperature, below the new oil's, from 0.4 mm²/s; No. 2 diesel fuel has 1.9 to 4.1 at 40 °C.
    /// </param>
    /// <returns>The bracket; not known when the oil is not thinner than new, or thinner than the fuel.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">The fuel is not thinner than the new oil.</exception>
    public static Answer<FuelDilution> Of(KinematicViscosity newOil, KinematicViscosity usedOil, KinematicViscosity fuel)
    {
        (double fresh, double thinner) = OilAndFuel(newOil, fuel);
        double used = OilGuard.Kinematic(usedOil, BlendMath.LeastKinematic, OilViscosity.Most40);
        return used > fresh
            ? Answer.NotKnown<FuelDilution>("A laboratory's fuel figure: the used oil is thicker than the new one, and soot or oxidation may hide fuel.")
            : used == fresh
            ? Answer.NotKnown<FuelDilution>("A laboratory's fuel figure: no change of viscosity does not prove that there is no fuel, soot and oxidation may hide it.")
            : used <= thinner
            ? Answer.NotKnown<FuelDilution>("Measurements of one oil and its fuel at one temperature: the used oil is not thicker than the fuel.")
            : Answer.Known(new FuelDilution(fresh, used, thinner));
    }

    /// <summary>What a share of fuel makes of an oil's viscosity.</summary>
    /// <param name="newOil">Viscosity of the new oil, from 0.4 to 100,000 mm²/s.</param>
    /// <param name="fuel">Viscosity of the fuel at the same temperature, below the oil's, from 0.4 mm²/s.</param>
    /// <param name="fuelFraction">The fuel's share of the whole, from 0 to 1.</param>
    /// <returns>The viscosity between the double log and the single log.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">The fuel is not thinner than the oil.</exception>
    public static ViscosityBracket ViscosityWith(KinematicViscosity newOil, KinematicViscosity fuel, double fuelFraction)
    {
        (double fresh, double thinner) = OilAndFuel(newOil, fuel);
        double share = OilGuard.Fraction(fuelFraction);
        return new(
            BlendMath.Mix(BlendingMethod.DoubleLog, fresh, thinner, share), BlendMath.Mix(BlendingMethod.SingleLog, fresh, thinner, share));
    }

    /// <summary>The bracket, the three viscosities, and what may mislead.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        return new ExplanationBuilder($"{Fuel} of fuel, if fuel alone thinned the oil.")
            .Add("new oil", FigureUnit.SquareMillimeterPerSecond.Write(_new, units))
            .Add("used oil", FigureUnit.SquareMillimeterPerSecond.Write(_used, units))
            .Add("fuel", FigureUnit.SquareMillimeterPerSecond.Write(_fuel, units))
            .Add("bracket", "double log to single log")
            .Add("caution", "soot and oxidation thicken, polymer shear thins, petrol evaporates: a laboratory's fuel figure outranks this")
            .Build(OilSources.FuelChart, OilSources.BlendChart);
    }

    private static (double NewOil, double Fuel) OilAndFuel(KinematicViscosity newOil, KinematicViscosity fuel)
    {
        double fresh = OilGuard.Kinematic(newOil, BlendMath.LeastKinematic, OilViscosity.Most40);
        double thinner = OilGuard.Kinematic(fuel, BlendMath.LeastKinematic, OilViscosity.Most40);
        return thinner < fresh
            ? (fresh, thinner)
            : throw new ArgumentException(
                FormattableString.Invariant($"The fuel must be thinner than the new oil, but has {thinner} mm²/s against {fresh} mm²/s at one temperature."), nameof(fuel));
    }
}
