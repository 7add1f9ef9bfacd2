using static MarineService.Core.Procedures.ServiceState;

namespace MarineService.Core.Procedures;

/// <summary>What each act makes so, and what it ends. States are bits of one word.</summary>
internal static class StepEffects
{
    /// <summary>What a look, a sniff or a tag makes sure of, and a night may undo.</summary>
    internal static uint OnceProved { get; } = Bit(WaterAtPump) | Bit(SeacockShut) | Bit(VapourFree) | Bit(OilFit) | Bit(Isolated);

    internal static uint Bit(ServiceState state) => 1u << (int)state;

    internal static uint Sets(IReadOnlyList<StepAct> acts)
    {
        uint bits = 0;
        for (int i = 0; i < acts.Count; i++)
        {
            bits = (bits & ~Cleared(acts[i])) | Set(acts[i]);
        }

        return bits;
    }

    internal static uint Clears(IReadOnlyList<StepAct> acts)
    {
        uint bits = 0;
        for (int i = 0; i < acts.Count; i++)
        {
            bits = (bits & ~Set(acts[i])) | Cleared(acts[i]);
        }

        return bits;
    }

    internal static uint Set(StepAct act) => act switch
    {
        StepAct.SupplyWater => Bit(WaterAtPump),
        StepAct.ShutSeacock => Bit(SeacockShut),
        StepAct.Ventilate => Bit(VapourFree),
        StepAct.PassOil => Bit(OilFit),
        StepAct.Start => Bit(Running) | Bit(Hot),
        StepAct.Isolate => Bit(Isolated),
        StepAct.BilgePumpOff => Bit(BilgePumpOff),
        StepAct.OpenDrain => Bit(DrainOpen),
        StepAct.TakeFilterOff => Bit(FilterOff) | Bit(OldGasketSeen),
        StepAct.Pour => Bit(LevelUnproved),
        StepAct.BeltOff => Bit(BeltOff),
        StepAct.OpenRawSide => Bit(RawSideOpen),
        StepAct.OpenFuel => Bit(FuelOpen),
        StepAct.StartCharging => Bit(Charging),
        StepAct.PutToRest => Bit(AtRest),
        StepAct.OpenCoolant => Bit(CoolantOpen),
        StepAct.PourCoolant => Bit(CoolantUnproved),
        _ => 0,
    };

    internal static uint Cleared(StepAct act) => act switch
    {
        StepAct.SupplyWater => Bit(SeacockShut),
        StepAct.ShutSeacock or StepAct.OpenRawSide or StepAct.OpenStrainer => Bit(WaterAtPump),
        StepAct.Stop => Bit(Running),
        StepAct.CoolDown => Bit(Hot),
        StepAct.Energize => Bit(Isolated),
        StepAct.BilgePumpOn => Bit(BilgePumpOff),
        StepAct.CloseDrain => Bit(DrainOpen),
        StepAct.FitFilter => Bit(FilterOff) | Bit(OldGasketSeen),
        StepAct.ProveLevel => Bit(LevelUnproved),
        StepAct.BeltOn => Bit(BeltOff),
        StepAct.CloseRawSide => Bit(RawSideOpen),

        // The blower stands still from here on; what gathers until the next start is not known.
        StepAct.Isolate or StepAct.OpenFuel => Bit(VapourFree),
        StepAct.CloseFuel => Bit(FuelOpen),
        StepAct.StopCharging => Bit(Charging),
        StepAct.CloseCoolant => Bit(CoolantOpen),
        StepAct.ProveCoolant => Bit(CoolantUnproved),
        _ => 0,
    };
}
