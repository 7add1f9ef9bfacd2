using static MarineService.Core.Procedures.ServiceCautions;
using static MarineService.Core.Procedures.StepAct;

namespace MarineService.Core.Procedures;

/// <content>The raw-water side of the oil and impeller service, and the proofs at its end.</content>
public static partial class ServiceProcedures
{
    private static IEnumerable<ProcedureStep> RawWater() =>
    [
        Step("shut-seacock", "Shut the seacock, hang a tag on the key", 2, "stop-and-isolate").Does(ShutSeacock).When(Circumstance.Seacock).ExpiringOvernight()
            .Because("the pump lies below the waterline").Using("tag").With(Flooding).With(HoldPoint.Confirmed("seacock-tag", "seacock shut, tag on the key")),
        Step("clean-strainer", "Strainer basket out, clean it, seal, refit", 10, "shut-seacock").Does(OpenStrainer).Because("only while the seacock is shut")
            .With(Tool.Of("brush")).Using("strainer seal").With(Flooding).With(HoldPoint.Confirmed("strainer-seal", "seal seen in its groove")),
        Step("belt-off", "Draw or photograph the routing, release the tensioner, belt off", 10, "stop-and-isolate").Does(BeltOff)
            .When(Circumstance.BeltBeforePump).Opening("belt").Because("frees the cover, and idlers can be felt only without load")
            .With(Tool.Of("bar for the tensioner")).With(Turning, Spring).With(HoldPoint.Written("routing-kept", "where drawing or photo is kept")),
        Step("pump-cover-off", "Raw-water pump's cover and gasket off, screws counted into a cup", 5, "shut-seacock", "belt-off").Does(OpenRawSide, TakePumpCoverOff)
            .Opening("raw-water pump cover").Because("the pump must be dry and its front clear")
            .With(Tool.Of("screwdriver"), Tool.Of("gasket scraper"), Tool.Of("cup for the screws")).With(Flooding),
        Step("impeller-out", "Note which way the vanes bend, pull the impeller", 5, "pump-cover-off").Because("the direction is lost once it is out")
            .With(Tool.Of("impeller puller")).With(CoverFace).With(HoldPoint.Written("vane-bend", "which way the vanes bend, or where the photo is kept")),
        Step("inspect-impeller", "Look at the impeller, count its vanes and the pieces found", 5, "impeller-out").Deciding(Circumstance.PiecesMissing)
            .Because("it decides what comes next").With(Tool.Of("lamp"))
            .With(HoldPoint.Counted("vanes", "vanes when new, less vanes whole, less pieces found")),
        Step("trace-pieces", "Look for the missing pieces, downstream to the heat exchanger and back to the strainer", 45, "inspect-impeller")
            .When(Circumstance.PiecesMissing).Because("pieces block the cooling later").With(Tool.Of("hose tools"))
            .With(HoldPoint.Counted("pieces", "pieces still missing")),
        Step("inspect-pump", "Look at cam, wear plate, cover, shaft seal and key", 5, "impeller-out").Because("a new impeller in a worn pump fails")
            .With(Tool.Of("straightedge")),
        Step("impeller-in", "New impeller in, wetted, vanes bent the right way, key engaged", 5, "lay-out-kit", "trace-pieces", "inspect-pump")
            .Replacing("impeller").Because("its first turns run dry").Using("impeller", "glycerine or soapy water").With(NoPetroleum)
            .With(HoldPoint.Confirmed("impeller-keyed", "key engaged, vanes bent as they turn")),
        Step("pump-cover-on", "New gasket or O-ring, cover on, screws crosswise, cup empty", 5, "impeller-in").Does(CloseRawSide)
            .Closing("raw-water pump cover").Because("a leak of air here and the pump does not prime")
            .With(Tool.Of("torque driver")).Using("pump cover gasket").With(HoldPoint.Counted("cover-screws", "screws, washers and clips left in the cup")),
        Step("feel-idlers", "Turn idlers, tensioner and driven pulleys by hand, look at the belt", 5, "belt-off").When(Circumstance.BeltBeforePump)
            .Because("bearings can be felt only without load").With(Tool.Of("rib gauge or rule")).With(HoldPoint.Written("idlers", "verdict on belt, idlers and tensioner")),
        Step("belt-on", "Belt on as drawn, every rib in its groove, faces in line", 10, "pump-cover-on", "feel-idlers").Does(BeltOn)
            .When(Circumstance.BeltBeforePump).Closing("belt").Because("the pump must be closed before it can be turned")
            .With(Tool.Of("straightedge"), Tool.Of("bar for the tensioner")).With(Turning, Spring)
            .With(HoldPoint.Confirmed("belt-seated", "seen at every pulley, turned two revolutions by hand, seen again")),
        Step("anodes-and-hoses", "Look at anodes, hoses and clamps", 10, "shut-seacock").Does(OpenStrainer).Because("the raw-water side must be dry for it")
            .With(Tool.Of("spanner")).Using("anode").With(Caution.Of(SignalWord.Notice, "Replace an anode that is half gone.", ProcedureSources.Anodes)),
        Step("open-seacock", "Seacock open or flush water on, tag off the key, vent the strainer, look for drips", 5, "clean-strainer", "pump-cover-on", "anodes-and-hoses")
            .Does(SupplyWater).ExpiringOvernight().Because("water comes before the start").With(Flooding)
            .With(HoldPoint.Confirmed("water-in-strainer", "tag in the hand, water in the strainer, two minutes without a drip")),
    ];

