namespace MarineService.Core.Cooling;

/// <summary>What can be wrong at the exhaust and in the first half minute after a start. Codes are never reused.</summary>
public static class ExhaustRules
{
    private const string StopAndLook = "Stop the engine. Look at seacock, strainer, air in the suction, then at the impeller.";

    /// <summary>No water at an outlet.</summary>
    public static FindingRule NoWater { get; } = new(
        "EXHAUST-001", Severity.Stop, "Water keeps coming from every outlet", "{seen}", Citation.CommonPractice, StopAndLook);

    /// <summary>Steam and little water.</summary>
    public static FindingRule Starved { get; } = new(
        "EXHAUST-002", Severity.Stop, "Water keeps coming from every outlet", "steam with little water", Citation.CommonPractice, StopAndLook);

    /// <summary>Less water than yesterday.</summary>
    public static FindingRule Weak { get; } = new(
        "EXHAUST-003",
        Severity.Act,
        "The water is about as strong as yesterday",
        "much less water than yesterday",
        Citation.CommonPractice,
        "Clean the strainer, look at the suction hose, measure with a bucket; then the impeller.");

    /// <summary>Nobody looked at an outlet.</summary>
    public static FindingRule NotSeen { get; } = new(
        "EXHAUST-004",
        Severity.Act,
        "Every outlet is looked at",
        "nobody looked at it",
        Citation.CommonPractice,
        "Look at each outlet after every start: each bank of a V engine has its own.");

    /// <summary>Gulps without a muffler.</summary>
    public static FindingRule GulpsWithoutMuffler { get; } = new(
        "EXHAUST-005",
        Severity.Advice,
        "Only a water-lift muffler gulps",
        "the water gulps, but the circuit has no water-lift muffler",
        Citation.CommonPractice,
        "Look for air on the suction side, and whether the circuit is described whole.");

    /// <summary>The water came late.</summary>
    public static FindingRule WaterLate { get; } = new(
        "EXHAUST-006",
        Severity.Act,
        "Water comes within half a minute",
        "water came after {time}, and {limit} is the limit",
        Citation.CommonPractice,
        "A pump that primes late is worn, or draws air: look at impeller, cover gasket and suction hose.");

    /// <summary>The water has not come.</summary>
    public static FindingRule WaterNotCome { get; } = new(
        "EXHAUST-007", Severity.Stop, "Water comes within half a minute", "no water after {time}, and {limit} is the limit", Citation.CommonPractice, StopAndLook);

    /// <summary>The oil pressure came late.</summary>
    public static FindingRule PressureLate { get; } = new(
        "EXHAUST-008",
        Severity.Stop,
        "Oil pressure comes within seconds",
        "oil pressure came after {time}, and {limit} is the limit",
        Citation.CommonPractice,
        "Stop the engine and find the cause before it is started again: level, filter, grade, sender.");

    /// <summary>The oil pressure has not come.</summary>
    public static FindingRule PressureNotCome { get; } = new(
        "EXHAUST-009",
        Severity.Stop,
        "Oil pressure comes within seconds",
        "no oil pressure after {time}, and {limit} is the limit",
        Citation.CommonPractice,
        "Stop the engine at once and find the cause before it is started again.");

    /// <summary>An alarm, a leak or a noise.</summary>
    public static FindingRule SomethingElse { get; } = new(
        "EXHAUST-010", Severity.Stop, "Nothing else is wrong after a start", "{what}", Citation.CommonPractice, "Stop the engine and look.");
}
