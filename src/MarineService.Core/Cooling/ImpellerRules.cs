namespace MarineService.Core.Cooling;

/// <summary>What can be wrong with an impeller and with fitting a new one. Codes are never reused.</summary>
public static class ImpellerRules
{
    private const string Replace = "Fit a new impeller, and look for the cause: a dry run, sand, age.";

    /// <summary>Rubber is missing and not found.</summary>
    public static FindingRule PiecesOutstanding { get; } = new(
        "IMPELLER-001",
        Severity.Stop,
        "New vanes less whole ones less pieces found is nothing",
        "{outstanding} of a vane is missing and not found",
        CoolingSources.Impellers,
        "Search the circuit in the order of flow until every piece lies in its gap. What is left inside blocks the cooler later.");

    /// <summary>More rubber was found than is missing.</summary>
    public static FindingRule PiecesOver { get; } = new(
        "IMPELLER-002",
        Severity.Act,
        "No more is found than is missing",
        "{over} of a vane more was found than this impeller lacks",
        CoolingSources.Impellers,
        "Match each piece to its gap and count again. A piece of an earlier impeller says that there may be more of it.");

    /// <summary>A vane is gone.</summary>
    public static FindingRule VaneMissing { get; } = new(
        "IMPELLER-003", Severity.Stop, "Every vane is there", "gone down to the hub", CoolingSources.Impellers, Replace);

    /// <summary>A vane is torn.</summary>
    public static FindingRule VaneTorn { get; } = new(
        "IMPELLER-004", Severity.Stop, "No vane is torn", "torn, {share} of it gone", CoolingSources.Impellers, Replace);

    /// <summary>The hub does not hold.</summary>
    public static FindingRule HubLoose { get; } = new(
        "IMPELLER-005", Severity.Stop, "The rubber holds to its hub", "the hub is loose in the rubber", Citation.CommonPractice, Replace);

    /// <summary>The rubber was hot.</summary>
    public static FindingRule Melted { get; } = new(
        "IMPELLER-006",
        Severity.Stop,
        "The rubber was never hot",
        "glazed or melted, as by running dry",
        Citation.CommonPractice,
        "Fit a new impeller, find out why it ran dry, and look at cam, wear plate and seal.");

    /// <summary>A vane is cracked.</summary>
    public static FindingRule VaneCracked { get; } = new(
        "IMPELLER-007", Severity.Act, "No vane is cracked", "cracked when bent hard", CoolingSources.Impellers, Replace);

    /// <summary>A vane stays bent.</summary>
    public static FindingRule VaneSet { get; } = new(
        "IMPELLER-008",
        Severity.Act,
        "A vane straightens after a night out of the pump",
        "stays bent by {bend}, and {limit} is the limit",
        CoolingSources.Impellers,
        "Fit a new impeller; relax or take out the impeller over winter.");

    /// <summary>The tips are worn.</summary>
    public static FindingRule TipsWorn { get; } = new(
        "IMPELLER-009", Severity.Act, "The tips are round", "the tips are worn flat", CoolingSources.Impellers, Replace);

    /// <summary>Key slot or splines are worn.</summary>
    public static FindingRule HubDriveWorn { get; } = new(
        "IMPELLER-010", Severity.Act, "Key slot or splines are whole", "key slot or splines are worn", Citation.CommonPractice, "Fit a new impeller and a new key; look at the shaft.");

    /// <summary>The rubber has changed.</summary>
    public static FindingRule RubberChanged { get; } = new(
        "IMPELLER-011", Severity.Act, "The rubber is as when new", "the rubber is {state}", Citation.CommonPractice, "Fit a new impeller; keep oil and fuel out of the raw water.");

    /// <summary>It has been in service too long.</summary>
    public static FindingRule TooOld { get; } = new(
        "IMPELLER-012",
        Severity.Act,
        "An impeller is replaced at its limit whatever it looks like",
        "in service since {fitted}, and {limit} is the limit",
        Citation.CommonPractice,
        "Fit a new impeller.");

    /// <summary>A vane was not looked at.</summary>
    public static FindingRule NotLookedAt { get; } = new(
        "IMPELLER-013",
        Severity.Act,
        "Every vane is looked at",
        "{vanes} vanes are not recorded, so nobody can say that nothing is missing",
        CoolingSources.Impellers,
        "Bend each vane hard both ways and record it.");

