namespace MarineService.Core.Belts;

/// <summary>The rules of pull, slip and speed. Codes are never reused.</summary>
public static class TensionRules
{
    /// <summary>A pulley slips under its load.</summary>
    public static FindingRule Slips { get; } = new(
        "BELT-060",
        Severity.Act,
        "A pulley slips under its load",
        "needs a friction of {needed}, and {friction} is counted on: the belt slips",
        Citation.Derived("textbook belt friction, with design figures for the friction from memory"),
        "Set the tension to {least} or more at the tensioner, or find the wrap or the load that is wrong.");

    /// <summary>A span hangs slack.</summary>
    public static FindingRule Slack { get; } = new(
        "BELT-061",
        Severity.Act,
        "A span hangs slack",
        "one side of the pulley has no pull left under load",
        Citation.Derived("textbook belt friction"),
        "Set the tension to {least} or more at the tensioner.");

    /// <summary>The belt runs faster than the recommended practice.</summary>
    public static FindingRule TooFast { get; } = new(
        "BELT-062",
        Severity.Act,
        "The belt runs too fast",
        "runs at {speed}; {limit} is the most",
        Citation.Secondary("SAE J1596", "cancelled 2019", "belt speed"),
        "Check crank speed and diameter: an outside diameter in inches looks small, a diameter typed as a radius looks large.");

    /// <summary>A measured pull lies below the least that holds.</summary>
    public static FindingRule BelowLeast { get; } = new(
        "BELT-063",
        Severity.Act,
        "The belt is too loose",
        "{measured} was measured, and {least} is the least that holds without slip",
        Citation.Derived("textbook belt friction, with design figures for the friction from memory"),
        "Tighten it, or look for a tired spring in the tensioner.");

    /// <summary>A measured pull cannot be told from the least that holds.</summary>
    public static FindingRule AtLeast { get; } = new(
        "BELT-064",
        Severity.Advice,
        "The belt's tension is at the limit",
        "at the limit: {measured} was measured, give or take {uncertainty}, and {least} is the least that holds",
        Citation.ProjectChoice,
        "Measure again on the longest span, and take the middle of several readings.");
}
