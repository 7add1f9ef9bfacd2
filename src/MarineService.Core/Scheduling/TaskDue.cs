using MarineService.Core.Engines;
using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Scheduling;

/// <summary>Where one task stands on a day: its due point, which limb governs, how urgent it is, and why.</summary>
public sealed partial class TaskDue
{
    private readonly TaskState _state;
    private readonly ServiceHistory _history;
    private readonly HoursEstimate? _now;
    private readonly DueAt _due;
    private readonly DueAt _intervalDue;
    private DueForecast? _forecast;

    internal TaskDue(ServiceTask task, string scope, in TaskState state, ServiceHistory history, in TaskVerdict verdict)
    {
        Task = task;
        Scope = scope;
        _state = state;
        _history = history;
        _now = verdict.Now;
        Status = verdict.Status;
        Basis = verdict.Basis;
        Governs = verdict.Governs;
        _due = verdict.Due;
        _intervalDue = verdict.IntervalDue;
        HoursLimb = verdict.HoursLimb;
        CalendarLimb = verdict.CalendarLimb;
        UsedFraction = verdict.UsedFraction;
        SuspendedDays = verdict.SuspendedDays;
        PlanDate = verdict.PlanDay is int day ? CalendarDay.ToDate(day) : null;
        OverrunDays = verdict.OverrunDays;
        OverrunExcused = verdict.OverrunExcused;
        HoursLeft = verdict.HoursLeft is long left ? left / 1000m : null;
        DaysLeft = verdict.DaysLeft;
    }

    /// <summary>The task.</summary>
    public ServiceTask Task { get; }

    /// <summary>The task's id.</summary>
    public string TaskId => Task.Id;

    /// <summary>Whose task it is: the engine's id, or "boat" for a task of the boat itself.</summary>
    public string Scope { get; }

    /// <summary>How urgent it is.</summary>
    public DueStatus Status { get; }

    /// <summary>What the due point stands on.</summary>
    public DueBasis Basis { get; }

    /// <summary>Which limb decides: the one that was reached, or before that the one with the larger used share.</summary>
    public GoverningLimb Governs { get; }

    /// <summary>When it is due. Today and the present hours when it is due at once.</summary>
    public DuePoint Due => new(_due);

    /// <summary>When it would be due by its interval alone; the same as <see cref="Due"/> unless something made it due at once.</summary>
    public DuePoint IntervalDue => new(_intervalDue);

    /// <summary>How a visit plan names it: behind the scope and a slash unless that is "main".</summary>
    internal string VisitId => Scope == DueList.MainScope ? TaskId : $"{Scope}/{TaskId}";

    internal DueAt IntervalAt => _intervalDue;

    /// <summary>What can be said of the hours limb.</summary>
    public LimbState HoursLimb { get; }

    /// <summary>What can be said of the calendar limb.</summary>
    public LimbState CalendarLimb { get; }

    /// <summary>Hours left by the interval, negative when past; null unless <see cref="HoursLimb"/> is known.</summary>
    public decimal? HoursLeft { get; }

    /// <summary>Days left by the interval, negative when past; null unless <see cref="CalendarLimb"/> is known.</summary>
    public int? DaysLeft { get; }

    /// <summary>The share of the interval used up, the larger of both limbs; above 1 when past, 0 when there is nothing to count from.</summary>
    public double UsedFraction { get; }

    /// <summary>The date that the interval is counted from, or null when there is none.</summary>
    public LocalDate? AnchorDate => _state.AnchorDay is int day ? CalendarDay.ToDate(day) : null;

    /// <summary>The engine's hours in all that the interval is counted from, or null when there are none or no reading tells.</summary>
    public EngineHours? AnchorHours => _state.AnchorHoursKnown ? EngineHours.FromThousandths(_state.AnchorHours) : null;

    /// <summary>The date it was last done, or null when there is no completion.</summary>
    public LocalDate? LastDone => _state.LastDoneDay is int day ? CalendarDay.ToDate(day) : null;

    /// <summary>The engine's hours when it was last done, or null when there is no completion or no reading tells.</summary>
    public HoursEstimate? LastDoneAt => _state.LastDoneAt;

    /// <summary>The day to do it on when the due date falls into a lay-up and the task's rule moves it; else null.</summary>
    public LocalDate? PlanDate { get; }

    /// <summary>Days by which the plan date passes the due date; 0 when it does not.</summary>
    public int OverrunDays { get; }

    /// <summary>True when there is an overrun and no reading shows that the engine ran in the lay-up.</summary>
    public bool OverrunExcused { get; }

    /// <summary>Lay-up days that do not count; 0 unless the task's rule suspends them.</summary>
    public int SuspendedDays { get; }

    /// <summary>The id of a higher task, due as well, that does this one with it; null when there is none.</summary>
    public string? CoveredBy { get; internal set; }

    /// <summary>What the dial of the present meter shows at the due hours; not known when no hours are due or another meter showed them.</summary>
    public Answer<EngineHours> DueOnDial => Due.Hours is EngineHours hours
        ? _history.Meter.DialAt(hours)
        : Answer.NotKnown<EngineHours>("The task has no due hours.");

    /// <summary>The engine's hours in all on the day that was asked about; not known before the first reading.</summary>
    public Answer<HoursEstimate> HoursNow => _now is null
        ? Answer.NotKnown<HoursEstimate>("A meter reading.")
        : Answer.Known(_now);

    /// <summary>What the dial of the present meter shows then, as far as the readings tell; not known before the first reading.</summary>
    public Answer<EngineHours> DialNow => _now is null
        ? Answer.NotKnown<EngineHours>("A meter reading.")
        : _history.Meter.DialAt(_now.Estimate);

    /// <summary>The day of the last meter reading; null when there is none.</summary>
    public LocalDate? LastReading => _history.Meter.LastReadingDate;

    /// <summary>When it is expected to fall due: both limbs, which one comes first, and the range by past seasons. Worked out when asked for.</summary>
    public DueForecast Forecast => _forecast ??= new(this, _history.Use);

    internal LocalDate AsOf => _history.AsOf;

    internal SeasonalUse Use => _history.Use;

    /// <summary>The recurring interval, shortened as the duty in force at the due point shortens it.</summary>
    internal ServiceInterval IntervalInForce
    {
        get
        {
            ServiceInterval whole = Task.Interval!;
            bool isRecurring = _state.Interval == whole;
            EngineHours? hours = isRecurring && _intervalDue.Limb > 0 ? EngineHours.FromThousandths(_intervalDue.Limb) : whole.Hours;
            int? months = isRecurring && _intervalDue.Months > 0 ? _intervalDue.Months : whole.Months;
            return (hours, months) switch
            {
                ({ } limb, { } calendar) => ServiceInterval.FirstOf(limb, calendar),
                ({ } limb, null) => ServiceInterval.OfHours(limb),
                _ => ServiceInterval.OfMonths(months!.Value),
            };
        }
    }

    /// <summary>What would settle what is not known; empty when all is known.</summary>
    public IReadOnlyList<string> Missing =>
        Basis == DueBasis.NoRecord ? ["A record of when it was last done."]
        : HoursLimb == LimbState.Unknown ? [_state.AnchorHoursKnown ? "A meter reading since it was last done." : "A meter reading around the day it was last done."]
        : [];

    /// <summary>The task, how urgent it is, when it is due and what decides.</summary>
    /// <returns>Invariant text, such as "engine-oil: DueSoon, 512.0 h or 2027-04-01, hours govern".</returns>
    public override string ToString() => $"{TaskId}: {Status}, {DueInWords}, {ReasonInWords}";
}
