using MarineService.Core.Internal;

namespace MarineService.Core.Fluids;

/// <summary>The account cast up: does what came out, what went in and what the stick says fit together, and what does it mean when not.</summary>
/// <remarks>
/// The sums, all at 15 °C, each measured less what the account promised: drain R = D - (service fill - residual - room before
/// [- filter unless emptied into the measure]); fill Q = F - (out + room before - room after); consumption C = top-ups + room
/// before - room after the last change; exchanged fraction f = out / (service fill - room before). Stop is for gained
/// volume, water, above full and below add; what merely does not add up is Act.
/// </remarks>
public sealed partial class FluidBalance
{
    private readonly OilChange _account;
    private readonly AccountState _state;

    internal FluidBalance(OilChange account)
    {
        _account = account;
        _state = account.Current.State;
        Drain = CastDrain();
        Fill = CastFill();
        Consumption = CastConsumption(account, _state);
        (ExchangedFraction, ExchangedUncertaintyFraction) = CastExchange();
        ConsumptionRate = CastRate();
        Discrepancies = Judge();
        Findings = Array.AsReadOnly<Finding>([.. Discrepancies.Select(discrepancy => discrepancy.Finding)]);
    }

    /// <summary>The account that was cast up.</summary>
    public OilChange Account => _account;

    /// <summary>R: what was drained against what level, book and residual promised.</summary>
    public Answer<BalanceCheck> Drain { get; }

    /// <summary>Q: what was poured against what the drain and the two readings explain.</summary>
    public Answer<BalanceCheck> Fill { get; }

    /// <summary>C: what the engine used since the last change (promised: nothing); negative when it gained.</summary>
    public Answer<BalanceCheck> Consumption { get; }

    /// <summary>The consumption by hours and by work.</summary>
    public Answer<OilConsumption> ConsumptionRate { get; }

    /// <summary>f: how much of the oil was exchanged, 0 to 1.</summary>
    public Answer<double> ExchangedFraction { get; }

    /// <summary>Standard uncertainty of <see cref="ExchangedFraction"/>.</summary>
    public Answer<double> ExchangedUncertaintyFraction { get; }

    /// <summary>Whether the fraction is too near the full-change limit to tell one from the other; not known when the fraction is not.</summary>
    public Answer<bool> IsExchangeInsideNoise =>
        ExchangedFraction.IsKnown ? Answer.Known(ExchangeInsideNoise) : Answer.NotKnown<bool>([.. ExchangedFraction.Missing]);

    /// <summary>Whether the change is reckoned pro rata: the boat is drained by extractor only, its residual declared, and so it was this time.</summary>
    public bool CountsProRata => _state.ByExtractorOnly && _account.Sump.IsDrainedOnlyByExtractor;

    /// <summary>The share of old oil in the engine now, with what coolers and hoses kept back; not known without a level before and a drain.</summary>
    public Answer<double> OldOilFraction
    {
        get
        {
            if (!ExchangedFraction.IsKnown)
            {
                return Answer.NotKnown<double>([.. ExchangedFraction.Missing]);
            }

            Sump sump = _account.Sump;
            double kept = Math.Max(0, sump.ServiceFillLiters - _state.RoomBefore - _state.Out(sump)) + sump.UndrainedPassagesLiters;
            double now = Math.Max(kept, _state.InEngine + sump.UndrainedPassagesLiters);
            return Answer.Known(now > 0 ? kept / now : 0);
        }
    }

    /// <summary>What is in the engine now.</summary>
    public Answer<OilEstimate> Level => _account.Estimate;

    /// <summary>What does not add up, gravest first, with likely causes and what to look at next.</summary>
    public IReadOnlyList<Discrepancy> Discrepancies { get; }

    /// <summary>The findings of <see cref="Discrepancies"/>, gravest first.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The gravest severity; <see cref="Severity.Note"/> when all adds up.</summary>
    public Severity Severity => Findings.Count == 0 ? Severity.Note : Findings[0].Severity;

    private bool ExchangeInsideNoise =>
        Math.Abs(RawExchange - _account.Limits.FullChangeFraction) <= _account.Limits.NoiseCoverageRatio * ExchangedUncertaintyFraction.Value;

    private double RawExchange => _state.Out(_account.Sump) / HeldBefore;

    private double HeldBefore => _account.Sump.ServiceFillLiters - _state.RoomBefore;

    /// <summary>The balance in words.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not defined.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new(Findings.Count == 0 ? "The account adds up." : $"{Severity}: {Findings[0].Message(units)}.");
        foreach (Answer<BalanceCheck> check in new[] { Drain, Fill, Consumption })
        {
            lines.AddIf(check.IsKnown, check.IsKnown ? check.Value.Name : "", () =>
                $"{Write(check.Value.MeasuredLiters)} against {Write(check.Value.PredictedLiters)}: {Write(check.Value.DifferenceLiters)} ± {Write(check.Value.SigmaLiters)}, {check.Value.Band}, {check.Value.NoiseWords()}");
        }

