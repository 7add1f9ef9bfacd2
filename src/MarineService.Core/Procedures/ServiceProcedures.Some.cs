namespace MarineService.Core.Procedures;

/// <content>Parts of the oil and impeller service, for visits that do not need all of it.</content>
public static partial class ServiceProcedures
{
    /// <summary>Engine oil and filter alone.</summary>
    public static Procedure Oil => SomeOnce.Oil;

    /// <summary>The raw-water pump's impeller: out, looked at, a good one in.</summary>
    public static Procedure Impeller => SomeOnce.Impeller;

    /// <summary>The raw-water strainer.</summary>
    public static Procedure Strainer => SomeOnce.Strainer;

    /// <summary>Anodes, hoses and clamps of the raw-water side.</summary>
    public static Procedure AnodesAndHoses => SomeOnce.AnodesAndHoses;

    /// <summary>The belt off, idlers and belt looked at, the belt on again.</summary>
    public static Procedure BeltInspection => MadeOnce.BeltInspection;

    private static readonly string[] AtStart = ["read-dial", "look-at-oil-cold", "lay-out-kit", "secure-boat", "stop-and-isolate"];

    private static readonly string[] AtEnd =
        ["count-tools", "sniff-and-switch-on", "ventilate-again", "proof-start", "look-for-leaks", "read-level-after", "record", "plan-next"];

    private static class SomeOnce
    {
        internal static readonly Procedure Oil = OilAndImpeller.Only("oil", "Engine oil and filter",
            [.. OilAndImpeller.Steps.Select(step => step.Id).Except(RawWater().Select(step => step.Id))]);

        internal static readonly Procedure Impeller = OilAndImpeller.Only("impeller", "Raw-water pump impeller",
            [.. AtStart, .. RawWater().Select(step => step.Id).Except(["clean-strainer", "anodes-and-hoses"]), .. AtEnd, "load-run"]);

        internal static readonly Procedure Strainer = OilAndImpeller.Only("strainer", "Raw-water strainer",
            [.. AtStart, "shut-seacock", "clean-strainer", "open-seacock", .. AtEnd]);

        internal static readonly Procedure AnodesAndHoses = OilAndImpeller.Only("anodes-and-hoses", "Anodes, hoses and clamps",
            [.. AtStart, "shut-seacock", "anodes-and-hoses", "open-seacock", .. AtEnd]);
    }
}
