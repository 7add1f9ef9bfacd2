using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Belts;

/// <summary>The arm that carries the tensioning pulley: its pivot, its stops, and its spring when it has one.</summary>
/// <remarks>
/// Angles of the arm are counter-clockwise from the x axis, seen from the pulley end, from the pivot to the pulley's centre.
/// The arm's length follows from the pivot and the centre of the pulley as drawn.
/// </remarks>
public sealed class Tensioner
{
    internal const double StrongestNewtonMeters = 500;
    internal const double StiffestNewtonMetersPerDegree = 50;
    internal const double WidestTravelDegrees = 350;

    private readonly double? _torqueNewtonMeters;

    private Tensioner(
        bool automatic, string pulley, double pivotXMm, double pivotYMm, double fromDegrees, double toDegrees, double? torque, double rate, Sense? pushes)
    {
        (IsAutomatic, PulleyName, PivotXMm, PivotYMm) = (automatic, pulley, pivotXMm, pivotYMm);
        (FromDegrees, ToDegrees) = (fromDegrees, toDegrees);
        (_torqueNewtonMeters, SpringRateNewtonMetersPerDegree, SpringPushes) = (torque, rate, pushes);
    }

    /// <summary>True when a spring keeps the tension; false when the arm is set by hand and locked.</summary>
    public bool IsAutomatic { get; }

    /// <summary>The name of the pulley on the arm.</summary>
    public string PulleyName { get; }

    /// <summary>The pivot, across [mm].</summary>
    public double PivotXMm { get; }

    /// <summary>The pivot, up [mm].</summary>
    public double PivotYMm { get; }

    /// <summary>The stop at the clockwise end of the arm's travel [degrees].</summary>
    public double FromDegrees { get; }

    /// <summary>The stop at the counter-clockwise end of the arm's travel [degrees].</summary>
    public double ToDegrees { get; }

    /// <summary>The spring's moment on the arm where the pulley is drawn, or null when not known or without a spring.</summary>
    public Torque? SpringTorque => _torqueNewtonMeters is double torque ? Torque.FromNewtonMeters(torque) : null;

    /// <summary>How much the moment grows for each degree that the arm is turned against the spring, in newton metres for each degree; 0 or more.</summary>
    public double SpringRateNewtonMetersPerDegree { get; }

    /// <summary>The sense in which the spring pushes the arm, seen from the pulley end; null when it follows from take-up where drawn.</summary>
    public Sense? SpringPushes { get; }

    internal double? TorqueNewtonMeters => _torqueNewtonMeters;

    /// <summary>A spring-loaded tensioner.</summary>
    /// <param name="pulley">The name of the pulley on the arm.</param>
    /// <param name="pivotXMm">Pivot, across; from -5000 to 5000 mm.</param>
    /// <param name="pivotYMm">Pivot, up; from -5000 to 5000 mm.</param>
    /// <param name="fromDegrees">Stop at the clockwise end; from -360 to 360 degrees.</param>
    /// <param name="toDegrees">Stop at the counter-clockwise end; above <paramref name="fromDegrees"/>, at most 350 degrees more.</param>
    /// <returns>The tensioner.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="pulley"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="pulley"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static Tensioner Automatic(string pulley, double pivotXMm, double pivotYMm, double fromDegrees, double toDegrees) =>
        Create(true, pulley, pivotXMm, pivotYMm, fromDegrees, toDegrees);

    /// <summary>A tensioner, or a device on a swinging bracket, that is set by hand and locked.</summary>
    /// <param name="pulley">The name of the pulley on the arm.</param>
    /// <param name="pivotXMm">Pivot, across; from -5000 to 5000 mm.</param>
    /// <param name="pivotYMm">Pivot, up; from -5000 to 5000 mm.</param>
    /// <param name="fromDegrees">End of the slot, clockwise; from -360 to 360 degrees.</param>
    /// <param name="toDegrees">End of the slot, counter-clockwise; above <paramref name="fromDegrees"/>, at most 350 degrees more.</param>
    /// <returns>The tensioner.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="pulley"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="pulley"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static Tensioner SetByHand(string pulley, double pivotXMm, double pivotYMm, double fromDegrees, double toDegrees) =>
        Create(false, pulley, pivotXMm, pivotYMm, fromDegrees, toDegrees);

    /// <summary>The same tensioner with its spring.</summary>
    /// <param name="torqueWhereDrawn">The spring's moment on the arm where the pulley is drawn; above 0 and up to 500 N·m.</param>
    /// <param name="rateNewtonMetersPerDegree">Growth of the moment per degree against the spring, from 0 to 50 N·m.</param>
    /// <param name="pushes">The sense in which the spring pushes, seen from the pulley end; null when it follows from take-up where drawn.</param>
    /// <returns>A new tensioner.</returns>
    /// <exception cref="InvalidOperationException">The tensioner is set by hand and has no spring.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public Tensioner WithSpring(Torque torqueWhereDrawn, double rateNewtonMetersPerDegree = 0, Sense? pushes = null)
    {
        if (!IsAutomatic)
        {
            throw new InvalidOperationException("A tensioner that is set by hand has no spring.");
        }

        double torque = Guard.Positive(Canonical.NewtonMeters(torqueWhereDrawn), "N·m", nameof(torqueWhereDrawn));
        return new(
            true,
            PulleyName,
            PivotXMm,
            PivotYMm,
            FromDegrees,
            ToDegrees,
            Guard.InRange(torque, 0, StrongestNewtonMeters, "N·m", nameof(torqueWhereDrawn)),
            Guard.InRange(rateNewtonMetersPerDegree, 0, StiffestNewtonMetersPerDegree, "N·m per degree"),
            pushes is Sense sense ? Guard.Defined(sense, nameof(pushes)) : null);
    }

    /// <summary>The pulley's name and the arm's travel.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant(
        $"{(IsAutomatic ? "automatic" : "set by hand")}, '{PulleyName}', arm from {FromDegrees:0.###} to {ToDegrees:0.###} degrees");

    private static Tensioner Create(bool automatic, string pulley, double pivotXMm, double pivotYMm, double fromDegrees, double toDegrees)
    {
        Guard.InRange(fromDegrees, -360, 360, "degrees");
        Guard.Finite(toDegrees, "degrees");
        if (toDegrees <= fromDegrees || toDegrees - fromDegrees > WidestTravelDegrees)
        {
            throw new ArgumentOutOfRangeException(nameof(toDegrees), toDegrees, "Must be above the other stop, by at most 350 degrees.");
        }

        return new(
            automatic,
            Guard.NotBlank(pulley),
            Guard.InRange(pivotXMm, -Pulley.FarthestMm, Pulley.FarthestMm, "mm"),
            Guard.InRange(pivotYMm, -Pulley.FarthestMm, Pulley.FarthestMm, "mm"),
            fromDegrees,
            toDegrees,
            null,
            0,
            null);
    }
}