        lines.Add("exchanged", ExchangedFraction.IsKnown
                ? $"{FigureUnit.Fraction.Write(ExchangedFraction.Value, units)} ± {FigureUnit.Fraction.Write(ExchangedUncertaintyFraction.Value, units)}"
                : ExchangedFraction.ToString())
            .Add("used", ConsumptionRate.IsKnown ? ConsumptionRate.Value.Explain(units).Answer : ConsumptionRate.ToString())
            .Add("level", Level.IsKnown ? Level.Value.Explain(units).Answer : Level.ToString());
        foreach (Finding finding in Findings)
        {
            lines.Add(finding.Code, $"{finding.Severity}: {finding.Message(units)}");
        }

        return lines.Build(OilChange.Method, OilDensity.Source, Citation.ProjectChoice);

        string Write(double liters) => FigureUnit.Liter.Write(liters, units);
    }

    /// <summary>The severity and the gravest finding, metric and invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Findings.Count == 0 ? "The account adds up." : Findings[0].ToString();

    internal static Answer<BalanceCheck> CastConsumption(OilChange account, in AccountState state)
    {
        if (account.FindPeriod() is not PeriodSinceChange period)
        {
            return Answer.NotKnown<BalanceCheck>("The level after the last change, and what was topped up since.");
        }

        if (!state.BeforeKnown)
        {
            return Answer.NotKnown<BalanceCheck>("A dipstick reading before the change.");
        }

        (Sump sump, OilChangeLimits limits) = (account.Sump, account.Limits);
        OilChangeRemark remarks = OilChange.LevelOf(period.LevelAfterLastChange, sump, limits, out double level, out double variance);
        double toppedUp = 0;
        foreach (MeasuredVolume amount in period.TopUps)
        {
            BaseVolume volume = BaseVolume.Of(amount, sump.Oil, limits, limits.PourAssumption);
            remarks |= volume.IsCovered ? OilChangeRemark.None : OilChangeRemark.TemperatureOutside;
            toppedUp += volume.Liters;
            variance += volume.Variance;
        }

        return remarks == OilChangeRemark.None
            ? Answer.Known(Check(account, "consumption", toppedUp + state.RoomBefore + level, 0, variance + state.BeforeVariance))
            : Answer.NotKnown<BalanceCheck>("A level after the last change, and top-ups, read and measured in a way that can be reckoned with.");
    }

    private Answer<BalanceCheck> CastDrain()
    {
        if (!_state.HasDrain || !_state.BeforeKnown)
        {
            return Answer.NotKnown<BalanceCheck>("A measured drain and a dipstick reading before it.");
        }

        if (!_state.FilterSaid)
        {
            return Answer.NotKnown<BalanceCheck>("Whether the filter was changed, and emptied into the measure, or stayed on.");
        }

        return _state.FindResidual(_account.Sump) is Sump.Residual residual
            ? Answer.Known(Check(
                _account,
                "drain",
                _state.Drained,
                _state.ExpectedDrain(_account.Sump, residual.Liters),
                _state.DrainDifferenceVariance(_account.Sump, residual.SigmaLiters * residual.SigmaLiters)))
            : Answer.NotKnown<BalanceCheck>("What the extractor leaves in the sump: draw once, then open the drain plug and measure.");
    }

    private Answer<BalanceCheck> CastFill() =>
        !_state.BeforeKnown ? Answer.NotKnown<BalanceCheck>("A dipstick reading before the change.")
        : !_state.AfterKnown ? Answer.NotKnown<BalanceCheck>("A settled dipstick reading after the last pour and run.")
        : Answer.Known(Check(
            _account, "fill", _state.Poured, _state.ExpectedFill(_account.Sump), _state.FillDifferenceVariance(_account.Sump)));

    private (Answer<double> Fraction, Answer<double> Uncertainty) CastExchange()
    {
        if (!_state.BeforeKnown || !(_state.HasDrain || _state.FilterOff))
        {
            Answer<double> missing = Answer.NotKnown<double>("A dipstick reading before the change, and a measured drain.");
            return (missing, missing);
        }

        if (!_state.FilterSaid)
        {
            Answer<double> missing = Answer.NotKnown<double>("Whether the filter was changed, and emptied into the measure, or stayed on.");
            return (missing, missing);
        }

        double held = HeldBefore;
        if (held <= 0)
        {
            Answer<double> missing = Answer.NotKnown<double>("A level before the change at which the engine held oil.");
            return (missing, missing);
        }

        double fraction = RawExchange;
        double variance = (_state.OutVariance(_account.Sump)
            + fraction * fraction * (FluidMath.Square(_account.Sump.ServiceFillSigmaLiters) + _state.BeforeVariance)) / (held * held);
        return (Answer.Known(Math.Min(1, fraction)), Answer.Known(Math.Sqrt(variance)));
    }

    private Answer<OilConsumption> CastRate() =>
        Consumption.IsKnown
            ? OilConsumption.Of(Consumption.Value.DifferenceLiters, Consumption.Value.SigmaLiters, _account.FindPeriod()!, _account.Sump.Oil)
            : Answer.NotKnown<OilConsumption>([.. Consumption.Missing]);

    private static BalanceCheck Check(OilChange account, string name, double measured, double predicted, double variance) =>
        new(name, measured, predicted, variance, account.Sump.ServiceFillLiters, account.Limits);
}
