namespace MarineService.Core.LayUp;

/// <summary>What to beware of in a lay-up.</summary>
internal static class LayUpCautions
{
    internal static Caution PetrolRun { get; } = Caution.Of(
        SignalWord.Danger, "Petrol vapour explodes. Blower four minutes, sniff and look in the bilge before any switch; hatches open; no flame. Exhaust gas kills: people clear of the stern. Water supply on before the start.", LayUpSources.Blower);

    internal static Caution Run { get; } = Caution.Of(
        SignalWord.Warning, "Exhaust gas kills. Run in the open, people clear of the stern; water supply on before the start, or the impeller burns.", Citation.CommonPractice);

    internal static Caution HotOil { get; } = Caution.Of(
        SignalWord.Caution, "Hot oil burns. Gloves; catch it in a sound can marked Used Oil.", LayUpSources.UsedOilCan);

    internal static Caution SeaWaterIn { get; } = Caution.Of(
        SignalWord.Warning, "An open drain below the waterline sinks the boat. Afloat, shut the seacock and tag the key before the first drain.", Citation.CommonPractice);

    internal static Caution NoSeacock { get; } = Caution.Of(
        SignalWord.Warning, "There is no seacock: open drains only ashore. Afloat they would sink the boat.", Citation.CommonPractice);

    internal static Caution Antifreeze { get; } = Caution.Of(
        SignalWord.Notice, "Never ethylene glycol on the raw-water side; catch what runs out and take it to a collection point.", LayUpSources.PropyleneAshore);

    internal static Caution Fogging { get; } = Caution.Of(
        SignalWord.Warning, "Ignition disabled, battery off, plugs out, no flame. An engine locked by oil breaks its rods when it is cranked: turn it by hand first.", LayUpSources.VesselPreservation);

    internal static Caution Battery { get; } = Caution.Of(
        SignalWord.Danger, "A charging battery gives off explosive gas: moving air, no flame or switch near, never beside petrol vapour. Never charge a frozen one. Acid burns: eyes and hands covered.", Citation.CommonPractice);
}
