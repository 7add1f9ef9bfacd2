namespace MarineService.Core.Parts;

/// <summary>What can be wrong with a filter that is to stand in for another. Codes are never reused.</summary>
public static class FilterRules
{
    private const string AnotherFilter = "Do not fit it; take a filter that is listed for the engine.";

    /// <summary>The thread is another one.</summary>
    public static FindingRule Thread { get; } = new(
        "FILTER-001", Severity.Stop, "A filter has the thread of its base", "its thread is {has}, the base has {needs}",
        FilterProperty.Thread.Source, AnotherFilter);

    /// <summary>The thread is another one that starts to turn.</summary>
    public static FindingRule ThreadNearMiss { get; } = new(
        "FILTER-002", Severity.Stop, "A thread that nearly fits is no fit", "its thread is {has}, the base has {needs}: it may start to turn, and then strips or lets go under pressure",
        FilterProperty.Thread.Source, AnotherFilter);

    /// <summary>A safety attribute lies outside its range.</summary>
    public static FindingRule SafetyRange { get; } = new(
        "FILTER-003", Severity.Stop, "Gasket and bypass lie in the engine's range", "{attribute} is {has}, the engine needs {least} to {most}",
        FilterProperty.GasketOuter.Source, AnotherFilter);

    /// <summary>It is too high or too wide.</summary>
    public static FindingRule TooLarge { get; } = new(
        "FILTER-004", Severity.Act, "A filter goes into its room", "{attribute} is {has}, there is room for {most}",
        FilterProperty.Height.Source, AnotherFilter);

    /// <summary>The bypass valve is there or is not, against what the engine needs.</summary>
    public static FindingRule Bypass { get; } = new(
        "FILTER-005", Severity.Stop, "The bypass valve is where the engine needs it", "{attribute}: {has}, the engine needs {needs}",
        FilterProperty.Bypass.Source, AnotherFilter);

    /// <summary>There is no anti-drain-back valve, and the mounting needs one.</summary>
    public static FindingRule AntiDrainBack { get; } = new(
        "FILTER-006", Severity.Act, "A filter that is not mounted gasket-up has an anti-drain-back valve", "{attribute}: {has}, this mounting needs {needs}; every start runs dry until it is full again",
        FilterProperty.AntiDrainBack.Source, AnotherFilter);

    /// <summary>It bursts too early.</summary>
    public static FindingRule Burst { get; } = new(
        "FILTER-007", Severity.Stop, "A filter bears the pressure of a cold start", "{attribute} is {has}, the engine needs {least}",
        FilterProperty.Burst.Source, AnotherFilter);

    /// <summary>A figure is below what is needed.</summary>
    public static FindingRule TooLittle { get; } = new(
        "FILTER-008", Severity.Act, "A filter is not worse than the engine needs", "{attribute} is {has}, the engine needs {least}",
        Citation.CommonPractice, AnotherFilter);

    /// <summary>It holds the flow back too much.</summary>
    public static FindingRule TooMuch { get; } = new(
        "FILTER-009", Severity.Act, "A filter lets the rated flow through", "{attribute} is {has}, the engine bears {most}",
        FilterProperty.PressureDrop.Source, AnotherFilter);

    /// <summary>Asked tests were not passed.</summary>
    public static FindingRule Tests { get; } = new(
        "FILTER-010", Severity.Act, "An aftermarket filter passed the tests that are asked", "{attribute}: {has}, asked {needs}",
        FilterProperty.AftermarketTests.Source, AnotherFilter);

    /// <summary>A safety attribute is not known.</summary>
    public static FindingRule SafetyNotKnown { get; } = new(
        "FILTER-011", Severity.Act, "A filter is judged with thread, gasket, bypass and burst known", "{attribute} is not known, so nobody can say that it is safe",
        Citation.CommonPractice, "Do not fit it until the {attribute} of filter and engine are known.");

    /// <summary>Another attribute is not known.</summary>
    public static FindingRule OtherNotKnown { get; } = new(
        "FILTER-012", Severity.Advice, "A filter is equal when all that is asked is known", "{attribute} is not known",
        Citation.CommonPractice, "Ask its maker.");

    internal static FindingRule For(AttributeCheck check) =>
        check.Attribute == FilterProperty.Bypass ? Bypass
        : check.Attribute == FilterProperty.AntiDrainBack ? AntiDrainBack
        : check.Attribute == FilterProperty.AftermarketTests ? Tests
        : check.Attribute == FilterProperty.Burst ? Burst
        : check.Attribute == FilterProperty.PressureDrop ? TooMuch
        : check.Attribute == FilterProperty.Height || check.Attribute == FilterProperty.OuterDiameter ? TooLarge
        : check.Attribute.IsSafety ? SafetyRange
        : TooLittle;
}
