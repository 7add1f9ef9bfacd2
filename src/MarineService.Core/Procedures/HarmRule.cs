using MarineService.Core.Internal;

namespace MarineService.Core.Procedures;

/// <summary>An order that must never happen: an act while something aboard is not as it must be, and what that would damage.</summary>
public sealed class HarmRule
{
    private HarmRule(StepAct act, ServiceState state, bool mustHold, string harm, Citation source, Circumstance? onlyIf) =>
        (Act, State, MustHold, Harm, Source, OnlyIf) = (act, state, mustHold, harm, source, onlyIf);

    /// <summary>The act.</summary>
    public StepAct Act { get; }

    /// <summary>What has to be so, or has not to be so.</summary>
    public ServiceState State { get; }

    /// <summary>Whether <see cref="State"/> must hold, rather than must not.</summary>
    public bool MustHold { get; }

    /// <summary>What it would damage.</summary>
    public string Harm { get; }

    /// <summary>Where it comes from.</summary>
    public Citation Source { get; }

    /// <summary>The circumstance in which alone it matters, or null. A circumstance that is not known is taken to hold.</summary>
    public Circumstance? OnlyIf { get; }

    /// <summary>Every order that must never happen.</summary>
    public static IReadOnlyList<HarmRule> All { get; } = Array.AsReadOnly(
    [
        Needs(StepAct.Start, ServiceState.WaterAtPump, "a dry impeller tears within moments and the exhaust hose overheats", Citation.CommonPractice),
        Needs(StepAct.Start, ServiceState.VapourFree, "petrol vapour in the bilge explodes at the first spark", ProcedureSources.Blower, Circumstance.Petrol),
        Needs(StepAct.Start, ServiceState.OilFit, "water, fuel or too much oil goes through the bearings", Citation.CommonPractice),
        Bars(StepAct.Start, ServiceState.DrainOpen, "the oil runs into the bilge and the bearings run dry", Citation.CommonPractice),
        Bars(StepAct.Start, ServiceState.FilterOff, "the oil is pumped into the bilge within moments", Citation.CommonPractice),
        Bars(StepAct.Start, ServiceState.RawSideOpen, "raw water is pumped into the boat and the impeller runs dry", Citation.CommonPractice),
        Bars(StepAct.Start, ServiceState.BeltOff, "nothing drives the pumps that the belt drives", Citation.CommonPractice, Circumstance.BeltBeforePump),
        Bars(StepAct.Start, ServiceState.FuelOpen, "fuel sprays over a running engine", Citation.CommonPractice),
        Bars(StepAct.Start, ServiceState.Isolated, "somebody may have his hands in the engine: the key is out and the battery off for that", Citation.CommonPractice),
        Bars(StepAct.Start, ServiceState.AtRest, "the antifreeze is washed out of the block and the fogging oil out of the cylinders, and the frost finds water", Citation.CommonPractice),
        Needs(StepAct.Crank, ServiceState.SeacockShut, "cranked long with the seacock open, water fills the muffler and then the cylinders", ProcedureSources.Accounts, Circumstance.Seacock),
        Needs(StepAct.Crank, ServiceState.VapourFree, "petrol vapour in the bilge explodes at the starter's spark", ProcedureSources.Blower, Circumstance.Petrol),
        Bars(StepAct.Crank, ServiceState.FuelOpen, "fuel is pumped into the boat", Citation.CommonPractice),
        Bars(StepAct.Crank, ServiceState.Isolated, "somebody may have his hands in the engine: the key is out and the battery off for that", Citation.CommonPractice),
        Bars(StepAct.ShutSeacock, ServiceState.Running, "the impeller runs dry", Citation.CommonPractice),
        Needs(StepAct.OpenRawSide, ServiceState.SeacockShut, "the boat floods through the open pump", Citation.CommonPractice, Circumstance.Seacock),
        Bars(StepAct.SupplyWater, ServiceState.RawSideOpen, "the boat floods through the open pump", Citation.CommonPractice),
        Needs(StepAct.OpenStrainer, ServiceState.SeacockShut, "the boat floods through the open strainer or hose", Citation.CommonPractice, Circumstance.Seacock),
        Bars(StepAct.OpenStrainer, ServiceState.Running, "the impeller runs dry", Citation.CommonPractice),
        Needs(StepAct.OpenRawSide, ServiceState.Isolated, "a started engine takes fingers and floods the boat", Citation.CommonPractice),
        Needs(StepAct.TakePumpCoverOff, ServiceState.BeltOff, "cover screws are rounded with belt and hands in the way, and a powered belt takes fingers", Citation.CommonPractice, Circumstance.BeltBeforePump),
        Needs(StepAct.BeltOff, ServiceState.Isolated, "a turning belt takes fingers", Citation.CommonPractice),
        Needs(StepAct.BeltOn, ServiceState.Isolated, "a turning belt takes fingers", Citation.CommonPractice),
        Bars(StepAct.BeltOn, ServiceState.RawSideOpen, "the pump is turned open and dry", Citation.CommonPractice, Circumstance.BeltBeforePump),
        Bars(StepAct.OpenDrain, ServiceState.Running, "hot oil under pressure burns, and the engine seizes", Citation.CommonPractice),
        Needs(StepAct.OpenDrain, ServiceState.BilgePumpOff, "one spill is pumped overboard, and a sheen on the water is unlawful", ProcedureSources.Sheen),
        Bars(StepAct.TakeFilterOff, ServiceState.Running, "the oil is pumped into the bilge, hot", Citation.CommonPractice),
        Needs(StepAct.FitFilter, ServiceState.OldGasketSeen, "two gaskets blow out and lose the oil within minutes", ProcedureSources.Accounts),
        Bars(StepAct.Pour, ServiceState.DrainOpen, "the new oil runs into the bilge", Citation.CommonPractice),
        Bars(StepAct.Pour, ServiceState.FilterOff, "the new oil runs into the bilge", Citation.CommonPractice),
        Needs(StepAct.BilgePumpOff, ServiceState.VapourFree, "the switch sparks in petrol vapour", ProcedureSources.Blower, Circumstance.Petrol),
        Bars(StepAct.OpenFuel, ServiceState.Hot, "petrol on a hot surface catches fire", Citation.CommonPractice, Circumstance.Petrol),
        Bars(StepAct.OpenFuel, ServiceState.Running, "fuel sprays over a running engine", Citation.CommonPractice),
        Needs(StepAct.OpenFuel, ServiceState.Isolated, "any switch may spark in the vapour", Citation.CommonPractice, Circumstance.Petrol),
        Bars(StepAct.OpenFuel, ServiceState.Charging, "a charging battery gives off hydrogen and its clamps spark in the vapour", Citation.CommonPractice, Circumstance.Petrol),
        Bars(StepAct.TestIgnition, ServiceState.FuelOpen, "the test spark lights the vapour", Citation.CommonPractice, Circumstance.Petrol),
        Needs(StepAct.TestIgnition, ServiceState.VapourFree, "the test spark lights the vapour", Citation.CommonPractice, Circumstance.Petrol),
        Bars(StepAct.StartCharging, ServiceState.FuelOpen, "clamps and hydrogen spark in the vapour", Citation.CommonPractice, Circumstance.Petrol),
        Bars(StepAct.Energize, ServiceState.FuelOpen, "the battery switch sparks in the vapour", Citation.CommonPractice, Circumstance.Petrol),
        Bars(StepAct.Start, ServiceState.CoolantOpen, "the engine boils dry and seizes", Citation.CommonPractice),
        Bars(StepAct.OpenCoolant, ServiceState.Hot, "the circuit is under pressure: steam and hot coolant scald face and hands", Citation.CommonPractice),
        Bars(StepAct.OpenCoolant, ServiceState.Running, "steam and hot coolant scald face and hands, and the engine boils dry", Citation.CommonPractice),
        Needs(StepAct.OpenCoolant, ServiceState.Isolated, "a started engine takes fingers and boils dry", Citation.CommonPractice),
        Needs(StepAct.OpenCoolant, ServiceState.BilgePumpOff, "spilled glycol is pumped overboard, and it is poisonous", Citation.CommonPractice),
        Bars(StepAct.PourCoolant, ServiceState.CoolantOpen, "the new coolant runs into the bilge", Citation.CommonPractice),
        Bars(StepAct.PourCoolant, ServiceState.Hot, "cold coolant cracks a hot block", Citation.CommonPractice),
        Bars(StepAct.ProveCoolant, ServiceState.Hot, "the circuit is under pressure: steam and hot coolant scald face and hands", Citation.CommonPractice),
        Bars(StepAct.SignOff, ServiceState.CoolantOpen, "the coolant runs into the bilge, and the next start boils the engine dry", Citation.CommonPractice),
        Bars(StepAct.SignOff, ServiceState.CoolantUnproved, "the last air has come out on the run and the level has fallen", Citation.CommonPractice),
        Bars(StepAct.SignOff, ServiceState.LevelUnproved, "the new filter has drunk its fill and the level is not yet true", Citation.CommonPractice),
        Bars(StepAct.SignOff, ServiceState.BilgePumpOff, "a pump left off sinks the boat at its berth", Citation.CommonPractice),
        Bars(StepAct.SignOff, ServiceState.RawSideOpen, "the boat floods when the seacock is opened", Citation.CommonPractice),
        Bars(StepAct.SignOff, ServiceState.FuelOpen, "fuel runs into the boat", Citation.CommonPractice),
    ]);

    /// <summary>Act, state and harm in one sentence.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => $"{Act} {(MustHold ? "before" : "while")} {State}: {Harm}";

    internal bool AppliesIn(Circumstances circumstances) => OnlyIf is not Circumstance only || circumstances[only] != false;

    private static HarmRule Needs(StepAct act, ServiceState state, string harm, Citation source, Circumstance? onlyIf = null) =>
        new(act, state, true, Guard.NotBlank(harm), source, onlyIf);

    private static HarmRule Bars(StepAct act, ServiceState state, string harm, Citation source, Circumstance? onlyIf = null) =>
        new(act, state, false, Guard.NotBlank(harm), source, onlyIf);
}
