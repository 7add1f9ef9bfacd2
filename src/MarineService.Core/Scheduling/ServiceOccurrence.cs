using MarineService.Core.Engines;
using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Scheduling;

/// <summary>One time that a task was due and was done, or was passed over on a fixed grid.</summary>
public sealed class ServiceOccurrence
{
    internal ServiceOccurrence(
        ServiceTask task, DueAt due, bool isFirstService, LocalDate? doneOn, HoursEstimate? doneAt)
    {
        Task = task;
        DueAt = due;
        Due = new(due);
        IsFirstService = isFirstService;
        DoneOn = doneOn;
        DoneAt = doneAt;
        DaysLate = due.Day is int day && doneOn is LocalDate done ? CalendarDay.Of(done) - day : null;
    }

    /// <summary>The task.</summary>
    public ServiceTask Task { get; }

    /// <summary>When it was due; no due point when it was the first completion on record.</summary>
    public DuePoint Due { get; }

    /// <summary>Whether this was the first service of a new or rebuilt engine.</summary>
    public bool IsFirstService { get; }

    /// <summary>When it was done, or null when a grid date was passed over.</summary>
    public LocalDate? DoneOn { get; }

    /// <summary>The engine's hours when it was done, or null when no reading tells or it was passed over.</summary>
    public HoursEstimate? DoneAt { get; }

    /// <summary>Days after the due date, negative when early; null when there was no due date or no completion.</summary>
    public int? DaysLate { get; }

    /// <summary>Hours after the due hours by the estimate, negative when early; null when either is not known.</summary>
    public decimal? HoursLate => Late(DoneAt?.Estimate);

    /// <summary>The fewest hours that <see cref="HoursLate"/> may be, by the readings.</summary>
    public decimal? LeastHoursLate => Late(DoneAt?.Lower);

    /// <summary>The most hours that <see cref="HoursLate"/> may be, by the readings.</summary>
    public decimal? MostHoursLate => Late(DoneAt?.Upper);

    /// <summary>The due point with the interval in force there, on which the tolerance is measured.</summary>
    internal DueAt DueAt { get; }

    /// <summary>First and last day on which the task counts as done on time, under a tolerance.</summary>
    /// <param name="tolerancePercent">From 0 to 50 % of the interval.</param>
    /// <returns>Both days belong to the window; null when there is no due date.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="tolerancePercent"/> is outside its range.</exception>
    public (LocalDate From, LocalDate To)? Window(decimal tolerancePercent)
    {
        int days = DueAt.ToleranceDays(Guard.InRange(tolerancePercent, 0m, 50m, "%"));
        return Due.Date is LocalDate date ? (date.PlusDays(-days), date.PlusDays(days)) : null;
    }

    private decimal? Late(EngineHours? done) => done is EngineHours at && Due.Hours is EngineHours due ? at.ToHours() - due.ToHours() : null;
}
