namespace MarineService.Core.Belts;

/// <summary>The rules of pulleys in one plane. Codes are never reused.</summary>
public static class AlignmentRules
{
    /// <summary>The belt enters a grooved pulley askew.</summary>
    public static FindingRule EntryAngle { get; } = new(
        "BELT-050",
        Severity.Act,
        "The belt enters a groove askew",
        "the belt runs {askew} askew, and {limit} is the limit for {source}",
        Citation.PracticeDescribedIn("the source that the finding names"),
        "Measure with a straightedge which pulley stands out of line, and shim or re-seat it.");

    /// <summary>The belt leaves a grooved pulley askew.</summary>
    public static FindingRule LeavingAngle { get; } = new(
        "BELT-051",
        Severity.Act,
        "The belt leaves a groove askew",
        "the belt leaves '{pulley}' {askew} askew, and {limit} is the limit for {source}",
        Citation.PracticeDescribedIn("the source that the finding names"),
        "A pulley that leans shows so: check its bearing and its bracket.");

    /// <summary>The belt overhangs a smooth pulley.</summary>
    public static FindingRule Overhang { get; } = new(
        "BELT-052",
        Severity.Act,
        "The belt overhangs a smooth pulley",
        "the belt runs {aside} from the middle of the rim and hangs over its edge by {over}",
        Citation.CommonPractice,
        "Move the pulley so that the belt tracks in its middle.");

    /// <summary>The belt does not track in the middle of a smooth pulley.</summary>
    public static FindingRule OffMiddle { get; } = new(
        "BELT-053",
        Severity.Advice,
        "The belt does not track in the middle of a smooth pulley",
        "the belt runs {aside} from the middle of the rim; {limit} is the most that is wanted",
        Citation.CommonPractice,
        "A smooth pulley does not hold the belt sideways: set it flush with its neighbours.");
}
