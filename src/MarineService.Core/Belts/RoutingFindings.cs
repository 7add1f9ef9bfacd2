namespace MarineService.Core.Belts;

/// <summary>Looks at a routing the way a careful second person would, pulley by pulley, and writes down everything at once.</summary>
internal sealed class RoutingFindings
{
    private readonly BeltRouting _routing;
    private readonly BeltDrive _drive;
    private readonly BeltCheckLimits _limits;
    private readonly int[] _unrouted;
    private readonly List<RoutingFault> _faults = [];
    private readonly List<Finding> _findings = [];

    internal RoutingFindings(BeltRouting routing, BeltCheckLimits limits)
    {
        (_routing, _drive, _limits) = (routing, routing.Drive, limits);
        _unrouted = routing.UnroutedPulleys();
    }

    internal BeltCheck Check()
    {
        StopGeometry[] stops = new StopGeometry[_routing.Circles.Length];
        OrientedCircle[] passedBy = _routing.Obstacles(_unrouted);
        double expandedMm = _drive.CenterUncertaintyMm * _limits.CoverageFactorRatio;
        new RoutingExaminer(_routing.Circles, passedBy, _routing.ExpectedTurningNumber, expandedMm, stops, _faults).Run(out double pitchMm);
        RoutingGeometry? geometry = double.IsNaN(pitchMm) ? null : new(stops, pitchMm, _drive.Belt.EffectiveLineDifferentialMm, _routing.ExpectedTurningNumber);
        _faults.Sort(ByTestThenBeltOrder);
        foreach (RoutingFault fault in _faults)
        {
            _findings.Add(fault.IsAtLimit ? AtLimit(fault) : Certain(fault));
        }

        AddFaces();
        AddMissed();
        AddSenses();
        AddSizes();
        TensionerCheck? tensioner = null;
        if (geometry is not null)
        {
            AddWraps(stops);
            AddNearMisses(stops, passedBy);
            tensioner = AddLength(stops, geometry.EffectiveLengthMm);
        }

        return new(_routing, Verdict(), _findings.AsReadOnly(), geometry, tensioner);
    }

    private BeltVerdict Verdict()
    {
        foreach (RoutingFault fault in _faults)
        {
            if (fault.Fails && !fault.IsAtLimit)
            {
                return fault.Kind;
            }
        }

        return _faults.Count > 0 ? BeltVerdict.AtLimit : BeltVerdict.Closes;
    }

    private static int ByTestThenBeltOrder(RoutingFault a, RoutingFault b) =>
        a.Kind != b.Kind ? b.Kind.CompareTo(a.Kind)
        : a.First != b.First ? a.First.CompareTo(b.First)
        : a.Second.CompareTo(b.Second);

    private Finding Certain(in RoutingFault fault) => fault.Kind switch
    {
        BeltVerdict.Contained => BeltRules.Contained.On(PulleyAt(fault.First), Word("other", fault.Second), Mm("distance", fault.Value)),
        BeltVerdict.Overlap => BeltRules.Overlap.On(
            PulleyAt(fault.First), Word("other", fault.Second), Mm("overlap", -fault.Margin), Mm("distance", fault.Value)),
        BeltVerdict.Touching => BeltRules.Touching.On(PulleyAt(fault.First), Word("other", fault.Second), Mm("distance", fault.Value)),
        BeltVerdict.NoTangent => BeltRules.NoTangent.On(PulleyAt(fault.First), Word("other", fault.Second), Mm("distance", fault.Value)),
        BeltVerdict.NoContact => BeltRules.NoContact.On(PulleyAt(fault.First), Figure.Of("wrap", fault.Value, FigureUnit.Degree)),
        BeltVerdict.SpanThroughPulley => BeltRules.SpanThroughPulley.On(
            SpanFrom(fault.First), Word("pulley", fault.Second), Mm("distance", fault.Value), Mm("short", -fault.Margin)),
        BeltVerdict.SpansCross => BeltRules.SpansCross.On(
            SpanFrom(fault.First), Word("from", fault.Second), Word("to", Next(fault.Second))),
        _ => BeltRules.TurningNumber.On(
            "belt",
            Figure.Of("turns", fault.Value, FigureUnit.Number),
            Figure.Of("expected", _routing.ExpectedTurningNumber, FigureUnit.Number)),
    };

    private Finding AtLimit(in RoutingFault fault)
    {
        FigureUnit unit =
            fault.Kind == BeltVerdict.NoContact ? FigureUnit.Degree
            : fault.Kind == BeltVerdict.TurningNumber ? FigureUnit.Number
            : FigureUnit.Millimeter;
        (string subject, string test) = fault.Kind switch
        {
            BeltVerdict.NoContact => (PulleyAt(fault.First), "the belt touches the pulley, or only just passes it"),
            BeltVerdict.SpanThroughPulley => (SpanFrom(fault.First), $"the span clears '{NameAt(fault.Second)}'"),
            BeltVerdict.SpansCross => (
                SpanFrom(fault.First), $"the span clears the span from '{NameAt(fault.Second)}' to '{NameAt(Next(fault.Second))}'"),
            BeltVerdict.TurningNumber => ("belt", "the belt goes round the right number of times"),
            _ => (PulleyAt(fault.First), $"there is room for the belt beside '{NameAt(fault.Second)}'"),
        };
        return BeltRules.AtLimit.On(
            subject, Figure.Of("test", test), Figure.Of("margin", fault.Margin, unit), Figure.Of("uncertainty", fault.Uncertainty, unit));
    }

