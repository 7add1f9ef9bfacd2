using System.Buffers;
using MarineService.Core.Engines;
using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Scheduling;

/// <summary>Every task of an engine or a boat on one day: when it is due, which limb governs, how urgent it is, and why.</summary>
public sealed class DueList
{
    // The engine that tasks belong to when nothing else is said.
    internal const string MainScope = "main";

    /// <summary>Takes what was decided about a task of a plan.</summary>
    internal delegate void Decided(int task, in TaskState state, in TaskVerdict verdict);

    private readonly TaskDue[] _tasks;

    private DueList(LocalDate today, TaskDue[] tasks, IReadOnlyList<Finding> findings) =>
        (Today, _tasks, Tasks, Findings) = (today, tasks, Array.AsReadOnly(tasks), findings);

    /// <summary>The day that the list is made for.</summary>
    public LocalDate Today { get; }

    /// <summary>The tasks in the order of the specification.</summary>
    public IReadOnlyList<TaskDue> Tasks { get; }

    /// <summary>What is odd about the data, and what wants attention besides the tasks.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The tasks, most urgent first; equally urgent ones by used share, then by due date, then by id.</summary>
    public IReadOnlyList<TaskDue> MostUrgentFirst => Array.AsReadOnly(MostUrgentOf(_ => true));

    /// <summary>Whether anything is due or overdue.</summary>
    public bool AnythingDue => Array.Exists(_tasks, task => task.Status >= DueStatus.Due);

    /// <summary>The one reading that would sharpen the forecasts of this list most: what is not known first, then the range that shrinks most.</summary>
    /// <param name="noticeDays">How many days before the earliest date it must be known, from 0 to 365; 14 is a choice of this project.</param>
    /// <returns>The day to read the meter on, with the task and the reason; not known when no reading would change a date.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="noticeDays"/> is outside its range.</exception>
    public Answer<ReadingAdvice> ReadAgain(int noticeDays = 14)
    {
        Guard.InRange(noticeDays, 0, 365, "days");
        return _tasks.Select(task => task.Forecast.ReadAgain(noticeDays)).Where(advice => advice.IsKnown)
            .OrderByDescending(advice => advice.Value.RangeDays is null ? int.MaxValue : advice.Value.RangeDays - advice.Value.RangeDaysAfter)
            .ThenBy(advice => advice.Value.Date).FirstOrDefault()
            ?? Answer.NotKnown<ReadingAdvice>("Nothing that a reading could tell: it would not change a date.");
    }

    /// <summary>A task by its id.</summary>
    /// <param name="taskId">The id.</param>
    /// <returns>The task; the first one when several engines have it.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="taskId"/> is null.</exception>
    /// <exception cref="KeyNotFoundException">No task has that id.</exception>
    public TaskDue this[string taskId]
    {
        get
        {
            Guard.NotNull(taskId);
            return Array.Find(_tasks, task => task.TaskId == taskId)
                ?? throw new KeyNotFoundException($"No task has the id '{taskId}'.");
        }
    }

    /// <summary>Evaluates tasks against the facts.</summary>
    /// <param name="plan">The tasks.</param>
    /// <param name="history">The facts up to the day.</param>
    /// <param name="scope">Whose tasks they are: the engine's id, or "boat"; not blank.</param>
    /// <returns>The due list of the history's day.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="scope"/> is blank.</exception>
    public static DueList Evaluate(TaskPlan plan, ServiceHistory history, string scope = MainScope)
    {
        Guard.NotNull(plan);
        Guard.NotNull(history);
        Guard.NotBlank(scope);
        List<Finding> findings = [.. history.Findings];
        TaskDue[] tasks = new TaskDue[plan.Tasks.Count];
        Decide(plan, history, findings, (int i, in TaskState state, in TaskVerdict verdict) =>
        {
            tasks[i] = new(plan.Tasks[i], scope, in state, history, in verdict);
            Report(tasks[i], findings);
        });
        FindTogether(plan, tasks);
        ReportLayUp(history, findings);
        return new(history.AsOf, tasks, findings.AsReadOnly());
    }

