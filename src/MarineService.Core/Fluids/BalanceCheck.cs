using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Fluids;

/// <summary>One sum of the account: what was measured against what the account promised before the measurement was taken in.</summary>
/// <remarks>All at 15 °C. A difference can lie beyond its band and yet inside the noise: then better measures are needed, not a mechanic.</remarks>
public sealed class BalanceCheck
{
    private readonly double _measured;
    private readonly double _predicted;
    private readonly double _sigma;
    private readonly double _fine;
    private readonly double _doubtful;
    private readonly double _coverage;

    internal BalanceCheck(string name, double measured, double predicted, double variance, double serviceFill, OilChangeLimits limits)
    {
        (Name, _measured, _predicted, _sigma) = (name, measured, predicted, Math.Sqrt(Math.Max(0, variance)));
        (_fine, _doubtful) = (limits.FineBandLiters(serviceFill), limits.DoubtfulBandLiters(serviceFill));
        _coverage = limits.NoiseCoverageRatio;
    }

    /// <summary>What is checked: "drain", "fill", "consumption" or "reading".</summary>
    public string Name { get; }

    /// <summary>What was measured.</summary>
    public Volume Measured => Volume.FromLiters(_measured);

    /// <summary>What the account promised.</summary>
    public Volume Predicted => Volume.FromLiters(_predicted);

    /// <summary>Measured less predicted.</summary>
    public Volume Difference => Volume.FromLiters(DifferenceLiters);

    /// <summary>Standard uncertainty of the difference.</summary>
    public Volume StandardUncertainty => Volume.FromLiters(_sigma);

    /// <summary>How far the difference is from nothing.</summary>
    public BalanceBand Band
    {
        get
        {
            double size = Math.Abs(DifferenceLiters);
            return size <= _fine + Grain ? BalanceBand.Fine : size <= _doubtful + Grain ? BalanceBand.Doubtful : BalanceBand.Beyond;
        }
    }

    /// <summary>Whether the difference is no more than the measuring itself explains.</summary>
    public bool IsInsideNoise => Math.Abs(DifferenceLiters) <= _coverage * _sigma + Grain;

    internal double DifferenceLiters => _measured - _predicted;

    internal double MeasuredLiters => _measured;

    internal double PredictedLiters => _predicted;

    internal double SigmaLiters => _sigma;

    internal double CoverageLiters => _coverage * _sigma;

    // A difference that equals its limit in decimals must not fail by the last bit of a binary fraction.
    private static double Grain => 1e-9;

    /// <summary>The sum with its band and its noise.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not defined.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        string Write(double liters) => FigureUnit.Liter.Write(liters, units);
        return new ExplanationBuilder($"{Name}: {Write(DifferenceLiters)} off, {Band}, {NoiseWords(units)}.")
            .Add("measured", Write(_measured))
            .Add("predicted", Write(_predicted))
            .Add("doubt", $"± {Write(_sigma)} (one standard deviation)")
            .Add("fine up to", Write(_fine))
            .Add("doubtful to", Write(_doubtful))
            .Build(Citation.Derived("conservation of volume at 15 °C"), Citation.ProjectChoice);
    }

    /// <summary>Name, difference and uncertainty, metric and invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Name} {FigureUnit.Liter.Write(DifferenceLiters, DisplayUnits.Metric)} ± {FigureUnit.Liter.Write(_sigma, DisplayUnits.Metric)}, {Band}";

    internal string NoiseWords() => IsInsideNoise ? "inside the noise of measuring" : "outside the noise of measuring";

    private string NoiseWords(DisplayUnits units) => $"{NoiseWords()} ({FigureUnit.Liter.Write(CoverageLiters, units)})";
}
