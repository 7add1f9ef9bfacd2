namespace MarineService.Core.Internal;

/// <summary>Quantiles of a few values.</summary>
internal static class QuantileMath
{
    /// <summary>
    /// Linear interpolation of the order statistics. Source: Hyndman and Fan, "Sample quantiles in statistical packages",
    /// The American Statistician 50 (1996), definition 7, from memory; the default of R.
    /// </summary>
    /// <param name="sorted">The values, smallest first; at least one.</param>
    /// <param name="fraction">From 0 for the smallest to 1 for the largest.</param>
    internal static double Type7(IReadOnlyList<double> sorted, double fraction)
    {
        double place = (sorted.Count - 1) * fraction;
        int below = (int)Math.Floor(place);
        return below + 1 >= sorted.Count
            ? sorted[sorted.Count - 1]
            : sorted[below] + ((place - below) * (sorted[below + 1] - sorted[below]));
    }
}
