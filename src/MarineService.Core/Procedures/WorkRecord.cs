using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Procedures;

/// <summary>The steps of a procedure as they are done, in real order, each checked as it comes.</summary>
/// <remarks>
/// Immutable: each event gives a longer record, and a step costs the same however many came before it. A step that is refused is
/// kept as an event and does not count as done.
/// </remarks>
/// <example><code>
/// WorkRecord work = WorkRecord.Begin(procedure, new LocalDate(2027, 4, 20)).Do("read-dial", StepProof.Passed("dial").WithNote("512.0 h"));
/// </code></example>
public sealed partial class WorkRecord
{
    private readonly ulong[] _done;
    private readonly uint _states;
    private readonly WorkEvent? _last;
    private readonly string? _putDown;

    private WorkRecord(Procedure procedure, LocalDate day, Circumstances circumstances, ulong[] done, uint states, WorkEvent? last, string? putDown) =>
        (Procedure, Day, Circumstances, _done, _states, _last, _putDown) = (procedure, day, circumstances, done, states, last, putDown);

    /// <summary>The procedure.</summary>
    public Procedure Procedure { get; }

    /// <summary>The day of work.</summary>
    public LocalDate Day { get; }

    /// <summary>What is known of the boat, with what the work has shown.</summary>
    public Circumstances Circumstances { get; }

    /// <summary>The last event, or null when nothing has happened yet.</summary>
    public WorkEvent? Last => _last;

    /// <summary>Everything that happened, in real order, refused steps too.</summary>
    public IReadOnlyList<WorkEvent> Events
    {
        get
        {
            WorkEvent[] events = new WorkEvent[_last?.Number ?? 0];
            for (WorkEvent? one = _last; one is not null; one = one.Previous)
            {
                events[one.Number - 1] = one;
            }

            return Array.AsReadOnly(events);
        }
    }

    /// <summary>Everything that was said against steps as they came.</summary>
    public IReadOnlyList<Finding> Findings => [.. Events.Where(one => one.Check is not null).SelectMany(one => one.Check!.Findings)];

    /// <summary>The steps that are still to be done, in a harmless order.</summary>
    public IReadOnlyList<ProcedureStep> ToDo =>
        [.. Procedure.Graph.Sorted.Where(index => !IsDone(index) && Procedure.Steps[index].IsNeeded(Circumstances) != false).Select(index => Procedure.Steps[index])];

    /// <summary>The steps that may be done now, with their proofs still to come.</summary>
    public IReadOnlyList<ProcedureStep> Next =>
        _putDown is not null ? [] : [.. ToDo.Where(step => step.IsNeeded(Circumstances) == true && Unmet(step).Count == 0 && Harms(step).Count == 0)];

    /// <summary>Whether every step that is needed is done and proved.</summary>
    public bool IsComplete => _putDown is null && ToDo.Count == 0;

    /// <summary>Whether the work was put down and not taken up again.</summary>
    public bool IsPutDown => _putDown is not null;

    /// <summary>Begins the work.</summary>
    /// <param name="procedure">A sound procedure.</param>
    /// <param name="day">The day, from 1900 to 2199.</param>
    /// <returns>A record without events.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="procedure"/> is null.</exception>
    /// <exception cref="ArgumentException">The procedure has a finding at Act or Stop; a circle is printed.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="day"/> is outside 1900 to 2199.</exception>
    public static WorkRecord Begin(Procedure procedure, LocalDate day)
    {
        Guard.NotNull(procedure).RefuseUnsound(nameof(procedure));
        return new(procedure, Guard.Date(day), procedure.Circumstances, new ulong[(procedure.Steps.Count + 63) / 64], 0, null, null);
    }

    /// <summary>Whether a step is done, or not needed and nothing before it open.</summary>
    /// <param name="stepId">The step's id.</param>
    /// <returns>False for a step that is not there.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="stepId"/> is null.</exception>
    public bool HasDone(string stepId) => Procedure.IndexOf(Guard.NotNull(stepId)) is int index && index >= 0 && IsMet(index);

    /// <summary>What is to be said of a step if it were done now.</summary>
    /// <param name="stepId">The step's id.</param>
    /// <param name="proofs">The proofs of its hold points.</param>
    /// <returns>The verdict, with everything that stands against it.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="stepId"/> or <paramref name="proofs"/> is null.</exception>
    /// <exception cref="ArgumentException">A proof is null.</exception>
    public StepCheck Check(string stepId, params StepProof[] proofs)
    {
        Guard.NotNull(stepId);
        IReadOnlyList<StepProof> given = Guard.Items(proofs);
        int index = Procedure.IndexOf(stepId);
        string subject = $"step '{stepId}'";
        if (index < 0)
        {
            return new(stepId, StepVerdict.Unknown, [WorkRules.UnknownStep.On(subject, Figure.Of("procedure", Procedure.Id))], []);
        }

        if (_putDown is not null)
        {
            return new(stepId, StepVerdict.TooEarly, [WorkRules.NotTakenUp.On(subject, Figure.Of("reason", _putDown))], []);
        }

        ProcedureStep step = Procedure.Steps[index];
        if (IsDone(index))
        {
            return new(stepId, StepVerdict.Repeated, [WorkRules.Repeated.On(subject)], []);
        }

        if (step.IsNeeded(Circumstances) == false && Harms(step).Count == 0)
        {
            return new(stepId, StepVerdict.NotNeeded, [WorkRules.NotNeeded.On(subject)], []);
        }

        List<Finding> findings = [];
        StepVerdict verdict = StepVerdict.Allowed;
        if (step.HoldPoints.Count > 0)
        {
            foreach (HoldPoint point in step.HoldPoints.Where(point => !IsAnswered(step, point, given)))
            {
                findings.Add(WorkRules.Unproved.On(subject, Figure.Of("hold point", point.Id), Figure.Of("what must be so", point.ToString())));
                verdict = StepVerdict.Unproved;
            }
        }

        List<string> missing = Unmet(step);
        if (missing.Count > 0 || step.IsNeeded(Circumstances) is null)
        {
            findings.InsertRange(0, missing.Select(id => Procedure.Find(id)!.IsNeeded(Circumstances) is null
                ? WorkRules.NotSaid.On($"step '{id}'", Figure.Of("circumstance", $"{Procedure.Find(id)!.Condition}"))
                : WorkRules.TooEarly.On(subject, Figure.Of("missing step", id))));
            verdict = StepVerdict.TooEarly;
        }

        if (step.IsNeeded(Circumstances) is null)
        {
            findings.Add(WorkRules.NotSaid.On(subject, Figure.Of("circumstance", $"{step.Condition}")));
        }

        List<HarmRule> harms = Harms(step);
        if (harms.Count > 0)
        {
            findings.InsertRange(0, harms.Select(rule => Harmful(subject, rule)));
            verdict = StepVerdict.Forbidden;
        }

        return new(stepId, verdict, [.. findings], [.. missing]);
    }

