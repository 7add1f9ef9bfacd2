using MarineService.Core.Belts;
using MarineService.Core.Internal;
using MarineService.Core.Procedures;
using MarineService.Core.Specifications;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Core.Jobs;

/// <summary>Everything for one visit to one engine: what and why, what it takes, which oil, which steps in which order, what hurts, what proves it.</summary>
/// <remarks>Immutable. What is not known is said, never guessed. It advises; the engine's own manual outranks it.</remarks>
public sealed partial class JobCard
{
    private JobCard(BoatSpecification boat, FittedEngine engine, LocalDate day, IReadOnlyList<JobTask> tasks, Procedure procedure, JobOil? oil, JobKit kit)
    {
        (Boat, Engine, Day, Tasks, Procedure, Oil, Kit) = (boat, engine, day, tasks, procedure, oil, kit);
        Steps = procedure.InOrder();
        Belt = engine.Specification.BeltDrive is BeltDrive drive
            ? drive.EngineRouting
            : Answer.NotKnown<BeltRouting>($"The belt drive of '{engine.Specification}'.");
    }

    /// <summary>The card's name: boat, engine, day and tasks. A proof has to name it.</summary>
    public string Id => Procedure.Id;

    /// <summary>The boat.</summary>
    public BoatSpecification Boat { get; }

    /// <summary>The engine.</summary>
    public FittedEngine Engine { get; }

    /// <summary>The day for which it was prepared.</summary>
    public LocalDate Day { get; }

    /// <summary>The tasks, the most urgent first; those without a procedure too.</summary>
    public IReadOnlyList<JobTask> Tasks { get; }

    /// <summary>All the steps with their edges.</summary>
    public Procedure Procedure { get; }

    /// <summary>The steps in a harmless order.</summary>
    public IReadOnlyList<ProcedureStep> Steps { get; }

    /// <summary>Which oil and how much; null when no oil is changed.</summary>
    public JobOil? Oil { get; }

    /// <summary>What the visit takes along, what to buy of it, and what comes off and has to go back on.</summary>
    public JobKit Kit { get; }

    /// <summary>How the belt lies; not known when the data sheet does not say.</summary>
    public Answer<BeltRouting> Belt { get; }

    /// <summary>Whether the belt comes off and on, so that its lie has to be proved.</summary>
    public bool MovesBelt => Procedure.Steps.Any(step => step.Acts.Contains(StepAct.BeltOn));

    /// <summary>Whether the oil is changed and its account has to be told.</summary>
    public bool ChangesOil => Oil is not null;

    /// <summary>The tools of all steps, each once.</summary>
    public IReadOnlyList<Tool> Tools => [.. Steps.SelectMany(step => step.Tools).Distinct()];

    /// <summary>What all steps use up, each once.</summary>
    public IReadOnlyList<string> Consumables => [.. Steps.SelectMany(step => step.Consumables).Distinct(StringComparer.Ordinal)];

    /// <summary>What is not known, and what would settle it.</summary>
    public IReadOnlyList<string> Missing =>
    [
        .. Tasks.Where(task => task.How is null).Select(task => $"A procedure for '{task.TaskId}'; it is not part of this card."),
        .. Procedure.OpenQuestions.Select(Question),
        .. Oil is null ? [] : Oil.Choice.Missing.Concat(Oil.Sump.Missing).Concat(Oil.LastChange.Missing),
        .. MovesBelt ? Belt.Missing : [],
        .. Kit.Missing,
    ];

    /// <summary>Holds what was done and measured against the card.</summary>
    /// <param name="measurements">What was done and measured.</param>
    /// <returns>One verdict, and everything that stands against it.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="measurements"/> is null.</exception>
    public JobProof Prove(JobMeasurements measurements) => JobProof.Of(this, measurements);

    /// <summary>Holds a report of the visit against the card.</summary>
    /// <param name="report">What somebody reports.</param>
    /// <returns>One verdict, and everything that stands against it; a report for another card is refused.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="report"/> is null.</exception>
    public JobProof Prove(VisitReport report) => Guard.NotNull(report).ProveOn(this);

    /// <summary>A form to fill in: every step in its order, no hold point passed yet, nothing put back.</summary>
    /// <returns>A report that proves nothing.</returns>
    public VisitReport BlankReport() => VisitReport.Of(
        Id, Day, Steps.Select(step => VisitEvent.Step(step.Id, [.. step.HoldPoints.Select(point => StepProof.Failed(point.Id))])))
        .WithTally([.. (Kit.ComesOff.IsKnown ? Kit.ComesOff.Value : []).Select(item => TallyLine.Of(item.Part.Name, item.Part.Place, 0))]);

    /// <summary>The card in one line.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant(
        $"{Boat}, {Engine.Specification}, {LocalDatePattern.Iso.Format(Day)}: {string.Join(", ", Tasks.Where(task => task.How is not null).Select(task => task.TaskId))}, {Steps.Count} steps");

    private static string Question(Circumstance circumstance) => circumstance switch
    {
        Circumstance.Petrol => "The engine's fuel.",
        Circumstance.BeltBeforePump => "Whether a belt drives the raw-water pump and lies in front of its cover.",
        Circumstance.Seacock => "Whether the boat has a seacock.",
        Circumstance.RawWaterCooled => "Whether raw water runs through the block.",
        _ => $"Whether this holds: {circumstance}.",
    };
}
