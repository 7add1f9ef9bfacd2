namespace MarineService.Core.Cooling;

/// <summary>What can be wrong with the raw water. Codes are never reused.</summary>
public static class WaterRules
{
    /// <summary>The outlet is too warm.</summary>
    public static FindingRule TooWarm { get; } = new(
        "WATER-001",
        Severity.Act,
        "The raw water leaves the engine below its limit",
        "{outlet} at the outlet with {intake} alongside, a rise of {rise}; {limit} is the limit for a {what}",
        CoolingSources.Discharge,
        "Slow down. Look at seacock, strainer, impeller and, if the flow is right, at scale in the tubes.");

    /// <summary>The outlet is colder than the intake.</summary>
    public static FindingRule ColderThanIntake { get; } = new(
        "WATER-002",
        Severity.Act,
        "The raw water takes heat away",
        "{outlet} at the outlet is less than {intake} alongside",
        Citation.CommonPractice,
        "The readings are exchanged or the engine was not warm: measure again.");

    /// <summary>Too little water for the power.</summary>
    public static FindingRule TooLittle { get; } = new(
        "WATER-003",
        Severity.Act,
        "The pump gives what the engine needs",
        "{flow} at rated speed by the bucket, and {need} are needed",
        CoolingSources.HeatBalance,
        "Look at seacock, strainer, suction hose for air, then at the impeller and its play. Do not run at full power meanwhile.");

    /// <summary>The measurement cannot tell.</summary>
    public static FindingRule InsideTheNoise { get; } = new(
        "WATER-004",
        Severity.Advice,
        "The pump gives what the engine needs",
        "{flow} by the bucket against {need} needed lies within twice the uncertainty of {uncertainty}",
        CoolingSources.HeatBalance,
        "Measure again with a larger bucket or for longer.");

    /// <summary>The pump gives less than a new one.</summary>
    public static FindingRule Worn { get; } = new(
        "WATER-005",
        Severity.Advice,
        "The pump gives nearly what a new one does",
        "{wear} less than a new impeller would give at that speed, and {limit} is the limit",
        CoolingSources.Hydraulics,
        "Look at impeller, wear plate and cover; a worn one shows first as heat at full load and as late priming.");

    /// <summary>Not every outlet was caught.</summary>
    public static FindingRule OutletNotCaught { get; } = new(
        "WATER-006",
        Severity.Act,
        "The bucket catches every outlet",
        "no bucket under {outlet}",
        Citation.CommonPractice,
        "Catch every outlet for the same time: one alone says nothing of the pump.");

    /// <summary>More than the pump can move.</summary>
    public static FindingRule MoreThanThePump { get; } = new(
        "WATER-007",
        Severity.Act,
        "A pump gives no more than it displaces",
        "{flow} were caught, and a new pump gives {expected} at that speed",
        CoolingSources.Hydraulics,
        "Check volume, time, engine speed and the pump's displacement; coolant from another circuit may run out with it.");

    /// <summary>The hose carries too little heat away.</summary>
    public static FindingRule HoseTooWarm { get; } = new(
        "FLUSH-001",
        Severity.Act,
        "The hose carries the heat of idling away",
        "{hose} from the hose, and {need} are needed for a rise of {rise}",
        CoolingSources.HeatBalance,
        "Do not run the engine on this hose: open the tap further, use a wider hose, or a tub.");

    /// <summary>The hose gives less than the pump takes.</summary>
    public static FindingRule HoseStarvesPump { get; } = new(
        "FLUSH-002",
        Severity.Act,
        "The hose gives what the pump takes",
        "{hose} from the hose, and the pump takes {need} at idle: it runs part dry",
        CoolingSources.Hydraulics,
        "Do not run the engine on this hose: use a tub that the pump draws from, or a hose that gives more.");

    /// <summary>What the pump takes is not known.</summary>
    public static FindingRule HoseNotProved { get; } = new(
        "FLUSH-003",
        Severity.Act,
        "Both tests of the hose are passed",
        "what the pump takes at idle is not known, so the hose is not proved",
        CoolingSources.Hydraulics,
        "Find what the pump moves in one turn, or draw from a tub and watch its level.");
}