    private static IEnumerable<ProcedureStep> Proving() =>
    [
        Step("count-tools", "Count tools and rags, guards on", 3, "fill-to-mark", "belt-on", "open-seacock").Because("nothing must be left in the belt")
            .With(HoldPoint.Counted("tools", "tools and rags missing")),
        Step("sniff-and-switch-on", "Sniff with the hatches open, then battery on, everybody clear of the gear", 2, "count-tools").Does(Energize)
            .ExpiringOvernight().Because("the blower needs power, and no switch may meet vapour").With(Vapour).With(HoldPoint.Confirmed("no-smell", "no smell of fuel")),
        Step("ventilate-again", "Run the blower again, sniff again", 5, "sniff-and-switch-on").Does(Ventilate).When(Circumstance.Petrol).ExpiringOvernight()
            .Because("covers were off and fuel may have been spilled").With(Tool.Of("watch")).With(Vapour).With(NoVapour("no-vapour-again")),
        Step("proof-start", "Start; oil pressure, exhaust water; let it idle", 3, "sniff-and-switch-on", "ventilate-again").Does(Start)
            .Because("all proofs come in the first half minute").With(CarbonMonoxide)
            .With(HoldPoint.Confirmed("proof-start-water", "oil pressure and exhaust water in time, or stopped at once")),
        Step("look-for-leaks", "Look at filter, plug, pump cover, weep hole and the belt's track", 5, "proof-start").Because("leaks show under pressure")
            .With(Tool.Of("lamp")).With(Turning, Burns).With(HoldPoint.Confirmed("dry", "dry all round, belt runs true")),
        Step("read-level-after", "Stop, let it settle, read the level, top up to the target", 10, "look-for-leaks").Does(Stop, ProveLevel).ExpiringOvernight()
            .Because("the new filter has drunk its fill").With(Tool.Of("measuring jug")).Using("engine oil")
            .With(HoldPoint.Written("level-after", "level, not above full; litres added")),
        Step("reconcile", "Balance what came out against what went in and the levels", 5, "drain-oil", "read-level-after").Because("it proves the amount")
            .With(HoldPoint.Confirmed("balanced", "the fluid balance adds up")),
        Step("load-run", "Run under load until the temperatures are steady, stop, look at the belt again", 30, "read-level-after").Does(Start, Stop)
            .Because("faults show warm and loaded").With(Tool.Of("thermometer")).With(CarbonMonoxide, HotOutlet)
            .With(HoldPoint.Written("temperatures", "steady temperatures")),
        Step("restore-bilge", "Bilge free of oil, bilge pump on automatic and tested, hull bung counted, seacock left as noted", 5, "look-for-leaks", "read-level-after")
            .Does(BilgePumpOn).Because("a pump left off sinks the boat at its berth").Using("absorbent pads").With(Sheen)
            .With(HoldPoint.Confirmed("bilge-pump-runs", "the pump starts and stops by itself")),
        Step("record", "Write everything down", 10, "reconcile", "load-run", "restore-bilge").Does(SignOff).Because("the proof outlives the memory")
            .With(HoldPoint.Confirmed("recorded", "every field of the record filled")),
        Step("land-waste", "Old oil, filter and pads to the collection point", 15, "drain-oil", "filter-off", "read-level-after")
            .Because("waste leaves with the visit").With(UsedOil, UsedPads).With(HoldPoint.Written("waste", "litres and place")),
        Step("plan-next", "Next due points; belt and filter looked at again after the next run", 2, "record").Because("it closes the loop"),
    ];
}
