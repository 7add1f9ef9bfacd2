namespace MarineService.Core.Jobs;

/// <summary>What can stand against a visit. Codes are never reused.</summary>
public static class JobRules
{
    /// <summary>The proof was made for another card.</summary>
    public static FindingRule OtherCard { get; } = new(
        "JOB-001", Severity.Stop, "A proof belongs to its card",
        "the proof is for card '{proof}'", Citation.ProjectChoice, "Take the proof of this card, or prepare the other card.");

    /// <summary>A step of the card is open.</summary>
    public static FindingRule StepOpen { get; } = new(
        "JOB-002", Severity.Act, "Every step that is needed is done and proved",
        "is not done and proved: {step}", Citation.CommonPractice, "Do it, and give its proofs.");

    /// <summary>A measurement of the card is not there.</summary>
    public static FindingRule NotMeasured { get; } = new(
        "JOB-003", Severity.Act, "What the card asks for is measured",
        "this was not given: {measurement}", Citation.CommonPractice, "Measure it, and give it with the proof.");

    /// <summary>The belt does not lie as the engine's drawing says.</summary>
    public static FindingRule OtherRouting { get; } = new(
        "JOB-004", Severity.Stop, "The belt lies as the engine's drawing says",
        "the belt lies {as it lies}; the drawing says {drawing}", Citation.GivenByCaller, "Take the belt off and lay it as drawn.");

    /// <summary>The oil account was kept for another oil system or does not end with a settled reading.</summary>
    public static FindingRule AccountUnfinished { get; } = new(
        "JOB-005", Severity.Act, "The oil account ends with a settled reading",
        "the account is not finished: {what}", Citation.CommonPractice, "Let the oil settle after the run, read the level, and tell the account.");

    /// <summary>A step was tried when it would have done harm, and done rightly afterwards.</summary>
    public static FindingRule TriedTooSoon { get; } = new(
        "JOB-006", Severity.Advice, "What would have done harm was not done",
        "was told when it would have done harm, and done rightly afterwards", Citation.CommonPractice, "Make sure that it was not done the first time; if it was, look at what it may have damaged.");

    /// <summary>The verdict is for a task that is not on the card.</summary>
    public static FindingRule StrangeVerdict { get; } = new(
        "JOB-007", Severity.Act, "A verdict is for an inspection of the card",
        "a verdict was given for '{task}', which is no inspection of this card", Citation.ProjectChoice, "Correct the task's id.");

    /// <summary>Something that was reported does not fit the card.</summary>
    public static FindingRule DoesNotFit { get; } = new(
        "JOB-008", Severity.Act, "What is reported fits the card",
        "does not fit: {what}", Citation.ProjectChoice, "Correct the report.");

    /// <summary>The visit was put down before a task of it was done.</summary>
    public static FindingRule TaskOpen { get; } = new(
        "JOB-021", Severity.Act, "Every task of the card is done",
        "is open: {what}", Citation.CommonPractice, "Take the work up again; it is due as before.");

    /// <summary>The impeller's account is short of rubber, and the steps say that nothing is missing.</summary>
    public static FindingRule PiecesNotSought { get; } = new(
        "JOB-022", Severity.Stop, "Missing rubber is looked for",
        "the account of its vanes is short ({account}), and the steps say that nothing is missing", Citation.CommonPractice,
        "Look for the pieces downstream to the heat exchanger and back to the strainer before the engine runs.");

    /// <summary>An impeller passed that has to be replaced by what was seen on it.</summary>
    public static FindingRule VerdictContradicted { get; } = new(
        "JOB-023", Severity.Act, "A verdict fits what was seen",
        "was said to have passed, and what was seen says otherwise: {what}", Citation.ProjectChoice, "Correct the verdict or the inspection.");

    /// <summary>A measurement could not be judged.</summary>
    public static FindingRule NotJudged { get; } = new(
        "JOB-024", Severity.Note, "What is measured can be judged",
        "is recorded and not judged; what would settle it: {what}", Citation.ProjectChoice);
}
