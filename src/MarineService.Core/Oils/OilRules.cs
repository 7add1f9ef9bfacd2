namespace MarineService.Core.Oils;

/// <summary>The rules that oils are checked by. Codes are never reused.</summary>
public static class OilRules
{
    /// <summary>No permitted grade is accepted for the coldest start.</summary>
    public static FindingRule NoGradeFitsCold { get; } = new(
        "OIL-001", Severity.Act, "No permitted grade is accepted for the coldest start",
        "{start} is colder than every permitted grade accepts; the nearest is {grade}, from {floor}",
        Citation.ProjectChoice,
        "Warm the oil to at least {floor} before cranking, with a heater made for boats and never a flame, or ask the engine's maker. A grade that the maker does not permit is no way out.");

    /// <summary>The start is below the pumping test temperature of every permitted grade.</summary>
    public static FindingRule NotPumpable { get; } = new(
        "OIL-002", Severity.Stop, "Oil flow is not assured with any permitted grade",
        "{start} is below the pumping test temperature of every permitted grade",
        OilSources.J300,
        "Do not start. Warm engine and oil first, or ask the engine's maker.");

    /// <summary>The fitted oil is not accepted for the starts that are expected.</summary>
    public static FindingRule FittedNotAccepted { get; } = new(
        "OIL-003", Severity.Act, "The fitted oil is not accepted for the starts expected",
        "{grade} is {suitability} for a start at {start}; accepted from {floor}",
        Citation.ProjectChoice,
        "Change to an accepted grade before that start, or warm the oil to {floor} first.");

    /// <summary>The fitted or offered oil's grade is not on the maker's list.</summary>
    public static FindingRule NotPermitted { get; } = new(
        "OIL-004", Severity.Act, "The grade is not on the maker's list",
        "{grade} is not one of the permitted grades {permitted}",
        Citation.GivenByCaller,
        "Use a permitted grade, or ask the engine's maker. The second number is never traded for an easier start.");

    /// <summary>No stated coverage reaches a required service category.</summary>
    public static FindingRule CategoryNotCovered { get; } = new(
        "OIL-005", Severity.Act, "A required service category is not covered by any stated coverage",
        "{required} is required; {missing}",
        Citation.GivenByCaller,
        "Use an oil that claims the category itself, or ask the engine's maker.");

    /// <summary>The engine is laid up: no start is expected.</summary>
    public static FindingRule LaidUp { get; } = new(
        "OIL-006", Severity.Note, "A laid-up engine needs no oil change for frost",
        "laid up, so tonight's {start} asks for no change of oil",
        Citation.CommonPractice,
        "Judge the oil again for the first start after the lay-up. Cranking to check counts as a start.");

    /// <summary>The hot side cannot be judged.</summary>
    public static FindingRule HotSideNotKnown { get; } = new(
        "OIL-007", Severity.Note, "The hot side is limited by the maker's figure only",
        "not judged; missing: {missing}",
        Citation.CommonPractice);

    /// <summary>The oil claims a category that the maker forbids.</summary>
    public static FindingRule CategoryForbidden { get; } = new(
        "OIL-008", Severity.Act, "The maker forbids a category that the oil claims",
        "claims {category}, which the engine's maker forbids",
        Citation.GivenByCaller,
        "Use another oil; a maker's \"must not\" overrides any coverage.");

    /// <summary>Every grade that is accepted in the cold is too thin for the heat by the maker's figure.</summary>
    public static FindingRule NoGradeFitsHot { get; } = new(
        "OIL-009", Severity.Act, "No permitted grade is accepted for the hottest day",
        "{hottest} is hotter than the maker allows for every permitted grade",
        Citation.GivenByCaller,
        "Ask the engine's maker.");

    /// <summary>A permitted grade's limits leave none accepted, though cold and heat each have one.</summary>
    public static FindingRule NoGradeFitsBoth { get; } = new(
        "OIL-010", Severity.Act, "No one grade is accepted for both the coldest start and the hottest day",
        "{start} and {hottest} together leave no permitted grade",
        Citation.ProjectChoice,
        "Change grades with the season, warm the oil before cold starts, or ask the engine's maker.");

    /// <summary>The fitted oil is inside the margin for the starts that are expected.</summary>
    public static FindingRule FittedMarginal { get; } = new(
        "OIL-011", Severity.Advice, "The fitted oil is inside the margin for the starts expected",
        "{grade} is {suitability} for a start at {start}; accepted from {floor}",
        Citation.ProjectChoice,
        "Change to an accepted grade, or warm the oil to {floor} first.");

