namespace MarineService.Core.Belts;

/// <summary>Every geometric test of a closed belt, worst first: the order of the tests is the order of the verdicts.</summary>
/// <remarks>
/// A ref struct over the caller's memory, so that a sweep of the tensioner's arm runs it without allocating.
/// With no list to fill, it stops at the first test that fails.
/// </remarks>
internal readonly ref struct RoutingExaminer(
    ReadOnlySpan<OrientedCircle> routed,
    ReadOnlySpan<OrientedCircle> passedBy,
    int expectedTurns,
    double expandedUncertaintyMm,
    Span<StopGeometry> stops,
    List<RoutingFault>? faults)
{
    private const double Degrees = 180 / Math.PI;

    private readonly ReadOnlySpan<OrientedCircle> _routed = routed;
    private readonly ReadOnlySpan<OrientedCircle> _passedBy = passedBy;
    private readonly int _expectedTurns = expectedTurns;
    private readonly double _uncertaintyMm = expandedUncertaintyMm;
    private readonly Span<StopGeometry> _stops = stops;
    private readonly List<RoutingFault>? _faults = faults;

    // The distance of two centres, each known alike in both directions.
    private double PairUncertaintyMm => _uncertaintyMm * Math.Sqrt(2);

    /// <summary>Whether the belt closes and is possible, with the coordinates taken as exact.</summary>
    internal static bool Closes(
        ReadOnlySpan<OrientedCircle> routed, ReadOnlySpan<OrientedCircle> passedBy, int expectedTurns, Span<StopGeometry> stops, out double pitchLengthMm) =>
        new RoutingExaminer(routed, passedBy, expectedTurns, 0, stops, null).Run(out pitchLengthMm);

    /// <returns>True when no test fails with the coordinates as they stand, at its limit or not.</returns>
    internal bool Run(out double pitchLengthMm)
    {
        pitchLengthMm = double.NaN;
        bool fine = PulleysApart();
        if (IsEnough(fine))
        {
            return false;
        }

        if (!BeltMath.TryGeometry(_routed, _stops, out pitchLengthMm))
        {
            ReportMissingTangents();
            return false;
        }

        fine &= AllTouch(out bool touchAtLimit);
        if (IsEnough(fine))
        {
            return false;
        }

        fine &= SpansClearPulleys();
        if (IsEnough(fine))
        {
            return false;
        }

        fine &= SpansApart();
        return !IsEnough(fine) && (TurnsRight(touchAtLimit) & fine);
    }

    private bool IsEnough(bool fine) => !fine && _faults is null;

    private OrientedCircle Circle(int place) => place < _routed.Length ? _routed[place] : _passedBy[place - _routed.Length];

    private bool PulleysApart()
    {
        bool fine = true;
        int count = _routed.Length + _passedBy.Length;
        for (int i = 0; i < count; i++)
        {
            for (int j = i + 1; j < count; j++)
            {
                OrientedCircle a = Circle(i);
                OrientedCircle b = Circle(j);
                double dx = a.XMm - b.XMm;
                double dy = a.YMm - b.YMm;
                double distance = Math.Sqrt((dx * dx) + (dy * dy));
                double gap = distance - a.RadiusMm - b.RadiusMm;
                BeltVerdict kind =
                    distance <= Math.Abs(a.RadiusMm - b.RadiusMm) + BeltMath.GrainMm ? BeltVerdict.Contained
                    : Math.Abs(gap) <= BeltMath.GrainMm ? BeltVerdict.Touching
                    : BeltVerdict.Overlap;
                fine &= Judge(new(kind, i, j, gap, PairUncertaintyMm, gap <= BeltMath.GrainMm, distance));
                if (IsEnough(fine))
                {
                    return false;
                }
            }
        }

        return fine;
    }

    private void ReportMissingTangents()
    {
        for (int i = 0; i < _routed.Length && _faults is not null; i++)
        {
            int next = Next(i);
            OrientedCircle from = _routed[i];
            OrientedCircle to = _routed[next];
            double dx = from.XMm - to.XMm;
            double dy = from.YMm - to.YMm;
            double distance = Math.Sqrt((dx * dx) + (dy * dy));
            double margin = distance - Math.Abs(from.SignedRadiusMm - to.SignedRadiusMm);
            if (!(margin > 0))
            {
                Judge(new(BeltVerdict.NoTangent, i, next, margin, PairUncertaintyMm, true, distance));
            }
        }
    }

    /// <summary>A wrap next to nothing is a missed pulley, and so is one just under a full turn: the pulley stands short of the belt.</summary>
    private bool AllTouch(out bool atLimit)
    {
        bool fine = true;
        atLimit = false;
        for (int i = 0; i < _stops.Length; i++)
        {
            double wrap = _stops[i].WrapRadians;
            double uncertainty = WrapUncertaintyRad(i);
            double margin = Math.Min(wrap, (2 * Math.PI) - wrap);
            atLimit |= margin < uncertainty;
            fine &= Judge(new(
                BeltVerdict.NoContact, i, i, margin * Degrees, uncertainty * Degrees, wrap <= BeltMath.GrainRad, wrap * Degrees));
            if (IsEnough(fine))
            {
                return false;
            }
        }

        return fine;
    }

    private bool SpansClearPulleys()
    {
        bool fine = true;
        int count = _routed.Length + _passedBy.Length;
        for (int i = 0; i < _stops.Length; i++)
        {
            for (int k = 0; k < count; k++)
            {
                if (k == i || k == Next(i))
                {
                    continue;
                }

                OrientedCircle pulley = Circle(k);
                double distance = DistanceMm(i, pulley.XMm, pulley.YMm, out double at);
                double clear = distance - pulley.RadiusMm;

                // The pulley's own centre, and the span's, which moves with the centres at its ends.
                double uncertainty = _uncertaintyMm * Math.Sqrt(1 + ((1 - at) * (1 - at)) + (at * at));
                fine &= Judge(new(BeltVerdict.SpanThroughPulley, i, k, clear, uncertainty, clear < -BeltMath.GrainMm, distance));
                if (IsEnough(fine))
                {
                    return false;
                }
            }
        }

        return fine;
    }

    private bool SpansApart()
    {
        bool fine = true;
        for (int i = 0; i < _stops.Length; i++)
        {
            for (int j = i + 1; j < _stops.Length; j++)
            {
                bool cross = Cross(i, j);
                if (_faults is not null && (cross || _uncertaintyMm > 0))
                {
                    (double apart, double uncertainty) = Apart(i, j, cross);
                    Judge(new(BeltVerdict.SpansCross, i, j, cross ? -apart : apart, uncertainty, cross, apart));
                }

                fine &= !cross;
                if (IsEnough(fine))
                {
                    return false;
                }
            }
        }

        return fine;
    }

    private bool TurnsRight(bool touchAtLimit)
    {
        int turns = BeltMath.TurningNumber(_stops);
        bool wrong = turns != _expectedTurns;

        // The number jumps only where some pulley's wrap passes nothing or a full turn: it is as sure as the contacts are.
        return Judge(new(BeltVerdict.TurningNumber, 0, 0, wrong ? -1 : 1, wrong && touchAtLimit ? 2 : 0, wrong, turns));
    }

    private bool Judge(in RoutingFault fault)
    {
        if (_faults is not null && (fault.Fails || fault.IsAtLimit))
        {
            _faults.Add(fault);
        }

        return !fault.Fails;
    }

    private int Next(int stop) => stop + 1 < _routed.Length ? stop + 1 : 0;

    private int Previous(int stop) => stop > 0 ? stop - 1 : _routed.Length - 1;

    private double DistanceMm(int span, double x, double y, out double at)
    {
        StopGeometry stop = _stops[span];
        return BeltMath.DistanceMm(
            stop.ExitXMm, stop.ExitYMm, stop.ExitDirectionXRatio, stop.ExitDirectionYRatio, stop.ExitSpanMm, x, y, out at);
    }

    private bool Cross(int i, int j)
    {
        StopGeometry a = _stops[i];
        StopGeometry b = _stops[Next(i)];
        StopGeometry c = _stops[j];
        StopGeometry d = _stops[Next(j)];
        return BeltMath.Cross(
            a.ExitXMm, a.ExitYMm, b.EntryXMm, b.EntryYMm, c.ExitXMm, c.ExitYMm, d.EntryXMm, d.EntryYMm);
    }

    /// <summary>A span turns by the sideways movement of one centre against the other, divided by its length.</summary>
    private double WrapUncertaintyRad(int stop)
    {
        if (_uncertaintyMm <= 0)
        {
            return 0;
        }

        StopGeometry arriving = _stops[Previous(stop)];
        StopGeometry leaving = _stops[stop];
        double curveIn = 1 / arriving.ExitSpanMm;
        double curveOut = 1 / leaving.ExitSpanMm;
        double cosine = (arriving.ExitDirectionXRatio * leaving.ExitDirectionXRatio) + (arriving.ExitDirectionYRatio * leaving.ExitDirectionYRatio);
        return _uncertaintyMm * Math.Sqrt(2 * ((curveIn * curveIn) + (curveOut * curveOut) + (curveIn * curveOut * cosine)));
    }

    /// <summary>How far two spans are from changing between crossing and not crossing.</summary>
    private (double Mm, double UncertaintyMm) Apart(int i, int j, bool cross)
    {
        int shared = Next(i) == j ? j : Next(j) == i ? i : -1;
        if (shared >= 0 && !cross)
        {
            return ApartAtSharedPulley(shared);
        }

        StopGeometry a = _stops[i];
        StopGeometry b = _stops[Next(i)];
        StopGeometry c = _stops[j];
        StopGeometry d = _stops[Next(j)];
        double nearest = Math.Min(
            Math.Min(DistanceMm(j, a.ExitXMm, a.ExitYMm, out _), DistanceMm(j, b.EntryXMm, b.EntryYMm, out _)),
            Math.Min(DistanceMm(i, c.ExitXMm, c.ExitYMm, out _), DistanceMm(i, d.EntryXMm, d.EntryYMm, out _)));
        return (nearest, PairUncertaintyMm);
    }

    /// <summary>The two spans at a pulley meet exactly when its wrap is above half a turn and both reach the point where their lines meet.</summary>
    private (double Mm, double UncertaintyMm) ApartAtSharedPulley(int stop)
    {
        StopGeometry pulley = _stops[stop];
        double half = Math.PI - (pulley.WrapRadians / 2);
        if (pulley.WrapRadians <= Math.PI)
        {
            return (double.PositiveInfinity, 0);
        }

        double reach = pulley.PitchRadiusMm * Math.Tan(half);
        double cosine = Math.Cos(half);
        double uncertainty = (pulley.PitchRadiusMm * WrapUncertaintyRad(stop) / (2 * cosine * cosine)) + PairUncertaintyMm;
        return (reach - Math.Min(pulley.ExitSpanMm, _stops[Previous(stop)].ExitSpanMm), uncertainty);
    }
}
