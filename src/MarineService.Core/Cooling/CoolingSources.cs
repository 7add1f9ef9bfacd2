namespace MarineService.Core.Cooling;

/// <summary>The documents that this room stands on.</summary>
internal static class CoolingSources
{
    internal static Citation Discharge { get; } = Citation.Published("NAVEDTRA 14075, Engineman 1 & C", null, "page 3-12");

    internal static Citation Impellers { get; } =
        Citation.PracticeDescribedIn("Yachting Monthly, replacing a raw-water pump impeller; SAIL, impeller care");

    internal static Citation OwnersAccounts { get; } = Citation.PracticeDescribedIn("owners' accounts in forums and magazine columns");

    internal static Citation Anodes { get; } = Citation.Published("TM 55-1930-209-14&P-17", null, "appendix C, table C-1");

    internal static Citation HeatBalance { get; } = Citation.Derived("the heat balance of a stream; share of heat to water and water's properties from memory");

    internal static Citation Hydraulics { get; } = Citation.Derived("displacement times speed, less what a worn pump slips");
}