    private void AddFaces()
    {
        for (int i = 0; i < _routing.Stops.Count; i++)
        {
            Pulley pulley = PulleyOf(i);
            BeltFace face = _routing.Faces[i];
            if (face != pulley.IntendedFace)
            {
                _findings.Add(BeltRules.WrongFace.On(
                    PulleyAt(i),
                    Figure.Of("face", face == BeltFace.Ribs ? "ribs" : "back"),
                    Figure.Of("surface", pulley.Surface == PulleySurface.Grooved ? "grooved" : "smooth")));
            }
        }
    }

    private void AddMissed()
    {
        foreach (int pulley in _unrouted)
        {
            _findings.Add(BeltRules.MissedPulley.On($"pulley '{_drive.Pulleys[pulley].Name}'"));
        }
    }

    private void AddSenses()
    {
        for (int i = 0; i < _routing.Stops.Count; i++)
        {
            Rotation turns = _routing.TurningOf(i);
            if (PulleyOf(i).MustTurn is Rotation required && !turns.IsSameTurningAs(required))
            {
                _findings.Add(BeltRules.WrongRotation.On(
                    PulleyAt(i), Figure.Of("turns", turns.ToString()), Figure.Of("required", required.ToString())));
            }
        }
    }

    private void AddSizes()
    {
        for (int i = 0; i < _routing.Stops.Count; i++)
        {
            double diameter = PulleyOf(i).DiameterMm;
            FindingRule? rule = null;
            double least = 0;
            if (_routing.Faces[i] == BeltFace.Back)
            {
                (rule, least) = (BeltRules.SmallBackPulley, PkProfile.SmallestBackDiameterMm);
            }
            else if (PulleyOf(i).Surface == PulleySurface.Grooved)
            {
                (rule, least) = diameter < PkProfile.SmallestEffectiveDiameterMm
                    ? (BeltRules.SmallPulley, PkProfile.SmallestEffectiveDiameterMm)
                    : (BeltRules.ShortLife, PkProfile.PracticalEffectiveDiameterMm);
            }

            if (rule is not null && diameter < least)
            {
                _findings.Add(rule.On(PulleyAt(i), Mm("diameter", diameter), Mm("least", least)));
            }
        }
    }

    private void AddWraps(StopGeometry[] stops)
    {
        for (int i = 0; i < stops.Length; i++)
        {
            Pulley pulley = PulleyOf(i);
            double wrap = stops[i].WrapDegrees;
            if (BeltCheckLimits.WorkingWrapDegrees(pulley, _routing.Faces[i]) is double least && wrap < least)
            {
                FindingRule rule = pulley.LeastWrapDegrees is null ? BeltRules.SmallWrap : BeltRules.WrapBelowMakers;
                _findings.Add(rule.On(
                    PulleyAt(i), Figure.Of("wrap", wrap, FigureUnit.Degree), Figure.Of("least", least, FigureUnit.Degree)));
            }
        }
    }

    /// <summary>The tests above know the pitch line only; a belt has thickness and a rim is harder than a line.</summary>
    private void AddNearMisses(StopGeometry[] stops, OrientedCircle[] passedBy)
    {
        int count = stops.Length + passedBy.Length;
        for (int i = 0; i < stops.Length; i++)
        {
            for (int k = 0; k < count; k++)
            {
                if (k == i || k == Next(i) || _faults.Exists(fault => fault.Kind == BeltVerdict.SpanThroughPulley && fault.First == i && fault.Second == k))
                {
                    continue;
                }

                double clear = BeltClearance.Mm(_routing, stops, i, k, _drive.Pulleys[PulleyIndex(k)]);
                if (clear < _limits.LeastClearanceMm)
                {
                    _findings.Add((clear < 0 ? BeltRules.Rubs : BeltRules.CloseBy).On(
                        SpanFrom(i), Word("pulley", k), Mm("clear", clear), Mm("least", _limits.LeastClearanceMm)));
                }
            }
        }
    }

    private TensionerCheck? AddLength(StopGeometry[] stops, double effectiveMm)
    {
        double? belt = _drive.Belt.EffectiveLengthMm;
        double centers = _drive.CenterUncertaintyMm * _limits.CoverageFactorRatio * BeltMath.LengthSensitivity(stops);
        double tolerance = belt is null ? 0 : _drive.Belt.ToleranceMm;
        double uncertainty = Math.Sqrt((centers * centers) + (tolerance * tolerance));
        if (_drive.Tensioner is Tensioner tensioner && _routing.PulleyIndexes.IndexOf(_drive.TensionerIndex) >= 0)
        {
            TensionerCheck check = new(_routing, tensioner, belt ?? effectiveMm, uncertainty, _limits);
            _findings.AddRange(check.Findings);
            return check;
        }

        if (belt is double length && Math.Abs(length - effectiveMm) > uncertainty)
        {
            Figure[] figures =
            [
                Mm("belt", length), Mm(length > effectiveMm ? "longest" : "shortest", effectiveMm), Mm("difference", Math.Abs(length - effectiveMm)),
            ];
            _findings.Add((length > effectiveMm ? BeltRules.TooLong : BeltRules.TooShort).On("belt", figures));
        }

        return null;
    }

    private int Next(int stop) => stop + 1 < _routing.Stops.Count ? stop + 1 : 0;

    private int PulleyIndex(int place) =>
        place < _routing.Stops.Count ? _routing.PulleyIndexes[place] : _unrouted[place - _routing.Stops.Count];

    private Pulley PulleyOf(int place) => _drive.Pulleys[PulleyIndex(place)];

    private string NameAt(int place) => PulleyOf(place).Name;

    private string PulleyAt(int place) => $"pulley '{NameAt(place)}'";

    private string SpanFrom(int stop) => $"span '{NameAt(stop)}' to '{NameAt(Next(stop))}'";

    private Figure Word(string name, int place) => Figure.Of(name, NameAt(place));

    private static Figure Mm(string name, double mm) => Figure.Of(name, mm, FigureUnit.Millimeter);
}