    /// <summary>The record with one more step, done or refused.</summary>
    /// <param name="stepId">The step's id.</param>
    /// <param name="proofs">The proofs of its hold points.</param>
    /// <returns>The longer record; <see cref="Last"/> says whether the step counts.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="stepId"/> or <paramref name="proofs"/> is null.</exception>
    /// <exception cref="ArgumentException">A proof is null.</exception>
    public WorkRecord Do(string stepId, params StepProof[] proofs)
    {
        StepCheck check = Check(stepId, Guard.NotNull(proofs));
        WorkEvent happened = new(_last, WorkEventKind.Step, Day, stepId, check, proofs.Length == 0 ? [] : Array.AsReadOnly([.. proofs]));
        if (!check.IsAllowed)
        {
            return new(Procedure, Day, Circumstances, _done, _states, happened, _putDown);
        }

        int index = Procedure.IndexOf(stepId);
        ProcedureStep step = Procedure.Steps[index];
        ulong[] done = [.. _done];
        done[index / 64] |= 1UL << (index % 64);
        bool passed = step.HoldPoints.All(point => proofs.Any(proof => proof.Proves(point)));
        Circumstances known = step.Decides is Circumstance decided && Circumstances[decided] is null ? Circumstances.With(decided, !passed) : Circumstances;

        // What failed its hold point changes nothing aboard for the better.
        uint states = passed ? (_states & ~StepEffects.Clears(step.Acts)) | StepEffects.Sets(step.Acts) : _states;
        return new(Procedure, Day, known, done, states, happened, null);
    }

    private bool IsDone(int index) => (_done[index / 64] & (1UL << (index % 64))) != 0;

    private bool IsMet(int index)
    {
        if (IsDone(index))
        {
            return true;
        }

        if (Procedure.Steps[index].IsNeeded(Circumstances) != false)
        {
            return false;
        }

        foreach (int before in Procedure.Graph.PredecessorsOf(index))
        {
            if (!IsMet(before))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The steps that keep it waiting; where one is not needed, those that kept that one waiting.</summary>
    private List<string> Unmet(ProcedureStep step)
    {
        List<string> unmet = [];
        Stack<int> look = new(Procedure.Graph.PredecessorsOf(Procedure.Graph.IndexOf(step.Id)).ToArray());
        while (look.Count > 0)
        {
            int index = look.Pop();
            if (IsMet(index))
            {
                continue;
            }

            if (Procedure.Steps[index].IsNeeded(Circumstances) == false)
            {
                foreach (int before in Procedure.Graph.PredecessorsOf(index))
                {
                    look.Push(before);
                }
            }
            else if (!unmet.Contains(Procedure.Steps[index].Id))
            {
                unmet.Add(Procedure.Steps[index].Id);
            }
        }

        unmet.Sort(StringComparer.Ordinal);
        return unmet;
    }

    private List<HarmRule> Harms(ProcedureStep step)
    {
        List<HarmRule> harms = [];
        if (step.Acts.Count > 0)
        {
            foreach (HarmRule rule in HarmRule.All)
            {
                if (step.Acts.Contains(rule.Act) && (_states & StepEffects.Bit(rule.State)) != 0 != rule.MustHold
                    && rule.AppliesIn(Circumstances) && !HarmSearch.MakesItself(step, rule))
                {
                    harms.Add(rule);
                }
            }
        }

        return harms;
    }

    private bool IsAnswered(ProcedureStep step, HoldPoint point, IReadOnlyList<StepProof> proofs) =>
        proofs.Any(proof => proof.Proves(point))
        || (step.Decides is Circumstance decided && Circumstances[decided] != false && proofs.Any(proof => proof.HoldPoint == point.Id && Fails(proof, point)));

    private static bool Fails(StepProof proof, HoldPoint point) => !proof.HasPassed || (point.CountsToZero && proof.Missing is not (null or 0));

    private static Finding Harmful(string subject, HarmRule rule) => WorkRules.Forbidden.On(
        subject,
        Figure.Of("when", rule.MustHold ? $"before this is so: {InWords.Of(rule.State)}" : $"while this is so: {InWords.Of(rule.State)}"),
        Figure.Of("harm", rule.Harm),
        Figure.Of("source", rule.Source.ToString()));
}
