namespace MarineService.Core.Procedures;

/// <summary>What can be wrong with a procedure. Codes are never reused.</summary>
public static class ProcedureRules
{
    /// <summary>Steps wait for each other in a circle.</summary>
    public static FindingRule Circle { get; } = new(
        "PROC-001",
        Severity.Stop,
        "Steps do not wait for each other in a circle",
        "these steps wait for each other: {circle}",
        Citation.Derived("the order of steps: a circle has no first one"),
        "Take one of these edges away.");

    /// <summary>A step waits for one that is not there.</summary>
    public static FindingRule UnknownStep { get; } = new(
        "PROC-002",
        Severity.Stop,
        "A step waits only for steps of its procedure",
        "waits for '{missing step}', which is not there",
        Citation.Derived("the order of steps: what is not there is never done"),
        "Add the step, or correct its name.");

    /// <summary>A step can never be done.</summary>
    public static FindingRule Unreachable { get; } = new(
        "PROC-003",
        Severity.Stop,
        "Every step can be reached",
        "can never be done, because something before it cannot",
        Citation.Derived("the order of steps"),
        "Mend the circle or the unknown step before it.");

    /// <summary>An order that the edges allow would do harm.</summary>
    public static FindingRule HarmfulOrder { get; } = new(
        "PROC-004",
        Severity.Stop,
        "No order that the edges allow does harm",
        "the edges allow it {when}: {harm}",
        Citation.Derived("the acts of the steps and the orders that must never happen"),
        "Add the step that is missing, or the edge that keeps them apart; where no order is harmless, make it two visits.");

    /// <summary>An access is opened and not closed, or closed and not opened.</summary>
    public static FindingRule AccessLeftOpen { get; } = new(
        "PROC-005",
        Severity.Act,
        "What is opened is closed afterwards",
        "'{access}' is opened without being closed after it, or closed without being opened before",
        Citation.CommonPractice,
        "Add the step that is missing, or the edge between the two.");
}
