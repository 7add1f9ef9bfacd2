using UnitsNet;
using static MarineService.Core.Procedures.ServiceCautions;
using static MarineService.Core.Procedures.StepAct;

namespace MarineService.Core.Procedures;

/// <content>Lay-up, commissioning, belt and fuel filter.</content>
public static partial class ServiceProcedures
{
    /// <summary>Puts the engine to rest before frost: run, drained, filled with antifreeze that is proved in the block, tagged.</summary>
    public static Procedure LayUp => MadeOnce.LayUp;

    /// <summary>Brings the engine back after lay-up: plugs and tags counted, fluids, water, proofs.</summary>
    public static Procedure Commissioning => MadeOnce.Commissioning;

    /// <summary>Replaces the serpentine belt.</summary>
    public static Procedure BeltReplacement => MadeOnce.BeltReplacement;

    /// <summary>Replaces the fuel filter, with the engine cold and the battery off.</summary>
    public static Procedure FuelFilter => MadeOnce.FuelFilter;

    /// <summary>A step of the oil and impeller service in another place.</summary>
    private static ProcedureStep Again(string id, params string[] after) => OilAndImpeller.Find(id)!.AfterOnly(after);

    private static Procedure MakeLayUp() => Procedure.Of(
        "lay-up",
        "Lay-up before frost",
        [
            Again("read-dial"),
            Again("look-at-oil-cold", "read-dial"),
            Again("lay-out-kit", "read-dial"),
            Again("secure-boat", "read-dial"),
            Step("stabilize-fuel", "Pour fuel stabilizer by its label for the litres in the tank, then fill to nine tenths", 10, "secure-boat", "lay-out-kit")
                .Because("the run carries it into the whole fuel system").Using("fuel stabilizer").With(Vapour)
                .With(HoldPoint.Written("stabilizer", "dose and litres in the tank")),
            Again("ventilate-first", "secure-boat", "stabilize-fuel"),
            Again("prove-water-first", "secure-boat"),
            Again("warm-run", "lay-out-kit", "stabilize-fuel", "ventilate-first", "prove-water-first", "look-at-oil-cold"),
            Step("fog-cylinders", "Fog the cylinders by the maker's word, check the dose against the clearance volume, tag \"do not crank\"", 20, "stop-for-winter")
                .Does(PutToRest).When(Circumstance.Petrol).Because("bare cylinder walls rust").Using("fogging oil", "tag").With(NoFogging)
                .With(HoldPoint.Written("fogged", "dose for each cylinder; tag on the key")),
            Step("stop-for-winter", "Stop, key out and kept, battery cut off and tagged", 3, "warm-run").Does(Stop, Isolate).ExpiringOvernight().Using("tag")
                .With(Turning).With(HoldPoint.Confirmed("key-in-pocket-for-winter", "key in the pocket of whoever works, battery off")),
            Step("shut-seacock-for-winter", "Shut the seacock and tag it; ashore, leave it open and drain it", 2, "stop-for-winter").Does(ShutSeacock)
                .When(Circumstance.Seacock).ExpiringOvernight().Using("tag").With(Flooding)
                .With(HoldPoint.Written("seacock-for-winter", "state of the seacock, tag on the key")),
            Step("open-raw-drains", "Open every drain and low point of the raw-water side, rod those that do not run", 20, "shut-seacock-for-winter", "stop-for-winter")
                .Does(OpenRawSide, PutToRest).Because("what stays in freezes").With(Tool.Of("spanner for the plugs"), Tool.Of("wire to rod with"))
                .With(Flooding).With(HoldPoint.Written("drains-ran", "each drain and low point by name: it ran")),
            Step("close-raw-drains", "Plugs and hoses back, counted", 10, "open-raw-drains").Does(CloseRawSide)
                .With(HoldPoint.Counted("plugs", "plugs and clips missing")),
            Step("back-fill-antifreeze", "Fill the drained raw-water side with antifreeze by hose, from the high end", 20, "close-raw-drains")
                .When(Circumstance.RawWaterCooled).Because("with the thermostat shut, what leaves the exhaust proves nothing about the block")
                .Using("propylene glycol antifreeze").With(Antifreeze),
            Step("prove-antifreeze", "Take a sample at the block's and the manifolds' drains and read its freezing point", 15, "back-fill-antifreeze")
                .When(Circumstance.RawWaterCooled).Because("antifreeze is proved in the block, not at the exhaust").With(Tool.Of("refractometer")).With(Antifreeze)
                .With(HoldPoint.Written("antifreeze", "freezing point at each drain")),
            Step("charge-battery", "Battery ashore or charged; its density or voltage noted", 15, "stop-for-winter").Does(StartCharging, StopCharging)
                .With(LeadAcid).With(HoldPoint.Written("battery", "voltage or density")),
            Step("cover-openings", "Cover intake and exhaust, list the covers", 5, "open-raw-drains", "fog-cylinders").Using("covers", "tags")
                .With(HoldPoint.Written("covers", "list of covers and tags, kept at the helm")),
            Step("dry-bilge", "Bilge clean and dry, bilge pump as the boat is kept", 10, "close-raw-drains", "prove-antifreeze").Does(BilgePumpOn).With(Sheen)
                .With(HoldPoint.Written("bilge", "state of the bilge, the pump and the hull bung")),
            Step("record", "Write everything down, with the seacock's state and every tag", 10, "dry-bilge", "cover-openings", "charge-battery").Does(SignOff)
                .With(HoldPoint.Confirmed("recorded", "every field of the record filled")),
            Again("plan-next", "record"),
        ],
        Citation.CommonPractice);

