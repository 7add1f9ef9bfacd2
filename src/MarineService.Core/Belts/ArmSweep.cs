namespace MarineService.Core.Belts;

/// <summary>The belt's length over the travel of the tensioner's arm, in stretches where it only grows or only shrinks.</summary>
/// <remarks>
/// The length's slope is closed form, by virtual work: arm length times the two spans' pull across the arm. The travel is sampled every
/// half degree and the ends of each stretch are then found by bisection; a pocket narrower than a sample is not seen.
/// </remarks>
internal sealed class ArmSweep
{
    private const double StepRad = Math.PI / 360;
    private const int Bisections = 60;

    private readonly OrientedCircle[] _routed;
    private readonly OrientedCircle[] _passedBy;
    private readonly StopGeometry[] _stops;
    private readonly int _expectedTurns;
    private readonly int _place;
    private readonly double _pivotX;
    private readonly double _pivotY;
    private readonly double _allowanceMm;
    private readonly List<Stretch> _stretches = [];

    internal ArmSweep(BeltRouting routing, Tensioner tensioner)
    {
        BeltDrive drive = routing.Drive;
        int[] unrouted = routing.UnroutedPulleys();
        _routed = routing.Circles.ToArray();
        _passedBy = routing.Obstacles(unrouted);
        _stops = new StopGeometry[_routed.Length];
        _expectedTurns = routing.ExpectedTurningNumber;
        _place = routing.PulleyIndexes.IndexOf(drive.TensionerIndex);
        IsRouted = _place >= 0;
        if (!IsRouted)
        {
            _place = _routed.Length + Array.IndexOf(unrouted, drive.TensionerIndex);
        }

        Pulley pulley = drive.Pulleys[drive.TensionerIndex];
        (_pivotX, _pivotY) = (tensioner.PivotXMm, tensioner.PivotYMm);
        _allowanceMm = BeltMath.LinePerDifferential * drive.Belt.EffectiveLineDifferentialMm;
        double dx = pulley.XMm - _pivotX;
        double dy = pulley.YMm - _pivotY;
        ArmMm = Math.Sqrt((dx * dx) + (dy * dy));
        FromRad = tensioner.FromDegrees * (Math.PI / 180);
        ToRad = tensioner.ToDegrees * (Math.PI / 180);
        DrawnRad = IntoTravel(Math.Atan2(dy, dx));
        Sweep();
    }

    /// <summary>A part of the travel over which the belt closes and its length goes one way.</summary>
    internal readonly record struct Stretch(State From, State To)
    {
        internal bool Rises => To.LengthMm > From.LengthMm;

        internal double ShortestMm => Math.Min(From.LengthMm, To.LengthMm);

        internal double LongestMm => Math.Max(From.LengthMm, To.LengthMm);
    }

    /// <summary>One arm angle: effective length, its slope, and the wrap on the tensioner.</summary>
    internal readonly record struct State(
        double ArmRad, bool Closes, double LengthMm, double SlopeMmPerRad, double WrapRad, double XMm, double YMm);

    internal bool IsRouted { get; }

    internal double ArmMm { get; }

    internal double FromRad { get; }

    internal double ToRad { get; }

    /// <summary>The arm's angle where the pulley is drawn, counted into the travel where a whole turn allows it.</summary>
    internal double DrawnRad { get; }

    internal IReadOnlyList<Stretch> Stretches => _stretches;

    /// <summary>The angles inside the travel where the length is greatest or least: past them the spring slackens what it tightened.</summary>
    internal List<double> DeadPoints { get; } = [];

    internal State At(double armRad)
    {
        double x = _pivotX + (ArmMm * Math.Cos(armRad));
        double y = _pivotY + (ArmMm * Math.Sin(armRad));
        bool closes;
        double pitchMm;
        if (IsRouted)
        {
            _routed[_place] = _routed[_place].MovedTo(x, y);
        }
        else
        {
            _passedBy[_place - _routed.Length] = _passedBy[_place - _routed.Length].MovedTo(x, y);
        }

        closes = RoutingExaminer.Closes(_routed, _passedBy, _expectedTurns, _stops, out pitchMm);
        if (double.IsNaN(pitchMm) && !BeltMath.TryGeometry(_routed, _stops, out pitchMm))
        {
            return new(armRad, false, double.NaN, double.NaN, double.NaN, x, y);
        }

        double slope = 0;
        double wrap = 0;
        if (IsRouted)
        {
            StopGeometry arriving = _stops[_place > 0 ? _place - 1 : _stops.Length - 1];
            StopGeometry leaving = _stops[_place];
            double pullX = arriving.ExitDirectionXRatio - leaving.ExitDirectionXRatio;
            double pullY = arriving.ExitDirectionYRatio - leaving.ExitDirectionYRatio;
            slope = ArmMm * ((pullY * Math.Cos(armRad)) - (pullX * Math.Sin(armRad)));
            wrap = leaving.WrapRadians;
        }

        return new(armRad, closes, pitchMm - _allowanceMm, slope, wrap, x, y);
    }

    /// <summary>The arm angle at which the belt has a length, inside one stretch.</summary>
    internal State Solve(in Stretch stretch, double lengthMm)
    {
        State low = stretch.From;
        State high = stretch.To;
        for (int i = 0; i < Bisections; i++)
        {
            State middle = At((low.ArmRad + high.ArmRad) / 2);
            if ((middle.LengthMm < lengthMm) == stretch.Rises)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return high;
    }

    private double IntoTravel(double armRad)
    {
        while (armRad < FromRad)
        {
            armRad += 2 * Math.PI;
        }

        while (armRad > ToRad && armRad - (2 * Math.PI) >= FromRad)
        {
            armRad -= 2 * Math.PI;
        }

        return armRad;
    }

    private void Sweep()
    {
        int steps = Math.Max(2, (int)Math.Ceiling((ToRad - FromRad) / StepRad));
        State previous = At(FromRad);
        State? start = previous.Closes ? previous : null;
        for (int i = 1; i <= steps; i++)
        {
            State next = At(FromRad + ((ToRad - FromRad) * i / steps));
            if (previous.Closes && next.Closes)
            {
                if ((previous.SlopeMmPerRad > 0) != (next.SlopeMmPerRad > 0))
                {
                    bool rises = previous.SlopeMmPerRad > 0;
                    State turn = Boundary(previous, next, state => state.SlopeMmPerRad > 0 == rises);
                    DeadPoints.Add(turn.ArmRad);
                    Close(ref start, turn);
                    start = turn;
                }
            }
            else if (previous.Closes)
            {
                Close(ref start, Boundary(previous, next, state => state.Closes));
            }
            else if (next.Closes)
            {
                start = Boundary(next, previous, state => state.Closes);
            }

            previous = next;
        }

        if (previous.Closes)
        {
            Close(ref start, previous);
        }
    }

    private void Close(ref State? start, State end)
    {
        if (start is State from)
        {
            _stretches.Add(new(from, end));
        }

        start = null;
    }

    /// <summary>The last state on the way from one that holds to one that does not.</summary>
    private State Boundary(State holds, State fails, Func<State, bool> test)
    {
        for (int i = 0; i < Bisections; i++)
        {
            State middle = At((holds.ArmRad + fails.ArmRad) / 2);
            if (test(middle))
            {
                holds = middle;
            }
            else
            {
                fails = middle;
            }
        }

        return holds;
    }
}
