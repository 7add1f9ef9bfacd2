namespace MarineService.Core.Procedures;

/// <summary>The documents that this room stands on.</summary>
internal static class ProcedureSources
{
    internal static Citation Blower { get; } = Citation.Published("33 CFR 183.610", null, "label: operate blower for 4 minutes and check the engine bilge");

    internal static Citation CarbonMonoxide { get; } = Citation.Published("NIOSH, Carbon Monoxide Dangers in Boating");

    internal static Citation UsedOil { get; } = Citation.Published("40 CFR 279", null, "279.22: sound containers, marked \"Used Oil\"");

    internal static Citation HotDrained { get; } = Citation.Published("40 CFR 261.4", null, "(b)(13): filters hot-drained");

    internal static Citation Sheen { get; } = Citation.Published("40 CFR 110", null, "110.3: a film, sheen or discoloration");

    internal static Citation OilAndFuelGuide { get; } = Citation.Published("The Green Blue (RYA and British Marine), oil and fuel");

    internal static Citation WorkboatChecks { get; } =
        Citation.Published("TM 55-1930-209-14&P-17", null, "appendix C, table C-1: seal oiled, half a turn after contact, idle, pressure, leaks, level");

    internal static Citation Anodes { get; } = Citation.Published("TM 55-1930-209-14&P-17", null, "appendix C, table C-1: replace at 50 %");

    internal static Citation DischargeLimit { get; } = Citation.Published("NAVEDTRA 14075 Engineman 1 & C", null, "page 3-12: below 130 F");

    internal static Citation Preservation { get; } = Citation.Published("TB 740-97-4", null, "chapter 4: preservation of vessels");

    internal static Citation SignalWords { get; } = Citation.Secondary("ANSI Z535.6 and ISO 3864-2", null, "signal words");

    internal static Citation Accounts { get; } = Citation.PracticeDescribedIn("owners' accounts in boating columns");
}
