namespace MarineService.Core.Procedures;

/// <summary>What is to be said of one step at one moment of the work.</summary>
public sealed class StepCheck
{
    private readonly string[] _missing;

    internal StepCheck(string stepId, StepVerdict verdict, Finding[] findings, string[] missing) =>
        (StepId, Verdict, Findings, _missing) = (stepId, verdict, findings.Length == 0 ? [] : Array.AsReadOnly(findings), missing);

    /// <summary>The step's id.</summary>
    public string StepId { get; }

    /// <summary>The gravest that is to be said.</summary>
    public StepVerdict Verdict { get; }

    /// <summary>Everything that stands against it, and what it would damage.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The ids of the steps that have to be done before it.</summary>
    public IReadOnlyList<string> MissingSteps => Array.AsReadOnly(_missing);

    /// <summary>Whether it counts as done.</summary>
    public bool IsAllowed => Verdict == StepVerdict.Allowed;

    /// <summary>Step and verdict.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => $"{StepId}: {Verdict}";
}