    private static Procedure MakeCommissioning() => Procedure.Of(
        "commissioning",
        "Commissioning after lay-up",
        [
            Again("read-dial"),
            Step("tags-off", "Take the list of covers, tags and plugs; tick off each as it comes off or goes in", 10, "read-dial")
                .With(HoldPoint.Counted("tags", "tags, covers and plugs of the list not accounted for")),
            Again("lay-out-kit", "read-dial"),
            Again("secure-boat", "read-dial"),
            Step("turn-by-hand", "Turn the engine by hand through two revolutions", 5, "tags-off").With(Tool.Of("bar for the crankshaft"))
                .Because("a fogged or flooded engine may be locked").With(Turning).With(HoldPoint.Confirmed("turns-free", "turns freely twice round")),
            Again("look-at-oil-cold", "read-dial"),
            Step("hoses-and-clamps", "Look at hoses, clamps, anodes, impeller and belt", 15, "tags-off").With(Tool.Of("spanner"), Tool.Of("lamp"))
                .With(HoldPoint.Written("hoses", "verdict on hoses, clamps, anodes, impeller, belt")).Inspecting("belt"),
            Again("prove-water-first", "secure-boat", "hoses-and-clamps"),
            Step("fluids-and-battery", "Coolant, gear oil, steering; battery in and on", 10, "hoses-and-clamps", "secure-boat").Does(Energize)
                .With(LeadAcid, Vapour).With(HoldPoint.Written("fluids", "levels and battery voltage")),
            Again("ventilate-again", "secure-boat", "fluids-and-battery"),
            Again("proof-start", "prove-water-first", "look-at-oil-cold", "ventilate-again", "turn-by-hand", "fluids-and-battery", "lay-out-kit"),
            Again("look-for-leaks", "proof-start"),
            Again("read-level-after", "look-for-leaks"),
            Again("load-run", "read-level-after"),
            Again("restore-bilge", "look-for-leaks", "read-level-after"),
            Again("record", "load-run", "restore-bilge"),
            Again("plan-next", "record"),
        ],
        Citation.CommonPractice);

    private static Procedure MakeBelt(bool isNew) => Procedure.Of(
        isNew ? "belt" : "belt-inspection",
        isNew ? "Serpentine belt" : "Serpentine belt: inspection",
        [
            Again("read-dial"),
            Again("look-at-oil-cold", "read-dial"),
            isNew
                ? Again("lay-out-kit", "read-dial").With(HoldPoint.Confirmed("belt-compared", "new belt: ribs, profile and length as the drive asks"))
                : Again("lay-out-kit", "read-dial"),
            Again("secure-boat", "read-dial"),
            Again("prove-water-first", "secure-boat"),
            Again("stop-and-isolate", "read-dial", "lay-out-kit"),
            Always(Again("belt-off", "stop-and-isolate")),
            Always(Again("feel-idlers", "belt-off")),
            isNew
                ? Always(Again("belt-on", "feel-idlers", "lay-out-kit")).Replacing("belt").Using("belt")
                : Always(Again("belt-on", "feel-idlers", "lay-out-kit")),
            Again("count-tools", "belt-on"),
            Again("sniff-and-switch-on", "count-tools"),
            Again("ventilate-again", "sniff-and-switch-on", "secure-boat"),
            Again("proof-start", "sniff-and-switch-on", "ventilate-again", "prove-water-first", "look-at-oil-cold"),
            Again("look-for-leaks", "proof-start"),
            Again("read-level-after", "look-for-leaks"),
            Again("load-run", "read-level-after"),
            Again("record", "load-run", "read-level-after"),
            Again("plan-next", "record"),
        ],
        Citation.CommonPractice);

