using MarineService.Core.Belts;
using MarineService.Core.Fluids;
using MarineService.Core.Internal;
using MarineService.Core.Parts;
using MarineService.Core.Procedures;

namespace MarineService.Core.Jobs;

/// <summary>One verdict on a visit, and everything that stands against it.</summary>
public sealed partial class JobProof
{
    private JobProof(JobCard card, JobMeasurements measurements, Finding[] findings) =>
        (Card, Measurements, Findings) = (card, measurements, Array.AsReadOnly(findings));

    /// <summary>The card.</summary>
    public JobCard Card { get; }

    /// <summary>What was done and measured.</summary>
    public JobMeasurements Measurements { get; }

    /// <summary>Everything that there is to say, the gravest first.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Whether the visit is proved: nothing stands at Act or Stop.</summary>
    public bool IsProved => Findings.All(finding => finding.Severity < Severity.Act);

    /// <summary>The gravest severity; Note when nothing was found.</summary>
    public Severity Severity => Findings.Count == 0 ? Severity.Note : Findings[0].Severity;

    /// <summary>Holds what was done and measured against the card.</summary>
    /// <param name="card">The card.</param>
    /// <param name="measurements">What was done and measured.</param>
    /// <returns>The verdict.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static JobProof Of(JobCard card, JobMeasurements measurements)
    {
        Guard.NotNull(card);
        Guard.NotNull(measurements);
        WorkRecord work = measurements.Work;
        if (work.Procedure != card.Procedure)
        {
            return new(card, measurements, [JobRules.OtherCard.On($"card '{card.Id}'", Figure.Of("proof", work.Procedure.Id))]);
        }

        if (work.IsPutDown)
        {
            return OfPutDown(card, measurements);
        }

        IEnumerable<Finding> all =
            Steps(work).Concat(Dial(measurements)).Concat(Oil(card, measurements)).Concat(Belt(card, measurements))
                .Concat(JobWater.FindingsOf(card, measurements)).Concat(Verdicts(card, measurements))
                .Concat(Tally(measurements.Tally, card.Kit.Tally));
        JobProof proof = new(card, measurements, [.. all.OrderByDescending(finding => finding.Severity)]);
        proof.ProvedTasks = proof.IsProved ? [.. card.Tasks.Where(task => task.CoveredBy is null && IsDone(task, work))] : [];
        return proof;
    }

    internal static JobProof Refused(JobCard card, JobMeasurements measurements, Finding[] findings) =>
        new(card, measurements, [.. findings.OrderByDescending(finding => finding.Severity)]);

    /// <summary>Enters the visit, or the tasks of it that are proved. Nothing is entered as done that was not proved.</summary>
    /// <param name="log">The log, which is not changed.</param>
    /// <returns>The longer log and the next due points; without a proof the log as it was.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="log"/> is null.</exception>
    /// <exception cref="ArgumentException">A task refers to one that is not there.</exception>
    public JobCompletion Complete(Records.ServiceLog log) => JobCompletion.Of(this, log);

    /// <summary>The verdict, then everything that stands against it.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new(ToString());
        foreach (Finding finding in Findings)
        {
            lines.Add($"{finding.Code} {finding.Severity}", finding.Message(units));
        }

