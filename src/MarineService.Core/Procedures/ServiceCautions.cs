namespace MarineService.Core.Procedures;

/// <summary>The cautions that the library's own procedures use, each with its source.</summary>
internal static class ServiceCautions
{
    internal static Caution Vapour { get; } = Caution.Of(
        SignalWord.Warning,
        "Petrol vapour can explode. Run the blower for at least 4 minutes, check the bilge for vapour, and touch no switch while you smell any.",
        ProcedureSources.Blower);

    internal static Caution CarbonMonoxide { get; } = Caution.Of(
        SignalWord.Warning,
        "Exhaust gas kills, and gathers at a boat that lies still. Open the hatches, keep people away from the stern.",
        ProcedureSources.CarbonMonoxide);

    internal static Caution PetrolOpen { get; } = Caution.Of(
        SignalWord.Danger,
        "Open petrol: engine cold, battery off, no charger, no test spark, no flame; extinguisher at hand.",
        Citation.CommonPractice);

    internal static Caution DieselOpen { get; } = Caution.Of(
        SignalWord.Caution,
        "Fuel harms skin and eyes and makes decks slippery. Wear gloves and glasses; wipe up at once.",
        Citation.CommonPractice);

    internal static Caution Flooding { get; } = Caution.Of(
        SignalWord.Warning,
        "Below the waterline the boat floods through every opening. Seacock shut, tag on the key, and look again before you open anything.",
        Citation.CommonPractice);

    internal static Caution Burns { get; } = Caution.Of(
        SignalWord.Caution,
        "Oil, exhaust and block are hot enough to burn. Wear gloves and long sleeves.",
        Citation.CommonPractice);

    internal static Caution Turning { get; } = Caution.Of(
        SignalWord.Warning,
        "Belts and pulleys take fingers, hair and sleeves. Key out and in your pocket before a hand goes in; keep clear while it runs.",
        Citation.CommonPractice);

    internal static Caution Spring { get; } = Caution.Of(
        SignalWord.Warning,
        "A belt tensioner is under spring load and snaps back. Hold the bar firmly, keep fingers out from under the belt.",
        Citation.CommonPractice);

    internal static Caution Sheen { get; } = Caution.Of(
        SignalWord.Notice,
        "A film of oil on the water is unlawful, and so is hiding it with detergent.",
        ProcedureSources.Sheen);

    internal static Caution UsedOil { get; } = Caution.Of(
        SignalWord.Notice,
        "Used oil goes into a sound container marked \"Used Oil\", and to a collection point.",
        ProcedureSources.UsedOil);

    internal static Caution UsedFilter { get; } = Caution.Of(
        SignalWord.Notice,
        "Drain the old filter hot before you dispose of it.",
        ProcedureSources.HotDrained);

    internal static Caution UsedPads { get; } = Caution.Of(
        SignalWord.Notice,
        "Pump nothing oily overboard; oily pads and rags are hazardous waste.",
        ProcedureSources.OilAndFuelGuide);

    internal static Caution NoPetroleum { get; } = Caution.Of(
        SignalWord.Notice,
        "Petroleum grease swells a natural-rubber impeller. Use glycerine, silicone or soapy water.",
        Citation.CommonPractice);

    internal static Caution CoverFace { get; } = Caution.Of(
        SignalWord.Notice,
        "A lever on the cover's face leaves a groove that leaks. Pull the impeller, do not prise it.",
        Citation.CommonPractice);

    internal static Caution DirectionalOil { get; } = Caution.Of(
        SignalWord.Notice,
        "Prefill only a filter that stands upright, through its outer holes, and count it as poured.",
        Citation.CommonPractice);

    internal static Caution HotOutlet { get; } = Caution.Of(
        SignalWord.Notice,
        "Behind a heat exchanger the raw water leaves below 54 °C (130 °F), or scale forms.",
        ProcedureSources.DischargeLimit);

    internal static Caution LeadAcid { get; } = Caution.Of(
        SignalWord.Warning,
        "A charging battery gives off gas that explodes. Ventilate, no sparks, connect and disconnect with the charger off.",
        Citation.CommonPractice);

    internal static Caution Antifreeze { get; } = Caution.Of(
        SignalWord.Caution,
        "Antifreeze is harmful to drink and unlawful in the water. Use propylene glycol on the raw-water side, catch what runs out.",
        Citation.CommonPractice);

    internal static Caution Scald { get; } = Caution.Of(
        SignalWord.Warning,
        "A hot cooling circuit is under pressure and scalds. Open its cap only when the engine is cold to the hand, through a cloth, to the first stop first.",
        Citation.CommonPractice);

    internal static Caution Glycol { get; } = Caution.Of(
        SignalWord.Warning,
        "Coolant is poisonous, and tastes sweet to children and animals. Catch every drop; none goes overboard or into the bilge.",
        Citation.CommonPractice);

    internal static Caution NoFogging { get; } = Caution.Of(
        SignalWord.Notice,
        "Fog petrol engines only: the dose can lock a small diesel. The first engine fogged is turned by hand later to prove that it is free.",
        ProcedureSources.Preservation);

    internal static Caution UnfilteredFuel { get; } = Caution.Of(
        SignalWord.Notice,
        "Never fill a diesel's fine filter with fuel that has not been filtered; prime it by its own pump.",
        Citation.CommonPractice);
}
