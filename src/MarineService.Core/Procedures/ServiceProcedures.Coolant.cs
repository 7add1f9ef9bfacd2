using static MarineService.Core.Procedures.ServiceCautions;
using static MarineService.Core.Procedures.StepAct;

namespace MarineService.Core.Procedures;

/// <content>The coolant of a fresh-water cooled engine.</content>
public static partial class ServiceProcedures
{
    /// <summary>Exchanges the coolant of the fresh-water circuit: opened cold, caught, filled, bled, its strength measured, its level proved after a run.</summary>
    /// <remarks>Common practice. Kind, strength and amount of the coolant, and where the circuit is bled, are the engine maker's to say.</remarks>
    public static Procedure Coolant => MadeOnce.Coolant;

    private static Procedure MakeCoolant() => Procedure.Of(
        "coolant",
        "Coolant exchange",
        [
            Again("read-dial"),
            Again("look-at-oil-cold", "read-dial"),
            Again("lay-out-kit", "read-dial").With(HoldPoint.Written("coolant-kind", "kind and strength of coolant that the maker names, litres at hand")),
            Again("secure-boat", "read-dial"),
            Again("ventilate-first", "secure-boat"),
            Again("catch-spills", "read-dial", "ventilate-first"),
            Again("prove-water-first", "secure-boat"),
            Again("stop-and-isolate", "lay-out-kit", "catch-spills"),
            Step("coolant-cold", "Wait until nothing on the engine is warm to the hand", 60, "stop-and-isolate").Does(CoolDown)
                .Because("a hot circuit is under pressure").With(Scald).With(HoldPoint.Confirmed("coolant-engine-cold", "header, hoses and thermostat housing are cold to the hand")),
            Step("coolant-cap-off", "Cap to its first stop through a cloth, pressure off, then cap off; look at the old coolant and measure its strength", 5,
                "coolant-cold", "catch-spills", "lay-out-kit").Does(OpenCoolant).Because("oil, rust or a falling strength tell of a fault that new coolant would hide")
                .With(Tool.Of("refractometer")).Using("clean rag").With(Scald, Glycol)
                .With(HoldPoint.Written("old-coolant", "freezing point, colour; oil film, rust or exhaust smell: find the cause before anything is filled")),
            Step("coolant-drain", "Open every drain of block, header and heat exchanger into the measure, rod those that do not run", 20, "coolant-cap-off").Does(OpenCoolant)
                .Because("what stays behind thins the new coolant").With(Tool.Of("spanner for the plugs"), Tool.Of("wire to rod with"), Tool.Of("can marked \"Coolant\""))
                .With(Glycol).With(HoldPoint.Written("coolant-drained", "each drain by name: it ran; litres drained, against what the circuit holds")),
            Step("coolant-flush", "Flush with fresh water until it runs clear, and catch that too", 15, "coolant-drain")
                .Because("two kinds of inhibitor may turn to sludge").With(Tool.Of("hose")).With(Glycol).With(HoldPoint.Confirmed("flush-clear", "runs clear, all of it caught")),
            Step("coolant-drains-shut", "Plugs in with new washers, hoses and clamps looked at", 10, "coolant-flush").Does(CloseCoolant)
                .Because("closed before anything is poured").Using("drain plug washers").With(HoldPoint.Counted("coolant-plugs", "plugs, washers and clips missing")),
            Step("coolant-strength", "Mix to the maker's strength in a clean can and measure it", 5, "coolant-drains-shut")
                .Because("too weak freezes, too strong cools badly").With(Tool.Of("refractometer")).Using("coolant", "distilled water").With(Glycol)
                .With(HoldPoint.Written("coolant-strength", "freezing point of the mix, below the coldest that the boat will meet")),
            Step("coolant-fill", "Pour slowly at the highest point with the bleed screws open, until no bubble comes", 15, "coolant-strength").Does(PourCoolant)
                .Because("trapped air is a hot spot").With(Tool.Of("funnel"), Tool.Of("measuring jug")).With(Glycol)
                .With(HoldPoint.Written("coolant-poured", "litres poured, against what was drained")),
            Step("coolant-cap-on", "Bleed screws shut, cap on to its last stop, wipe dry", 3, "coolant-fill").Using("absorbent pads")
                .Because("without its pressure the circuit boils early").With(HoldPoint.Confirmed("coolant-cap", "cap seated, plugs and hoses dry")),
            Again("count-tools", "coolant-cap-on"),
            Again("sniff-and-switch-on", "count-tools"),
            Again("ventilate-again", "sniff-and-switch-on", "secure-boat"),
            Again("proof-start", "sniff-and-switch-on", "ventilate-again", "prove-water-first", "look-at-oil-cold", "coolant-cap-on"),
            Again("look-for-leaks", "proof-start"),
            Again("read-level-after", "look-for-leaks"),
            Again("load-run", "read-level-after"),
            Step("coolant-level", "Let it settle until it is cold, cap off through a cloth, bleed again, bring the level to the cold mark", 90, "load-run").Does(CoolDown, ProveCoolant)
                .Because("the run drives the last air out, and the level falls").With(Tool.Of("measuring jug")).With(Scald, Glycol)
                .With(HoldPoint.Written("coolant-level", "level at the cold mark, litres added")),
            Step("coolant-away", "Old coolant and flushing water to the collection point, the bilge wiped dry", 15, "coolant-level", "coolant-drain")
                .Because("none of it may reach the water or the bilge pump").With(Glycol).With(HoldPoint.Written("coolant-waste", "litres and place")),
            Again("restore-bilge", "look-for-leaks", "read-level-after", "coolant-away"),
            Again("record", "load-run", "coolant-level", "restore-bilge"),
            Again("plan-next", "record"),
        ],
        Citation.CommonPractice);
}
