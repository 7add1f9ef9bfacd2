namespace MarineService.Core.Parts;

/// <summary>What can be wrong with a cover on its bolt pattern. Codes are never reused.</summary>
public static class FitRules
{
    /// <summary>Different numbers of holes.</summary>
    public static FindingRule HoleCountDiffers { get; } = new(
        "FIT-001",
        Severity.Act,
        "Cover and block have equally many holes",
        "the cover has {cover holes} holes, the block {block holes}",
        PartsSources.Geometry,
        "It is another part: compare it with the old one before anything is forced.");

    /// <summary>No rotation fits.</summary>
    public static FindingRule FitsNowhere { get; } = new(
        "FIT-002",
        Severity.Act,
        "A cover fits at one rotation at least",
        "it fits at no rotation; the best leaves hole {hole} off by {off}, and {play} is what the screws allow",
        PartsSources.Geometry,
        "Do not force it and do not file the holes: look whether it lies face down, and compare it with the old part.");

    /// <summary>It fits only the wrong way up.</summary>
    public static FindingRule FitsOnlyFaceDown { get; } = new(
        "FIT-003",
        Severity.Act,
        "A cover fits with its outer face out",
        "it fits only face down, hole 1 on hole {on}",
        PartsSources.Geometry,
        "Compare it with the old part: it may be the cover of the mirrored pump, or the angles were read from behind.");

    /// <summary>It fits at a rotation that is not the intended one.</summary>
    public static FindingRule AdmitsWrongFit { get; } = new(
        "FIT-004",
        Severity.Advice,
        "A hole spacing admits one fit only",
        "it also fits with hole 1 on hole {on}, turned {turn} from where it belongs, the worst hole off by {off} of {play}",
        PartsSources.Geometry,
        "Mark cover and block before it comes off, and look at the marks when it goes on.");

    /// <summary>It fits at several rotations, and nobody said which is right.</summary>
    public static FindingRule FitsSeveralWays { get; } = new(
        "FIT-005",
        Severity.Advice,
        "A hole spacing admits one fit only",
        "it fits at {count} rotations, and the holes do not say which is right",
        PartsSources.Geometry,
        "Mark cover and block before it comes off; without a mark, find the right one by its ports or by the old gasket.");

    /// <summary>It fits face down too.</summary>
    public static FindingRule FitsFaceDownToo { get; } = new(
        "FIT-006",
        Severity.Advice,
        "A cover does not fit face down",
        "it also fits face down, at {count} of its rotations",
        PartsSources.Geometry,
        "Mark its outer face. A cover that is worn inside may be turned over on purpose where its maker allows that.");

    /// <summary>The screws do not go in as the cover is held now.</summary>
    public static FindingRule HeldWrong { get; } = new(
        "FIT-007",
        Severity.Act,
        "Every screw goes in by hand",
        "held like this, hole {hole} is off by {off}, and {play} is what the screws allow; turn it {turn} {sense}",
        PartsSources.Geometry,
        "Start every screw by hand before any is tightened. A screw that starts askew cuts the thread away.");

    /// <summary>The screws go in, but the cover does not belong so.</summary>
    public static FindingRule HeldInWrongFit { get; } = new(
        "FIT-008",
        Severity.Act,
        "A cover is fitted as it was made",
        "held like this all screws go in, but hole 1 belongs on hole {right} and lies on hole {on}; turn it {turn} {sense}",
        PartsSources.Geometry,
        "Take it off and turn it: ports, cam or drain lie in the wrong place.");

    /// <summary>Two bolt circles of different size.</summary>
    public static FindingRule CircleDiffers { get; } = new(
        "FIT-009",
        Severity.Act,
        "Cover and block have the same bolt circle",
        "the cover's bolt circle has a radius of {cover radius}, the block's {block radius}, and {play} is what the screws allow",
        PartsSources.Geometry,
        "It is another part: compare it with the old one before anything is forced.");
}