        return lines.Add("steps", $"{Measurements.Work.Events.Count} events, {Measurements.Work.ToDo.Count} steps open").Build(Card.Procedure.Source);
    }

    /// <summary>The verdict in one line.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => IsProved
        ? "Proved."
        : ProvedTasks.Count > 0
        ? $"Put down: proved {string.Join(", ", ProvedTasks.Select(task => task.TaskId))}; open {string.Join(", ", OpenTasks.Select(task => task.TaskId))}."
        : FormattableString.Invariant($"Not proved: {Findings.Count(finding => finding.Severity >= Severity.Act)} things stand against it.");

    private static IEnumerable<Finding> Steps(WorkRecord work) => work.ToDo.Select(StepOpen).Concat(Refused(work)).Concat(work.LeftOpen());

    private static Finding StepOpen(ProcedureStep step) => JobRules.StepOpen.On($"step '{step.Id}'", Figure.Of("step", step.Text));

    /// <summary>What was refused and came right later is history; what never came right stands.</summary>
    private static IEnumerable<Finding> Refused(WorkRecord work)
    {
        HashSet<string> told = new(StringComparer.Ordinal);
        foreach (WorkEvent refused in work.Events.Where(one => one.Check is { IsAllowed: false } && !work.HasDone(one.Text)))
        {
            foreach (Finding finding in refused.Check!.Findings.Where(finding => told.Add(finding.ToString())))
            {
                yield return finding;
            }
        }

        foreach (WorkEvent harm in work.Events.Where(one => one.Check is { Verdict: StepVerdict.Forbidden } && work.HasDone(one.Text) && told.Add($"harm {one.Text}")))
        {
            yield return JobRules.TriedTooSoon.On($"step '{harm.Text}'");
        }
    }

    private static IEnumerable<Finding> Dial(JobMeasurements measurements)
    {
        if (measurements.Dial is null)
        {
            yield return NotGiven("the hour meter's dial");
        }
    }

    private static IEnumerable<Finding> Oil(JobCard card, JobMeasurements measurements)
    {
        if (card.Oil is not { Sump.IsKnown: true })
        {
            return [];
        }

        if (measurements.Oil is not OilChange account)
        {
            return [NotGiven("the account of the oil: level before, drained, poured, level after")];
        }

        FluidBalance balance = account.Balance();
        string? lacking = account.Sump != card.Oil.Sump.Value ? "it is kept for another oil system"
            : account.Step != OilChangeStep.Settled ? "its last event is no settled reading"
            : !account.Told.Any(one => one.Step == OilChangeStep.Drained) ? "nothing was drained"
            : !account.Told.Any(one => one.Step == OilChangeStep.FilterChanged) ? "the filter was not changed"
            : null;
        return lacking is null
            ? balance.Findings
            : [JobRules.AccountUnfinished.On("engine oil", Figure.Of("what", lacking)), .. balance.Findings];
    }

    private static IEnumerable<Finding> Belt(JobCard card, JobMeasurements measurements)
    {
        if (!card.MovesBelt || !card.Belt.IsKnown)
        {
            return [];
        }

        if (measurements.Belt is not BeltRouting lies)
        {
            return [NotGiven("the belt as it lies: every pulley that it passes, in order")];
        }

        IReadOnlyList<Finding> check = lies.Check().Findings;
        return lies.EditsTo(card.Belt.Value).Count == 0
            ? check
            : [JobRules.OtherRouting.On("belt", Figure.Of("as it lies", lies.ToString()), Figure.Of("drawing", card.Belt.Value.ToString())), .. check];
    }

    private static IEnumerable<Finding> Verdicts(JobCard card, JobMeasurements measurements)
    {
        foreach (JobTask task in card.Tasks.Where(task => task.NeedsVerdict && !measurements.Verdicts.ContainsKey(task.TaskId)))
        {
            yield return NotGiven($"whether '{task.TaskId}' passed");
        }

        foreach (Finding strange in StrangeVerdicts(card, measurements))
        {
            yield return strange;
        }
    }

    private static IEnumerable<Finding> StrangeVerdicts(JobCard card, JobMeasurements measurements)
    {
        foreach (string strange in measurements.Verdicts.Keys.Where(id => !card.Tasks.Any(task => task.TaskId == id && task.Due.Task.Action == Scheduling.TaskAction.Inspect)))
        {
            yield return JobRules.StrangeVerdict.On("verdict", Figure.Of("task", strange));
        }
    }

    // The card has counted off what comes off; what was told brings it back to zero, or not.
    private static IEnumerable<Finding> Tally(LooseParts? told, LooseParts off) =>
        told is not null ? off.And(told).Judge()
        : off.IsZero ? []
        : [NotGiven("the count of the loose parts that went back on")];

    private static Finding NotGiven(string what) => JobRules.NotMeasured.On("measurements", Figure.Of("measurement", what));
}
