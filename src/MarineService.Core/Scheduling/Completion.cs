using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Scheduling;

/// <summary>A recorded doing of a task: when, at which dial reading, and how it ended.</summary>
public sealed class Completion : ServiceFact
{
    // Kept apart so that the many completions without it are small.
    private readonly Exchanged? _exchanged;

    private Completion(string taskId, LocalDate date, EngineHours? dial, CompletionOutcome outcome, Exchanged? exchanged = null)
        : base(date, dial) => (TaskId, Outcome, _exchanged) = (taskId, outcome, exchanged);

    /// <summary>The task that was done.</summary>
    public string TaskId { get; }

    /// <summary>How it ended.</summary>
    public CompletionOutcome Outcome { get; }

    /// <summary>The fraction of the fluid that was exchanged, above 0 and at most 1; null when all of it was.</summary>
    public decimal? ExchangedFraction => _exchanged?.Fraction;

    /// <summary>The standard uncertainty of <see cref="ExchangedFraction"/>, from 0 to 1; null when it is not known.</summary>
    public decimal? FractionUncertainty => _exchanged?.Uncertainty;

    /// <summary>A task that was done.</summary>
    /// <param name="taskId">The task's id; not blank.</param>
    /// <param name="date">The date, from 1900 to 2199.</param>
    /// <param name="dial">What the dial showed, or null when it was not read.</param>
    /// <returns>The completion.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="taskId"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="taskId"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="date"/> is outside 1900 to 2199.</exception>
    public static Completion Of(string taskId, LocalDate date, EngineHours? dial = null) =>
        new(Guard.NotBlank(taskId), Guard.Date(date), dial, CompletionOutcome.Done);

    /// <summary>An inspection that passed.</summary>
    /// <param name="taskId">The inspection's id; not blank.</param>
    /// <param name="date">The date, from 1900 to 2199.</param>
    /// <param name="dial">What the dial showed, or null when it was not read.</param>
    /// <returns>The completion.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="taskId"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="taskId"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="date"/> is outside 1900 to 2199.</exception>
    public static Completion Passed(string taskId, LocalDate date, EngineHours? dial = null) =>
        new(Guard.NotBlank(taskId), Guard.Date(date), dial, CompletionOutcome.Passed);

    /// <summary>An inspection that failed.</summary>
    /// <param name="taskId">The inspection's id; not blank.</param>
    /// <param name="date">The date, from 1900 to 2199.</param>
    /// <param name="dial">What the dial showed, or null when it was not read.</param>
    /// <returns>The completion.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="taskId"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="taskId"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="date"/> is outside 1900 to 2199.</exception>
    public static Completion Failed(string taskId, LocalDate date, EngineHours? dial = null) =>
        new(Guard.NotBlank(taskId), Guard.Date(date), dial, CompletionOutcome.Failed);

    /// <summary>A change of only part of a fluid.</summary>
    /// <param name="taskId">The task's id; not blank.</param>
    /// <param name="date">The date, from 1900 to 2199.</param>
    /// <param name="dial">What the dial showed, or null when it was not read.</param>
    /// <param name="exchangedFraction">The fraction exchanged, from 0.000001 to 1.</param>
    /// <param name="standardUncertaintyFraction">Its standard uncertainty, from 0 to 1, or null when it is not known.</param>
    /// <returns>The completion.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="taskId"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="taskId"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number or date is outside its range.</exception>
    public static Completion Partial(
        string taskId, LocalDate date, EngineHours? dial, decimal exchangedFraction, decimal? standardUncertaintyFraction = null) =>
        new(
            Guard.NotBlank(taskId),
            Guard.Date(date),
            dial,
            CompletionOutcome.Done,
            new(
                Guard.InRange(exchangedFraction, 0.000001m, 1m, "(fraction)"),
                standardUncertaintyFraction is decimal u ? Guard.InRange(u, 0m, 1m, "(fraction)", nameof(standardUncertaintyFraction)) : null));

    internal override ServiceFact WithoutDial() => new Completion(TaskId, Date, null, Outcome, _exchanged);

    /// <summary>Whether both say the same thing of the same task: such entries count once.</summary>
    internal bool SaysTheSameAs(Completion other) =>
        TaskId == other.TaskId && Date == other.Date && Dial == other.Dial && Outcome == other.Outcome
        && ExchangedFraction == other.ExchangedFraction;

    private sealed class Exchanged(decimal fraction, decimal? uncertainty)
    {
        internal decimal Fraction => fraction;

        internal decimal? Uncertainty => uncertainty;
    }
}
