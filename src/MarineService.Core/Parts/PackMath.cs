namespace MarineService.Core.Parts;

/// <summary>The cheapest cover of an amount by packs of fixed sizes, in whole units.</summary>
internal static class PackMath
{
    internal const int MostUnits = 2_000_000;

    /// <summary>The greatest whole number that divides both. Source: Euclid's algorithm.</summary>
    internal static long GreatestCommonDivisor(long a, long b)
    {
        while (b != 0)
        {
            (a, b) = (b, a % b);
        }

        return a;
    }

    /// <summary>
    /// How many of each pack: least price, then least amount, then fewest packs, then most of the earliest packs.
    /// Source: the recurrence best(n) = least over all packs of pack + best(n - pack), with best(n) nothing for n at or below 0; derived.
    /// </summary>
    /// <remarks>
    /// Price, amount and number of packs all add up, so comparing them in that order keeps the recurrence exact. A pack that comes earlier is
    /// taken wherever it is as good as another, which leaves the most of it.
    /// </remarks>
    internal static int[] Cheapest(int units, long[] amounts, long[] prices)
    {
        long[] price = new long[units + 1];
        long[] bought = new long[units + 1];
        int[] packs = new int[units + 1];
        byte[] choice = new byte[units + 1];
        for (int n = 1; n <= units; n++)
        {
            long leastPrice = long.MaxValue;
            long leastBought = 0;
            int fewest = 0;
            int chosen = 0;
            for (int i = 0; i < amounts.Length; i++)
            {
                int rest = amounts[i] >= n ? 0 : n - (int)amounts[i];
                long p = price[rest] + prices[i];
                if (p > leastPrice)
                {
                    continue;
                }

                long b = bought[rest] + amounts[i];
                int count = packs[rest] + 1;
                if (p < leastPrice || b < leastBought || (b == leastBought && count < fewest))
                {
                    (leastPrice, leastBought, fewest, chosen) = (p, b, count, i);
                }
            }

            (price[n], bought[n], packs[n], choice[n]) = (leastPrice, leastBought, fewest, (byte)chosen);
        }

        int[] counts = new int[amounts.Length];
        for (int n = units; n > 0;)
        {
            int i = choice[n];
            counts[i]++;
            n = amounts[i] >= n ? 0 : n - (int)amounts[i];
        }

        return counts;
    }
}
