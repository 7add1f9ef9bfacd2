using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Belts;

/// <summary>A routing that the pulleys allow, with what speaks for and against it.</summary>
/// <remarks>Built from the search's result when asked for, so that a search over thousands of orders stays cheap.</remarks>
public sealed class RoutingCandidate
{
    private readonly BeltDrive _drive;
    private readonly RoutingTree.Found _found;
    private BeltRouting? _routing;
    private Answer<bool>? _fits;

    internal RoutingCandidate(BeltDrive drive, in RoutingTree.Found found) => (_drive, _found) = (drive, found);

    /// <summary>The routing.</summary>
    public BeltRouting Routing => _routing ??= Unpack();

    /// <summary>The effective length with the tensioner where it is drawn.</summary>
    public Length EffectiveLength => Length.FromMillimeters(EffectiveLengthMm);

    /// <summary>The smallest wrap on any pulley [degrees].</summary>
    public double SmallestWrapDegrees => _found.SmallestWrapRad * (180 / Math.PI);

    /// <summary>Whether every pulley with a required sense turns that way.</summary>
    public bool SensesAreRight
    {
        get
        {
            for (int i = 0; i < _found.Count; i++)
            {
                if (_drive.Pulleys[_found.Node(i) / 2].MustTurn is Rotation required && !Routing.TurningOf(i).IsSameTurningAs(required))
                {
                    return false;
                }
            }

            return true;
        }
    }

    /// <summary>Whether ribs run in grooves and the back on smooth rims, everywhere.</summary>
    public bool FacesAreRight
    {
        get
        {
            for (int i = 0; i < _found.Count; i++)
            {
                if (_found.Node(i) % 2 != (int)_drive.Pulleys[_found.Node(i) / 2].IntendedFace)
                {
                    return false;
                }
            }

            return true;
        }
    }

    /// <summary>How many pulleys the belt passes by.</summary>
    public int MissedPulleys => _drive.Pulleys.Count - _found.Count;

    /// <summary>Whether the drive's belt fits: the arm can tighten it, or without an arm its length is right; tolerances are allowed for.</summary>
    /// <remarks>Not known when the belt's length is not known.</remarks>
    public Answer<bool> BeltFits => _fits ??= Fit();

    /// <summary>How much longer the drive's belt is than this path with the tensioner where it is drawn; not known without a belt length.</summary>
    public Answer<Length> BeltOverPath => _drive.Belt.EffectiveLengthMm is double belt
        ? Answer.Known(Length.FromMillimeters(belt - EffectiveLengthMm))
        : Answer.NotKnown<Length>("The effective length printed on the belt.");

    internal double EffectiveLengthMm =>
        _found.PitchLengthMm - (BeltMath.LinePerDifferential * _drive.Belt.EffectiveLineDifferentialMm);

    /// <summary>True when nothing known speaks against it.</summary>
    public bool IsPlausible => SensesAreRight && FacesAreRight && MissedPulleys == 0 && BeltFits.OrElse(true);

    /// <summary>Why it ranks where it does.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new($"{Routing}: {(IsPlausible ? "nothing known speaks against it" : "possible, and something speaks against it")}.");
        lines.Add("length", FigureUnit.Millimeter.Write(EffectiveLengthMm, units));
        lines.AddIf(BeltOverPath.IsKnown, "belt", () => Longer(Canonical.Millimeters(BeltOverPath.Value), units));
        lines.Add("belt fits", BeltFits.IsKnown ? YesNo(BeltFits.Value) : BeltFits.ToString());
        lines.Add("senses", SensesAreRight ? "as required" : "a pulley turns the wrong way");
        lines.Add("faces", FacesAreRight ? "as the rims are made" : "a face does not match its rim");
        lines.AddIf(MissedPulleys > 0, "missed", () => FormattableString.Invariant($"{MissedPulleys} pulleys"));
        lines.Add("least wrap", FigureUnit.Degree.Write(SmallestWrapDegrees, units));
        return lines.Build(BeltRules.Geometry);
    }

    /// <summary>The routing and its length.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{Routing}: {EffectiveLengthMm:0.0} mm");

    private static string Longer(double mm, DisplayUnits units) =>
        $"{FigureUnit.Millimeter.Write(Math.Abs(mm), units)} {(mm < 0 ? "shorter" : "longer")} than the path as drawn";

    private static string YesNo(bool value) => value ? "yes" : "no";

    private BeltRouting Unpack()
    {
        (int Pulley, BeltFace Face)[] stops = new (int, BeltFace)[_found.Count];
        for (int i = 0; i < stops.Length; i++)
        {
            stops[i] = (_found.Node(i) / 2, (BeltFace)(_found.Node(i) % 2));
        }

        return new BeltRouting(_drive, stops);
    }

    private Answer<bool> Fit()
    {
        if (_drive.Belt.EffectiveLengthMm is not double belt)
        {
            return Answer.NotKnown<bool>("The effective length printed on the belt.");
        }

        Span<StopGeometry> stops = stackalloc StopGeometry[_found.Count];
        Routing.TryGetGeometry(stops, out _);
        double centers = _drive.CenterUncertaintyMm * BeltCheckLimits.Default.CoverageFactorRatio * BeltMath.LengthSensitivity(stops);
        double doubt = Math.Sqrt((centers * centers) + (_drive.Belt.ToleranceMm * _drive.Belt.ToleranceMm));
        if (_drive.Tensioner is not Tensioner tensioner || Routing.PulleyIndexes.IndexOf(_drive.TensionerIndex) < 0)
        {
            return Answer.Known(Math.Abs(belt - EffectiveLengthMm) <= doubt);
        }

        TensionerCheck arm = new(Routing, tensioner, belt, doubt, BeltCheckLimits.Default);
        return Answer.Known(
            arm.Shortest.IsKnown
            && belt >= Canonical.Millimeters(arm.Shortest.Value) - doubt
            && belt <= Canonical.Millimeters(arm.Longest.Value) + doubt);
    }
}