    /// <summary>Decides task by task, in the order of the plan; what is odd about the completions goes into the findings, when somebody wants them.</summary>
    internal static void Decide(TaskPlan plan, ServiceHistory history, List<Finding>? findings, Decided decided)
    {
        int steps = history.Steps.Length;
        int[] rented = ArrayPool<int>.Shared.Rent(Math.Max(1, steps));
        try
        {
            Span<int> completed = rented.AsSpan(0, steps);
            Resolve(plan, history, completed, findings);
            for (int i = 0; i < plan.Tasks.Count; i++)
            {
                TaskState state = new TaskReplay(plan, i, history, completed, null).Run();
                TaskVerdict verdict = DueRule.Decide(plan.Tasks[i], in state, history);
                decided(i, in state, in verdict);
            }
        }
        finally
        {
            ArrayPool<int>.Shared.Return(rented);
        }
    }

    /// <summary>Each time that a task was due and was done, or was passed over on a fixed grid, in the order of time.</summary>
    /// <param name="plan">The tasks.</param>
    /// <param name="history">The facts up to a day.</param>
    /// <param name="taskId">The task.</param>
    /// <returns>The occurrences.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="KeyNotFoundException">No task has that id.</exception>
    public static IReadOnlyList<ServiceOccurrence> Occurrences(TaskPlan plan, ServiceHistory history, string taskId)
    {
        Guard.NotNull(plan);
        Guard.NotNull(history);
        int task = plan.IndexOf(Guard.NotNull(taskId));
        if (task < 0)
        {
            throw new KeyNotFoundException($"No task has the id '{taskId}'.");
        }

        return Occurrences(plan, history, task, CompletedTasks(plan, history));
    }

    /// <summary>Which task each step of a history completes, or -1: the same for every task of the plan.</summary>
    internal static int[] CompletedTasks(TaskPlan plan, ServiceHistory history)
    {
        int[] completed = new int[history.Steps.Length];
        Resolve(plan, history, completed, null);
        return completed;
    }

    internal static IReadOnlyList<ServiceOccurrence> Occurrences(TaskPlan plan, ServiceHistory history, int task, int[] completed)
    {
        List<ServiceOccurrence> occurrences = [];
        new TaskReplay(plan, task, history, completed, occurrences).Run();
        return occurrences.AsReadOnly();
    }

    /// <summary>Puts the lists of several engines and of the boat itself into one.</summary>
    /// <param name="lists">Lists of the same day; at least one.</param>
    /// <returns>All tasks and findings in the order given.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="lists"/> or an item is null.</exception>
    /// <exception cref="ArgumentException">There is no list, or the days differ.</exception>
    public static DueList Join(IEnumerable<DueList> lists)
    {
        IReadOnlyList<DueList> all = Guard.Items(lists);
        if (all.Count == 0 || all.Any(list => list.Today != all[0].Today))
        {
            throw new ArgumentException("Must hold at least one list, all of the same day.", nameof(lists));
        }

        return new(all[0].Today, [.. all.SelectMany(list => list._tasks)], all.SelectMany(list => list.Findings).ToList().AsReadOnly());
    }

    /// <summary>Some of the tasks, most urgent first.</summary>
    internal TaskDue[] MostUrgentOf(Predicate<TaskDue> belongs)
    {
        TaskDue[] sorted = Array.FindAll(_tasks, belongs);
        Array.Sort(sorted, ByUrgency);
        return sorted;
    }

    private static int ByUrgency(TaskDue left, TaskDue right)
    {
        int order = right.Status.CompareTo(left.Status);
        order = order != 0 ? order : right.UsedFraction.CompareTo(left.UsedFraction);
        order = order != 0 ? order : (left.Due.Date ?? Guard.LatestDate).CompareTo(right.Due.Date ?? Guard.LatestDate);
        order = order != 0 ? order : string.CompareOrdinal(left.Scope, right.Scope);
        return order != 0 ? order : string.CompareOrdinal(left.TaskId, right.TaskId);
    }

