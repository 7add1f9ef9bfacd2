namespace MarineService.Core.Procedures;

/// <summary>What can be wrong with steps as they are done. Codes are never reused.</summary>
public static class WorkRules
{
    private static readonly Citation Order = Citation.Derived("the procedure's edges");

    /// <summary>A step came before one that must precede it.</summary>
    public static FindingRule TooEarly { get; } = new(
        "WORK-001", Severity.Act, "A step waits for what must precede it",
        "'{missing step}' has to be done before it", Order, "Do '{missing step}' first.");

    /// <summary>A step would do harm as things are.</summary>
    public static FindingRule Forbidden { get; } = new(
        "WORK-002", Severity.Stop, "No step is done while it would do harm",
        "must not be done {when}: {harm}", Citation.Derived("the orders that must never happen, each with its own source"),
        "Leave it; see to what is missing first.");

    /// <summary>A hold point was not proved.</summary>
    public static FindingRule Unproved { get; } = new(
        "WORK-003", Severity.Act, "A hold point is proved before the work goes on",
        "hold point '{hold point}' is not proved: {what must be so}", Citation.CommonPractice, "Prove it, or stop here.");

    /// <summary>A step was done twice.</summary>
    public static FindingRule Repeated { get; } = new(
        "WORK-004", Severity.Advice, "A step is done once", "was done already", Order);

    /// <summary>The procedure has no such step.</summary>
    public static FindingRule UnknownStep { get; } = new(
        "WORK-005", Severity.Act, "A step belongs to the procedure", "is no step of '{procedure}'", Order, "Look at the card for the step's name.");

    /// <summary>The step is not needed on this boat.</summary>
    public static FindingRule NotNeeded { get; } = new(
        "WORK-006", Severity.Advice, "A step is needed on this boat", "is not needed here", Order);

    /// <summary>Nobody said whether a circumstance holds.</summary>
    public static FindingRule NotSaid { get; } = new(
        "WORK-007", Severity.Act, "What decides about a step is known before it",
        "nobody said whether this holds: {circumstance}", Order, "Say whether it holds.");

    /// <summary>The work was put down and not taken up again.</summary>
    public static FindingRule NotTakenUp { get; } = new(
        "WORK-008", Severity.Act, "Work that was put down is taken up before it goes on",
        "the work was put down: {reason}", Order, "Take the work up again with the day's date; some proofs have to be given again.");

    /// <summary>Something was left as nobody should leave a boat.</summary>
    public static FindingRule LeftDangerous { get; } = new(
        "WORK-009", Severity.Stop, "A boat is not left open to sink or burn",
        "{what} while the work rests", Citation.CommonPractice, "Close it before you leave, or keep somebody aboard; tag key and wheel.");

    /// <summary>Something was left open that keeps the engine from being run.</summary>
    public static FindingRule LeftOpen { get; } = new(
        "WORK-010", Severity.Act, "What is left open is tagged",
        "{what} while the work rests", Citation.CommonPractice, "Tag the key: do not start.");
}
