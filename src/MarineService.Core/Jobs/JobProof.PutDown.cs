using MarineService.Core.Procedures;
using NodaTime;

namespace MarineService.Core.Jobs;

/// <content>A visit that was put down before its end: what of it is proved all the same.</content>
public sealed partial class JobProof
{
    /// <summary>Whether the work was put down before its end, so that each task is proved by itself.</summary>
    public bool IsPartial => Measurements.Work.IsPutDown;

    /// <summary>The tasks that are proved. Of a whole visit all or none; of one that was put down those that nothing stands against.</summary>
    public IReadOnlyList<JobTask> ProvedTasks { get; private set; } = [];

    /// <summary>The tasks of the card that are not proved, those without a procedure among them.</summary>
    public IReadOnlyList<JobTask> OpenTasks => [.. Card.Tasks.Where(task => task.CoveredBy is null && !ProvedTasks.Contains(task))];

    /// <summary>The day on which the last step that proves a task was first done.</summary>
    internal LocalDate DayOf(JobTask task) =>
        task.How!.ProvedBy.Select(Measurements.Work.FirstDone).OfType<LocalDate>().DefaultIfEmpty(Measurements.Work.Day).Max();

    private static JobProof OfPutDown(JobCard card, JobMeasurements given)
    {
        WorkRecord work = given.Work;
        JobTask[] done = [.. card.Tasks.Where(task => task.CoveredBy is null && IsDone(task, work))];
        List<(Finding Finding, Predicate<JobTask> Against)> all = [];
        void Add(IEnumerable<Finding> findings, Predicate<JobTask> against) => all.AddRange(findings.Select(finding => (finding, against)));

        // Harm that never came right, and a dial that nobody read, stand against everything; what is merely open, against nothing that was done before.
        foreach (Finding refused in Refused(work))
        {
            Add([refused], _ => refused.Severity == Severity.Stop);
        }

        Add(Dial(given), _ => true);
        Add(work.LeftOpen(), _ => false);
        Add(Array.Exists(done, task => IsOil(card, task)) ? Oil(card, given) : [], task => IsOil(card, task));
        Add(card.Procedure.Steps.Any(step => step.Acts.Contains(StepAct.BeltOn) && work.HasDone(step.Id)) ? Belt(card, given) : [], task => Takes(card, task, work, StepAct.BeltOn));
        Add(JobWater.FindingsOf(card, given), task => Takes(card, task, work, StepAct.Start) || Takes(card, task, work, StepAct.OpenRawSide));
        foreach (JobTask task in done.Where(task => task.NeedsVerdict && !given.Verdicts.ContainsKey(task.TaskId)))
        {
            Add([NotGiven($"whether '{task.TaskId}' passed")], other => other == task);
        }

        Add(StrangeVerdicts(card, given), _ => true);
        Add(Tally(given.Tally, card.Kit.TallyFor([.. done.Select(task => task.TaskId)], given.Tally)), task => card.Kit.TakesOff(task.TaskId));
        JobTask[] proved = Array.FindAll(done, task => !all.Exists(one => one.Finding.Severity >= Severity.Act && one.Against(task)));
        Finding[] open = [.. card.Tasks.Where(task => task.CoveredBy is null && task.How is not null && !proved.Contains(task)).Select(task => TaskOpen(task, work))];
        open = open.Length > 0 ? open : [.. work.ToDo.Select(StepOpen)];
        return new(card, given, [.. all.Select(one => one.Finding).Concat(open).OrderByDescending(finding => finding.Severity)]) { ProvedTasks = Array.AsReadOnly(proved) };
    }

    /// <summary>Whether every step that proves a task is done, or was done before the night undid its proof.</summary>
    private static bool IsDone(JobTask task, WorkRecord work) =>
        task.How is TaskProcedure how && how.ProvedBy.All(id => work.HasDone(id) || work.FirstDone(id) is not null);

    private static bool IsOil(JobCard card, JobTask task) => task.TaskId == card.Engine.Specification.OilTaskId;

    private static bool Takes(JobCard card, JobTask task, WorkRecord work, StepAct act) => task.How!.Procedure.Steps.Any(step =>
        card.Procedure.Find(step.Id) is ProcedureStep found && found.Acts.Contains(act) && work.HasDone(found.Id));

    private static Finding TaskOpen(JobTask task, WorkRecord work)
    {
        string[] steps = [.. task.How!.ProvedBy.Where(id => !work.HasDone(id))];
        return JobRules.TaskOpen.On($"task '{task.TaskId}'", Figure.Of("what", steps.Length == 0
            ? "something stands against what was measured"
            : $"not done and proved: {string.Join(", ", steps)}"));
    }
}
