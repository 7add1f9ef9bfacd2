using System.Collections.ObjectModel;

namespace MarineService.Core.Fluids;

/// <content>What the sums mean.</content>
public sealed partial class FluidBalance
{
    /// <summary>More in the engine than was left and topped up, as a finding; null when it is not more, or not known.</summary>
    internal static Finding? JudgeGain(Answer<BalanceCheck> consumption)
    {
        if (consumption is not { IsKnown: true, Value: BalanceCheck { DifferenceLiters: < 0, Band: not BalanceBand.Fine } check })
        {
            return null;
        }

        FindingRule rule = check.IsInsideNoise ? OilChangeRules.GainedVolumeDoubtful : OilChangeRules.GainedVolume;
        return rule.On("oil", Figure.Of("gained", -check.DifferenceLiters, FigureUnit.Liter), OilChange.Noise(check.IsInsideNoise));
    }

    private ReadOnlyCollection<Discrepancy> Judge()
    {
        List<Finding> findings = [];
        for (OilChange? change = _account; change is not null; change = change.Previous)
        {
            if (change.Step is OilChangeStep.Looked or OilChangeStep.Ran)
            {
                findings.AddRange(change.Findings);
            }
        }

        if (JudgeGain(Consumption) is Finding gained)
        {
            findings.Add(gained);
        }

        JudgeConsumptionRate(findings);
        if (_state.LevelKnown && (_state.HasPour || _state.AfterKnown) && OilChange.JudgeLevel(_account.Sump, _account.Limits, _state) is Finding level)
        {
            findings.Add(level);
        }

        JudgeSum(findings, Drain, "drain", OilChangeRules.DrainShort, OilChangeRules.DrainShortDoubtful, OilChangeRules.DrainSurplus, OilChangeRules.DrainSurplusDoubtful);
        JudgeSum(findings, Fill, "fill", OilChangeRules.FillShort, OilChangeRules.FillShortDoubtful, OilChangeRules.FillSurplus, OilChangeRules.FillSurplusDoubtful);
        JudgeExchange(findings);
        if (_state.FilterDry && _state.HasPour)
        {
            findings.Add(OilChangeRules.FilterNotFilled.On(
                "filter", Figure.Of("to take", Math.Max(0, _state.FilterVolume - _state.Primed), FigureUnit.Liter)));
        }

        return Array.AsReadOnly<Discrepancy>([.. findings.OrderByDescending(finding => finding.Severity).Select(Discrepancy.Of)]);
    }

    private void JudgeConsumptionRate(List<Finding> findings)
    {
        if (!ConsumptionRate.IsKnown)
        {
            return;
        }

        OilConsumption rate = ConsumptionRate.Value;
        Figure rateFigure = Figure.Of("rate", Math.Round(rate.LitersPer100Hours, 2), FigureUnit.Number);
        double noise = _account.Limits.NoiseCoverageRatio * rate.SpecificSigma;
        if (rate.GramsPerKilowattHour is { IsKnown: true, Value: double specific } && specific - noise > OilConsumption.MostGramsPerKilowattHour)
        {
            findings.Add(OilChangeRules.ConsumptionAboveUsual.On(
                "oil consumption",
                rateFigure,
                Figure.Of("specific", Math.Round(specific, 2), FigureUnit.Number),
                Figure.Of("least", OilConsumption.LeastGramsPerKilowattHour, FigureUnit.Number),
                Figure.Of("most", OilConsumption.MostGramsPerKilowattHour, FigureUnit.Number)));
        }

        if (rate.TrendRatio is { IsKnown: true, Value: double times } && times > _account.Limits.ConsumptionTrendRatio)
        {
            findings.Add(OilChangeRules.ConsumptionRising.On(
                "oil consumption", rateFigure, Figure.Of("times", Math.Round(times, 1), FigureUnit.Number)));
        }
    }

    private void JudgeExchange(List<Finding> findings)
    {
        if (!ExchangedFraction.IsKnown || !_state.HasDrain)
        {
            return;
        }

        double needed = _account.Limits.FullChangeFraction;
        Figure exchanged = Figure.Of("exchanged", ExchangedFraction.Value, FigureUnit.Fraction);
        if (CountsProRata)
        {
            findings.Add(OilChangeRules.CountsProRata.On("oil change", exchanged));
        }
        else if (ExchangedFraction.Value < needed)
        {
            FindingRule rule = ExchangeInsideNoise ? OilChangeRules.NotFullChangeInsideNoise : OilChangeRules.NotFullChange;
            findings.Add(rule.On("oil change", exchanged, Figure.Of("needed", needed, FigureUnit.Fraction), OilChange.Noise(ExchangeInsideNoise)));
        }
    }

    private static void JudgeSum(
        List<Finding> findings,
        Answer<BalanceCheck> sum,
        string subject,
        FindingRule missing,
        FindingRule missingDoubtful,
        FindingRule surplus,
        FindingRule surplusDoubtful)
    {
        if (!sum.IsKnown || sum.Value.Band == BalanceBand.Fine)
        {
            return;
        }

        BalanceCheck check = sum.Value;
        bool grave = check.Band == BalanceBand.Beyond && !check.IsInsideNoise;
        bool tooMuch = check.DifferenceLiters > 0;
        FindingRule rule = tooMuch ? (grave ? surplus : surplusDoubtful) : (grave ? missing : missingDoubtful);
        findings.Add(rule.On(
            subject,
            Figure.Of("measured", check.MeasuredLiters, FigureUnit.Liter),
            Figure.Of("promised", check.PredictedLiters, FigureUnit.Liter),
            Figure.Of(tooMuch ? "surplus" : "missing", Math.Abs(check.DifferenceLiters), FigureUnit.Liter),
            OilChange.Noise(check.IsInsideNoise)));
    }
}
