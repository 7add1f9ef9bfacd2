using MarineService.Core.Engines;
using MarineService.Core.Fluids;
using MarineService.Core.Internal;
using MarineService.Core.Oils;
using MarineService.Core.Procedures;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Core.Jobs;

/// <content>From the due list to the card.</content>
public sealed partial class JobCard
{
    /// <summary>The card for all that is due on a day.</summary>
    /// <param name="boat">The boat and its engines.</param>
    /// <param name="log">What was read and done.</param>
    /// <param name="day">The day, from 1900 to 2199.</param>
    /// <param name="conditions">Weather and boat; not stated when null.</param>
    /// <param name="book">Which procedure does which task; the usual ones when null.</param>
    /// <param name="engine">The engine's id in the boat.</param>
    /// <returns>The card; not known when nothing is due, or no due task has a procedure.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="boat"/>, <paramref name="log"/> or <paramref name="engine"/> is null.</exception>
    /// <exception cref="ArgumentException">A task refers to one that is not there.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="day"/> is outside 1900 to 2199.</exception>
    /// <exception cref="KeyNotFoundException">The boat has no such engine.</exception>
    public static Answer<JobCard> Prepare(
        BoatSpecification boat,
        ServiceLog log,
        LocalDate day,
        JobConditions? conditions = null,
        ProcedureBook? book = null,
        string engine = LogEntry.MainEngine) =>
        Prepare(Guard.NotNull(boat), Fitted(boat, engine), Guard.NotNull(log), Guard.Date(day), task => task.Status >= DueStatus.Due, conditions, book);

    /// <summary>The card for a planned visit.</summary>
    /// <param name="boat">The boat and its engines.</param>
    /// <param name="log">What was read and done.</param>
    /// <param name="visit">
    /// The visit, its tasks named as <see cref="RepeatedTask.Of"/> names them: by their id, behind the engine's and a slash unless that is
    /// "main". Tasks of other engines and of the boat itself are left out.
    /// </param>
    /// <param name="conditions">Weather and boat; not stated when null.</param>
    /// <param name="book">Which procedure does which task; the usual ones when null.</param>
    /// <param name="engine">The engine's id in the boat.</param>
    /// <returns>The card; not known when no task of the visit has a procedure.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="boat"/>, <paramref name="log"/>, <paramref name="visit"/> or <paramref name="engine"/> is null.</exception>
    /// <exception cref="ArgumentException">A task refers to one that is not there.</exception>
    /// <exception cref="KeyNotFoundException">The boat has no such engine.</exception>
    public static Answer<JobCard> PrepareVisit(
        BoatSpecification boat,
        ServiceLog log,
        Visit visit,
        JobConditions? conditions = null,
        ProcedureBook? book = null,
        string engine = LogEntry.MainEngine)
    {
        HashSet<string> ids = [.. Guard.NotNull(visit).Items.Select(item => item.Task.Id)];
        return Prepare(Guard.NotNull(boat), Fitted(boat, engine), Guard.NotNull(log), visit.Date, task => ids.Contains(task.VisitId), conditions, book);
    }

