using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Belts;

/// <summary>Where the tensioner's arm stands with a belt on, what take-up is left, and which way to turn it to let the belt off.</summary>
/// <remarks>
/// <para>Rule: the sense that lengthens the path is the sense that tightens. A spring pushes that way, so the arm is released the other way.
/// The spring's moment equals the belt's pull times the path's growth for each radian of the arm.</para>
/// <para>Source: virtual work on the closed path, worked out and checked by differences.</para>
/// </remarks>
public sealed class TensionerCheck
{
    internal const double StrongestPullNewtons = 20_000;

    private readonly ArmSweep _sweep;
    private readonly double _lengthMm;
    private readonly int _springSign;

    internal TensionerCheck(BeltRouting routing, Tensioner tensioner, double lengthMm, double uncertaintyMm, BeltCheckLimits limits)
    {
        (Tensioner, Routing, _lengthMm) = (tensioner, routing, lengthMm);
        _sweep = new ArmSweep(routing, tensioner);
        ArmSweep.State drawn = _sweep.At(_sweep.DrawnRad);
        _springSign = tensioner.SpringPushes is Sense pushes ? (pushes == Sense.CounterClockwise ? 1 : -1)
            : drawn.SlopeMmPerRad > 0 ? 1
            : drawn.SlopeMmPerRad < 0 ? -1
            : 0;
        Positions = [.. _sweep.Stretches
            .Where(stretch => lengthMm >= stretch.ShortestMm && lengthMm <= stretch.LongestMm)
            .Select(stretch => new ArmPosition(_sweep.Solve(stretch, lengthMm), IsUsable(stretch)))];
        DeadPointsDegrees = [.. _sweep.DeadPoints.Select(rad => rad * (180 / Math.PI))];
        Arm = Positions.FirstOrDefault(position => position.IsTightenedBySpring) is ArmPosition arm
            ? Answer.Known(arm)
            : Answer.NotKnown<ArmPosition>("A routing and a belt length that the arm can tighten between its stops.");
        Findings = new TensionerFindings(this, uncertaintyMm, limits).List();
    }

    /// <summary>The tensioner.</summary>
    public Tensioner Tensioner { get; }

    /// <summary>The routing.</summary>
    public BeltRouting Routing { get; }

    /// <summary>The effective length of belt that the answers are for.</summary>
    public Length BeltLength => Length.FromMillimeters(_lengthMm);

    /// <summary>Every place between the stops where the arm can stand with this belt, the usable one and others.</summary>
    public IReadOnlyList<ArmPosition> Positions { get; }

    /// <summary>The place where the arm stands and tightens the belt.</summary>
    public Answer<ArmPosition> Arm { get; }

    /// <summary>The shortest belt that the arm can tighten between its stops.</summary>
    public Answer<Length> Shortest => Reach(stretches => stretches.Min(stretch => stretch.ShortestMm));

    /// <summary>The longest belt that the arm can tighten between its stops.</summary>
    public Answer<Length> Longest => Reach(stretches => stretches.Max(stretch => stretch.LongestMm));

    /// <summary>How much longer the belt may get before the arm comes to its stop, a dead point, or another pulley.</summary>
    public Answer<Length> TakeUpLeft => Arm.IsKnown
        ? Answer.Known(Length.FromMillimeters(Home().LongestMm - _lengthMm))
        : Answer.NotKnown<Length>([.. Arm.Missing]);

    /// <summary>The sense that tightens the belt, seen from the pulley end: the way the spring pushes the arm.</summary>
    public Answer<Rotation> Tightens => TighteningSign() is int sign and not 0
        ? Answer.Known(Rotation.FromSign(sign))
        : Answer.NotKnown<Rotation>("The sense in which the spring pushes: the path neither grows nor shrinks where the pulley is drawn.");

    /// <summary>Which way to turn the arm to let the belt off: against <see cref="Tightens"/>.</summary>
    /// <remarks>The spring is strong. Keep fingers clear of arm and belt, use the tool that the engine's manual names, and let it back slowly.</remarks>
    public Answer<Rotation> Release => TighteningSign() is int sign and not 0 ? Answer.Known(Rotation.FromSign(-sign)) : Tightens;

