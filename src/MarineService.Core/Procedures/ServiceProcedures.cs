using UnitsNet;
using static MarineService.Core.Procedures.ServiceCautions;
using static MarineService.Core.Procedures.StepAct;

namespace MarineService.Core.Procedures;

/// <summary>Procedures of the library's own making. They are common practice, and the engine's own manual outranks them.</summary>
/// <remarks>Steps of one id are the same step in all of them, so that <see cref="Procedure.Merge"/> joins them.</remarks>
public static partial class ServiceProcedures
{
    /// <summary>Oil, oil filter, raw-water strainer and impeller in one visit, with the proofs in between.</summary>
    /// <remarks>
    /// Made for petrol and diesel, belt-driven and gear-driven pumps: say which with <see cref="Procedure.For"/>. When the oil is found
    /// unfit cold, the warm run falls away, the oil is drained cold, and the fault is mended before fresh oil goes in.
    /// </remarks>
    public static Procedure OilAndImpeller { get; } = Procedure.Of(
        "oil-and-impeller",
        "Oil, oil filter and raw-water impeller",
        [.. Opening(), .. WarmRun(), .. OilSteps(), .. RawWater(), .. Proving()],
        Citation.CommonPractice);

    /// <summary>Every procedure of the library's own making.</summary>
    public static IReadOnlyList<Procedure> All => Array.AsReadOnly([OilAndImpeller, LayUp, Commissioning, BeltReplacement, FuelFilter, Oil, Impeller, Strainer, AnodesAndHoses, BeltInspection, Coolant]);

    private static IEnumerable<ProcedureStep> Opening() =>
    [
        Step("read-dial", "Read the hour meter, check that it is the right engine, list what is due", 5)
            .Because("the hours before the run are the hours of the service")
            .With(Tool.Of("lamp")).With(HoldPoint.Written("dial", "hour meter reading")),
        Step("look-at-oil-cold", "Look at the oil cold, on the stick: level, colour, smell", 3, "read-dial").Does(PassOil).ExpiringOvernight()
            .Because("milky, thinned, overfull or flooded oil must not go through the bearings")
            .With(Tool.Of("white cup")).Using("clean rag").Deciding(Circumstance.OilUnfit)
            .With(HoldPoint.Confirmed("oil-fit", "level at or below full, clear, no smell of fuel; if not: no start at all, drain cold and find the cause")),
        Step("lay-out-kit", "Lay out parts, fluids and tools; hold the new filter and impeller against the engine's data", 10, "read-dial")
            .Because("nothing is opened that cannot be closed today")
            .With(HoldPoint.Confirmed("kit-complete", "kit complete, oil for the planned amount and a tenth more")),
        Step("secure-boat", "Make the boat fast, gear in neutral, hatches open, people away from the stern", 5, "read-dial").ExpiringOvernight()
            .Because("air comes before any spark").With(Tool.Of("fenders and lines")).With(CarbonMonoxide),
    ];

    private static IEnumerable<ProcedureStep> WarmRun() =>
    [
        Step("ventilate-first", "Run the blower, sniff low down, look into the bilge", 5, "secure-boat").Does(Ventilate).ExpiringOvernight()
            .When(Circumstance.Petrol).Because("vapour lies low and has to be gone before the first switch and the first start")
            .With(Tool.Of("watch")).With(Vapour).With(NoVapour("no-vapour-first")),
        Step("catch-spills", "Drip tray and pads under, labelled can ready, bilge pump off and its switch tagged", 5, "read-dial", "ventilate-first")
            .Does(BilgePumpOff).ExpiringOvernight().Because("a spill must not be pumped out")
            .With(Tool.Of("drip tray"), Tool.Of("can marked \"Used Oil\"")).Using("absorbent pads", "tag").With(Sheen, UsedOil, UsedPads)
            .With(HoldPoint.Confirmed("bilge-pump-tagged", "bilge pump off, switch tagged")),
        Step("prove-water-first", "Open the seacock or turn the flush water on; strainer full, coolant level, a look at the belt", 5, "secure-boat")
            .Does(SupplyWater).ExpiringOvernight().Because("the pump must be wet at its first turn")
            .With(Tool.Of("hose")).With(HoldPoint.Confirmed("water-at-pump", "water seen at the pump's side of the strainer")),
        Step("warm-run", "Start; watch exhaust water and oil pressure; let it get warm", 10,
            "lay-out-kit", "catch-spills", "ventilate-first", "prove-water-first", "look-at-oil-cold")
            .Does(Start).When(Circumstance.OilUnfit, holds: false).Because("warm oil carries dirt and water out with it")
            .With(Tool.Of("thermometer")).With(CarbonMonoxide, Burns)
            .With(HoldPoint.Confirmed("warm-run-water", "exhaust water within about 30 s and oil pressure within about 10 s, or stopped at once")),
        Step("stop-and-isolate", "Stop, key out and kept, battery cut off and tagged", 3, "warm-run").Does(Stop, Isolate).ExpiringOvernight()
            .Because("nobody can crank while covers are off").Using("tag").With(Turning)
            .With(HoldPoint.Confirmed("key-in-pocket", "key in the pocket of whoever works, battery off")),
    ];

