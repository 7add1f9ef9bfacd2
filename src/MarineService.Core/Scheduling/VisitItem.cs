using MarineService.Core.Internal;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Core.Scheduling;

/// <summary>A task on its visit day: how early or late that is, what it costs, and what the next best day would cost.</summary>
public sealed class VisitItem
{
    internal VisitItem(VisitTask task, LocalDate date, decimal cost, LocalDate? nextBest, decimal? extra, bool isDueAtOnce = false)
    {
        (Task, Date, Cost, NextBestDate, NextBestExtraCost, IsDueAtOnce) = (task, date, cost, nextBest, extra, isDueAtOnce);
        int days = CalendarDay.Of(date) - CalendarDay.Of(task.Due);
        (DaysEarly, DaysLate) = (Math.Max(0, -days), Math.Max(0, days));
    }

    /// <summary>The task.</summary>
    public VisitTask Task { get; }

    /// <summary>The day of the visit.</summary>
    public LocalDate Date { get; }

    /// <summary>Days before the due day; 0 when it is not early.</summary>
    public int DaysEarly { get; }

    /// <summary>Days after the due day; 0 when it is not late.</summary>
    public int DaysLate { get; }

    /// <summary>What being early or late costs, in the caller's currency.</summary>
    public decimal Cost { get; }

    /// <summary>The next best day for this task while all others stay; null when there is no other day.</summary>
    public LocalDate? NextBestDate { get; }

    /// <summary>What the next best day would cost more, 0 or above; null when there is no other day.</summary>
    public decimal? NextBestExtraCost { get; }

    /// <summary>Whether it may not wait, as after a failed inspection: it is on the first day that there is, whatever lateness is priced at, and the engine stays off until then.</summary>
    public bool IsDueAtOnce { get; }

    /// <summary>Why the task is on its day; invariant text.</summary>
    public string Reason =>
        (DaysEarly > 0 ? FormattableString.Invariant($"{DaysEarly} days early for {Cost:0.00} of life")
            : DaysLate > 0 ? FormattableString.Invariant($"{DaysLate} days late for {Cost:0.00} of risk")
            : "on its due day")
        + (IsDueAtOnce ? "; due at once: the first day there is, leave the engine off until it is done" : NextBestDate is LocalDate next ? FormattableString.Invariant($"; next best {LocalDatePattern.Iso.Format(next)} costs {NextBestExtraCost:0.00} more") : "; no other day");

    /// <summary>The task and why it is on its day.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => $"{Task}: {Reason}";
}
