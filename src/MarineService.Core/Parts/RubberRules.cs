namespace MarineService.Core.Parts;

/// <summary>What can be wrong with the age of a rubber part. Codes are never reused.</summary>
public static class RubberRules
{
    /// <summary>Past every storage limit.</summary>
    public static FindingRule TooOld { get; } = new(
        "RUBBER-001", Severity.Act, "Rubber past its storage limit does not go on", "its storage limit ended on {last limit}",
        StorageGuide.Iso2230.Source, "Take a fresh part, and throw this one away.");

    /// <summary>Past the initial limit.</summary>
    public static FindingRule Inspect { get; } = new(
        "RUBBER-002", Severity.Act, "Rubber past its initial storage limit is inspected before it goes on", "its initial limit ended on {initial limit}; it may be extended to {last limit}",
        StorageGuide.Iso2230.Source, "Bend it and look for cracks, set and tack; take a fresh part when in doubt.");

    /// <summary>The age in store cannot be judged.</summary>
    public static FindingRule NotKnown { get; } = new(
        "RUBBER-003", Severity.Advice, "Rubber goes on with its age known", "its age in store cannot be judged: {missing}",
        StorageGuide.Iso2230.Source, "Read the code on its bag, or take a part whose age is known.");

    /// <summary>The service life that the maker states is over.</summary>
    public static FindingRule ServiceOver { get; } = new(
        "RUBBER-004", Severity.Act, "Rubber in service is replaced at its maker's age", "its service life ended on {end}",
        Citation.GivenByCaller, "Replace it.");
}
