namespace MarineService.Reports.Internal;

/// <summary>Moves labels in a column or a row apart, as little as need be, so that none covers another.</summary>
internal static class Spread
{
    /// <summary>The middles of the labels, in the order given, within the limits as long as they have room there.</summary>
    /// <param name="wanted">Where each label would stand best.</param>
    /// <param name="sizes">How much room each takes.</param>
    /// <param name="from">The least edge.</param>
    /// <param name="to">The greatest edge.</param>
    internal static double[] Apart(IReadOnlyList<double> wanted, IReadOnlyList<double> sizes, double from, double to)
    {
        int[] order = [.. Enumerable.Range(0, wanted.Count).OrderBy(i => wanted[i]).ThenBy(i => i)];
        double[] places = [.. wanted];
        double edge = from;
        foreach (int i in order)
        {
            places[i] = Math.Max(wanted[i], edge + (sizes[i] / 2));
            edge = places[i] + (sizes[i] / 2);
        }

        // Back again from the far end, for what was pushed out there.
        edge = Math.Max(to, from + sizes.Sum());
        foreach (int i in Enumerable.Reverse(order))
        {
            places[i] = Math.Min(places[i], edge - (sizes[i] / 2));
            edge = places[i] - (sizes[i] / 2);
        }

        return places;
    }
}
