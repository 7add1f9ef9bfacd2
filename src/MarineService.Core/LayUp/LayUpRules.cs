namespace MarineService.Core.LayUp;

/// <summary>The rules that a lay-up is checked by. Codes are never reused.</summary>
public static class LayUpRules
{
    /// <summary>No record reaches the days of the lay-up.</summary>
    public static FindingRule NoRecords { get; } = new(
        "LAYUP-001", Severity.Act, "A freeze decision stands on the site's records", "no minimum temperature is on record for {from} to {to}",
        Citation.ProjectChoice, "Protect the engine, and ask the weather service for the site's record low in those months.");

    /// <summary>The record is short.</summary>
    public static FindingRule FewWinters { get; } = new(
        "LAYUP-002", Severity.Note, "A record low needs many winters", "winters on record: {winters}; a record low is expected to stand on {expected}",
        Citation.ProjectChoice, "Ask the weather service for the site's record low.");

    /// <summary>Some months of the lay-up have no record.</summary>
    public static FindingRule MonthsWithoutRecord { get; } = new(
        "LAYUP-003", Severity.Act, "Every month of a lay-up needs a record", "no minimum temperature is on record for {months}",
        Citation.ProjectChoice, "Protect the engine, and ask for the site's record low in those months.");

    /// <summary>No frost is expected: that is where most freeze claims come from.</summary>
    public static FindingRule MildWinter { get; } = new(
        "LAYUP-004", Severity.Advice, "A mild winter is no reason to leave water in", "not below {lowest} is expected; warm places claim more freeze damage than cold ones",
        LayUpSources.FreezeClaims, "Drain the raw-water side all the same when the boat is left alone.");

    /// <summary>A kind of low point is neither listed nor stated absent.</summary>
    public static FindingRule NotAccountedFor { get; } = new(
        "LAYUP-010", Severity.Act, "Every low point is listed or stated absent", "is neither listed nor stated absent",
        Citation.CommonPractice, "Look whether the engine has one. List it with its drains, or state that there is none.");

    /// <summary>Work is on record for a low point that is not listed.</summary>
    public static FindingRule UnknownLowPoint { get; } = new(
        "LAYUP-011", Severity.Act, "Work belongs to a low point of this engine", "work is on record, but this engine has no such low point",
        Citation.ProjectChoice, "Correct the record, or list the low point.");

    /// <summary>Nothing was done at a low point.</summary>
    public static FindingRule StillFull { get; } = new(
        "LAYUP-012", Severity.Act, "Every low point is drained or proved", "nothing is on record, so it is full of water; it has {drains} drains",
        LayUpSources.VesselPreservation, "Open its drains, rod each and see it run until it runs dry; or read its antifreeze at its own drain.");

    /// <summary>Not every drain was rodded and seen running.</summary>
    public static FindingRule DrainsNotAllClear { get; } = new(
        "LAYUP-013", Severity.Act, "Each drain is rodded and seen running", "{rodded} of {drains} drains rodded, {ran} seen running",
        Citation.CommonPractice, "Rust and sand block drains while the water stays behind them. Rod each until it runs dry; where there is no drain, blow it out and fill it with antifreeze.");

    /// <summary>Block or manifold was drained before antifreeze went in, and not looked at after.</summary>
    public static FindingRule DrainedBeforeFill { get; } = new(
        "LAYUP-014", Severity.Act, "Block and manifolds are proved after the antifreeze went in", "was drained before the antifreeze went in, and not read or drained after it",
        Citation.CommonPractice, "Take a sample at its own drain, or drain it again.");

    /// <summary>A low point cannot be drained.</summary>
    public static FindingRule NoDrain { get; } = new(
        "LAYUP-015", Severity.Advice, "A low point without a drain is displaced", "has no drain: what it holds stays in it",
        Citation.CommonPractice, "Take a hose off, blow or suck it out, then displace the rest with antifreeze and prove it there.");

    /// <summary>Ethylene glycol on the side that empties into the water.</summary>
    public static FindingRule EthyleneOnRawSide { get; } = new(
        "LAYUP-020", Severity.Act, "The raw-water side takes propylene glycol", "is ethylene glycol, which is poisonous and goes overboard at commissioning",
        LayUpSources.PropyleneAshore, "Use propylene glycol on the raw-water side.");

