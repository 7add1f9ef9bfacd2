using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Procedures;

/// <content>What turns up, putting the work down, and taking it up on another day.</content>
public sealed partial class WorkRecord
{
    /// <summary>The record with a circumstance settled.</summary>
    /// <param name="circumstance">Which one.</param>
    /// <param name="holds">Whether it holds.</param>
    /// <returns>The longer record; steps that are needless now are no longer waited for.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="circumstance"/> is not defined.</exception>
    /// <exception cref="ArgumentException">The opposite is known already, or a step that decides it is done.</exception>
    public WorkRecord Found(Circumstance circumstance, bool holds)
    {
        Guard.Defined(circumstance);
        if (Circumstances[circumstance] is bool known && known != holds)
        {
            throw new ArgumentException($"It is known already that {circumstance} {(known ? "holds" : "does not hold")}.", nameof(holds));
        }

        // What was thought fit is not any more.
        uint states = circumstance == Circumstance.OilUnfit && holds ? _states & ~StepEffects.Bit(ServiceState.OilFit) : _states;
        WorkEvent happened = new(_last, WorkEventKind.Found, Day, $"{(holds ? "" : "not ")}{circumstance}", null, []);
        return new(Procedure, Day, Circumstances.With(circumstance, holds), _done, states, happened, _putDown);
    }

    /// <summary>Puts the work down before its end.</summary>
    /// <param name="reason">Why; not blank.</param>
    /// <returns>The longer record; <see cref="LeftOpen"/> says what must not be left so.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="reason"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="reason"/> is blank.</exception>
    public WorkRecord PutDown(string reason) => new(
        Procedure, Day, Circumstances, _done, _states, new WorkEvent(_last, WorkEventKind.PutDown, Day, Guard.NotBlank(reason), null, []), reason);

    /// <summary>Takes the work up again.</summary>
    /// <remarks>On another day, whatever expires overnight and is still relied on is to be done again: a level, a sniff, a tag, the water at the pump.</remarks>
    /// <param name="day">The day, not before the last one, to 2199.</param>
    /// <returns>The longer record; <see cref="ToDo"/> holds what expired.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="day"/> is before the last day, or after 2199.</exception>
    public WorkRecord TakeUp(LocalDate day)
    {
        Guard.Date(day);
        if (day < Day)
        {
            throw new ArgumentOutOfRangeException(nameof(day), day, "Must not be before the last day of work.");
        }

        ulong[] done = [.. _done];
        uint states = _states;
        if (day > Day)
        {
            states &= ~StepEffects.Bit(ServiceState.Hot);

            // From the last step back, so that what an expired step rests on is looked at after it.
            foreach (int index in Procedure.Graph.Sorted.Reverse().Where(index => HasExpired(index, done)))
            {
                done[index / 64] &= ~(1UL << (index % 64));
                states &= ~(StepEffects.Sets(Procedure.Steps[index].Acts) & StepEffects.OnceProved);
            }
        }

        return new(Procedure, day, Circumstances, done, states, new WorkEvent(_last, WorkEventKind.TakenUp, day, "taken up", null, []), null);
    }

    /// <summary>What stands open aboard now, the dangerous first.</summary>
    /// <returns>Empty when the boat can be left.</returns>
    public IReadOnlyList<Finding> LeftOpen() =>
    [
        .. Left(WorkRules.LeftDangerous, ServiceState.Running, ServiceState.RawSideOpen, ServiceState.FuelOpen, ServiceState.BilgePumpOff),
        .. Left(WorkRules.LeftOpen, ServiceState.DrainOpen, ServiceState.FilterOff, ServiceState.BeltOff, ServiceState.LevelUnproved, ServiceState.CoolantOpen, ServiceState.CoolantUnproved, ServiceState.SeacockShut),
    ];

    /// <summary>The day on which a step was first done, also when its proof expired since; null when it never was.</summary>
    internal LocalDate? FirstDone(string stepId)
    {
        int index = Procedure.IndexOf(stepId);
        LocalDate? first = null;
        for (WorkEvent? one = _last; one is not null; one = one.Previous)
        {
            first = one.Check is { IsAllowed: true } && Procedure.IndexOf(one.Text) == index ? one.Date : first;
        }

        return first;
    }

    private IEnumerable<Finding> Left(FindingRule rule, params ServiceState[] states) =>
        from state in states
        where (_states & StepEffects.Bit(state)) != 0
        select rule.On("boat", Figure.Of("what", InWords.Of(state)));

    /// <summary>Done, expiring, and relied on: by a next step that is still to come, or by an act that is.</summary>
    private bool HasExpired(int index, ulong[] done)
    {
        ProcedureStep step = Procedure.Steps[index];
        if (!step.Expires || !IsDone(index))
        {
            return false;
        }

        bool IsStillToCome(int other) => !IsMet(other) || (IsDone(other) && (done[other / 64] & (1UL << (other % 64))) == 0);
        if (Enumerable.Range(0, Procedure.Steps.Count).Any(other => Procedure.Graph.IsDirect(index, other) && IsStillToCome(other)))
        {
            return true;
        }

        uint relied = StepEffects.Sets(step.Acts) & _states;
        return relied != 0 && Enumerable.Range(0, Procedure.Steps.Count).Where(IsStillToCome).Any(later =>
            HarmRule.All.Any(rule => rule.MustHold && (StepEffects.Bit(rule.State) & relied) != 0 && Procedure.Steps[later].Acts.Contains(rule.Act)));
    }
}
