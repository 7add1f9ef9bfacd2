using MarineService.Core.Internal;

namespace MarineService.Core.Fluids;

/// <content>What may be asked after each event.</content>
public sealed partial class OilChange
{
    private const string NeedsReading = "A settled dipstick reading, or a drain by a way whose residual is known.";
    private const string NeedsFilter = "Whether the filter was changed (and emptied into the measure) or stays on.";

    /// <summary>What is in the engine now, and how sure; not known while no level is.</summary>
    /// <remarks>Between a drain and what is said of the filter it counts the filter as still on.</remarks>
    public Answer<OilEstimate> Estimate
    {
        get
        {
            AccountOutcome now = Current;
            return now.State.LevelKnown
                ? Answer.Known(new OilEstimate(now))
                : Answer.NotKnown<OilEstimate>(NeedsReading);
        }
    }

    /// <summary>
    /// What this event's dipstick reading showed against what the account promised before it was taken in (the innovation);
    /// not known for other events and for a first reading.
    /// </summary>
    /// <remarks>The measured and predicted values are the room below the full mark.</remarks>
    public Answer<BalanceCheck> Surprise
    {
        get
        {
            if (Step != OilChangeStep.Settled || IsRefused || Previous is not OilChange before)
            {
                return Answer.NotKnown<BalanceCheck>("An event that reads the dipstick.");
            }

            AccountState state = before.State;
            EndDrain(ref state, Opened);
            if (!state.LevelKnown)
            {
                return Answer.NotKnown<BalanceCheck>(NeedsReading);
            }

            LevelOf(Reading!, Sump, Limits, out double level, out double variance);
            return Answer.Known(new BalanceCheck(
                "reading", -level, -state.Level, state.LevelVariance + variance, Sump.ServiceFillLiters, Limits));
        }
    }

    /// <summary>The largest next pour that keeps the chance of passing the full mark within a risk.</summary>
    /// <remarks>
    /// <para>The first pour after a drain is at most 85 % of the plan (what is missing to 90 % of the range, filter
    /// included; a primed filter counts as poured), later ones at most half the range. The level is the one on the stick as
    /// it stands: before the run a dry filter leaves the sump fuller, and it must not pass full even then.</para>
    /// <para>The pour's own measure is doubtful too and is allowed for. When the last reading stands higher than the
    /// account can explain, the pour must not pass full by either. The volume is at 15 °C.</para>
    /// <para>Nothing may be poured, whatever the room, once water was seen in the oil or more was in the engine than was left
    /// and topped up: new oil would hide what came in, and the engine must not run on it.
    /// <see cref="SafePour.Cause"/> says which. When the cause is found and mended, what follows is an account of its own.</para>
    /// </remarks>
    /// <param name="overfillRiskFraction">From 0.000001 to 0.5; null for the limits' own (0.05).</param>
    /// <param name="from">What it will be poured from; null for <see cref="MeasuringVessel.WorkshopJug"/>.</param>
    /// <returns>The pour; not known while the level is not, or while nothing is said of the filter, unless nothing may be poured anyhow.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="overfillRiskFraction"/> is outside its range.</exception>
    public Answer<SafePour> NextSafePour(double? overfillRiskFraction = null, MeasuringVessel? from = null)
    {
        double risk = overfillRiskFraction is double given
            ? Guard.InRange(given, 1e-6, 0.5, "of the cases", nameof(overfillRiskFraction))
            : Limits.OverfillRiskFraction;
        double deviations = overfillRiskFraction is null ? Limits.OverfillDeviations : FluidMath.DeviationsLeavingAbove(risk);
        ref readonly AccountState state = ref Current.State;
        if (FindIngress(state) is Finding cause)
        {
            return Answer.Known(SafePour.NothingBefore(cause, state, Sump.Dipstick.RangeLiters, Limits, risk));
        }

        if (state.HasDrain && !state.FilterSaid)
        {
            return Answer.NotKnown<SafePour>(NeedsFilter);
        }

        return state.LevelKnown
            ? Answer.Known(SafePour.From(state, Sump.Dipstick.RangeLiters, Limits, from ?? MeasuringVessel.WorkshopJug, risk, deviations))
            : Answer.NotKnown<SafePour>(NeedsReading);
    }

    /// <summary>Casts up the account: drain, fill, consumption, exchanged fraction, level, and what they mean.</summary>
    /// <returns>The balance; each sum says what is missing when it cannot be cast.</returns>
    public FluidBalance Balance() => new(this);

    /// <summary>Every event in words, with what was known after it.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not defined.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        Answer<OilEstimate> estimate = Estimate;
        ExplanationBuilder lines = new(estimate.IsKnown
            ? $"{FigureUnit.Liter.Write(Canonical.Liters(estimate.Value.InEngine), units)} in the engine, {FigureUnit.Liter.Write(Canonical.Liters(estimate.Value.RoomToFull), units)} of room to full."
            : "The level is not known.");
        foreach (OilChange change in Events)
        {
            string given = change.Measured is MeasuredVolume measured ? measured.ToString(units) : change.Given;
            Answer<OilEstimate> then = change.Estimate;
            string level = then.IsKnown
                ? $"room {FigureUnit.Liter.Write(-then.Value.LevelLiters, units)} ± {FigureUnit.Liter.Write(then.Value.LevelSigmaLiters, units)}"
                : "level not known";
            lines.Add(change.Step.ToString(), $"{given}{(given.Length == 0 ? "" : "; ")}{(change.IsRefused ? "refused; " : "")}{level}");
        }

        return lines.Build(Method, OilDensity.Source, Citation.ProjectChoice);
    }

    /// <summary>Where the level stands against the marks, as a finding; null when it is between them.</summary>
    /// <remarks>The stick has the last word: a settled reading with nothing moved since is judged as it was read.</remarks>
    internal static Finding? JudgeLevel(Sump sump, OilChangeLimits limits, in AccountState state)
    {
        double range = sump.Dipstick.RangeLiters;
        double noise = limits.NoiseCoverageRatio * (state.AfterKnown ? Math.Sqrt(state.AfterVariance) : state.LevelSigma);
        double above = state.AfterKnown ? -state.RoomAfter : state.Level;
        double below = -range - above;
        const double Grain = 1e-9;
        if (above > Grain)
        {
            bool stop = above > noise + Grain || above > limits.AboveFullStopRangeFraction * range + Grain;
            return (stop ? OilChangeRules.AboveFull : OilChangeRules.AboveFullInsideNoise).On(
                "oil level", Figure.Of("above", above, FigureUnit.Liter), Noise(above <= noise + Grain));
        }

        return below > Grain
            ? (below > noise + Grain ? OilChangeRules.BelowAdd : OilChangeRules.BelowAddInsideNoise).On(
                "oil level", Figure.Of("below", below, FigureUnit.Liter), Noise(below <= noise + Grain))
            : null;
    }

    /// <summary>Why something must have come into the oil: the last look that showed water, or a gain outside the noise; null when neither.</summary>
    private Finding? FindIngress(in AccountState state)
    {
        if (!state.WaterSeen)
        {
            return state.PeriodTold && FluidBalance.JudgeGain(FluidBalance.CastConsumption(this, state)) is { Severity: Severity.Stop } gained
                ? gained
                : null;
        }

        OilChange looked = this;
        while (!looked.ShowsWater)
        {
            looked = looked.Previous!;
        }

        return looked.Findings[0];
    }

    internal static Figure Noise(bool inside) => Figure.Of("noise", inside ? "inside the noise of measuring" : "outside the noise of measuring");
}
