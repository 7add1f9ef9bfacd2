namespace MarineService.Core.Belts;

/// <summary>The rules of the tensioner's arm. Codes are never reused.</summary>
public static class TensionerRules
{
    private static readonly Citation VirtualWork = Citation.Derived("virtual work on the tensioner's arm");

    /// <summary>The belt's length lies in a gap of the arm's travel.</summary>
    public static FindingRule NoArmPosition { get; } = new(
        "BELT-030",
        Severity.Stop,
        "No place for the arm",
        "no angle of the arm between its stops holds {belt} of belt with this routing",
        VirtualWork,
        "Check the routing, then the length printed on the belt.");

    /// <summary>A dead point lies within the arm's travel.</summary>
    public static FindingRule DeadPoint { get; } = new(
        "BELT-031",
        Severity.Advice,
        "A dead point within the arm's travel",
        "at {angle} the path is at its longest or shortest; beyond it the spring works against the belt",
        VirtualWork,
        "Keep the arm well on its own side of that angle; a longer belt must not let it pass.");

    /// <summary>The arm has little authority over the belt's length.</summary>
    public static FindingRule LittleTakeUp { get; } = new(
        "BELT-032",
        Severity.Act,
        "The arm takes up little",
        "a degree of the arm moves {take-up} of belt; {least} is the least that is wanted",
        Citation.ProjectChoice,
        "The arm points along the belt's pull: check pivot and centre as measured, then the routing at the tensioner.");

    /// <summary>The arm can stand at two angles with the same belt.</summary>
    public static FindingRule TwoPositions { get; } = new(
        "BELT-033",
        Severity.Act,
        "Two places for the arm",
        "with this belt the arm can stand at {angle} and at {other}; only at {angle} does the spring tighten the belt",
        VirtualWork,
        "See that the arm stands on the spring's side before the engine is run.");

    /// <summary>The spring would slacken the belt.</summary>
    public static FindingRule SpringSlackens { get; } = new(
        "BELT-034",
        Severity.Stop,
        "The spring slackens the belt",
        "with this belt the arm stands at {angle}, past its dead point, where the spring slackens the belt",
        VirtualWork,
        "Do not run it: check the routing and the belt's length.");

    /// <summary>Less take-up is left than the belt will stretch and wear.</summary>
    public static FindingRule WearAllowance { get; } = new(
        "BELT-035",
        Severity.Advice,
        "Little take-up left for wear",
        "{left} of take-up is left; a belt of this length may need {needed}",
        Citation.ProjectChoice,
        "A belt of the right length leaves more: compare its printed length with the engine's manual.");
}
