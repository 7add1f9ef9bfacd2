using UnitsNet;

namespace MarineService.Core.Belts;

/// <summary>The pulls on the two sides of one pulley, and how far it is from slipping.</summary>
/// <remarks>Pulls are without the centrifugal part, which presses on nothing.</remarks>
public sealed class PulleyTension
{
    private readonly double _turning;
    private readonly double _arriving;
    private readonly double _leaving;

    internal PulleyTension(string pulleyName, double wrapRad, double friction, double turningNewtons, double arrivingNewtons, double leavingNewtons)
    {
        PulleyName = pulleyName;
        (_turning, _arriving, _leaving) = (turningNewtons, arrivingNewtons, leavingNewtons);
        double slack = Math.Min(arrivingNewtons, leavingNewtons);
        WorkingRatio = slack > 0 ? Math.Max(arrivingNewtons, leavingNewtons) / slack : double.PositiveInfinity;
        LimitRatio = TensionMath.LimitRatio(friction, wrapRad);
        FrictionNeededRatio = TensionMath.FrictionNeeded(WorkingRatio, wrapRad);
    }

    /// <summary>The pulley's name.</summary>
    public string PulleyName { get; }

    /// <summary>The pull that turns the pulley: load over belt speed; negative on the crank, which gives it.</summary>
    public Force TurningPull => Force.FromNewtons(_turning);

    /// <summary>The pull in the span that runs on to the pulley.</summary>
    public Force ArrivingPull => Force.FromNewtons(_arriving);

    /// <summary>The pull in the span that leaves the pulley.</summary>
    public Force LeavingPull => Force.FromNewtons(_leaving);

    /// <summary>The tighter side over the slacker one; infinite when a side hangs slack.</summary>
    public double WorkingRatio { get; }

    /// <summary>The ratio at which it would slip.</summary>
    public double LimitRatio { get; }

    /// <summary>The friction that it needs not to slip.</summary>
    public double FrictionNeededRatio { get; }

    /// <summary>How much is left: limit over working ratio, less one. Below zero it slips.</summary>
    public double SlipMarginRatio => double.IsInfinity(WorkingRatio) ? -1 : (LimitRatio / WorkingRatio) - 1;

    /// <summary>True when it slips.</summary>
    public bool Slips => SlipMarginRatio < 0;

    /// <summary>The pulley and its margin.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"'{PulleyName}': slip margin {SlipMarginRatio:0.00}");
}
