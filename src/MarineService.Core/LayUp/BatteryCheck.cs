using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.LayUp;

/// <summary>Whether a battery may stay out in the cold as it is: when its acid freezes, and whether it wants charge.</summary>
/// <remarks>
/// Only flooded lead is worked out. From a voltage the density is a bracket, and the weak end decides. Below the table (a relative
/// density under 1.050) the acid is nearly water; above it (over 1.265) it freezes at -59 °C or below.
/// </remarks>
public sealed class BatteryCheck
{
    private readonly double? _leastRatio;
    private readonly double? _mostRatio;
    private readonly IReadOnlyList<string> _missing;

    private BatteryCheck(BatteryReading reading, FreezeDecision freeze, LayUpLimits limits)
    {
        (Reading, Freeze) = (reading, freeze);
        _missing = [.. Lacking(reading, limits)];
        if (_missing.Count == 0)
        {
            double? cell = reading.RestVolts / reading.Cells;
            _leastRatio = reading.DensityRatio ?? BatteryMath.LeastDensityRatioAt(cell!.Value);
            _mostRatio = reading.DensityRatio ?? BatteryMath.MostDensityRatioAt(cell!.Value);
        }

        Findings = Judge(limits);
    }

    /// <summary>What was read.</summary>
    public BatteryReading Reading { get; }

    /// <summary>The lowest temperature.</summary>
    public FreezeDecision Freeze { get; }

    /// <summary>The density that the acid has at least, relative to water at 25 °C.</summary>
    public Answer<double> LeastDensityRatio => _leastRatio is double ratio ? Answer.Known(ratio) : Answer.NotKnown<double>([.. _missing]);

    /// <summary>The density that the acid has at most, relative to water at 25 °C.</summary>
    public Answer<double> MostDensityRatio => _mostRatio is double ratio ? Answer.Known(ratio) : Answer.NotKnown<double>([.. _missing]);

    /// <summary>Where the acid begins to freeze, by the least density; where the table ends at the strong side, the acid freezes there or below.</summary>
    public Answer<Temperature> FreezingPoint =>
        FreezingCelsius is double celsius ? Answer.Known(Temperature.FromDegreesCelsius(celsius))
        : Answer.NotKnown<Temperature>([.. _missing.Count > 0 ? _missing : ["A density of 1.050 or more: this acid is nearly water."]]);

    /// <summary>What must be done.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    internal double? FreezingCelsius =>
        _leastRatio is not double ratio || ratio < BatteryMath.LeastDensityRatio ? null : BatteryMath.FreezingCelsius(Math.Min(ratio, BatteryMath.MostDensityRatio));

    /// <summary>A check of a battery against the lowest temperature of the winter.</summary>
    /// <param name="reading">What was read.</param>
    /// <param name="freeze">The lowest temperature.</param>
    /// <param name="limits">Voltage and rest; <see cref="LayUpLimits.Default"/> when null.</param>
    /// <returns>The check.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="reading"/> or <paramref name="freeze"/> is null.</exception>
    public static BatteryCheck Of(BatteryReading reading, FreezeDecision freeze, LayUpLimits? limits = null) =>
        new(Guard.NotNull(reading), Guard.NotNull(freeze), limits ?? LayUpLimits.Default);

    /// <summary>The freezing point, what it was read from, and the sources.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        string beyond = _leastRatio > BatteryMath.MostDensityRatio ? " or below" : "";
        ExplanationBuilder lines = new(FreezingCelsius is double celsius
            ? $"The battery freezes at {FigureUnit.DegreeCelsius.Write(Math.Round(celsius), units)}{beyond}."
            : $"Freezing point not known: {string.Join(" ", FreezingPoint.Missing)}");
        lines.Add("read", Reading.ToString())
            .AddIf(_leastRatio is not null, "density", () => _leastRatio == _mostRatio
                ? FormattableString.Invariant($"{_leastRatio:0.000}") : FormattableString.Invariant($"{_leastRatio:0.000} to {_mostRatio:0.000}, the weak end decides"))
            .Add("lowest", Freeze.LowCelsius is double low ? FigureUnit.DegreeCelsius.Write(low, units) : Freeze.Low.ToString());
        foreach (Finding finding in Findings)
        {
            lines.Add(finding.Code, finding.Message(units));
        }

        return lines.Build(Reading.DensityRatio is null
            ? [LayUpSources.BatteryFreezing, Citation.FromMemory, Citation.CommonPractice]
            : [LayUpSources.BatteryFreezing, Citation.CommonPractice]);
    }

    /// <summary>The freezing point, metric and invariant.</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() => Explain(DisplayUnits.Metric).Answer;

    private static IEnumerable<string> Lacking(BatteryReading reading, LayUpLimits limits)
    {
        if (reading.Kind != BatteryKind.FloodedLead)
        {
            yield return reading.Kind == BatteryKind.NotStated
                ? "How the battery is made."
                : "The maker's figure for storage in the cold: no table for this kind of battery is known.";
        }
        else if (reading.RestVolts is not null && (reading.RestedHours is not double rested || rested < limits.LeastRestHours))
        {
            yield return FormattableString.Invariant($"The voltage after {limits.LeastRestHours:0.#} h without charge or load.");
        }
    }

    private List<Finding> Judge(LayUpLimits limits)
    {
        const string subject = "battery";
        List<Finding> findings = [];
        if (Reading.Kind == BatteryKind.LithiumIronPhosphate)
        {
            findings.Add(LayUpRules.LithiumInTheCold.On(subject));
        }

        if (_missing.Count > 0)
        {
            findings.Add(LayUpRules.BatteryNotKnown.On(subject, Figure.Of("missing", string.Join(" ", _missing))));
            return findings;
        }

        if (FreezingCelsius is not double freezes)
        {
            findings.Add(LayUpRules.BatteryNearlyWater.On(subject, Figure.Of("density", _leastRatio!.Value, FigureUnit.Number)));
        }
        else if (Freeze.LowCelsius is double low && freezes > low)
        {
            findings.Add(LayUpRules.BatteryFreezes.On(
                subject, Figure.Of("freezing point", Math.Round(freezes, 1), FigureUnit.DegreeCelsius), Figure.Of("lowest", low, FigureUnit.DegreeCelsius)));
        }

        double wantedVolts = limits.RechargeBelowVolts * Reading.Cells / 6;
        bool isLow = Reading.RestVolts is double volts ? volts < wantedVolts : Reading.DensityRatio < BatteryMath.LeastDensityRatioAt(limits.RechargeBelowVolts / 6);
        if (isLow)
        {
            findings.Add(LayUpRules.BatteryWantsCharge.On(subject, Figure.Of("read", Reading.ToString()), Figure.Of("limit", wantedVolts, FigureUnit.Volt)));
        }

        return findings;
    }
}