    /// <summary>An antifreeze with ethanol.</summary>
    public static FindingRule EthanolNotProvable { get; } = new(
        "LAYUP-021", Severity.Act, "An antifreeze with ethanol cannot be proved", "holds ethanol: a glycol refractometer misreads it, and its vapour burns",
        Citation.CommonPractice, "Use propylene glycol alone, or drain every low point and prove the draining.");

    /// <summary>The strength that is needed, or that is there, is not known.</summary>
    public static FindingRule StrengthNotKnown { get; } = new(
        "LAYUP-022", Severity.Act, "The strength of an antifreeze is known before it goes in", "not judged; missing: {missing}",
        Citation.GivenByCaller, "Read the label or ask the maker; until then drain every low point.");

    /// <summary>Too weak even before trapped water thins it.</summary>
    public static FindingRule TooWeakAsDelivered { get; } = new(
        "LAYUP-023", Severity.Act, "An antifreeze is stronger than what is wanted", "holds {strength} of glycol, {wanted} is wanted at every drain",
        LayUpSources.BurstRatings, "Use a stronger one. The burst rating of a label does not help: slush forms at the freezing point.");

    /// <summary>Water that stays in the low points thins one fill too much.</summary>
    public static FindingRule ThinnedTooMuch { get; } = new(
        "LAYUP-024", Severity.Act, "Trapped water must not thin the fill too much", "{trapped} of trapped water thins one fill to {filled}, {wanted} is wanted",
        Citation.Derived("the balance of glycol in a well-mixed vessel"), "Drain more, or run more antifreeze through; prove it at every drain.");

    /// <summary>A burst rating on the label.</summary>
    public static FindingRule BurstRating { get; } = new(
        "LAYUP-025", Severity.Note, "A burst rating is not a freezing point", "the label's {rating} is a burst rating and is not used",
        LayUpSources.BurstRatings);

    /// <summary>A sample freezes too early.</summary>
    public static FindingRule TooWeakAtDrain { get; } = new(
        "LAYUP-030", Severity.Act, "Antifreeze at a drain freezes below the lowest temperature by the margin", "reads {read}, at most {wanted} is wanted for {lowest}",
        Citation.ProjectChoice, "Run more antifreeze through, or drain it, and read again at the same drain.");

    /// <summary>The refractometer's scale is for another glycol.</summary>
    public static FindingRule WrongScale { get; } = new(
        "LAYUP-031", Severity.Act, "A refractometer is valid for one glycol only", "{scale} proves nothing of '{antifreeze}'",
        Citation.CommonPractice, "Read the scale for the glycol that is in the engine.");

    /// <summary>A reading of an antifreeze that no refractometer can prove.</summary>
    public static FindingRule EthanolReading { get; } = new(
        "LAYUP-032", Severity.Act, "Only an antifreeze of known glycol without ethanol is proved by refractometer", "a reading of {antifreeze} proves nothing",
        Citation.CommonPractice, "Drain the low point and prove the draining.");

    /// <summary>The exhaust passes while block or manifold are not proved.</summary>
    public static FindingRule OnlyAtExhaust { get; } = new(
        "LAYUP-033", Severity.Act, "Antifreeze is proved in block and manifolds, not only at the exhaust",
        "the antifreeze there is strong enough, but block or manifolds are not proved: with the thermostat shut the bypass passes this test",
        Citation.CommonPractice, "Take samples at the block and manifold drains, or drain them.");

    /// <summary>A reading cannot be judged without the lowest temperature.</summary>
    public static FindingRule LowNotKnown { get; } = new(
        "LAYUP-034", Severity.Act, "A reading is judged against the lowest temperature", "reads {read}, but the lowest temperature is not known",
        Citation.ProjectChoice, "Find out the site's record low, or drain every low point.");

    /// <summary>A diesel is not fogged.</summary>
    public static FindingRule DieselNotFogged { get; } = new(
        "LAYUP-040", Severity.Note, "A diesel is not fogged by a general rule", "burns diesel: it is not fogged",
        Citation.CommonPractice, "Ask the engine's maker how to preserve it.");

    /// <summary>The general dose fills too much of the room above the piston.</summary>
    public static FindingRule DoseFillsClearance { get; } = new(
        "LAYUP-041", Severity.Act, "Fogging oil leaves room above the piston", "{dose} would fill {share} of the {clearance} above the piston, {limit} is allowed: do not pour it",
        Citation.ProjectChoice, "Ask the engine's maker for the dose.");

