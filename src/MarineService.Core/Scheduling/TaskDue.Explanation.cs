using MarineService.Core.Internal;
using NodaTime.Text;

namespace MarineService.Core.Scheduling;

public sealed partial class TaskDue
{
    private string DueInWords => Basis switch
    {
        DueBasis.EachUse => "every use",
        DueBasis.NoRecord => "now",
        DueBasis.LayUp when _due.IsNone => "at the next lay-up",
        DueBasis.Commissioning when _due.IsNone => "when the boat comes out of lay-up",
        _ => Due.ToString(),
    };

    private string ReasonInWords => Basis switch
    {
        DueBasis.EachUse => "no due date",
        DueBasis.NoRecord => "no record",
        DueBasis.FailedInspection => "inspection failed",
        DueBasis.Event => $"after {_state.PendingKind}",
        DueBasis.LayUpVoided => "ran after lay-up",
        DueBasis.LayUp => "lay-up",
        DueBasis.Commissioning => "commissioning",
        _ => Governs switch
        {
            GoverningLimb.Hours => "hours govern",
            GoverningLimb.Calendar => "calendar governs",
            GoverningLimb.Both => "hours and calendar together",
            _ => "hours not known",
        },
    };

    /// <summary>The rules that bound the answer, the deciding one first.</summary>
    /// <returns>At least one rule.</returns>
    public IReadOnlyList<IntervalRule> Rules()
    {
        List<IntervalRule> rules =
        [
            Basis switch
            {
                DueBasis.NoRecord => IntervalRule.NoRecord,
                DueBasis.FailedInspection => IntervalRule.ReplaceIncludesInspect,
                DueBasis.Event => IntervalRule.EventTrigger,
                DueBasis.LayUpVoided => IntervalRule.LayUpVoided,
                DueBasis.LayUp or DueBasis.Commissioning => IntervalRule.DueInLayUp,
                DueBasis.FirstService => IntervalRule.FirstService,
                DueBasis.Grid => IntervalRule.FixedGrid,
                _ => IntervalRule.WhicheverFirst,
            },
        ];
        if (Basis == DueBasis.LastDone)
        {
            rules.Add(Task.AnchorPolicy switch
            {
                AnchorPolicy.ChargeLateExcess => IntervalRule.ChargeLateExcess,
                AnchorPolicy.SnapWithinWindow => IntervalRule.SnapWithinWindow,
                AnchorPolicy.FixedGrid => IntervalRule.FixedGrid,
                _ => IntervalRule.DonePoint,
            });
        }

        AddIf(rules, Basis == DueBasis.LastDone && !_state.LastDoneInFull, IntervalRule.PartialExchange);
        AddIf(rules, IsShortened, IntervalRule.SevereDuty);
        AddIf(rules, DutyChanged, IntervalRule.LifeUsed);
        AddIf(rules, Status == DueStatus.DueSoon, IntervalRule.DueSoon);
        AddIf(rules, Status is DueStatus.Due or DueStatus.Overdue && Task.TolerancePercent > 0, IntervalRule.Tolerance);
        AddIf(rules, HoursLimb == LimbState.Unknown, IntervalRule.ReadingWanted);
        AddIf(rules, LastDoneAt is { Quality: Engines.ReadingQuality.Interpolated }, IntervalRule.InterpolatedHours);
        AddIf(rules, Status is DueStatus.NotDue or DueStatus.DueSoon && Governs is GoverningLimb.Hours or GoverningLimb.Calendar, IntervalRule.UsedFraction);
        AddIf(rules, PlanDate is not null, IntervalRule.DueInLayUp);
        AddIf(rules, SuspendedDays > 0, IntervalRule.AgeingInLayUp);
        AddIf(rules, CoveredBy is not null, IntervalRule.TogetherOnce);
        return rules.AsReadOnly();
    }

    /// <summary>Why the task stands where it stands: answer, inputs, both limbs, rules and sources.</summary>
    /// <param name="units">Which units to write; hours and dates are the same in all.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        IReadOnlyList<IntervalRule> rules = Rules();
        ExplanationBuilder lines = new($"{Task.Title}: {InWords(Status)}, {DueInWords}, {ReasonInWords}.");
        lines.AddIf(_state.Interval is not null, "interval", () => _state.Interval!.ToString());
        lines.AddIf(IsShortened, "under duty", () => ShortenedInWords());
        lines.AddIf(LastDone is not null, "last done", () => LastDoneInWords());
        lines.AddIf(Basis == DueBasis.NewEngine || Basis == DueBasis.FirstService, "new", () =>
            $"entered service {LocalDatePattern.Iso.Format(AnchorDate!.Value)}, counted from {AnchorHours}");
        lines.AddIf(AnchorMoved, "counted from", () => AnchorInWords());
        lines.AddIf(Basis == DueBasis.Opening, "stated", () => "as the record was opened");
        lines.AddIf(HoursLimb != LimbState.NotUsed, "by hours", () => HoursInWords());
        lines.AddIf(CalendarLimb != LimbState.NotUsed, "by calendar", () => CalendarInWords());
        lines.AddIf(_now is not null, "hours now", () => NowInWords());
        lines.AddIf(PlanDate is not null, "plan", () => PlanInWords());
        lines.AddIf(SuspendedDays > 0, "lay-up", () => FormattableString.Invariant($"{SuspendedDays} days do not count"));
        lines.AddIf(CoveredBy is not null, "done with", () => CoveredBy!);
        foreach (string missing in Missing)
        {
            lines.Add("missing", missing);
        }

