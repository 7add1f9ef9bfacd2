namespace MarineService.Core.LayUp;

/// <summary>Judges one low point by what was done, in the order in which it was done.</summary>
internal sealed class WinterProofJudge
{
    private readonly FreezeDecision _freeze;
    private readonly Antifreeze? _antifreeze;
    private readonly IReadOnlyList<LowPointWork> _works;
    private readonly double _marginKelvins;
    private readonly int _firstReading;

    internal WinterProofJudge(FreezeDecision freeze, Antifreeze? antifreeze, IReadOnlyList<LowPointWork> works, LayUpLimits limits)
    {
        (_freeze, _antifreeze, _works, _marginKelvins) = (freeze, antifreeze, works, limits.FreezingMarginKelvins);
        _firstReading = Enumerable.Range(0, works.Count).Where(i => works[i].Reading is not null).DefaultIfEmpty(works.Count).First();
    }

    internal bool ExhaustPassed => _works.Any(work => work.PointId == LowPointWork.Exhaust && work.Reading is RefractometerReading reading && Refusal(reading, "exhaust outlet") is null);

    internal static bool HidesFromTheExhaust(LowPointKind kind) => kind is LowPointKind.EngineBlock or LowPointKind.ExhaustManifold;

    internal LowPointProof Judge(LowPoint point)
    {
        List<Finding> findings = [];
        bool isDrained = false;
        bool isRead = false;
        bool isTooWeak = false;
        bool isDone = false;
        for (int i = 0; i < _works.Count; i++)
        {
            LowPointWork work = _works[i];
            if (work.PointId != point.Id)
            {
                continue;
            }

            isDone = true;
            if (work.Reading is RefractometerReading reading)
            {
                Finding? refusal = Refusal(reading, Subject(point));
                isRead = refusal is null;
                isTooWeak = ReferenceEquals(refusal?.Rule, LayUpRules.TooWeakAtDrain);
                Replace(findings, refusal, LayUpRules.TooWeakAtDrain, LayUpRules.WrongScale, LayUpRules.EthanolReading, LayUpRules.LowNotKnown);
            }
            else
            {
                Finding? refusal = DrainRefusal(point, work, beforeAntifreeze: i < _firstReading);
                isDrained = refusal is null;
                isTooWeak &= !isDrained;
                Replace(findings, refusal, LayUpRules.DrainsNotAllClear, LayUpRules.DrainedBeforeFill);
            }
        }

        if (!isDone)
        {
            findings.Add(LayUpRules.StillFull.On(Subject(point), Figure.Of("drains", point.Drains, FigureUnit.Number)));
        }

        bool isProved = (isDrained || isRead) && !isTooWeak;
        return new(
            point,
            isTooWeak ? LowPointVerdict.TooWeak : isProved ? LowPointVerdict.Proved : isDone ? LowPointVerdict.NotProved : LowPointVerdict.NotDone,
            isProved ? [] : findings.AsReadOnly());
    }

    private static string Subject(LowPoint point) => $"low point '{point.Title}'";

    // The last work of its kind counts: a drain that was blocked may be rodded again, a fill topped up and read again.
    private static void Replace(List<Finding> findings, Finding? latest, params FindingRule[] rules)
    {
        findings.RemoveAll(finding => Array.Exists(rules, rule => ReferenceEquals(rule, finding.Rule)));
        if (latest is not null)
        {
            findings.Add(latest);
        }
    }

    private Finding? DrainRefusal(LowPoint point, LowPointWork work, bool beforeAntifreeze)
    {
        if (point.Drains == 0 || work.Rodded < point.Drains || work.Ran < point.Drains)
        {
            return LayUpRules.DrainsNotAllClear.On(
                Subject(point),
                Figure.Of("drains", point.Drains, FigureUnit.Number),
                Figure.Of("rodded", work.Rodded!.Value, FigureUnit.Number),
                Figure.Of("ran", work.Ran!.Value, FigureUnit.Number));
        }

        return beforeAntifreeze && _firstReading < _works.Count && HidesFromTheExhaust(point.Kind) ? LayUpRules.DrainedBeforeFill.On(Subject(point)) : null;
    }

    private Finding? Refusal(RefractometerReading reading, string subject)
    {
        if (_antifreeze is null || _antifreeze.HasEthanol)
        {
            return LayUpRules.EthanolReading.On(subject, Figure.Of("antifreeze", _antifreeze?.Name ?? "an antifreeze of unknown make"));
        }

        if (_antifreeze.Kind != reading.Scale)
        {
            return LayUpRules.WrongScale.On(subject, Figure.Of("antifreeze", _antifreeze.Name), Figure.Of("scale", reading.ToString()));
        }

        if (_freeze.LowCelsius is not double low)
        {
            return LayUpRules.LowNotKnown.On(subject, Figure.Of("read", reading.Celsius, FigureUnit.DegreeCelsius));
        }

        // A freezing point in °F must not fail at the limit by the last digit of its conversion.
        double limit = low - _marginKelvins;
        return Math.Round(reading.Celsius, 6) <= Math.Round(limit, 6)
            ? null
            : LayUpRules.TooWeakAtDrain.On(
                subject,
                Figure.Of("read", reading.Celsius, FigureUnit.DegreeCelsius),
                Figure.Of("wanted", limit, FigureUnit.DegreeCelsius),
                Figure.Of("lowest", low, FigureUnit.DegreeCelsius));
    }
}
