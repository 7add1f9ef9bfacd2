namespace MarineService.Core.Procedures;

/// <summary>States in words, for messages.</summary>
internal static class InWords
{
    internal static string Of(ServiceState state) => state switch
    {
        ServiceState.WaterAtPump => "water proved at the pump",
        ServiceState.SeacockShut => "seacock shut",
        ServiceState.VapourFree => "engine space ventilated and free of vapour",
        ServiceState.OilFit => "oil looked at and fit to run",
        ServiceState.Running => "engine running",
        ServiceState.Hot => "engine hot",
        ServiceState.Isolated => "key out and battery off",
        ServiceState.BilgePumpOff => "bilge pump off",
        ServiceState.DrainOpen => "oil drain open",
        ServiceState.FilterOff => "oil filter off",
        ServiceState.OldGasketSeen => "old filter gasket in the hand",
        ServiceState.LevelUnproved => "oil level not proved after a run",
        ServiceState.BeltOff => "belt off",
        ServiceState.RawSideOpen => "raw-water side open",
        ServiceState.FuelOpen => "fuel system open",
        ServiceState.CoolantOpen => "coolant's circuit open",
        ServiceState.CoolantUnproved => "coolant level not proved after a run",
        ServiceState.AtRest => "engine put to rest for the winter",
        _ => "battery charging",
    };
}
