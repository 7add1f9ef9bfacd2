using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Fluids;

/// <summary>What is in the engine after an event, as far as the account can tell, and how sure.</summary>
/// <remarks>All at 15 °C. Amounts count from what a full drain leaves, as the service fill does.</remarks>
public sealed class OilEstimate
{
    private readonly AccountState _state;
    private readonly double _rangeLiters;

    internal OilEstimate(AccountState state, double rangeLiters) => (_state, _rangeLiters) = (state, rangeLiters);

    /// <summary>Oil in sump and filter.</summary>
    public Volume InEngine => Volume.FromLiters(_state.InEngine);

    /// <summary>Standard uncertainty of <see cref="InEngine"/>.</summary>
    public Volume InEngineStandardUncertainty => Volume.FromLiters(Root(_state.InEngineVariance));

    /// <summary>Oil in the sump.</summary>
    public Volume InSump => Volume.FromLiters(_state.InSump);

    /// <summary>Standard uncertainty of <see cref="InSump"/>.</summary>
    public Volume InSumpStandardUncertainty => Volume.FromLiters(Root(_state.InSumpVariance));

    /// <summary>Oil in the filter.</summary>
    public Volume InFilter => Volume.FromLiters(_state.InFilter);

    /// <summary>Standard uncertainty of <see cref="InFilter"/>.</summary>
    public Volume InFilterStandardUncertainty => Volume.FromLiters(Root(_state.InFilterVariance));

    /// <summary>Room below the full mark on the stick as it stands; negative when above full.</summary>
    public Volume RoomToFull => Volume.FromLiters(-_state.Level);

    /// <summary>Standard uncertainty of <see cref="RoomToFull"/>.</summary>
    public Volume RoomStandardUncertainty => Volume.FromLiters(Root(_state.LevelVariance));

    /// <summary>Where the stick should read: 0 at the add mark, 1 at the full mark.</summary>
    public double RangeFraction => 1 + _state.Level / _rangeLiters;

    /// <summary>Standard uncertainty of <see cref="RangeFraction"/>.</summary>
    public double RangeStandardUncertaintyFraction => Root(_state.LevelVariance) / _rangeLiters;

    /// <summary>The chance that the level is above full, 0 to 1.</summary>
    public double AboveFullChanceFraction
    {
        get
        {
            double sigma = Root(_state.LevelVariance);
            return sigma > 0 ? FluidMath.NormalCdf(_state.Level / sigma) : _state.Level > 0 ? 1 : 0;
        }
    }

    internal double LevelLiters => _state.Level;

    internal double LevelSigmaLiters => _state.LevelSigma;

    /// <summary>The estimate in words.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not defined.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        string With(double liters, double variance) => $"{FigureUnit.Liter.Write(liters, units)} ± {FigureUnit.Liter.Write(Root(variance), units)}";
        return new ExplanationBuilder($"The stick should read {FigureUnit.Fraction.Write(RangeFraction, units)} of the range.")
            .Add("in engine", With(_state.InEngine, _state.InEngineVariance))
            .Add("in sump", With(_state.InSump, _state.InSumpVariance))
            .Add("in filter", With(_state.InFilter, _state.InFilterVariance))
            .Add("room to full", With(-_state.Level, _state.LevelVariance))
            .Add("above full", $"chance {FigureUnit.Fraction.Write(AboveFullChanceFraction, units)}")
            .AddIf(_state.DrainDisputed, "caution", () => "drain and capacity disagree; this takes the one that leaves less room")
            .Build(OilChange.Method);
    }

    /// <summary>Oil in the engine and room to full, metric and invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{FigureUnit.Liter.Write(_state.InEngine, DisplayUnits.Metric)} in the engine, {FigureUnit.Liter.Write(-_state.Level, DisplayUnits.Metric)} ± {FigureUnit.Liter.Write(LevelSigmaLiters, DisplayUnits.Metric)} of room to full";

    private static double Root(double variance) => Math.Sqrt(Math.Max(0, variance));
}