    /// <summary>The best permitted grade is inside the margin.</summary>
    public static FindingRule OnlyMarginal { get; } = new(
        "OIL-012", Severity.Advice, "The best permitted grade is inside the margin",
        "{start} is within the cranking test but inside the margin of every permitted grade; the nearest is {grade}, from {floor}",
        Citation.ProjectChoice,
        "Warm the oil to {floor} before cranking, with a heater made for boats and never a flame, or ask the engine's maker.");

    /// <summary>The fitted oil is too thin for the heat by the maker's figure.</summary>
    public static FindingRule FittedTooThin { get; } = new(
        "OIL-013", Severity.Act, "The fitted oil is not permitted for the hottest day",
        "{grade} is {suitability}: the hottest day is beyond the maker's limit for it",
        Citation.GivenByCaller,
        "Change to a grade that the maker permits in that heat.");

    /// <summary>No cold limit is known for the permitted grades.</summary>
    public static FindingRule NoColdLimitKnown { get; } = new(
        "OIL-014", Severity.Advice, "No cold limit is known for the permitted grades",
        "nothing published says whether {grade} may be started at {start}: it has no W grade",
        Citation.CommonPractice,
        "Ask the engine's maker for the lowest temperature.");

    /// <summary>The oil is thinner than new by the caution limit.</summary>
    public static FindingRule Thinner { get; } = new(
        "OIL-101", Severity.Advice, "Thinner than new", "viscosity changed by {change} at {temperature}, caution at {limit}",
        Citation.ProjectChoice, "Look for fuel in the oil; sample again soon.");

    /// <summary>The oil is thinner than new by the critical limit.</summary>
    public static FindingRule MuchThinner { get; } = new(
        "OIL-102", Severity.Act, "Much thinner than new", "viscosity changed by {change} at {temperature}, critical at {limit}",
        Citation.ProjectChoice, "Change the oil and find the cause: fuel, a wrong top-up, sheared polymer.");

    /// <summary>The oil is thicker than new by the caution limit.</summary>
    public static FindingRule Thicker { get; } = new(
        "OIL-103", Severity.Advice, "Thicker than new", "viscosity changed by {change} at {temperature}, caution at {limit}",
        Citation.ProjectChoice, "Look for soot, heat or a wrong top-up; sample again soon.");

    /// <summary>The oil is thicker than new by the critical limit.</summary>
    public static FindingRule MuchThicker { get; } = new(
        "OIL-104", Severity.Act, "Much thicker than new", "viscosity changed by {change} at {temperature}, critical at {limit}",
        Citation.ProjectChoice, "Change the oil and find the cause: soot, oxidation, water, a wrong top-up.");

    /// <summary>Thinning may point to fuel beyond the limit.</summary>
    public static FindingRule PerhapsFuel { get; } = new(
        "OIL-105", Severity.Act, "The thinning may be fuel beyond the limit", "thinning points to {fuel} to {fuel at most} of fuel, limit {limit}",
        OilSources.FuelChart, "Have the fuel measured by a laboratory; look for a leaking injector, pump or cold running.");

    /// <summary>Fuel beyond the caution limit.</summary>
    public static FindingRule SomeFuel { get; } = new(
        "OIL-106", Severity.Act, "Fuel in the oil", "{fuel} of fuel, caution at {limit}",
        Citation.ProjectChoice, "Change the oil and look for a leaking injector, pump or cold running.");

    /// <summary>Fuel beyond the critical limit: the oil no longer carries the bearings, and petrol in it can explode.</summary>
    public static FindingRule MuchFuel { get; } = new(
        "OIL-107", Severity.Stop, "Too much fuel in the oil", "{fuel} of fuel or more, limit {limit}",
        Citation.ProjectChoice, "Do not start; ventilate, petrol vapour from a crankcase can explode. Drain, find the cause, refill.");

    /// <summary>Water beyond the caution limit.</summary>
    public static FindingRule SomeWater { get; } = new(
        "OIL-108", Severity.Act, "Water in the oil", "{water} of water, caution at {limit}",
        Citation.ProjectChoice, "Find out whether it is coolant, sea water or condensation before the next run; change the oil.");

    /// <summary>Water beyond the critical limit.</summary>
    public static FindingRule MuchWater { get; } = new(
        "OIL-109", Severity.Stop, "Too much water in the oil", "{water} of water, limit {limit}",
        Citation.ProjectChoice, "Do not start. Find where it comes in, drain, flush as the engine's manual says, refill.");
}