    private static IEnumerable<ProcedureStep> OilSteps() =>
    [
        Step("read-level-before", "Let it settle, read the level", 5, "stop-and-isolate").ExpiringOvernight()
            .Because("the balance needs the level before").Using("clean rag").With(Burns).With(HoldPoint.Written("level-before", "level on the stick")),
        Step("drain-oil", "Draw or drain the oil into the measure and read it", 20, "catch-spills", "lay-out-kit", "read-level-before").Does(OpenDrain)
            .Because("while it is warm, and before any fresh oil")
            .With(Tool.Of("extractor, or spanner for the plug"), Tool.Of("graduated can")).With(Burns, UsedOil)
            .With(HoldPoint.Written("drained", "litres drained")),
        Step("judge-old-oil", "Look at the old oil, smell it, keep a sample", 3, "drain-oil")
            .Because("a fault has to stop the service, not be covered by fresh oil").With(Tool.Of("white cup"))
            .With(HoldPoint.Confirmed("old-oil-judged", "not milky, no smell of fuel, no metal; if it is: stop and find the cause, or the cause is known already")),
        Step("mend-oil-fault", "Find the cause of the unfit oil, mend it, write it down", 60, "judge-old-oil").Does(PassOil)
            .When(Circumstance.OilUnfit).Because("the engine must not be started before")
            .With(HoldPoint.Written("cause-found", "the cause, and what was done about it")),
        Step("close-drain", "Plug in with a new washer, or extractor tube out and its port capped", 5, "drain-oil").Does(CloseDrain)
            .Because("closed before anything is poured").With(Tool.Of("torque wrench")).Using("drain plug washer")
            .With(HoldPoint.Confirmed("drain-closed", "plug tightened and marked, or port capped")),
        Step("filter-off", "Bag the oil filter, take it off, find its old gasket on it, drain it while hot", 10, "drain-oil").Does(TakeFilterOff)
            .Because("two gaskets leak").With(Tool.Of("strap wrench")).Using("bag").With(Burns, UsedFilter)
            .With(HoldPoint.Confirmed("old-gasket", "old gasket in the hand")),
        Step("compare-filter", "Hold the new filter against the old one: thread, gasket, height; wipe the base", 3, "lay-out-kit", "filter-off")
            .Because("a wrong thread can start and then fail").With(Tool.Of("thread gauge")).Using("clean rag")
            .With(HoldPoint.Confirmed("filter-compared", "thread, gasket and height ticked off")),
        Step("oil-gasket", "Oil the new gasket; fill the filter if it stands upright", 2, "compare-filter")
            .Because("a dry gasket drags and tears").Using("clean oil").With(DirectionalOil),
        Step("filter-on", "Spin the filter on to contact, then by hand as far as it says", 3, "oil-gasket").Does(FitFilter).Replacing("oil filter")
            .Because("too tight sticks, too loose is lost").Using("oil filter")
            .With(HoldPoint.Confirmed("turn-mark", "turn marked on filter and base")),
        Step("first-pour", "Pour the first part, 85 % of the plan", 5, "judge-old-oil", "close-drain", "filter-on", "mend-oil-fault").Does(Pour)
            .Because("some of the old oil is still inside").With(Tool.Of("funnel"), Tool.Of("measuring jug")).Using("engine oil")
            .With(HoldPoint.Written("poured-first", "litres poured, with what went into the filter")),
        Step("let-settle", "Wait until the oil is in the pan", 10, "first-pour").Because("it takes minutes to run down").With(Tool.Of("watch")),
        Step("fill-to-mark", "Read; add in small steps to just below full", 10, "let-settle").Does(Pour).ExpiringOvernight()
            .Because("too much is slow to get out again").With(Tool.Of("measuring jug")).Using("engine oil")
            .With(HoldPoint.Written("level-filled", "level between the marks, litres added")),
    ];

    private static HoldPoint NoVapour(string id) => HoldPoint.Lasting(id, "blower run, no vapour smelled or seen in the bilge", Duration.FromMinutes(4));

    private static ProcedureStep Step(string id, string text, double minutes, params string[] after) =>
        ProcedureStep.Of(id, text).Taking(Duration.FromMinutes(minutes)).After(after);
}
