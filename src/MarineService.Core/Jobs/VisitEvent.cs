using MarineService.Core.Internal;
using MarineService.Core.Procedures;
using NodaTime;

namespace MarineService.Core.Jobs;

/// <summary>One thing that somebody reports of a visit: a step done, something found, the work put down or taken up.</summary>
public sealed class VisitEvent
{
    private VisitEvent(WorkEventKind kind, string text, IReadOnlyList<StepProof> proofs, Circumstance? circumstance, bool holds, LocalDate? day) =>
        (Kind, Text, Proofs, Circumstance, Holds, Day) = (kind, text, proofs, circumstance, holds, day);

    /// <summary>What kind of thing.</summary>
    public WorkEventKind Kind { get; }

    /// <summary>The step's id, or the reason for putting the work down; empty for the others.</summary>
    public string Text { get; }

    /// <summary>The proofs of the step.</summary>
    public IReadOnlyList<StepProof> Proofs { get; }

    /// <summary>What was found, or null.</summary>
    public Circumstance? Circumstance { get; }

    /// <summary>Whether what was found holds.</summary>
    public bool Holds { get; }

    /// <summary>The day on which the work was taken up, or null.</summary>
    public LocalDate? Day { get; }

    /// <summary>A step was done.</summary>
    /// <param name="stepId">The step's id; not blank.</param>
    /// <param name="proofs">The proofs of its hold points.</param>
    /// <returns>The event.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="stepId"/> is blank, or a proof is null.</exception>
    public static VisitEvent Step(string stepId, params StepProof[] proofs) =>
        new(WorkEventKind.Step, Guard.NotBlank(stepId), Guard.Items(proofs), null, false, null);

    /// <summary>Something was found to hold or not to hold.</summary>
    /// <param name="circumstance">Which circumstance.</param>
    /// <param name="holds">Whether it holds.</param>
    /// <returns>The event.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="circumstance"/> is not defined.</exception>
    public static VisitEvent Found(Circumstance circumstance, bool holds) =>
        new(WorkEventKind.Found, "", [], Guard.Defined(circumstance), holds, null);

    /// <summary>The work was put down before its end.</summary>
    /// <param name="reason">Why; not blank.</param>
    /// <returns>The event.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="reason"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="reason"/> is blank.</exception>
    public static VisitEvent PutDown(string reason) => new(WorkEventKind.PutDown, Guard.NotBlank(reason), [], null, false, null);

    /// <summary>The work was taken up again.</summary>
    /// <param name="day">The day, from 1900 to 2199.</param>
    /// <returns>The event.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="day"/> is outside 1900 to 2199.</exception>
    public static VisitEvent TakenUp(LocalDate day) => new(WorkEventKind.TakenUp, "", [], null, false, Guard.Date(day));

    /// <summary>Kind and text.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => $"{Kind}: {(Circumstance is null ? Text : $"{Circumstance} {Holds}")}";
}