    // Which task each step completes, or -1; resolved once for all tasks.
    private static void Resolve(TaskPlan plan, ServiceHistory history, Span<int> completed, List<Finding>? findings)
    {
        ReadOnlySpan<ServiceStep> steps = history.Steps;
        for (int i = 0; i < steps.Length; i++)
        {
            completed[i] = -1;
            if (steps[i].Fact is Completion completion)
            {
                int task = plan.IndexOf(completion.TaskId);
                if (task < 0)
                {
                    findings?.Add(SchedulingRules.UnknownTask.On($"task '{completion.TaskId}'", Figure.Of("date", completion.Date)));
                }
                else if (completion.Outcome != CompletionOutcome.Done && plan.Tasks[task].Action != TaskAction.Inspect)
                {
                    findings?.Add(SchedulingRules.ResultWithoutInspection.On($"task '{completion.TaskId}'", Figure.Of("date", completion.Date)));
                }
                else
                {
                    completed[i] = task;
                    ReportFraction(plan.Tasks[task], completion, findings);
                }
            }
            else if (steps[i].Fact is ServiceEvent happening && !Answers(plan, happening.Kind))
            {
                findings?.Add(SchedulingRules.UnansweredEvent.On(
                    "log", Figure.Of("kind", happening.Kind), Figure.Of("date", happening.Date)));
            }
        }
    }

    private static bool Answers(TaskPlan plan, string kind)
    {
        foreach (ServiceTask task in plan.Tasks)
        {
            if (task.DueAfter.Contains(kind))
            {
                return true;
            }
        }

        return false;
    }

    private static void ReportFraction(ServiceTask task, Completion completion, List<Finding>? findings)
    {
        if (findings is not null && completion.ExchangedFraction is decimal fraction
            && completion.FractionUncertainty is decimal sigma
            && task.PartialExchange.ThresholdFraction is decimal threshold
            && sigma > 0 && Math.Abs(fraction - threshold) < 2 * sigma)
        {
            findings.Add(SchedulingRules.FractionInsideNoise.On(
                $"task '{task.Id}'",
                Figure.Of("fraction", (double)fraction, FigureUnit.Fraction),
                Figure.Of("date", completion.Date),
                Figure.Of("uncertainty", (double)sigma, FigureUnit.Fraction),
                Figure.Of("threshold", (double)threshold, FigureUnit.Fraction)));
        }
    }

    private static void Report(TaskDue task, List<Finding> findings)
    {
        if (task.Basis == DueBasis.FailedInspection)
        {
            findings.Add(SchedulingRules.FailedInspection.On($"task '{task.TaskId}'", Figure.Of("date", task.Due.Date!.Value)));
        }

        if (task.Basis == DueBasis.NoRecord && task.Task.AnchorPolicy == AnchorPolicy.FixedGrid)
        {
            findings.Add(SchedulingRules.GridWithoutOrigin.On($"task '{task.TaskId}'"));
        }

        if (task.HoursLimb == LimbState.Unknown && task.LastDone is LocalDate last)
        {
            findings.Add(SchedulingRules.ReadingWanted.On($"task '{task.TaskId}'", Figure.Of("last done", last)));
        }
    }

    private static void ReportLayUp(ServiceHistory history, List<Finding> findings)
    {
        if (LayUpRules.IsVoided(history, out long laidUpAt, out MeterPoint ran))
        {
            findings.Add(SchedulingRules.LayUpVoided.On(
                "lay-up",
                Figure.Of("laid up at", EngineHours.FromThousandths(laidUpAt)),
                Figure.Of("ran since", EngineHours.FromThousandths(ran.Estimate - laidUpAt)),
                Figure.Of("read on", CalendarDay.ToDate(ran.Day))));
        }

        if (history.Meter.LastReadingDate is LocalDate read
            && CalendarDay.Of(read) is int day
            && history.AsOfDay - day > SchedulingRules.OldReadingDays
            && !history.LayUps.Any(layUp => layUp.Holds(history.AsOfDay)))
        {
            findings.Add(SchedulingRules.OldReading.On(
                "hour meter",
                Figure.Of("last reading", read),
                Figure.Of("days", history.AsOfDay - day, FigureUnit.Day)));
        }
    }

    // INTERVAL-27: of two due tasks the higher one does the lower with it.
    private static void FindTogether(TaskPlan plan, TaskDue[] tasks)
    {
        for (int lower = 0; lower < tasks.Length; lower++)
        {
            for (int higher = 0; higher < tasks.Length && tasks[lower].Status >= DueStatus.Due; higher++)
            {
                if (higher != lower && tasks[higher].Status >= DueStatus.Due && plan.Covers(higher, lower))
                {
                    tasks[lower].CoveredBy = tasks[higher].TaskId;
                    break;
                }
            }
        }
    }
}