        foreach (IntervalRule rule in rules)
        {
            lines.Add("rule", rule.ToString());
        }

        return lines.Build([Task.Source, .. rules.Select(rule => rule.Citation).Distinct().Where(citation => citation != Task.Source)]);
    }

    private static string InWords(DueStatus status) => status switch
    {
        DueStatus.NotDue => "not due",
        DueStatus.EachUse => "each use",
        DueStatus.DueSoon => "due soon",
        DueStatus.Due => "due",
        _ => "overdue",
    };

    private static void AddIf(List<IntervalRule> rules, bool condition, IntervalRule rule)
    {
        if (condition && !rules.Contains(rule))
        {
            rules.Add(rule);
        }
    }

    private bool IsShortened => _state.Interval is { } interval && !_intervalDue.IsNone
        && (_intervalDue.Months < (interval.Months ?? 0) || _intervalDue.Limb < (interval.Hours?.Thousandths ?? 0));

    // The due point does not lie one interval in force from the anchor: part of the life was used under another duty.
    private bool DutyChanged =>
        (_intervalDue.Hours is long hours && _state.AnchorHoursKnown && hours != _state.AnchorHours + _intervalDue.Limb)
        || (_intervalDue.Day is int day && _state.AnchorDay is int anchor && _state.GridOrigin is null
            && day - SuspendedDays != CalendarDay.PlusMonths(anchor, _intervalDue.Months));

    private bool AnchorMoved =>
        LastDone is not null && AnchorDate is not null && (AnchorDate != LastDone || (AnchorHours is EngineHours hours && LastDoneAt is { } done && hours != done.Estimate));

    private string ShortenedInWords() => string.Join(" or ", new[]
    {
        _intervalDue.Limb > 0 ? EngineHours.FromThousandths(_intervalDue.Limb).ToString() : null,
        _intervalDue.Months > 0 ? FormattableString.Invariant($"{_intervalDue.Months} months") : null,
    }.Where(limb => limb is not null));

    private string LastDoneInWords()
    {
        string date = LocalDatePattern.Iso.Format(LastDone!.Value);
        return LastDoneAt is { } at ? $"{date} at {at}" : $"{date}, no reading";
    }

    private string AnchorInWords()
    {
        string date = LocalDatePattern.Iso.Format(AnchorDate!.Value);
        return AnchorHours is { } hours ? $"{date} at {hours}" : date;
    }

    private string HoursInWords()
    {
        if (IntervalDue.Hours is not { } due)
        {
            return "not known";
        }

        string text = due.ToString();
        if (IntervalDue.SafeHours is { } safe && safe < due)
        {
            text += $", {safe} to be safe";
        }

        if (_history.Meter.DialThousandths(due.Thousandths) is long dial && dial != due.Thousandths)
        {
            text += $" ({EngineHours.FromThousandths(dial)} on the dial)";
        }

        return HoursLeft is decimal left
            ? text + FormattableString.Invariant($", {Math.Abs(left):0.0##} h {(left > 0 ? "left" : "past")}")
            : text + ", present hours not known";
    }

    private string CalendarInWords() => IntervalDue.Date is { } date && DaysLeft is int left
        ? FormattableString.Invariant($"{LocalDatePattern.Iso.Format(date)}, {Math.Abs(left)} days {(left > 0 ? "left" : "past")}")
        : "not known";

    private string NowInWords() => _history.Meter.LastReadingDate is { } read && read < _history.AsOf
        ? $"{_now!.Estimate}, last read {LocalDatePattern.Iso.Format(read)}"
        : _now!.ToString();

    private string PlanInWords()
    {
        string date = LocalDatePattern.Iso.Format(PlanDate!.Value);
        return OverrunDays == 0
            ? $"{date}, with the lay-up"
            : FormattableString.Invariant($"{date}, {OverrunDays} days over, {(OverrunExcused ? "excused: the engine did not run" : "not excused: the engine ran")}");
    }
}