    /// <summary>The fogging dose cannot be checked.</summary>
    public static FindingRule FoggingNotKnown { get; } = new(
        "LAYUP-042", Severity.Advice, "A fogging dose is checked against the room above the piston", "no dose; missing: {missing}",
        Citation.ProjectChoice, "Read it in the engine's manual.");

    /// <summary>No room for fuel to expand.</summary>
    public static FindingRule TankTooFull { get; } = new(
        "LAYUP-050", Severity.Act, "A fuel tank keeps room to expand", "is {full} full, 95 % is the most",
        LayUpSources.FuelTankLevel, "Take fuel out, engine cold, battery off, no flame, into cans made for it.");

    /// <summary>Fuel stays untreated for longer than it keeps.</summary>
    public static FindingRule FuelGoesStale { get; } = new(
        "LAYUP-051", Severity.Advice, "Fuel in store is stabilized", "stays untreated for {days}, untreated fuel keeps about {keeps}",
        LayUpSources.FuelAge, "Put stabilizer in before filling.");

    /// <summary>The battery's acid would freeze.</summary>
    public static FindingRule BatteryFreezes { get; } = new(
        "LAYUP-060", Severity.Act, "A battery freezes below the lowest temperature", "freezes at {freezing point}, {lowest} is expected",
        LayUpSources.BatteryFreezing, "Charge it before the frost, or store it where it stays above freezing. Never charge a frozen battery.");

    /// <summary>The battery wants charge.</summary>
    public static FindingRule BatteryWantsCharge { get; } = new(
        "LAYUP-061", Severity.Act, "A battery is laid up charged", "reads {read}; it is charged again below {limit}",
        Citation.CommonPractice, "Charge it with air moving and no flame near, off the boat where petrol vapour may be, and look again each month.");

    /// <summary>The battery cannot be judged.</summary>
    public static FindingRule BatteryNotKnown { get; } = new(
        "LAYUP-062", Severity.Advice, "A battery is judged by its rest voltage or density", "not judged; missing: {missing}",
        Citation.CommonPractice, "Charge it fully and keep it as its maker says.");

    /// <summary>The acid is nearly water.</summary>
    public static FindingRule BatteryNearlyWater { get; } = new(
        "LAYUP-063", Severity.Act, "Acid below a density of 1.050 is nearly water", "density {density}: it freezes near 0 °C",
        LayUpSources.BatteryFreezing, "Charge it at once, above freezing; if it does not take charge, replace it.");

    /// <summary>Lithium in the cold.</summary>
    public static FindingRule LithiumInTheCold { get; } = new(
        "LAYUP-064", Severity.Advice, "A lithium iron phosphate battery is not charged below freezing", "is lithium iron phosphate",
        Citation.CommonPractice, "Switch every charger off for the winter, or keep it above freezing; store it as its maker says.");

    /// <summary>The closed circuit's coolant freezes too early.</summary>
    public static FindingRule CoolantTooWeak { get; } = new(
        "LAYUP-070", Severity.Act, "Coolant freezes below the lowest temperature by the margin", "freezes at {read}, at most {wanted} is wanted for {lowest}",
        Citation.ProjectChoice, "Renew the coolant with the kind and strength that the engine's maker names, and run it warm so that it mixes.");

    /// <summary>The closed circuit's coolant was not read.</summary>
    public static FindingRule CoolantNotRead { get; } = new(
        "LAYUP-071", Severity.Advice, "Coolant of a closed circuit is tested before frost", "has a closed circuit, and its coolant was not read",
        Citation.CommonPractice, "Read it with a refractometer for its own glycol.");

    /// <summary>The kind of cooling is not stated.</summary>
    public static FindingRule CoolingNotStated { get; } = new(
        "LAYUP-072", Severity.Act, "Where raw water runs is known before frost", "does not say whether raw water runs through its block",
        Citation.GivenByCaller, "State how the engine is cooled; until then take block and heat exchanger to be full of water.");

    /// <summary>The engine ran, or took water, after it was protected.</summary>
    public static FindingRule Void { get; } = new(
        "LAYUP-080", Severity.Act, "A start undoes the winter protection", "gained {hours} since it was protected on {date}: there is water in it again",
        LayUpSources.FreezeClaims, "Drain, fill and prove it again before the next frost.");
}
