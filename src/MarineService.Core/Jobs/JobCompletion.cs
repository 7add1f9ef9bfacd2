using MarineService.Core.Internal;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;

namespace MarineService.Core.Jobs;

/// <summary>What goes into the log after a visit that was proved, and what is due next.</summary>
public sealed class JobCompletion
{
    private JobCompletion(JobProof proof, ServiceLog log, LogEntry[] entries, DueList due) =>
        (Proof, Log, Entries, NextDue) = (proof, log, Array.AsReadOnly(entries), due);

    /// <summary>The proof.</summary>
    public JobProof Proof { get; }

    /// <summary>The log with the entries; the log as it was when nothing was proved.</summary>
    public ServiceLog Log { get; }

    /// <summary>
    /// The entries: one for each task that is proved, and the readings of the raw-water side; none when nothing is proved. What stands
    /// in the log already, because an earlier report of the same visit was entered, is not entered twice.
    /// </summary>
    public IReadOnlyList<LogEntry> Entries { get; }

    /// <summary>Whether the visit was entered.</summary>
    public bool IsEntered => Entries.Count > 0;

    /// <summary>The due list of the engine after the entries.</summary>
    public DueList NextDue { get; }

    /// <summary>The worst grade of evidence of the entries; null when there are none.</summary>
    public EvidenceGrade? Grade => Entries.Count == 0 ? null : Entries.Max(entry => entry.Grade);

    /// <summary>Enters a visit. Nothing is entered as done that was not proved.</summary>
    /// <param name="proof">The verdict on the visit.</param>
    /// <param name="log">The log, which is not changed.</param>
    /// <returns>The longer log and the next due points; without a proof the log as it was.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A task refers to one that is not there.</exception>
    public static JobCompletion Of(JobProof proof, ServiceLog log)
    {
        Guard.NotNull(proof);
        Guard.NotNull(log);
        JobCard card = proof.Card;
        LogEntry[] entries = proof.ProvedTasks.Count == 0 ? []
            : [.. proof.ProvedTasks.Select(task => Fact(task, proof)).Concat(Readings(proof.Measurements)).Where(fact => !IsKnown(fact, log, card.Engine.Id)).Select(fact => Entry(fact, proof))];
        ServiceLog after = entries.Length == 0 ? log : ServiceLog.Of([.. log.Entries, .. entries]);
        LogEntry[] entered = [.. after.Entries.Skip(log.Entries.Count)];
        return new(proof, after, entered, after.DueList(card.Engine.Specification, proof.Measurements.Work.Day, card.Engine.Id));
    }

    private static IEnumerable<ServiceFact> Readings(JobMeasurements given) => new ServiceFact?[] { given.Impeller, given.Bucket }.OfType<ServiceFact>();

    /// <summary>Whether the same thing of the same day stands in the log.</summary>
    private static bool IsKnown(ServiceFact fact, ServiceLog log, string engine) => log.Standing().Any(entry =>
        entry.Scope == engine && entry.Fact is ServiceFact known && known.GetType() == fact.GetType() && known.Date == fact.Date && TaskOf(known) == TaskOf(fact));

    private static string? TaskOf(ServiceFact fact) => fact is Completion done ? done.TaskId : (fact as Fluids.OilChangeRecord)?.TaskId;

    private static LogEntry Entry(ServiceFact fact, JobProof proof)
    {
        JobMeasurements given = proof.Measurements;
        LogEntry entry = LogEntry.Of(fact).For(proof.Card.Engine.Id).WithEvidence([.. given.Evidence])
            .WithNote($"Card {proof.Card.Id}.");
        entry = given.By is string by ? entry.DoneBy(by) : entry;
        return given.CheckedBy is string checker ? entry.WithChecker(checker) : entry;
    }

    private static ServiceFact Fact(JobTask task, JobProof proof)
    {
        JobMeasurements given = proof.Measurements;
        NodaTime.LocalDate day = proof.DayOf(task);
        return task.TaskId == proof.Card.Engine.Specification.OilTaskId && given.Oil is not null
                ? Fluids.OilChangeRecord.Of(task.TaskId, day, given.Oil.Told, given.Dial)
            : !task.NeedsVerdict ? Completion.Of(task.TaskId, day, given.Dial)
            : given.Verdicts[task.TaskId] ? Completion.Passed(task.TaskId, day, given.Dial)
            : Completion.Failed(task.TaskId, day, given.Dial);
    }
}