    /// <summary>Small set, within the limit.</summary>
    public static FindingRule SlightSet { get; } = new(
        "IMPELLER-014",
        Severity.Note,
        "A slight set is watched",
        "stays bent by {bend}, within the limit of {limit}",
        CoolingSources.Impellers);

    /// <summary>The pump ran dry.</summary>
    public static FindingRule RanDry { get; } = new(
        "IMPELLER-020",
        Severity.Act,
        "After a dry run the impeller is looked at now",
        "the pump ran dry for {time}; some impellers outlive minutes, others melt almost at once",
        CoolingSources.OwnersAccounts,
        "Take the cover off and look at every vane before the engine runs again.");

    /// <summary>The vanes are bent the wrong way.</summary>
    public static FindingRule BentWrong { get; } = new(
        "IMPELLER-030",
        Severity.Act,
        "The tips of the vanes trail",
        "the tips lean {lean} seen from the cover, but the pump turns {rotation}: they must lean {wanted}",
        Citation.CommonPractice,
        "Take it out and put it in turning the shaft the way it runs.");

    /// <summary>Which way the pump turns is not known.</summary>
    public static FindingRule RotationNotKnown { get; } = new(
        "IMPELLER-031",
        Severity.Act,
        "Which way the pump turns is known before the impeller goes in",
        "the pump's rotation is not stated, and the bend cannot be checked",
        Citation.CommonPractice,
        "Find the arrow on the pump, or watch the shaft while the engine is turned by hand. An engine of the other hand turns it the other way.");

    /// <summary>The key is not in.</summary>
    public static FindingRule KeyMissing { get; } = new(
        "IMPELLER-032", Severity.Stop, "Key, splines or pin hold the hub", "key, splines or pin are not engaged", Citation.CommonPractice, "Take the impeller out and seat it on its drive.");

    /// <summary>The lubricant harms the rubber.</summary>
    public static FindingRule LubricantHarms { get; } = new(
        "IMPELLER-033",
        Severity.Act,
        "The lubricant does not harm the rubber",
        "mineral oil or grease on {rubber}",
        CoolingSources.Impellers,
        "Wash it off with soap. Use glycerine, silicone grease or soapy water.");

    /// <summary>Oil on a rubber that bears it.</summary>
    public static FindingRule LubricantBorne { get; } = new(
        "IMPELLER-034",
        Severity.Advice,
        "The lubricant does not harm the rubber",
        "mineral oil or grease; nitrile bears it, the pump's seals may not",
        Citation.CommonPractice,
        "Use glycerine, silicone grease or soapy water next time.");

    /// <summary>No lubricant.</summary>
    public static FindingRule Unlubricated { get; } = new(
        "IMPELLER-035",
        Severity.Act,
        "A new impeller is lubricated",
        "it went in dry, and its first seconds are dry",
        CoolingSources.Impellers,
        "Smear it with glycerine, silicone grease or soapy water.");

    /// <summary>The gasket is no new one.</summary>
    public static FindingRule GasketNotNew { get; } = new(
        "IMPELLER-036",
        Severity.Act,
        "The cover closes on a new gasket or O-ring",
        "the cover closes on {gasket}; where air leaks in the pump does not prime",
        CoolingSources.Impellers,
        "Fit a new gasket of the maker's thickness, or a new O-ring: it also sets the play of the impeller.");

    /// <summary>Cam, plate or seal is worn.</summary>
    public static FindingRule PumpWorn { get; } = new(
        "IMPELLER-037",
        Severity.Act,
        "Cam, wear plate, cover and seal are good",
        "{part}; a new impeller in a worn pump fails",
        Citation.CommonPractice,
        "Replace what is worn, or turn the cover where its maker allows it.");

    /// <summary>A step was not recorded.</summary>
    public static FindingRule NotRecorded { get; } = new(
        "IMPELLER-038",
        Severity.Act,
        "Each check of the fitting is recorded",
        "not recorded: {check}",
        Citation.CommonPractice,
        "Look, and record it, before the cover is tightened.");

    /// <summary>The vanes of the old one lay the other way.</summary>
    public static FindingRule BentUnlikeOld { get; } = new(
        "IMPELLER-039",
        Severity.Act,
        "The new vanes are bent as the old ones were",
        "the old tips leaned {old} seen from the cover, the new ones lean {lean}",
        Citation.CommonPractice,
        "One of the two is wrong: find the arrow on the pump before the cover goes on.");
}
