namespace MarineService.Core.Parts;

/// <summary>What can be wrong with the tally of loose parts. Codes are never reused.</summary>
public static class TallyRules
{
    /// <summary>Something is still off.</summary>
    public static FindingRule StillOff { get; } = new(
        "TALLY-001", Severity.Stop, "Everything that came off goes back on", "{count} still off",
        Citation.CommonPractice, "Find it and fit it before the engine turns.");

    /// <summary>More went on than came off.</summary>
    public static FindingRule TooMany { get; } = new(
        "TALLY-002", Severity.Act, "No more goes on than came off", "{count} more went on than came off",
        Citation.CommonPractice, "Count again: something was not entered, or a part of another place went in here.");

    /// <summary>An old part is somewhere.</summary>
    public static FindingRule Astray { get; } = new(
        "TALLY-003", Severity.Stop, "Every old part is in the hand", "{count} replaced by new, and the old not found",
        Citation.CommonPractice, "Search the pump, the pulleys and the bilge under the engine before it turns.");

    /// <summary>More was found than was lost.</summary>
    public static FindingRule FoundTooMany { get; } = new(
        "TALLY-004", Severity.Act, "No more is found than was lost", "{count} more found than were missed",
        Citation.CommonPractice, "Find out where it came from.");
}