    private static Procedure MakeFuelFilter() => Procedure.Of(
        "fuel-filter",
        "Fuel filter",
        [
            Again("read-dial"),
            Again("look-at-oil-cold", "read-dial"),
            Again("lay-out-kit", "read-dial"),
            Again("secure-boat", "read-dial"),
            Again("prove-water-first", "secure-boat"),
            Step("fuel-engine-cold", "Engine cold to the hand, charger off and unplugged, no ignition work, extinguisher at hand", 5, "secure-boat").Does(CoolDown)
                .ExpiringOvernight().Because("fuel on a hot surface burns").With(PetrolOpen).With(HoldPoint.Confirmed("engine-cold", "nothing on the engine is warm to the hand")),
            Step("fuel-isolate", "Key out, battery cut off and tagged", 2, "fuel-engine-cold", "lay-out-kit").Does(Isolate).ExpiringOvernight()
                .Using("tag").With(Turning).With(HoldPoint.Confirmed("fuel-key-in-pocket", "key in the pocket, battery off")),
            Step("fuel-shut-off", "Shut the tank's valve, release the pressure into a rag", 3, "fuel-isolate").Using("rag").With(PetrolOpen)
                .With(HoldPoint.Confirmed("fuel-shut", "tank's valve shut, no pressure left")),
            Step("fuel-filter-off", "Catch the bowl's fuel in a can, look for water in it, filter off, old gasket seen", 10, "fuel-shut-off").Does(OpenFuel)
                .With(Tool.Of("strap wrench"), Tool.Of("can with a lid")).Using("absorbent pads").With(PetrolOpen, DieselOpen)
                .With(HoldPoint.Written("bowl", "what was in the bowl; old gasket in the hand")),
            Step("fuel-filter-on", "Compare the new filter, oil its gasket, on by hand as far as it says", 10, "fuel-filter-off").Replacing("fuel filter")
                .Using("fuel filter").With(UnfilteredFuel).With(HoldPoint.Confirmed("fuel-filter-compared", "thread, gasket and flow direction as the old one")),
            Step("fuel-close", "Open the tank's valve, prime, wipe dry, look for drips", 10, "fuel-filter-on").Does(CloseFuel)
                .With(PetrolOpen).With(HoldPoint.Lasting("fuel-dry", "no drip at filter, bowl and pipes", Duration.FromMinutes(2))),
            Step("fuel-rags-out", "Rags, pads and old fuel out of the boat in a can with a lid; hatches open", 5, "fuel-close").With(UsedPads)
                .With(HoldPoint.Written("fuel-waste", "litres and place")),
            Step("fuel-switch-on", "Sniff low down with the hatches open, then battery on", 3, "fuel-rags-out").Does(Energize).ExpiringOvernight()
                .With(Vapour).With(HoldPoint.Confirmed("fuel-no-smell", "no smell of fuel")),
            Step("ventilate-after-fuel", "Run the blower, sniff, look into the bilge", 5, "fuel-switch-on").Does(Ventilate).When(Circumstance.Petrol).ExpiringOvernight()
                .Because("fuel was open").With(Tool.Of("watch")).With(Vapour).With(NoVapour("no-vapour-after-fuel")),
            Again("proof-start", "fuel-switch-on", "ventilate-after-fuel", "prove-water-first", "look-at-oil-cold"),
            Again("look-for-leaks", "proof-start"),
            Again("read-level-after", "look-for-leaks"),
            Again("record", "read-level-after"),
            Again("plan-next", "record"),
        ],
        Citation.CommonPractice);

    private static ProcedureStep Always(ProcedureStep step) => step.WithoutCondition();

    // Made when first asked for, after the shared steps are there.
    private static class MadeOnce
    {
        internal static readonly Procedure LayUp = MakeLayUp();
        internal static readonly Procedure Commissioning = MakeCommissioning();
        internal static readonly Procedure BeltReplacement = MakeBelt(isNew: true);
        internal static readonly Procedure BeltInspection = MakeBelt(isNew: false);
        internal static readonly Procedure FuelFilter = MakeFuelFilter();
        internal static readonly Procedure Coolant = MakeCoolant();
    }
}
