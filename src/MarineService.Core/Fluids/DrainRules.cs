namespace MarineService.Core.Fluids;

/// <summary>Advice on draining. Codes FLUID-060 to FLUID-069.</summary>
internal static class DrainRules
{
    internal static readonly FindingRule OilIsThick = new(
        "FLUID-060", Severity.Advice, "Oil is drained warm",
        "at {viscosity} the drain takes {time}; time goes with viscosity, so {thinner} would take {wanted}",
        Citation.Derived("Hagen–Poiseuille: time is proportional to kinematic viscosity"),
        "Warm the oil by running the engine, if nothing forbids a start, or wait. Oil that has cooled to hand warmth still runs well.");

    internal static readonly FindingRule BoreIsNarrow = new(
        "FLUID-061", Severity.Advice, "Bore counts with its fourth power",
        "through {bore} the drain takes {time}; {wider} would take {wanted}",
        Citation.Derived("Hagen–Poiseuille: flow is proportional to the fourth power of the bore"),
        "Use the widest tube that goes down, and no longer than it must be.");

    internal static readonly FindingRule OilIsHot = new(
        "FLUID-062", Severity.Advice, "Hot oil burns",
        "at {temperature} the oil burns skin; it splashes when the plug comes out",
        Citation.CommonPractice, "Gloves, long sleeves, eye protection; let the plug fall into the pan. Let it cool to about 50 °C if you can wait.");

    internal static readonly FindingRule TiltKeepsOil = new(
        "FLUID-063", Severity.Advice, "The drain is the lowest point of the sump",
        "as the boat lies, {kept} stays in the sump below the drain",
        SumpShape.Source, "Trim or chock the boat so that the drain is lowest, or draw the rest from the low end.");
}
