namespace MarineService.Core.Fluids;

/// <summary>Rules about a sump's figures. Codes FLUID-040 to FLUID-059.</summary>
internal static class SumpRules
{
    internal static readonly FindingRule FilterLargerThanFill = new(
        "FLUID-040", Severity.Act, "A filter holds less than the service fill",
        "the filter is said to hold {filter}, the whole service fill only {service fill}",
        Citation.CommonPractice, "Check both figures in the engine's manual; one may be in another unit.");

    internal static readonly FindingRule MarksReversed = new(
        "FLUID-041", Severity.Act, "The full mark stands above the add mark",
        "the add mark is at {add mark}, the full mark at {full mark}",
        Citation.CommonPractice, "Measure both from the bottom of the sump, along the stick.");

    internal static readonly FindingRule RangeLargerThanSump = new(
        "FLUID-042", Severity.Act, "The range between the marks is a part of the sump",
        "{range} between the marks is not less than the {sump} that the sump holds",
        Citation.CommonPractice, "Check the range in the manual, or calibrate the stick by a measured fill.");

    internal static readonly FindingRule RangeDisagreesWithMarks = new(
        "FLUID-043", Severity.Advice, "Range and marks tell the same volume",
        "the range is {range}, marks and sump area make it {by the marks}",
        Citation.ProjectChoice, "Real pans are stepped: trust the measured fill.");

    internal static readonly FindingRule FillsReversed = new(
        "FLUID-044", Severity.Act, "The fill with filter is the larger one",
        "{without filter} without the filter is not less than {with filter} with it",
        Citation.CommonPractice, "Check both figures in the engine's manual.");

    internal static readonly FindingRule FillsDisagree = new(
        "FLUID-045", Severity.Advice, "The two fills differ by the filter",
        "the two service fills differ by {difference}, the filter is said to hold {filter}",
        Citation.CommonPractice, "Fill a new filter from a measure and see what it takes.");

    internal static readonly FindingRule DryCapacityBelowFill = new(
        "FLUID-046", Severity.Act, "The dry capacity is not less than the service fill",
        "the dry capacity is {dry capacity}, the service fill {service fill}",
        Citation.CommonPractice, "Check both figures in the engine's manual; they may have been swapped.");

    internal static readonly FindingRule ResidualTooLarge = new(
        "FLUID-047", Severity.Act, "A drain leaves less than the sump holds",
        "a residual of {residual} is not less than the {sump} that the sump holds",
        Citation.CommonPractice, "Draw once, then open the drain plug and measure what is left.");
}
