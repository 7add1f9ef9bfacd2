using System.Runtime.CompilerServices;
using MarineService.Core.Internal;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Fleet;

/// <summary>One question about a whole fleet: what is due on a day, engine by engine.</summary>
/// <remarks>Knows nothing of one engine while it looks at another, so that the work may be split in any way.</remarks>
public sealed class FleetEvaluation
{
    /// <summary>The version of the rules; it rises whenever the same input may get another answer.</summary>
    public const string Rules = "1";

    /// <summary>The version of the library, such as 0.1.0.</summary>
    public static string Library { get; } = typeof(FleetEvaluation).Assembly.GetName().Version!.ToString(3);

    private readonly int _day;

    private FleetEvaluation(FleetCatalogue catalogue, LocalDate today) => (Catalogue, Today, _day) = (catalogue, today, CalendarDay.Of(today));

    /// <summary>The data sheets.</summary>
    public FleetCatalogue Catalogue { get; }

    /// <summary>The day.</summary>
    public LocalDate Today { get; }

    /// <summary>The question for a day.</summary>
    /// <param name="catalogue">The data sheets.</param>
    /// <param name="today">The day, from 1900 to 2199.</param>
    /// <returns>The question.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="catalogue"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="today"/> is outside 1900 to 2199.</exception>
    public static FleetEvaluation Of(FleetCatalogue catalogue, LocalDate today) => new(Guard.NotNull(catalogue), Guard.Date(today));

    /// <summary>The answer for one engine.</summary>
    /// <param name="engine">The engine.</param>
    /// <returns>Every task, or why it could not be judged.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="engine"/> is null.</exception>
    public FleetResult Evaluate(FleetEngine engine)
    {
        Guard.NotNull(engine);
        if (Catalogue.Find(engine.Specification) is not FleetSpecification sheet)
        {
            return FleetResult.Refused(
                engine.Id, engine.Depot, engine.Fingerprint, Today, [new("/specification", $"'{engine.Specification}'", "the reference of a data sheet in the catalogue")]);
        }

        TaskPlan plan = sheet.Specification.Plan;
        FleetTask[] tasks = new FleetTask[plan.Tasks.Count];
        DueList.Decide(
            plan,
            engine.Log.History(sheet.Specification, Today),
            findings: null,
            (int i, in TaskState _, in TaskVerdict verdict) => tasks[i] = new(plan.Tasks[i], in verdict));
        return new(engine.Id, engine.Depot, engine.Fingerprint, Today, tasks, Demand(sheet, tasks, engine.Depot), []);
    }

    /// <summary>The answers for many engines, in the order of the engines whatever the number of workers.</summary>
    /// <param name="engines">The engines; read no further ahead than the workers need.</param>
    /// <param name="workers">How many engines are judged at once, 1 to 1,024: one where the caller asks for it, more on threads of the pool.</param>
    /// <param name="cancellation">Stops between engines.</param>
    /// <returns>One result for each engine.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="engines"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="workers"/> is outside 1 to 1,024.</exception>
    /// <exception cref="OperationCanceledException">The work was cancelled.</exception>
    public IAsyncEnumerable<FleetResult> EvaluateAsync(
        IAsyncEnumerable<FleetEngine> engines, int workers = 1, CancellationToken cancellation = default)
    {
        Guard.NotNull(engines);
        Guard.InRange(workers, 1, OrderedWork.MaxWorkers, "workers");
        return Flatten(OrderedWork.Run(OrderedWork.InBatches(engines, 64, cancellation), batch => batch.ConvertAll(Evaluate), workers, cancellation), cancellation);
    }

    private static async IAsyncEnumerable<FleetResult> Flatten(
        IAsyncEnumerable<List<FleetResult>> batches, [EnumeratorCancellation] CancellationToken cancellation)
    {
        await foreach (List<FleetResult> batch in batches.WithCancellation(cancellation).ConfigureAwait(false))
        {
            foreach (FleetResult result in batch)
            {
                yield return result;
            }
        }
    }

    private List<PartDemand> Demand(FleetSpecification sheet, FleetTask[] tasks, string? depot)
    {
        List<PartDemand> demands = new(sheet.Parts.Count);
        for (int i = 0; i < sheet.Parts.Count; i++)
        {
            FleetTask task = tasks[sheet.PartTasks[i]];
            int? when = task.Status >= DueStatus.Due ? _day : task.DueDay;
            if (task.Status != DueStatus.EachUse && (when is not null || task.DueHours is not null))
            {
                demands.Add(new(depot, when is int day ? FleetWeek.Of(day) : null, sheet.Parts[i].Part, sheet.Parts[i].Quantity));
            }
        }

        return demands;
    }
}
