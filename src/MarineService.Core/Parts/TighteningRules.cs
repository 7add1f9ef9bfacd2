namespace MarineService.Core.Parts;

/// <summary>What can be wrong with a tightening. Codes are never reused.</summary>
public static class TighteningRules
{
    /// <summary>The scatter of the clamp force may pass the proof load.</summary>
    public static FindingRule MayPassProof { get; } = new(
        "TORQUE-001",
        Severity.Advice,
        "Clamp force stays below the proof load with its scatter",
        "with a scatter of {scatter} the clamp force may reach {highest}, and the proof load is {proof load}",
        PartsSources.NutFactors,
        "Take a smaller share of the proof load, or tighten by angle as the maker says.");

    /// <summary>A soft joint was tightened like a hard one.</summary>
    public static FindingRule SoftJointOverTightened { get; } = new(
        "TORQUE-002",
        Severity.Act,
        "A soft joint is tightened to contact, then no more",
        "{torque} on a soft joint, where {limit} is the specification's figure",
        Citation.CommonPractice,
        "Slacken it, look whether gasket, washer or cover is crushed or bent, replace what is, and tighten crosswise until it is snug.");

    /// <summary>The screw was tightened beyond the figure.</summary>
    public static FindingRule TooTight { get; } = new(
        "TORQUE-003",
        Severity.Act,
        "A screw gets its torque and no more",
        "{torque}, where {limit} is the figure",
        Citation.CommonPractice,
        "Take the screw out and look at thread and shank; a stretched one is replaced.");

    /// <summary>The screw was tightened less than the figure says.</summary>
    public static FindingRule TooLoose { get; } = new(
        "TORQUE-004",
        Severity.Act,
        "A screw gets its whole torque",
        "{torque}, where {limit} is the figure",
        Citation.CommonPractice,
        "Tighten it to the figure.");

    /// <summary>The old gasket was not seen on the old filter.</summary>
    public static FindingRule OldGasket { get; } = new(
        "SPINON-001",
        Severity.Stop,
        "The old gasket comes off with the old filter",
        "nobody saw the old gasket come off; two gaskets blow out and lose the oil in minutes",
        Citation.PracticeDescribedIn("owners' accounts of filters fitted over the old gasket"),
        "Take the filter off and look at the base and at the old filter until the old gasket is in the hand.");

    /// <summary>The new gasket was not oiled.</summary>
    public static FindingRule DryGasket { get; } = new(
        "SPINON-002",
        Severity.Act,
        "The gasket of a spin-on filter is oiled",
        "the gasket went on dry and may drag and tear",
        PartsSources.SpinOn,
        "Take the filter off, wipe the base, oil the gasket, spin it on again.");

    /// <summary>The filter was turned less than the maker says.</summary>
    public static FindingRule TurnedShort { get; } = new(
        "SPINON-003",
        Severity.Act,
        "A spin-on filter is turned as far as its maker says after contact",
        "turned {turned} after contact, and {wanted} is wanted",
        PartsSources.SpinOn,
        "Turn it on by hand to the mark.");

    /// <summary>The filter was turned further than the maker says.</summary>
    public static FindingRule TurnedFar { get; } = new(
        "SPINON-004",
        Severity.Advice,
        "A spin-on filter is turned no further than its maker says after contact",
        "turned {turned} after contact, and {wanted} is wanted; it will be hard to take off",
        PartsSources.SpinOn,
        "Look for oil at the gasket when it runs; back off and turn again only if it weeps.");

    /// <summary>The turn for this filter is not known.</summary>
    public static FindingRule TurnNotKnown { get; } = new(
        "SPINON-005",
        Severity.Advice,
        "The turn after contact is printed on the filter",
        "the maker's turn is not stated, so {turned} cannot be judged; half to three quarters of a turn is common",
        Citation.CommonPractice,
        "Read the turn on the filter or in the engine's manual.");
}