    /// <summary>The angles inside the travel at which the path is longest or shortest [degrees].</summary>
    public IReadOnlyList<double> DeadPointsDegrees { get; }

    /// <summary>What was found.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The pull that the spring sets in the belt at the tensioner, less the centrifugal part when running.</summary>
    public Answer<Force> BeltTension
    {
        get
        {
            if (!Arm.IsKnown || Tensioner.TorqueNewtonMeters is not double drawn)
            {
                return Answer.NotKnown<Force>("A place for the arm, and the spring's moment.");
            }

            double againstSpring = -_springSign * (Arm.Value.ArmDegrees - (_sweep.DrawnRad * (180 / Math.PI)));
            double torque = drawn + (Tensioner.SpringRateNewtonMetersPerDegree * againstSpring);
            double newtons = Math.Max(0, TensionerMath.TensionNewtons(torque, Arm.Value.SlopeMmPerRad));
            return newtons <= StrongestPullNewtons
                ? Answer.Known(Force.FromNewtons(newtons))
                : Answer.NotKnown<Force>("An arm off its dead point: this near to it the figures would put more than 20 kN into the belt.");
        }
    }

    /// <summary>The other places that a belt of another length would give the arm.</summary>
    /// <param name="effectiveLength">Effective length; above 0 and up to 20,000 mm.</param>
    /// <returns>The place where the arm tightens such a belt, or what is missing.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="effectiveLength"/> is outside its range.</exception>
    public Answer<ArmPosition> ArmFor(Length effectiveLength)
    {
        double mm = Guard.Positive(Canonical.Millimeters(effectiveLength), "mm", nameof(effectiveLength));
        Guard.InRange(mm, 0, RibbedBelt.LongestMm, "mm", nameof(effectiveLength));
        foreach (ArmSweep.Stretch stretch in Usable())
        {
            if (mm >= stretch.ShortestMm && mm <= stretch.LongestMm)
            {
                return Answer.Known(new ArmPosition(_sweep.Solve(stretch, mm), true));
            }
        }

        return Answer.NotKnown<ArmPosition>("A belt length that the arm can tighten between its stops.");
    }

    /// <summary>How far the arm moves when the belt gets longer by a share of its length.</summary>
    /// <param name="stretchFraction">From 0 to 0.2: 0.01 is one per cent.</param>
    /// <returns>Degrees of the arm in the tightening sense, or what is missing.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="stretchFraction"/> is outside its range.</exception>
    public Answer<Angle> ArmTravelForStretch(double stretchFraction)
    {
        Guard.InRange(stretchFraction, 0, 0.2, "(fraction)");
        if (!Arm.IsKnown)
        {
            return Answer.NotKnown<Angle>([.. Arm.Missing]);
        }

        Answer<ArmPosition> worn = ArmFor(Length.FromMillimeters(_lengthMm * (1 + stretchFraction)));
        return worn.IsKnown
            ? Answer.Known(Angle.FromDegrees(Math.Abs(worn.Value.ArmDegrees - Arm.Value.ArmDegrees)))
            : Answer.NotKnown<Angle>("Enough travel: the stretched belt takes the arm past its stop.");
    }

    /// <summary>The moment on the arm that holds a pull in the belt.</summary>
    /// <param name="tension">Pull at the tensioner less the centrifugal part; from 0 to 20,000 N.</param>
    /// <returns>The moment, or what is missing.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="tension"/> is outside its range.</exception>
    public Answer<Torque> MomentFor(Force tension)
    {
        double newtons = Guard.InRange(Canonical.Newtons(tension), 0, StrongestPullNewtons, "N", nameof(tension));
        return Arm.IsKnown
            ? Answer.Known(Torque.FromNewtonMeters(TensionerMath.MomentNewtonMeters(newtons, Arm.Value.SlopeMmPerRad)))
            : Answer.NotKnown<Torque>([.. Arm.Missing]);
    }

