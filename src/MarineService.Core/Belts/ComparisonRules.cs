namespace MarineService.Core.Belts;

/// <summary>The rules of a belt as it lies against the engine's own routing. Codes are never reused.</summary>
public static class ComparisonRules
{
    /// <summary>The order departs from the engine's.</summary>
    public static FindingRule OrderDiffers { get; } = new(
        "BELT-040",
        Severity.Stop,
        "The order of the pulleys is not the engine's",
        "from here the belt goes to '{goes to}'; the engine's routing goes to '{should go to}'",
        Citation.GivenByCaller,
        "Follow the engine's diagram from this pulley on.");

    /// <summary>Two pulleys have changed places.</summary>
    public static FindingRule Swapped { get; } = new(
        "BELT-041",
        Severity.Stop,
        "Two pulleys are swapped",
        "'{first}' and '{second}' have changed places in the order",
        Citation.GivenByCaller,
        "Lead the belt over '{first}' and '{second}' in the engine's order.");

    /// <summary>The belt misses a pulley of the engine's routing.</summary>
    public static FindingRule Missed { get; } = new(
        "BELT-042",
        Severity.Stop,
        "A pulley of the engine's routing is missed",
        "the belt does not come to it; it belongs after '{after}', on the belt's {face}",
        Citation.GivenByCaller,
        "Lead the belt over it.");

    /// <summary>The belt runs over a pulley that the engine's routing leaves out.</summary>
    public static FindingRule Extra { get; } = new(
        "BELT-043",
        Severity.Stop,
        "The belt runs over a pulley that it should pass by",
        "the belt comes to it, and the engine's routing does not",
        Citation.GivenByCaller,
        "Take the belt off it.");

    /// <summary>The other face of the belt touches a pulley.</summary>
    public static FindingRule FaceDiffers { get; } = new(
        "BELT-044",
        Severity.Stop,
        "The wrong face of the belt touches a pulley",
        "runs on the belt's {face}, and should run on its {right face}; it turns {turns}, and should turn {should turn}",
        Citation.GivenByCaller,
        "Lead the belt over the pulley's other side.");

    /// <summary>The path is longer or shorter than the engine's.</summary>
    public static FindingRule LengthDiffers { get; } = new(
        "BELT-045",
        Severity.Note,
        "The path is not as long as the engine's",
        "the path is {length} long, and the engine's own {right length}: a difference of {difference}",
        Citation.Derived("common tangents of oriented circles"));
}
