namespace MarineService.Core.Engines;

/// <summary>What can be wrong with meter readings.</summary>
public static class EngineRules
{
    private static readonly Citation Clock = Citation.Derived("a day of 24 hours");

    /// <summary>A dial that goes back without a meter change or a rollover.</summary>
    public static FindingRule FallingReading { get; } = new(
        "METER-001",
        Severity.Act,
        "A meter reading falls only when the meter was changed or rolled over",
        "the dial reads {dial}, after {earlier dial} on {earlier date}; the reading is not counted",
        Citation.CommonPractice,
        "Read the meter again. Correct whichever entry is wrong, or enter the meter change.");

    /// <summary>More hours than the clock allows.</summary>
    public static FindingRule ImpossibleRate { get; } = new(
        "METER-002",
        Severity.Act,
        "An engine cannot run more than 24 hours a day",
        "the dial gained {gain} since {earlier date}, at most {most possible} were possible; the reading is not counted",
        Clock,
        "Read the meter again and correct whichever entry is wrong.");

    /// <summary>A dial value that the dial cannot show.</summary>
    public static FindingRule BeyondDial { get; } = new(
        "METER-003",
        Severity.Act,
        "A dial cannot show its modulus or more",
        "the dial reads {dial}, but it starts again at zero after {modulus}; the reading is not counted",
        Citation.GivenByCaller,
        "Correct the reading, or the meter's modulus.");

    /// <summary>A meter change that left hours uncounted.</summary>
    public static FindingRule UnmeteredHours { get; } = new(
        "METER-004",
        Severity.Note,
        "Hours run without a meter are an estimate",
        "{unmetered} were run without a meter before the meter was changed on {date}; all hours from here on rest on that estimate",
        Citation.CommonPractice);

    /// <summary>The same meter change entered twice.</summary>
    public static FindingRule ChangeEnteredTwice { get; } = new(
        "METER-005",
        Severity.Note,
        "Two identical meter changes count once",
        "the meter change of {date} was entered twice and counts once",
        Citation.ProjectChoice);
}
