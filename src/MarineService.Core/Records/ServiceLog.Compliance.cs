using MarineService.Core.Internal;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Core.Records;

public sealed partial class ServiceLog
{
    /// <summary>Whether one engine's tasks were done on time.</summary>
    /// <remarks>
    /// For warranty no tolerance counts unless the maker states one; the ten percent of planning are a choice of this project.
    /// A completion whose hours the readings leave open is kept when the upper bound is inside, exceeded when the lower bound is outside,
    /// else it cannot be shown.
    /// </remarks>
    /// <param name="specification">What the engine is and needs.</param>
    /// <param name="asOf">The day up to which entries count, from 1900 to 2199.</param>
    /// <param name="basis">Which tolerance counts.</param>
    /// <param name="engine">The engine's id in the log; not blank.</param>
    /// <returns>The report.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="specification"/> or <paramref name="engine"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="engine"/> is blank, or a task refers to one that is not there.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="asOf"/> is outside 1900 to 2199, or <paramref name="basis"/> is not defined.</exception>
    public ComplianceReport Compliance(
        EngineSpecification specification,
        LocalDate asOf,
        ComplianceBasis basis = ComplianceBasis.Warranty,
        string engine = LogEntry.MainEngine)
    {
        Guard.NotNull(specification);
        Guard.Date(asOf);
        Guard.Defined(basis);
        ServiceHistory history = History(specification, asOf, engine);
        DueList due = Scheduling.DueList.Evaluate(specification.Plan, history, engine);
        int[] completed = Scheduling.DueList.CompletedTasks(specification.Plan, history);
        ILookup<LocalDate, LogEntry> entries = Standing()
            .Where(entry => entry.Scope == engine && entry.Fact is Completion)
            .ToLookup(entry => entry.Fact!.Date);
        List<ComplianceItem> items = [];
        List<Finding> findings = [];
        foreach (ServiceTask task in specification.Tasks)
        {
            decimal tolerance = basis == ComplianceBasis.Warranty ? task.MakerTolerancePercent ?? 0m : task.TolerancePercent;
            foreach (ServiceOccurrence occurrence in Scheduling.DueList.Occurrences(specification.Plan, history, specification.Plan.IndexOf(task.Id), completed))
            {
                items.Add(new(occurrence, tolerance, GradeOf(specification.Plan, task, occurrence, entries)));
                Report(items[items.Count - 1], findings);
            }

            if (StillMissing(due[task.Id], tolerance) is ServiceOccurrence missing)
            {
                items.Add(new(missing, tolerance, null));
                Report(items[items.Count - 1], findings);
            }
        }

        return new(asOf, basis, items.AsReadOnly(), findings.AsReadOnly());
    }

    // The occurrence that is open today counts once its tolerance has passed for certain.
    private static ServiceOccurrence? StillMissing(TaskDue due, decimal tolerance)
    {
        if (due.Task.Interval is null || due.IntervalDue.IsNone)
        {
            return null;
        }

        bool late = (due.DaysLeft is int days && -days > due.IntervalAt.ToleranceDays(tolerance))
            || (due.HoursLeft is decimal hours && -hours > due.IntervalAt.ToleranceHours(tolerance) / 1000m);
        return late ? new(due.Task, due.IntervalAt, due.Basis == DueBasis.FirstService, null, null) : null;
    }

    private static EvidenceGrade? GradeOf(TaskPlan plan, ServiceTask task, ServiceOccurrence occurrence, ILookup<LocalDate, LogEntry> entries)
    {
        if (occurrence.DoneOn is not LocalDate done)
        {
            return null;
        }

        EvidenceGrade? best = null;
        foreach (LogEntry entry in entries[done])
        {
            if (plan.IndexOf(((Completion)entry.Fact!).TaskId) is >= 0 and int completed && plan.Covers(completed, plan.IndexOf(task.Id))
                && (best is null || entry.Grade > best))
            {
                best = entry.Grade;
            }
        }

        return best;
    }

    private static void Report(ComplianceItem item, List<Finding> findings)
    {
        ServiceOccurrence occurrence = item.Occurrence;
        string subject = $"task '{occurrence.Task.Id}'";
        string due = occurrence.Due.ToString();
        switch (item.Verdict)
        {
            case ComplianceVerdict.CannotBeShown:
                string atLeast = occurrence.DoneAt is { } lower ? lower.Lower.ToString() : "any number of hours";
                string atMost = occurrence.DoneAt is { } upper ? upper.Upper.ToString() : "more";
                findings.Add(ComplianceRules.CannotBeShown.On(
                    subject,
                    Figure.Of("done", occurrence.DoneOn!.Value),
                    Figure.Of("due hours", occurrence.Due.Hours!.Value),
                    Figure.Of("at least", atLeast),
                    Figure.Of("at most", atMost)));
                break;
            case ComplianceVerdict.Missing:
                findings.Add(ComplianceRules.Missing.On(subject, Figure.Of("due", due)));
                break;
            case ComplianceVerdict.Exceeded:
                string done = LocalDatePattern.Iso.Format(occurrence.DoneOn!.Value);
                findings.Add(ComplianceRules.Exceeded.On(
                    subject,
                    Figure.Of("due", due),
                    Figure.Of("done", occurrence.DoneAt is { } at ? $"{done} at {at}" : done),
                    Figure.Of("tolerance", (double)item.TolerancePercent / 100, FigureUnit.Fraction)));
                break;
        }

        if (item.Grade is EvidenceGrade.Reconstructed or EvidenceGrade.EntryOnly)
        {
            findings.Add(ComplianceRules.WeakEvidence.On(
                subject,
                Figure.Of("done", occurrence.DoneOn!.Value),
                Figure.Of("grade", item.Grade == EvidenceGrade.Reconstructed ? "a reconstruction" : "the entry alone")));
        }
    }
}
