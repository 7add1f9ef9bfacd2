namespace MarineService.Core.LayUp;

/// <summary>What trapped water makes of an antifreeze. Shares are by volume, from 0 to 1; volumes are taken as additive.</summary>
/// <remarks>
/// Source: balance of the glycol in a vessel that is always well mixed, derived; checked by small steps. Additive volumes err by
/// less than about 1 % (common practice). A circuit is filled before it overflows: until it is full all that goes in stays in,
/// and from then on as much flows out as goes in.
/// </remarks>
internal static class AntifreezeMath
{
    /// <summary>Strength after some antifreeze went through a drained circuit.</summary>
    /// <remarks>Source: c = c0·V/(V + Vr) while filling; then c = c0·(1 - (Vr/Vs)·exp(-V'/Vs)) with V' what came after it was full; derived.</remarks>
    internal static double FractionAfter(double fraction, double circuitLiters, double trappedLiters, double passedLiters)
    {
        double fillLiters = circuitLiters - trappedLiters;
        if (passedLiters <= fillLiters)
        {
            return passedLiters == 0 ? 0 : fraction * passedLiters / (passedLiters + trappedLiters);
        }

        return fraction * (1 - trappedLiters / circuitLiters * Math.Exp(-(passedLiters - fillLiters) / circuitLiters));
    }

    /// <summary>How much must go through until the circuit is full and as strong as wanted; the wanted strength is below the antifreeze's own.</summary>
    /// <remarks>Source: the same balance, solved for the volume; derived.</remarks>
    internal static double LitersFor(double fraction, double wantedFraction, double circuitLiters, double trappedLiters)
    {
        double fillLiters = circuitLiters - trappedLiters;
        double waterLeftRatio = trappedLiters / circuitLiters * fraction / (fraction - wantedFraction);
        return waterLeftRatio <= 1 ? fillLiters : fillLiters + circuitLiters * Math.Log(waterLeftRatio);
    }

    /// <summary>How strong the fill must be so that a circuit filled once is as strong as wanted; above 1 when nothing is that strong.</summary>
    /// <remarks>Source: c0 = ct·Vs/(Vs - Vr), derived.</remarks>
    internal static double FillFractionFor(double wantedFraction, double circuitLiters, double trappedLiters) =>
        circuitLiters > trappedLiters ? wantedFraction * circuitLiters / (circuitLiters - trappedLiters) : double.PositiveInfinity;
}
