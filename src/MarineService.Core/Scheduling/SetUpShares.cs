namespace MarineService.Core.Scheduling;

/// <summary>How the set-up of each day is shared among those that may use it, so that the cheapest way of each by itself adds up to no more than the least cost of all.</summary>
/// <remarks>Any shares of 0 or more that sum to the set-up do (Lagrangian relaxation); steps along the use of each day raise the sum (subgradient method).</remarks>
internal sealed class SetUpShares
{
    private readonly long[] _setUp;
    private readonly double[][] _share;

    internal SetUpShares(long[] setUp, int users)
    {
        _setUp = setUp;
        _share = new double[users][];
        for (int u = 0; u < users; u++)
        {
            _share[u] = Array.ConvertAll(setUp, cost => (double)cost / users);
        }
    }

    /// <summary>The shares of one user, with what it pays for each day besides; rounded down, so that the bound holds.</summary>
    internal long[] Of(int user, long besides = 0) => Array.ConvertAll(_share[user], part => besides + (long)Math.Floor(part));

    /// <summary>One step along the use of each day, kept at shares of 0 or more that sum to the day's set-up.</summary>
    internal void Move(bool[][] uses, double gap)
    {
        double norm = 0;
        for (int k = 0; k < _setUp.Length; k++)
        {
            double users = uses.Count(unit => unit[k]);
            norm += users - (users * users / _share.Length);
        }

        if (norm <= 0)
        {
            return;
        }

        double length = gap / norm;
        for (int k = 0; k < _setUp.Length; k++)
        {
            if (!uses.Any(unit => unit[k]))
            {
                continue;
            }

            double[] wanted = [.. _share.Select((unit, u) => unit[k] + (uses[u][k] ? length : 0))];
            double level = Level(wanted, _setUp[k]);
            for (int u = 0; u < _share.Length; u++)
            {
                _share[u][k] = Math.Max(0, wanted[u] - level);
            }
        }
    }

    // What must come off each so that what is left above 0 sums to the total.
    private static double Level(double[] wanted, double total)
    {
        double[] sorted = [.. wanted.OrderByDescending(value => value)];
        double sum = 0;
        double level = sorted[0] - total;
        for (int i = 0; i < sorted.Length; i++)
        {
            sum += sorted[i];
            double candidate = (sum - total) / (i + 1);
            if (candidate >= sorted[i])
            {
                break;
            }

            level = candidate;
        }

        return level;
    }
}
