namespace MarineService.Core.Cooling;

/// <summary>What can be wrong with an anode. Codes are never reused.</summary>
public static class AnodeRules
{
    /// <summary>Half gone or more.</summary>
    public static FindingRule WornOut { get; } = new(
        "ANODE-001",
        Severity.Act,
        "An anode is replaced when half of it is gone",
        "{worn} of it is gone, and {limit} is the limit",
        CoolingSources.Anodes,
        "Fit a new one on bright metal, and fish out the broken stub.");

    /// <summary>Not worn after its time in the water.</summary>
    public static FindingRule Unworn { get; } = new(
        "ANODE-002",
        Severity.Act,
        "An anode wears while it protects",
        "{worn} of it is gone after {months} in the water: it may have a skin on it or no contact, and then something else is eaten in its place",
        Citation.CommonPractice,
        "Clean it bright or replace it, clean its seat, and measure its contact to what it protects.");

    /// <summary>The metal does not suit the water.</summary>
    public static FindingRule WrongMetal { get; } = new(
        "ANODE-003",
        Severity.Act,
        "The anode's metal suits the water",
        "{metal} in {water} water; {right} belongs there",
        Citation.CommonPractice,
        "Fit {right}. All anodes of a boat are of one metal.");

    /// <summary>Metal or water is not known.</summary>
    public static FindingRule NotStated { get; } = new(
        "ANODE-004",
        Severity.Advice,
        "The anode's metal suits the water",
        "{what} is not stated, so nobody can say that they suit each other",
        Citation.CommonPractice,
        "Read the mark on the anode, and state the water.");

    /// <summary>Too new to tell.</summary>
    public static FindingRule TooNew { get; } = new(
        "ANODE-005",
        Severity.Note,
        "An anode wears while it protects",
        "{worn} of it is gone after {months} in the water; too short to tell",
        Citation.CommonPractice);
}
