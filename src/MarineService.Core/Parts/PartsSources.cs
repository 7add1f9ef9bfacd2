namespace MarineService.Core.Parts;

/// <summary>The documents that this room stands on.</summary>
internal static class PartsSources
{
    internal static Citation ThreadProfile { get; } = Citation.Secondary("ISO 724 and ISO 68-1", null, "basic dimensions and profile");

    internal static Citation StressArea { get; } = Citation.Secondary("ISO 898-1", null, "nominal stress area");

    internal static Citation ProofStress { get; } = Citation.Secondary("ISO 898-1", null, "stress under proof load");

    internal static Citation ClearanceHoles { get; } = Citation.Secondary("ISO 273", null, "table of clearance holes");

    internal static Citation NutFactors { get; } =
        Citation.PracticeDescribedIn("machine design texts: torque = K x clamp force x diameter, clamp force scattered by 25 to 30 %");

    internal static Citation LongFormula { get; } =
        Citation.Derived("the work balance of a 60 degree thread with friction in thread and under the head");

    internal static Citation Geometry { get; } = Citation.Derived("the geometry of two patterns on one bolt circle");

    internal static Citation SpinOn { get; } =
        Citation.PracticeDescribedIn("TM 55-1930-209-14&P-17, appendix C, table C-1: gasket oiled, half a turn after contact on one craft");
}
