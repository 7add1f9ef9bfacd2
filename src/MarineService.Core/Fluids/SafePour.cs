using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Fluids;

/// <summary>The largest next pour that keeps the chance of passing the full mark within the chosen risk.</summary>
public sealed class SafePour
{
    private readonly double _liters;
    private readonly double _byRisk;
    private readonly double _byCustom;
    private readonly double _room;
    private readonly double _sigma;

    private SafePour(double byRisk, double byCustom, SafePourLimit custom, double room, double sigma, double riskFraction, bool isAtTarget)
    {
        _liters = Math.Min(byRisk, byCustom);
        DecidedBy = byRisk <= byCustom ? SafePourLimit.OverfillRisk : custom;
        (_byRisk, _byCustom, _room, _sigma) = (byRisk, byCustom, room, sigma);
        (RiskFraction, IsAtTarget) = (riskFraction, isAtTarget);
    }

    private SafePour(Finding cause, double riskFraction, bool isAtTarget) =>
        (Cause, DecidedBy, RiskFraction, IsAtTarget) = (cause, SafePourLimit.CauseNotFound, riskFraction, isAtTarget);

    /// <summary>How much may be poured, at 15 °C; 0 L when nothing may.</summary>
    public Volume Volume => Volume.FromLiters(_liters);

    /// <summary>What keeps it from being larger.</summary>
    public SafePourLimit DecidedBy { get; }

    /// <summary>The chance of passing the full mark that was allowed.</summary>
    public double RiskFraction { get; }

    /// <summary>Whether the level, with a full filter, has reached the target: then no more need be poured.</summary>
    public bool IsAtTarget { get; }

    /// <summary>What must be found out before anything is poured; null unless <see cref="DecidedBy"/> is <see cref="SafePourLimit.CauseNotFound"/>.</summary>
    public Finding? Cause { get; }

    internal double Liters => _liters;

    /// <summary>Why this much and no more.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not defined.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        if (Cause is not null)
        {
            return new ExplanationBuilder("Pour nothing before the cause is found.")
                .Add("by the account", $"{Cause.Code} {Cause.Severity}: {Cause.Message(units)}")
                .Add("after that", "a new account, begun when what came in is out and its way in is closed")
                .Add("decided by", DecidedBy.ToString())
                .Build(OilChange.Method, Citation.CommonPractice);
        }

        string Write(double liters) => FigureUnit.Liter.Write(liters, units);
        string answer = _liters <= 0 ? "Pour nothing." : IsAtTarget ? $"No more is needed; at most {Write(_liters)} would be safe." : $"Pour at most {Write(_liters)}.";
        return new ExplanationBuilder(answer)
            .Add("room to full", $"{Write(_room)} ± {Write(_sigma)}")
            .Add("by the risk", $"{Write(_byRisk)} keeps the chance of passing full within {FigureUnit.Fraction.Write(RiskFraction, units)}")
            .Add("by custom", Write(_byCustom))
            .Add("decided by", DecidedBy.ToString())
            .Build(OilChange.Method, Citation.ProjectChoice);
    }

    /// <summary>The volume and what decided it, metric and invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{FigureUnit.Liter.Write(_liters, DisplayUnits.Metric)}, decided by {DecidedBy}";

    internal static SafePour From(
        in AccountState state, double rangeLiters, OilChangeLimits limits, MeasuringVessel from, double riskFraction, double deviations)
    {
        double room = -state.Level;
        double variance = Math.Max(0, state.LevelVariance);
        double byRisk = LitersWithinRisk(room, variance + from.GraduationVariance, from.RelativeUncertaintyFraction, deviations);
        if (state.StickKnown && state.StickLevel - state.Level > limits.NoiseCoverageRatio * Math.Sqrt(state.StickVariance))
        {
            // The last reading stands higher than the account can explain. Nobody knows which is wrong: nothing may pass
            // full by either.
            double byStick = LitersWithinRisk(
                -state.StickLevel, state.StickVariance + from.GraduationVariance, from.RelativeUncertaintyFraction, deviations);
            if (byStick < byRisk)
            {
                (byRisk, room, variance) = (byStick, -state.StickLevel, state.StickVariance);
            }
        }

        bool first = state.HasDrain && !state.HasPour;
        double spare = Spare(rangeLiters, limits);
        double custom = first
            // The plan counts what is in the new filter already, so a primed filter shortens the first pour.
            ? limits.FirstPourFraction * (-state.Level + (state.FilterDry ? state.FilterVolume : 0) - spare) - state.Primed
            : limits.LaterPourRangeFraction * rangeLiters;
        return new(
            byRisk,
            Math.Max(0, custom),
            first ? SafePourLimit.FirstPour : SafePourLimit.LaterPour,
            room,
            Math.Sqrt(variance),
            riskFraction,
            IsLevelAtTarget(state, rangeLiters, limits));
    }

    internal static SafePour NothingBefore(Finding cause, in AccountState state, double rangeLiters, OilChangeLimits limits, double riskFraction) =>
        new(cause, riskFraction, state.LevelKnown && IsLevelAtTarget(state, rangeLiters, limits));

    private static double Spare(double rangeLiters, OilChangeLimits limits) => (1 - limits.TargetRangeFraction) * rangeLiters;

    private static bool IsLevelAtTarget(in AccountState state, double rangeLiters, OilChangeLimits limits) =>
        !state.FilterDry && state.Level >= -Spare(rangeLiters, limits);

    /// <summary>
    /// The largest F with F + z·√(variance + (share·F)²) ≤ room: the pour's own measure is doubtful too. Squared, it is a
    /// quadratic; its smaller positive root is written so that nothing cancels.
    /// </summary>
    internal static double LitersWithinRisk(double room, double variance, double share, double deviations)
    {
        double z2 = deviations * deviations;
        double product = room * room - z2 * variance;
        if (room <= 0 || product <= 0)
        {
            return 0;
        }

        double lead = 1 - z2 * share * share;
        return product / (room + Math.Sqrt(room * room - lead * product));
    }
}
