using MarineService.Core.Engines;
using MarineService.Core.Internal;

namespace MarineService.Core.Scheduling;

/// <summary>Goes through the facts in the order of time and tells where one task stands after each.</summary>
/// <remarks>The one implementation of the rules that reset, carry, charge and trigger (INTERVAL-06 to -17, -26, -28).</remarks>
internal ref struct TaskReplay(TaskPlan plan, int task, ServiceHistory history, ReadOnlySpan<int> completedTasks, List<ServiceOccurrence>? occurrences)
{
    private readonly ServiceTask _task = plan.Tasks[task];
    private readonly ReadOnlySpan<int> _completedTasks = completedTasks;
    private TaskState _state;
    private TaskState _beforePartial;
    private int _occurrencesBeforePartial;

    // Where a service was due before it was done bears on the next one only when lateness is charged or a window is kept.
    private readonly bool NeedsDuePoints => occurrences is not null || _task.AnchorPolicy != AnchorPolicy.DonePoint;

    internal TaskState Run()
    {
        _state = new() { Interval = _task.Interval };
        ReadOnlySpan<ServiceStep> steps = history.Steps;
        for (int i = 0; i < steps.Length; i++)
        {
            ref readonly ServiceStep step = ref steps[i];
            switch (step.Fact)
            {
                case Completion { Outcome: CompletionOutcome.Failed }:
                    if (_completedTasks[i] >= 0 && plan.FailTarget(_completedTasks[i]) == task)
                    {
                        Await(DueBasis.FailedInspection, in step, null);
                    }

                    break;
                case Completion completion:
                    if (_completedTasks[i] >= 0 && plan.Covers(_completedTasks[i], task))
                    {
                        Complete(in step, completion, _completedTasks[i]);
                    }

                    break;
                case EnteredService entered:
                    Enter(in step, entered);
                    break;
                case ServiceEvent happening when _task.DueAfter.Contains(happening.Kind):
                    Await(DueBasis.Event, in step, happening.Kind);
                    break;
                case OpeningDuePoint opening when opening.TaskId == _task.Id:
                    Open(opening);
                    break;
                case GridOrigin origin when origin.TaskId == _task.Id:
                    (_state.HasRecord, _state.Basis) = (true, DueBasis.Grid);
                    (_state.GridOrigin, _state.GridNext) = (step.Day, 1);
                    break;
            }
        }

        return _state;
    }

    private void Enter(in ServiceStep step, EnteredService entered)
    {
        bool first = _task.FirstService is not null;
        if (entered.Rebuilt ? !first : _state.HasRecord)
        {
            return;
        }

        if (_task.Occasion != TaskOccasion.Interval || _task.AnchorPolicy == AnchorPolicy.FixedGrid)
        {
            return;
        }

        _state = new()
        {
            HasRecord = true,
            Basis = first ? DueBasis.FirstService : DueBasis.NewEngine,
            Interval = _task.FirstService ?? _task.Interval,
            AnchorDay = step.Day,
            AnchorHoursKnown = true,
            AnchorHours = entered.EngineZero.Thousandths,
            AnchorLower = entered.EngineZero.Thousandths,
        };
    }

    private void Open(OpeningDuePoint opening)
    {
        _state = new()
        {
            HasRecord = true,
            Basis = DueBasis.Opening,
            Interval = _task.Interval,
            StatedDay = opening.DueDate is NodaTime.LocalDate date ? CalendarDay.Of(date) : null,
            StatedHours = opening.DueHours?.Thousandths,
        };
        if (_task.AnchorPolicy == AnchorPolicy.FixedGrid)
        {
            // A stated date is one of the grid's own, and as good an origin as the first.
            (_state.GridOrigin, _state.GridNext, _state.StatedDay) = (_state.StatedDay, 0, null);
        }
    }

    private void Await(DueBasis basis, in ServiceStep step, string? kind)
    {
        if (_state.Pending is null)
        {
            _state.PendingSince = step.Day;
        }

        // A failed inspection says more than the happening that called for it; the task has waited since the happening all the same.
        if (_state.Pending is null || (_state.Pending == DueBasis.Event && basis == DueBasis.FailedInspection))
        {
            (_state.Pending, _state.PendingDay, _state.PendingKind) = (basis, step.Day, kind);
            _state.PendingHours = step.Hours?.Estimate.Thousandths;
        }
    }

    private void Complete(in ServiceStep step, Completion completion, int completed)
    {
        int day = step.Day;
        HoursEstimate? hours = step.Hours;
        if (_state.Interval is null)
        {
            (_state.HasRecord, _state.LastDoneDay, _state.LastDoneAt, _state.Pending) = (true, day, hours, null);
            return;
        }

        // INTERVAL-31: entered beside a higher service that includes it, or with and without its reading, the work counts once.
        if (_state.LastDoneInFull && _state.LastDoneDay == day && _state.LastDoneAt?.Estimate == hours?.Estimate)
        {
            _state.Pending = null;
            return;
        }

        // A full change takes the place of a partial one of the same day: what was late is charged once, from before both.
        bool again = _state.LastDoneDay == day && !_state.LastDoneInFull;
        if (again && (completion.ExchangedFraction ?? 1m) == 1m)
        {
            _state = _beforePartial;
            occurrences?.RemoveRange(_occurrencesBeforePartial, occurrences.Count - _occurrencesBeforePartial);
            again = false;
        }

        bool inFull = completion.ExchangedFraction is null or 1m || completed != task || _task.PartialExchange.ThresholdFraction is not null;
        if (completion.ExchangedFraction is decimal fraction && completed == task && !Credit(fraction, ref day, ref hours))
        {
            return;
        }

        DueAt due = NeedsDuePoints ? NextDuePoint.Of(in _state, _task, history, step.Day, out _) : default;
        if (!inFull && !again)
        {
            (_beforePartial, _occurrencesBeforePartial) = (_state, occurrences?.Count ?? 0);
        }

        if (_task.AnchorPolicy == AnchorPolicy.FixedGrid)
        {
            CloseGrid(in step);
        }
        else
        {
            occurrences?.Add(new(_task, due, _state.Basis == DueBasis.FirstService, step.Fact.Date, step.Hours));
            Anchor(due, day, hours, step.Day);
        }

        (_state.LastDoneDay, _state.LastDoneAt, _state.LastDoneInFull) = (step.Day, step.Hours, inFull);
        _state.Pending = null;
    }

    // INTERVAL-13. False when the exchange counts for nothing; else day and hours move back by the age that is carried on.
    private readonly bool Credit(decimal fraction, ref int day, ref HoursEstimate? hours)
    {
        if (_task.PartialExchange.ThresholdFraction is decimal threshold)
        {
            return fraction >= threshold;
        }

        if (_state.AnchorDay is not int anchorDay)
        {
            // The age of the old fluid is not known, so no part of it can be carried.
            return fraction == 1m;
        }

        decimal left = 1m - fraction;
        day -= (int)decimal.Ceiling(left * (day - anchorDay));
        if (hours is not null && _state.AnchorHoursKnown)
        {
            long carried = (long)decimal.Ceiling(left * Math.Max(0, hours.Estimate.Thousandths - _state.AnchorHours));
            long carriedFromLower = (long)decimal.Ceiling(left * Math.Max(0, hours.Lower.Thousandths - _state.AnchorLower));
            hours = new(
                hours.Lower.Thousandths - carriedFromLower, hours.Estimate.Thousandths - carried, hours.Upper.Thousandths, hours.Quality);
        }

        return true;
    }

    // INTERVAL-06 to -08, each limb for itself (INTERVAL-10).
    private void Anchor(DueAt due, int day, HoursEstimate? hours, int doneOn)
    {
        bool keepsWindow = _task.AnchorPolicy == AnchorPolicy.SnapWithinWindow;
        _state.AnchorDay = (int)Pick(day, day, due.Day, keepsWindow ? due.ToleranceDays(_task.TolerancePercent) : 0);
        _state.AnchorHoursKnown = hours is not null;
        if (hours is not null)
        {
            long tolerance = keepsWindow ? due.ToleranceHours(_task.TolerancePercent) : 0;
            long lower = hours.Lower.Thousandths;
            long done = hours.Estimate.Thousandths;

            // Where no reading of the day says whether it fell inside the window, the lower bound decides: it rests on what was
            // read before, so that a later reading, which moves the estimate, never moves the anchor across the window.
            long shown = keepsWindow && !history.Meter.HasReadingOn(doneOn) ? lower : done;
            _state.AnchorHours = Pick(done, shown, due.Hours, tolerance);
            _state.AnchorLower = Math.Min(_state.AnchorHours, Pick(lower, lower, due.SafeHours, tolerance));
        }

        (_state.StatedDay, _state.StatedHours) = (null, null);
        (_state.HasRecord, _state.Basis, _state.Interval) = (true, DueBasis.LastDone, _task.Interval);
    }

    private readonly long Pick(long done, long shown, long? due, long tolerance) => _task.AnchorPolicy switch
    {
        AnchorPolicy.ChargeLateExcess when due is long at => Math.Min(done, at),
        AnchorPolicy.SnapWithinWindow when due is long at && Math.Abs(shown - at) <= tolerance => at,
        _ => done,
    };

    // INTERVAL-09: a completion closes every grid date up to and including the one whose window it has reached.
    private void CloseGrid(in ServiceStep step)
    {
        if (_state.GridOrigin is not int origin || _task.Interval!.Months is not int months)
        {
            return;
        }

        int tolerance = IntervalMath.ToleranceDays(months, _task.TolerancePercent);
        int point = CalendarDay.PlusMonths(origin, months * _state.GridNext);
        while (point - tolerance <= step.Day)
        {
            int next = CalendarDay.PlusMonths(origin, months * (_state.GridNext + 1));
            bool passedOver = next - tolerance <= step.Day;
            if (occurrences is not null)
            {
                DueAt due = new(point, null, months: months);
                occurrences.Add(passedOver
                    ? new(_task, due, isFirstService: false, null, null)
                    : new(_task, due, isFirstService: false, step.Fact.Date, step.Hours));
            }

            _state.Basis = DueBasis.Grid;
            _state.GridNext++;
            point = next;
        }
    }
}