    /// <summary>The card for certain tasks, due or not.</summary>
    /// <param name="boat">The boat and its engines.</param>
    /// <param name="log">What was read and done.</param>
    /// <param name="day">The day, from 1900 to 2199.</param>
    /// <param name="tasks">The tasks' ids; at least one, none blank or twice.</param>
    /// <param name="conditions">Weather and boat; not stated when null.</param>
    /// <param name="book">Which procedure does which task; the usual ones when null.</param>
    /// <param name="engine">The engine's id in the boat.</param>
    /// <returns>The card; not known when no task has a procedure.</returns>
    /// <exception cref="ArgumentNullException">An argument without a default is null.</exception>
    /// <exception cref="ArgumentException">A task is blank, named twice, or not of the engine; or a task refers to one that is not there.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="day"/> is outside 1900 to 2199.</exception>
    /// <exception cref="KeyNotFoundException">The boat has no such engine.</exception>
    public static Answer<JobCard> PrepareFor(
        BoatSpecification boat,
        ServiceLog log,
        LocalDate day,
        IEnumerable<string> tasks,
        JobConditions? conditions = null,
        ProcedureBook? book = null,
        string engine = LogEntry.MainEngine)
    {
        FittedEngine fitted = Fitted(Guard.NotNull(boat), engine);
        IReadOnlyList<string> ids = Names.Distinct(tasks, nameof(tasks));
        if (ids.FirstOrDefault(id => !fitted.Specification.Tasks.Any(task => task.Id == id)) is string strange)
        {
            throw new ArgumentException($"Engine '{engine}' has no task '{strange}'.", nameof(tasks));
        }

        return Prepare(boat, fitted, Guard.NotNull(log), Guard.Date(day), task => ids.Contains(task.TaskId), conditions, book);
    }

    /// <summary>The card that a report names, also when some of its tasks stand in the log already because half of the visit was entered.</summary>
    /// <param name="boat">The boat and its engines.</param>
    /// <param name="log">What was read and done.</param>
    /// <param name="report">A report of a visit.</param>
    /// <param name="conditions">Weather and boat, as for the card; not stated when null.</param>
    /// <param name="book">Which procedure does which task, as for the card; the usual ones when null.</param>
    /// <returns>The card; not known when the report names none of this boat.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="boat"/>, <paramref name="log"/> or <paramref name="report"/> is null.</exception>
    /// <exception cref="ArgumentException">A task refers to one that is not there.</exception>
    public static Answer<JobCard> PrepareAgain(
        BoatSpecification boat, ServiceLog log, VisitReport report, JobConditions? conditions = null, ProcedureBook? book = null)
    {
        Guard.NotNull(boat);
        Guard.NotNull(log);
        string id = Guard.NotNull(report).CardId;
        foreach (FittedEngine engine in boat.Engines)
        {
            string start = $"{boat.Boat.Name}/{engine.Id}/{LocalDatePattern.Iso.Format(report.Day)}/";
            string[] tasks = id.StartsWith(start, StringComparison.Ordinal) ? id.Substring(start.Length).Split('+') : [];
            if (tasks.Length > 0 && tasks.All(task => engine.Specification.Tasks.Any(one => one.Id == task))
                && Prepare(boat, engine, log, report.Day, task => tasks.Contains(task.TaskId), conditions, book) is { IsKnown: true } card && card.Value.Id == id)
            {
                return card;
            }
        }

        return Answer.NotKnown<JobCard>($"A report of {boat}: this one names card '{id}'.");
    }

    private static Answer<JobCard> Prepare(
        BoatSpecification boat, FittedEngine engine, ServiceLog log, LocalDate day, Predicate<TaskDue> belongs, JobConditions? conditions, ProcedureBook? book)
    {
        TaskDue[] due = log.DueList(engine.Specification, day, engine.Id).MostUrgentOf(belongs);
        ProcedureBook known = book ?? ProcedureBook.Usual;
        JobTask[] tasks = [.. due.Select(task => new JobTask(task, known.Find(task.TaskId), due.FirstOrDefault(other => other.Task.Includes.Contains(task.TaskId) && known.Find(other.TaskId) is not null)?.TaskId))];
        Procedure[] parts = [.. tasks.Where(task => task.How is not null).Select(task => task.How!.Procedure).Distinct()];
        if (parts.Length == 0)
        {
            return Answer.NotKnown<JobCard>(
                due.Length == 0
                    ? $"A task that is due on {LocalDatePattern.Iso.Format(day)}."
                    : $"A procedure for one of these: {string.Join(", ", due.Select(task => task.TaskId))}.");
        }

        string id = $"{boat.Boat.Name}/{engine.Id}/{LocalDatePattern.Iso.Format(day)}/{string.Join("+", tasks.Where(task => task.How is not null).Select(task => task.TaskId).OrderBy(task => task, StringComparer.Ordinal))}";
        JobConditions given = conditions ?? JobConditions.NotStated;
        Procedure whole = Procedure.Merge(id, string.Join(", ", parts.Select(part => part.Title)), parts).For(CircumstancesOf(boat, engine, given));
        if (!whole.IsSound)
        {
            return Answer.NotKnown<JobCard>(
                [.. whole.Findings.Where(finding => finding.Severity >= Severity.Act).Select(finding => finding.Message(DisplayUnits.Metric)), "Two visits: no order of all these steps is harmless."]);
        }

        bool changesOil = whole.Steps.Any(step => step.Acts.Contains(StepAct.Pour));
        return Answer.Known(new JobCard(boat, engine, day, Array.AsReadOnly(tasks), whole, changesOil ? OilOf(engine, log, given) : null, JobKit.Of(engine.Specification, tasks, given.Shelf)));
    }

