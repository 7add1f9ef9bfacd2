using NodaTime;

namespace MarineService.Core.Procedures;

/// <summary>One thing that happened in the course of the work, in real order.</summary>
public sealed class WorkEvent
{
    internal WorkEvent(WorkEvent? previous, WorkEventKind kind, LocalDate date, string text, StepCheck? check, IReadOnlyList<StepProof> proofs) =>
        (Previous, Kind, Date, Text, Check, Proofs, Number) = (previous, kind, date, text, check, proofs, (previous?.Number ?? 0) + 1);

    /// <summary>Its number, from 1.</summary>
    public int Number { get; }

    /// <summary>What kind of thing.</summary>
    public WorkEventKind Kind { get; }

    /// <summary>The day.</summary>
    public LocalDate Date { get; }

    /// <summary>The step's id, the reason for putting the work down, or what was found.</summary>
    public string Text { get; }

    /// <summary>What was said of the step, or null when this is none.</summary>
    public StepCheck? Check { get; }

    /// <summary>The proofs that came with the step.</summary>
    public IReadOnlyList<StepProof> Proofs { get; }

    internal WorkEvent? Previous { get; }

    /// <summary>Number, kind and text.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{Number} {Kind}: {(Check is null ? Text : Check.ToString())}");
}