    /// <summary>The shortest belt that can be lifted over the pulleys' flanges with the arm held back.</summary>
    /// <remarks>
    /// 1.003 times the path with the arm at its slackest, plus twice the minus tolerance of the belt, plus 0.77 in, plus 6.28 flange heights:
    /// SAE J1596 (cancelled 2019), fitting allowance, as summarized by others.
    /// </remarks>
    /// <param name="flangeHeight">How far flanges stand above the belt's seat; from 0 to 50 mm.</param>
    /// <returns>The effective length, or what is missing.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="flangeHeight"/> is outside its range.</exception>
    public Answer<Length> SmallestBeltToFit(Length flangeHeight)
    {
        double flangeMm = Guard.InRange(Canonical.Millimeters(flangeHeight), 0, 50, "mm", nameof(flangeHeight));
        return Shortest.IsKnown
            ? Answer.Known(Length.FromMillimeters(TensionerMath.SmallestBeltMm(
                Canonical.Millimeters(Shortest.Value), Routing.Drive.Belt.ToleranceMm, flangeMm)))
            : Answer.NotKnown<Length>([.. Shortest.Missing]);
    }

    /// <summary>Where the arm stands, what is left, and how to release it.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        string Mm(Length length) => FigureUnit.Millimeter.Write(Canonical.Millimeters(length), units);
        ExplanationBuilder lines = new(Arm.IsKnown
            ? $"Arm at {FigureUnit.Degree.Write(Arm.Value.ArmDegrees, units)}, {Mm(TakeUpLeft.Value)} of take-up left; to release, turn it {Release}."
            : "No place for the arm tightens this belt with this routing.");
        lines.Add("belt", Mm(BeltLength));
        lines.AddIf(Shortest.IsKnown, "arm takes", () => $"{Mm(Shortest.Value)} to {Mm(Longest.Value)}");
        lines.Add("stops", $"{FigureUnit.Degree.Write(Tensioner.FromDegrees, units)} to {FigureUnit.Degree.Write(Tensioner.ToDegrees, units)}");
        lines.AddIf(Arm.IsKnown, "take-up", () => FigureUnit.MillimeterPerDegree.Write(Math.Abs(Arm.Value.TakeUpMmPerDegree), units));
        lines.AddIf(Arm.IsKnown, "wrap", () => FigureUnit.Degree.Write(Arm.Value.WrapDegrees, units));
        lines.AddIf(BeltTension.IsKnown, "belt pull", () => FigureUnit.Newton.Write(Canonical.Newtons(BeltTension.Value), units));
        lines.AddIf(Release.IsKnown, "tightens", () => Tightens.Value.ToString());
        lines.AddIf(Release.IsKnown, "release", () => $"{Release.Value}; the spring is strong: keep fingers clear and let it back slowly");
        foreach (Finding finding in Findings)
        {
            lines.Add(finding.Code, $"{finding.Severity}: {finding.Message(units)}");
        }

        return lines.Build(Citation.Derived("virtual work on the tensioner's arm"));
    }

    internal double LengthMm => _lengthMm;

    internal IEnumerable<ArmSweep.Stretch> Usable() => _sweep.Stretches.Where(IsUsable);

    internal bool HasStretches => _sweep.Stretches.Count > 0;

    // An arm that is set by hand tightens wherever the hand turns it; a spring pushes one way only.
    private bool IsUsable(ArmSweep.Stretch stretch) =>
        _sweep.IsRouted && (!Tensioner.IsAutomatic || _springSign == 0 || stretch.Rises == _springSign > 0);

    private int TighteningSign() => !_sweep.IsRouted ? 0 : Arm.IsKnown ? Math.Sign(Arm.Value.SlopeMmPerRad) : _springSign;

    private ArmSweep.Stretch Home() => Usable().First(stretch => _lengthMm >= stretch.ShortestMm && _lengthMm <= stretch.LongestMm);

    private Answer<Length> Reach(Func<IEnumerable<ArmSweep.Stretch>, double> pick) => Usable().Any()
        ? Answer.Known(Length.FromMillimeters(pick(Usable())))
        : Answer.NotKnown<Length>("A routing that closes somewhere between the arm's stops.");
}
