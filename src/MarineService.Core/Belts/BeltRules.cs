namespace MarineService.Core.Belts;

/// <summary>The rules of the routing itself: possible, right, and near its limits. Codes are never reused.</summary>
public static class BeltRules
{
    private static readonly Citation Tangents = Citation.Derived("common tangents of oriented circles");

    /// <summary>A pulley lies inside another.</summary>
    public static FindingRule Contained { get; } = new(
        "BELT-001",
        Severity.Stop,
        "A pulley lies inside another",
        "lies inside '{other}': the centres are only {distance} apart",
        Tangents,
        "Measure centres and diameters again; no belt can run so.");

    /// <summary>Two pulleys overlap.</summary>
    public static FindingRule Overlap { get; } = new(
        "BELT-002",
        Severity.Stop,
        "Two pulleys overlap",
        "overlaps '{other}' by {overlap} at the belt's pitch line; the centres are {distance} apart",
        Tangents,
        "Measure centres and diameters again.");

    /// <summary>Two pulleys touch.</summary>
    public static FindingRule Touching { get; } = new(
        "BELT-003",
        Severity.Stop,
        "Two pulleys touch",
        "touches '{other}': there is no room for the belt",
        Tangents,
        "Measure centres and diameters again.");

    /// <summary>The face of the belt is not the one that the pulley is made for.</summary>
    public static FindingRule WrongFace { get; } = new(
        "BELT-004",
        Severity.Stop,
        "Belt face does not match the pulley",
        "the belt runs on its {face}, and the rim is {surface}",
        Citation.CommonPractice,
        "Lay the belt so that ribs run in grooves and the back runs on smooth rims.");

    /// <summary>Two pulleys in a row leave no room for a span.</summary>
    public static FindingRule NoTangent { get; } = new(
        "BELT-005",
        Severity.Stop,
        "No span is possible between two pulleys",
        "no straight span leads on to '{other}': the centres are only {distance} apart",
        Tangents,
        "Measure centres and diameters again.");

    /// <summary>The belt does not touch a stop.</summary>
    public static FindingRule NoContact { get; } = new(
        "BELT-006",
        Severity.Stop,
        "The belt does not touch a pulley",
        "the belt only passes; its wrap is {wrap}",
        Tangents,
        "Lay the belt round the pulley, or leave the pulley out of the list.");

    /// <summary>A span would run through a pulley.</summary>
    public static FindingRule SpanThroughPulley { get; } = new(
        "BELT-007",
        Severity.Stop,
        "A span runs through a pulley",
        "'{pulley}' is in the way: the belt would pass its centre at {distance}, {short} short of clearing it",
        Tangents,
        "Lead the belt round '{pulley}', on the side and face that the engine's diagram shows.");

    /// <summary>Two spans cross.</summary>
    public static FindingRule SpansCross { get; } = new(
        "BELT-008",
        Severity.Stop,
        "Two spans cross",
        "crosses the span from '{from}' to '{to}'",
        Tangents,
        "A ribbed belt never crosses itself: look for a swapped order or a wrong face at these four pulleys.");

    /// <summary>The belt goes round the wrong number of times.</summary>
    public static FindingRule TurningNumber { get; } = new(
        "BELT-009",
        Severity.Stop,
        "The belt goes round the wrong number of times",
        "goes round {turns} times where {expected} is right, counter-clockwise counted positive",
        Tangents,
        "One wrong face shifts the count by a whole turn: look at the pulleys of the crossing spans.");

    /// <summary>A pulley of the drive is not in the routing.</summary>
    public static FindingRule MissedPulley { get; } = new(
        "BELT-010",
        Severity.Stop,
        "The belt misses a pulley",
        "the belt does not come to it, so it stands still or does nothing",
        Citation.CommonPractice,
        "Lead the belt over it as the engine's diagram shows.");

    /// <summary>A pulley turns against the sense that its device needs.</summary>
    public static FindingRule WrongRotation { get; } = new(
        "BELT-011",
        Severity.Stop,
        "A pulley turns the wrong way",
        "would turn {turns}, and must turn {required}",
        Citation.CommonPractice,
        "The face that touches a pulley decides its sense: lead the belt over its other side.");

