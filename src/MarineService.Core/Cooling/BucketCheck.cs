using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Cooling;

/// <summary>A bucket test against what the engine needs and what a new pump would give.</summary>
public sealed class BucketCheck
{
    private const double Noise = 2;

    private readonly double _scale;
    private readonly double _sigma;
    private readonly double? _expected;

    internal BucketCheck(
        BucketTest test, WaterNeed need, double ratedRpm, RawWaterPump? pump, RawWaterCircuit? circuit, double wearLimit, double sigmaLitersPerMinute)
    {
        (Test, Need, _scale, _sigma) = (test, need, ratedRpm / test.Rpm, sigmaLitersPerMinute);
        _expected = pump?.LitersPerRevolution is double liters ? WaterMath.PumpLitersPerMinute(liters, test.Rpm * pump.SpeedRatio, 0) : null;
        Findings = Array.AsReadOnly<Finding>([.. Judge(circuit, wearLimit)]);
    }

    /// <summary>The test.</summary>
    public BucketTest Test { get; }

    /// <summary>What the engine needs at rated power.</summary>
    public WaterNeed Need { get; }

    /// <summary>The flow at rated speed, scaled up from the test.</summary>
    public VolumeFlow FlowAtRatedSpeed => VolumeFlow.FromLitersPerMinute(AtRated);

    /// <summary>One standard deviation of <see cref="FlowAtRatedSpeed"/>: of the measured volumes, and 0.3 s of timing.</summary>
    public VolumeFlow StandardUncertainty => VolumeFlow.FromLitersPerMinute(_sigma * _scale);

    /// <summary>What slips past worn vanes: 1 less the flow over that of a new pump; negative when more was caught than it displaces.</summary>
    public Answer<double> WearFraction => _expected is double expected
        ? Answer.Known(1 - (Test.LitersPerMinute / expected))
        : Answer.NotKnown<double>("What the raw-water pump moves in one turn with a new impeller.");

    /// <summary>What was found.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>True when nothing was found that must be put right.</summary>
    public bool IsEnough => Findings.All(finding => finding.Severity < Severity.Act);

    private double AtRated => Test.LitersPerMinute * _scale;

    /// <summary>Flow, need and wear, and what was found.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        string Flow(double value) => FigureUnit.LiterPerMinute.Write(value, units);
        ExplanationBuilder lines = new(IsEnough ? "The pump gives enough." : "The pump is not proved to give enough.");
        lines.Add("measured", $"{Flow(Test.LitersPerMinute)} at {FigureUnit.RevolutionPerMinute.Write(Test.Rpm, units)}");
        lines.Add("rated speed", $"{Flow(AtRated)} ± {Flow(_sigma * _scale)}");
        lines.Add("needed", Need.Explain(units).Answer);
        lines.AddIf(WearFraction.IsKnown, "wear", () => FigureUnit.Fraction.Write(WearFraction.Value, units));
        foreach (Finding finding in Findings)
        {
            lines.Add(finding.Code, $"{finding.Severity}: {finding.Message(units)}");
        }

        return lines.Build(CoolingSources.HeatBalance, CoolingSources.Hydraulics);
    }

    /// <summary>The answer in one line.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Explain(DisplayUnits.Metric).Answer;

    private IEnumerable<Finding> Judge(RawWaterCircuit? circuit, double wearLimit)
    {
        foreach (CircuitPlace outlet in circuit?.Outlets ?? [])
        {
            if (Test.Catches.All(bucket => bucket.Outlet != outlet.Name))
            {
                yield return WaterRules.OutletNotCaught.On("bucket test", Figure.Of("outlet", outlet.Name));
            }
        }

        double sigma = _sigma * _scale;
        Figure flow = Figure.Of("flow", AtRated, FigureUnit.LiterPerMinute);
        Figure need = Figure.Of("need", Need.LitersPerMinute, FigureUnit.LiterPerMinute);
        if (AtRated + (Noise * sigma) < Need.LitersPerMinute)
        {
            yield return WaterRules.TooLittle.On("raw-water pump", flow, need);
        }
        else if (AtRated - (Noise * sigma) < Need.LitersPerMinute)
        {
            yield return WaterRules.InsideTheNoise.On("raw-water pump", flow, need, Figure.Of("uncertainty", sigma, FigureUnit.LiterPerMinute));
        }

        if (_expected is not double expected)
        {
            yield break;
        }

        double wear = WearFraction.Value;
        if (Test.LitersPerMinute - (Noise * _sigma) > expected)
        {
            yield return WaterRules.MoreThanThePump.On(
                "bucket test",
                Figure.Of("flow", Test.LitersPerMinute, FigureUnit.LiterPerMinute),
                Figure.Of("expected", expected, FigureUnit.LiterPerMinute));
        }
        else if (wear > wearLimit)
        {
            yield return WaterRules.Worn.On(
                "raw-water pump", Figure.Of("wear", wear, FigureUnit.Fraction), Figure.Of("limit", wearLimit, FigureUnit.Fraction));
        }
    }
}
