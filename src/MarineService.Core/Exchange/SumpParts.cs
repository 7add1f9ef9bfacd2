using MarineService.Core.Fluids;
using UnitsNet;

namespace MarineService.Core.Exchange;

/// <summary>What a document says of a sump, before it is put together; liters and kg/m³.</summary>
internal sealed class SumpParts
{
    internal double? ServiceFill { get; set; }

    internal double? ServiceFillSigma { get; set; }

    internal double? Filter { get; set; }

    internal double? FilterSigma { get; set; }

    internal double? WithoutFilter { get; set; }

    internal double? DryCapacity { get; set; }

    internal (double Liters, double? Sigma)? Plug { get; set; }

    internal (double Liters, double? Sigma)? Extractor { get; set; }

    internal bool? OnlyByExtractor { get; set; }

    internal List<OilPassage>? Passages { get; set; }

    internal double? OilDensity { get; set; }

    internal Dipstick? Dipstick { get; set; }

    internal Sump Build()
    {
        Sump sump = Sump.Holding(Liters(ServiceFill!.Value), Liters(Filter!.Value), Dipstick!);
        sump = ServiceFillSigma is null && FilterSigma is null
            ? sump
            : sump.WithUncertainties(
                Liters(ServiceFillSigma ?? sump.ServiceFillSigmaLiters), Liters(FilterSigma ?? sump.FilterSigmaLiters));
        sump = WithoutFilter is double without ? sump.WithServiceFillWithoutFilter(Liters(without)) : sump;
        sump = DryCapacity is double dry ? sump.WithDryCapacity(Liters(dry)) : sump;
        sump = Plug is { } plug ? sump.WithResidual(DrainMethod.DrainPlug, Liters(plug.Liters), Sigma(plug.Sigma)) : sump;
        sump = Extractor is not { } drawn ? sump
            : OnlyByExtractor == true ? sump.DrainedOnlyByExtractor(Liters(drawn.Liters), Sigma(drawn.Sigma))
            : sump.WithResidual(DrainMethod.Extractor, Liters(drawn.Liters), Sigma(drawn.Sigma));
        foreach (OilPassage passage in Passages ?? [])
        {
            sump = sump.With(passage);
        }

        return OilDensity is double density
            ? sump.With(Fluids.OilDensity.At15C(Density.FromKilogramsPerCubicMeter(density)))
            : sump;
    }

    private static Volume Liters(double liters) => Volume.FromLiters(liters);

    private static Volume? Sigma(double? liters) => liters is double sigma ? Volume.FromLiters(sigma) : null;
}
