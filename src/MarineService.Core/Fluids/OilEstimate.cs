using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Fluids;

/// <summary>What is in the engine after an event, as far as the account can tell, and how sure.</summary>
/// <remarks>All at 15 °C. Amounts count from what a full drain leaves, as the service fill does.</remarks>
public sealed class OilEstimate
{
    private readonly AccountOutcome _outcome;

    internal OilEstimate(AccountOutcome outcome) => _outcome = outcome;

    /// <summary>Oil in sump and filter.</summary>
    public Volume InEngine => Volume.FromLiters(State.InEngine);

    /// <summary>Standard uncertainty of <see cref="InEngine"/>.</summary>
    public Volume InEngineStandardUncertainty => Volume.FromLiters(Root(State.InEngineVariance));

    /// <summary>Oil in the sump.</summary>
    public Volume InSump => Volume.FromLiters(State.InSump);

    /// <summary>Standard uncertainty of <see cref="InSump"/>.</summary>
    public Volume InSumpStandardUncertainty => Volume.FromLiters(Root(State.InSumpVariance));

    /// <summary>Oil in the filter.</summary>
    public Volume InFilter => Volume.FromLiters(State.InFilter);

    /// <summary>Standard uncertainty of <see cref="InFilter"/>.</summary>
    public Volume InFilterStandardUncertainty => Volume.FromLiters(Root(State.InFilterVariance));

    /// <summary>Room below the full mark on the stick as it stands; negative when above full.</summary>
    public Volume RoomToFull => Volume.FromLiters(-State.Level);

    /// <summary>Standard uncertainty of <see cref="RoomToFull"/>.</summary>
    public Volume RoomStandardUncertainty => Volume.FromLiters(Root(State.LevelVariance));

    /// <summary>Where the stick should read: 0 at the add mark, 1 at the full mark.</summary>
    public double RangeFraction => 1 + State.Level / RangeLiters;

    /// <summary>Standard uncertainty of <see cref="RangeFraction"/>.</summary>
    public double RangeStandardUncertaintyFraction => Root(State.LevelVariance) / RangeLiters;

    /// <summary>The chance that the level is above full, 0 to 1.</summary>
    public double AboveFullChanceFraction
    {
        get
        {
            double sigma = Root(State.LevelVariance);
            return sigma > 0 ? FluidMath.NormalCdf(State.Level / sigma) : State.Level > 0 ? 1 : 0;
        }
    }

    private double RangeLiters => _outcome.Opening.Sump.Dipstick.RangeLiters;

    private ref readonly AccountState State => ref _outcome.State;

    internal double LevelLiters => State.Level;

    internal double LevelSigmaLiters => State.LevelSigma;

    /// <summary>The estimate in words.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not defined.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        string With(double liters, double variance) => $"{FigureUnit.Liter.Write(liters, units)} ± {FigureUnit.Liter.Write(Root(variance), units)}";
        return new ExplanationBuilder($"The stick should read {FigureUnit.Fraction.Write(RangeFraction, units)} of the range.")
            .Add("in engine", With(State.InEngine, State.InEngineVariance))
            .Add("in sump", With(State.InSump, State.InSumpVariance))
            .Add("in filter", With(State.InFilter, State.InFilterVariance))
            .Add("room to full", With(-State.Level, State.LevelVariance))
            .Add("above full", $"chance {FigureUnit.Fraction.Write(AboveFullChanceFraction, units)}")
            .AddIf(State.DrainDisputed, "caution", () => "drain and capacity disagree; this takes the one that leaves less room")
            .Build(OilChange.Method);
    }

    /// <summary>Oil in the engine and room to full, metric and invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{FigureUnit.Liter.Write(State.InEngine, DisplayUnits.Metric)} in the engine, {FigureUnit.Liter.Write(-State.Level, DisplayUnits.Metric)} ± {FigureUnit.Liter.Write(LevelSigmaLiters, DisplayUnits.Metric)} of room to full";

    private static double Root(double variance) => Math.Sqrt(Math.Max(0, variance));
}
