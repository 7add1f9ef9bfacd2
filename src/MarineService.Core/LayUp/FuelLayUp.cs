using MarineService.Core.Engines;
using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.LayUp;

/// <summary>A fuel tank over the winter: to which level, how much fuel to add, and how much stabilizer for what is then in it.</summary>
/// <remarks>
/// The stabilizer goes in before the fuel, so that filling mixes it, and the engine then runs about ten minutes, so that treated fuel
/// reaches all of it. A published figure for stored vessels is 90 to 95 % full, another for clean boating is at most 90 %.
/// </remarks>
public sealed class FuelLayUp
{
    internal const double MostFullFraction = 0.95;

    // Articles: untreated petrol with ethanol 30 to 45 days, diesel 6 to 12 months. The shorter ends are the careful ones.
    internal const int PetrolDays = 30;
    internal const int DieselDays = 182;

    private readonly double _addLiters;

    private FuelLayUp(FuelTank tank, FuelStabilizer? stabilizer, double? insideLiters, double fillFraction)
    {
        (Tank, Stabilizer, InsideLiters, FillFraction) = (tank, stabilizer, insideLiters, fillFraction);
        double target = tank.CapacityLiters * fillFraction;
        AfterLiters = Math.Max(target, insideLiters ?? 0);
        _addLiters = Math.Max(0, target - (insideLiters ?? target));
    }

    /// <summary>The tank.</summary>
    public FuelTank Tank { get; }

    /// <summary>The stabilizer, or null when none is used.</summary>
    public FuelStabilizer? Stabilizer { get; }

    /// <summary>How full the tank shall be, from 0 to 0.95.</summary>
    public double FillFraction { get; }

    /// <summary>How much fuel to add; not known without the level.</summary>
    public Answer<Volume> Add => InsideLiters is null ? Answer.NotKnown<Volume>("How much fuel is in the tank.") : Answer.Known(Volume.FromLiters(_addLiters));

    /// <summary>How much fuel is treated: what is in the tank after filling.</summary>
    public Volume Treated => Volume.FromLiters(AfterLiters);

    /// <summary>How much stabilizer, put in before the fuel; not known without its label.</summary>
    public Answer<Volume> Dose =>
        DoseMilliliters is double dose ? Answer.Known(Volume.FromMilliliters(dose)) : Answer.NotKnown<Volume>("The stabilizer and the dose on its label.");

    internal double? InsideLiters { get; }

    internal double AfterLiters { get; }

    internal double AddLiters => _addLiters;

    internal double? DoseMilliliters => Stabilizer?.MillilitersFor(AfterLiters);

    /// <summary>A tank over the winter.</summary>
    /// <param name="tank">The tank.</param>
    /// <param name="inside">How much fuel is in it, from 0 to its capacity; null when it is not known.</param>
    /// <param name="stabilizer">The stabilizer, or null when none is used.</param>
    /// <param name="limits">How full; <see cref="LayUpLimits.Default"/> when null.</param>
    /// <returns>The amounts.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tank"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="inside"/> is outside its range.</exception>
    public static FuelLayUp Of(FuelTank tank, Volume? inside = null, FuelStabilizer? stabilizer = null, LayUpLimits? limits = null) =>
        new(
            Guard.NotNull(tank),
            stabilizer,
            inside is Volume volume ? Guard.InRange(Canonical.Liters(volume), 0, tank.CapacityLiters, "L", nameof(inside)) : null,
            (limits ?? LayUpLimits.Default).TankFillFraction);

    /// <summary>What is wrong with the tank's level, or with fuel that stays untreated for so long.</summary>
    /// <param name="days">How long it is laid up, from 0 to 3,660 days; null when that is not known.</param>
    /// <returns>The findings; empty when nothing is wrong.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="days"/> is outside its range.</exception>
    public IReadOnlyList<Finding> Findings(int? days = null)
    {
        if (days is int given)
        {
            Guard.InRange(given, 0, 3660, "days", nameof(days));
        }

        List<Finding> findings = [];
        if (InsideLiters / Tank.CapacityLiters > MostFullFraction)
        {
            findings.Add(LayUpRules.TankTooFull.On(Tank.Title, Figure.Of("full", InsideLiters!.Value / Tank.CapacityLiters, FigureUnit.Fraction)));
        }

        int? keeps = Tank.Fuel switch { Fuel.Petrol => PetrolDays, Fuel.Diesel => DieselDays, _ => null };
        if (Stabilizer is null && days > keeps)
        {
            findings.Add(LayUpRules.FuelGoesStale.On(Tank.Title, Figure.Of("days", days!.Value, FigureUnit.Day), Figure.Of("keeps", keeps!.Value, FigureUnit.Day)));
        }

        return findings.AsReadOnly();
    }

    /// <summary>The level, the amounts and their sources.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        return new ExplanationBuilder(
                $"{(DoseMilliliters is double dose ? $"{FigureUnit.Milliliter.Write(dose, units)} of stabilizer for {FigureUnit.Liter.Write(AfterLiters, units)}" : "No stabilizer")}, tank {FigureUnit.Fraction.Write(FillFraction, units)} full.")
            .Add("tank", $"holds {FigureUnit.Liter.Write(Tank.CapacityLiters, units)}")
            .Add("inside", InsideLiters is double inside ? FigureUnit.Liter.Write(inside, units) : "not known")
            .Add("add", Add.IsKnown ? FigureUnit.Liter.Write(_addLiters, units) : Add.ToString())
            .AddIf(Stabilizer is not null, "label", () => $"{FigureUnit.Milliliter.Write(Stabilizer!.Milliliters, units)} for {FigureUnit.Liter.Write(Stabilizer.TreatsLiters, units)}")
            .Build(LayUpSources.FuelTankLevel, LayUpSources.CleanBoatingFuel, Citation.GivenByCaller);
    }

    /// <summary>Level and dose, metric and invariant.</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() => Explain(DisplayUnits.Metric).Answer;
}