    private static JobOil OilOf(FittedEngine engine, ServiceLog log, JobConditions conditions)
    {
        Answer<OilChoice> choice = engine.Specification.ChooseOil();
        Answer<OilSelection> selection = !choice.IsKnown ? Answer.NotKnown<OilSelection>([.. choice.Missing])
            : conditions.Coldest is null || conditions.Hottest is null
                ? Answer.NotKnown<OilSelection>("The lowest and the highest air temperature until the next oil change.")
            : Answer.Known(choice.Value.ForRange(conditions.Coldest.Value, conditions.Hottest.Value));
        Answer<Sump> sump = engine.Specification.Sump is Sump stated
            ? Answer.Known(stated)
            : Answer.NotKnown<Sump>("What the engine's oil system holds.");
        Answer<IReadOnlyList<FluidBalance>> balances = log.OilBalances(engine.Specification, engine.Id);
        Answer<FluidBalance> last = balances is { IsKnown: true, Value.Count: > 0 }
            ? Answer.Known(balances.Value[balances.Value.Count - 1])
            : Answer.NotKnown<FluidBalance>("A recorded oil change, for the amounts of the last time.");
        return new JobOil(selection, sump, last);
    }

    /// <summary>What the data sheet says, unless the conditions say otherwise.</summary>
    private static Circumstances CircumstancesOf(BoatSpecification boat, FittedEngine engine, JobConditions conditions)
    {
        Engine sheet = engine.Specification.Engine;
        bool? petrolAboard = boat.Engines.Any(one => one.Specification.Engine.Fuel == Fuel.Petrol) ? true
            : boat.Engines.Any(one => one.Specification.Engine.Fuel == Fuel.NotStated) ? null
            : false;
        bool? belt = sheet.PumpDrive == RawWaterPumpDrive.NotStated ? null : sheet.PumpDrive == RawWaterPumpDrive.Belt;
        bool? raw = sheet.Cooling == CoolingKind.NotStated ? null : sheet.Cooling == CoolingKind.RawWater;
        Circumstances all = Circumstances.Unknown;
        foreach ((Circumstance circumstance, bool? stated) in new (Circumstance, bool?)[]
        {
            (Circumstance.Petrol, petrolAboard), (Circumstance.BeltBeforePump, belt),
            (Circumstance.Seacock, boat.Boat.HasSeacock), (Circumstance.RawWaterCooled, raw),
            (Circumstance.OilUnfit, null), (Circumstance.PiecesMissing, null),
        })
        {
            all = (conditions.Circumstances[circumstance] ?? stated) is bool holds ? all.With(circumstance, holds) : all;
        }

        return all;
    }

    private static FittedEngine Fitted(BoatSpecification boat, string engine)
    {
        Guard.NotNull(engine);
        return boat.Engines.FirstOrDefault(one => one.Id == engine) ?? throw new KeyNotFoundException($"{boat} has no engine '{engine}'.");
    }
}