    /// <summary>The belt is longer than the drive can take up.</summary>
    public static FindingRule TooLong { get; } = new(
        "BELT-012",
        Severity.Stop,
        "The belt is too long",
        "{belt} of belt, and this routing takes {longest} at most: {difference} too long",
        Citation.Derived("common tangents of oriented circles, over the travel of the arm"),
        "Check the routing first: a missed pulley leaves the belt slack. Then check the length printed on the belt.");

    /// <summary>The belt is shorter than the drive needs.</summary>
    public static FindingRule TooShort { get; } = new(
        "BELT-013",
        Severity.Stop,
        "The belt is too short",
        "{belt} of belt, and this routing needs {shortest} at least: {difference} too short",
        Citation.Derived("common tangents of oriented circles, over the travel of the arm"),
        "Check the routing first, then the length printed on the belt. Never lever a belt on.");

    /// <summary>A test lies nearer to its limit than the centres are known.</summary>
    public static FindingRule AtLimit { get; } = new(
        "BELT-014",
        Severity.Act,
        "At the limit",
        "at the limit: {test}: {margin} to spare, and the measured centres leave {uncertainty} in doubt",
        Citation.ProjectChoice,
        "Measure the centres of these pulleys more closely, and look at the place itself.");

    /// <summary>A belt's length lies nearer to a limit than it is known.</summary>
    public static FindingRule LengthAtLimit { get; } = new(
        "BELT-015",
        Severity.Advice,
        "The belt's length is at the limit",
        "at the limit: {belt} of belt, and this routing takes {shortest} to {longest}; tolerance and centres leave {uncertainty} in doubt",
        Citation.ProjectChoice,
        "Look where the arm stands with the belt on: it must be clear of both stops.");

    /// <summary>A wrap is below the usual working figure.</summary>
    public static FindingRule SmallWrap { get; } = new(
        "BELT-016",
        Severity.Advice,
        "Little wrap",
        "wrap is {wrap}; {least} is the least that is usual",
        Citation.CommonPractice,
        "No standard gives a least wrap: let a tension check say what its load needs.");

    /// <summary>A wrap is below what the pulley's maker asks for.</summary>
    public static FindingRule WrapBelowMakers { get; } = new(
        "BELT-017",
        Severity.Act,
        "Less wrap than the maker asks for",
        "wrap is {wrap}; its maker asks for {least}",
        Citation.GivenByCaller,
        "Compare the routing with the engine's diagram.");

    /// <summary>A grooved pulley is smaller than the standard allows.</summary>
    public static FindingRule SmallPulley { get; } = new(
        "BELT-018",
        Severity.Act,
        "A grooved pulley is below the standard's least diameter",
        "effective diameter {diameter}; {least} is the least",
        PkProfile.SmallestEffectiveDiameter,
        "Check whether an outside diameter was taken for the effective one.");

    /// <summary>A grooved pulley is small enough to shorten the belt's life.</summary>
    public static FindingRule ShortLife { get; } = new(
        "BELT-019",
        Severity.Note,
        "A small grooved pulley shortens belt life",
        "effective diameter {diameter}; {least} is the practical least",
        PkProfile.J1596);

    /// <summary>A pulley on the belt's back is smaller than the recommended practice.</summary>
    public static FindingRule SmallBackPulley { get; } = new(
        "BELT-020",
        Severity.Note,
        "A small pulley on the belt's back",
        "diameter {diameter}; {least} is recommended, though many engines use less",
        PkProfile.J1596);

    /// <summary>A span runs close by a pulley.</summary>
    public static FindingRule CloseBy { get; } = new(
        "BELT-021",
        Severity.Advice,
        "The belt passes close by a pulley",
        "passes the rim of '{pulley}' with {clear} to spare; {least} is wanted, because a running belt flutters",
        Citation.ProjectChoice,
        "Turn the engine by hand and look for rub marks before running it.");

    /// <summary>A span rubs on a pulley.</summary>
    public static FindingRule Rubs { get; } = new(
        "BELT-022",
        Severity.Act,
        "The belt rubs on a pulley",
        "clears the rim of '{pulley}' at its pitch line only: with its thickness it rubs, {clear} to spare",
        Tangents,
        "Compare the routing with the engine's diagram, and look for rub marks.");

    internal static Citation Geometry => Tangents;
}
