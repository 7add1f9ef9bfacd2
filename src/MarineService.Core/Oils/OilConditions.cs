namespace MarineService.Core.Oils;

/// <summary>What a selection assumes beside the start temperature; canonical units.</summary>
internal sealed class OilConditions(double marginKelvins, double coldSoakKelvins, double shadeKelvins, double? hottestShadeCelsius, CustomaryFigures figures)
{
    /// <summary>5 K above the cranking test, nothing else: a project choice.</summary>
    internal static readonly OilConditions Default = new(5, 0, 0, null, CustomaryFigures.Chart);

    internal double MarginKelvins { get; } = marginKelvins;

    internal double ColdSoakKelvins { get; } = coldSoakKelvins;

    internal double ShadeKelvins { get; } = shadeKelvins;

    internal double? HottestShadeCelsius { get; } = hottestShadeCelsius;

    internal CustomaryFigures Figures { get; } = figures;

    /// <summary>The hottest day with the allowance for readings taken in the shade.</summary>
    internal double? HottestCelsius => HottestShadeCelsius + ShadeKelvins;

    /// <summary>The sump at a start: the lowest air less the allowance for a boat that is colder than the forecast.</summary>
    internal double StartCelsius(double lowestAirCelsius) => OilGuard.Round(lowestAirCelsius - ColdSoakKelvins);
}
