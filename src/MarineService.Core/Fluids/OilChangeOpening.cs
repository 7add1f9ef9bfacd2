namespace MarineService.Core.Fluids;

/// <summary>Sump, limits and level that an account is opened with; only its first event holds it, so that the others stay small.</summary>
internal sealed class OilChangeOpening(Sump sump, OilChangeLimits limits, DipstickReading? before)
{
    internal Sump Sump { get; } = sump;

    internal OilChangeLimits Limits { get; } = limits;

    internal DipstickReading? Before { get; } = before;

    internal double FineBandLiters { get; } = limits.FineBandLiters(sump.ServiceFillLiters);
}
