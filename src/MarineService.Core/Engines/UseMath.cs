using MarineService.Core.Internal;

namespace MarineService.Core.Engines;

/// <summary>The arithmetic of engine use on day numbers and hours.</summary>
internal static class UseMath
{
    // Below what a meter shows: the sum of many daily shares must still reach a whole number of hours.
    internal const double GrainHours = 1e-7;

    /// <summary>
    /// The hours of each day after the first reading up to the last: the gain between two readings, evenly over the days after the first of
    /// them that are not laid up; over all of them when all are, for then the readings show that it ran all the same. Source: common practice.
    /// </summary>
    internal static double[] Spread(ReadOnlySpan<MeterPoint> points, RestDays rest)
    {
        int first = points[0].Day;
        double[] hours = new double[points[points.Length - 1].Day - first];
        for (int i = 1; i < points.Length; i++)
        {
            int from = points[i - 1].Day;
            int to = points[i].Day;
            double gainHours = (points[i].Estimate - points[i - 1].Estimate) / 1000.0;
            if (to == from)
            {
                // Read twice on a day: what ran between counts for that day.
                if (from > first)
                {
                    hours[from - first - 1] += gainHours;
                }

                continue;
            }

            int inUse = 0;
            for (int day = from + 1; day <= to; day++)
            {
                inUse += rest.Holds(day) ? 0 : 1;
            }

            for (int day = from + 1; day <= to; day++)
            {
                if (inUse == 0 || !rest.Holds(day))
                {
                    hours[day - first - 1] += gainHours / (inUse == 0 ? to - from : inUse);
                }
            }
        }

        return hours;
    }

    /// <summary>
    /// The median of the slopes between all pairs of readings, hours a day. Source: SciPy documentation, scipy.stats.theilslopes; tolerates
    /// about 29 % of bad points.
    /// </summary>
    internal static double? MedianOfPairwiseSlopes(IReadOnlyList<(int Day, double Hours)> points)
    {
        List<double> slopes = new(points.Count * (points.Count - 1) / 2);
        for (int i = 0; i < points.Count; i++)
        {
            for (int j = i + 1; j < points.Count; j++)
            {
                if (points[j].Day > points[i].Day)
                {
                    slopes.Add((points[j].Hours - points[i].Hours) / (points[j].Day - points[i].Day));
                }
            }
        }

        slopes.Sort();
        return slopes.Count == 0 ? null : QuantileMath.Type7(slopes, 0.5);
    }

    /// <summary>Whole days that pass at a rate before hours are reached, or null when they never are. Source: a straight line.</summary>
    internal static int? DaysAt(double hoursPerDay, double hours, int mostDays) =>
        hoursPerDay > 0 && hours / hoursPerDay < mostDays ? (int)Math.Floor((hours + GrainHours) / hoursPerDay) : null;

    /// <summary>Hours on the scale that engine hours have; a forecast never leaves it. Source: the range of <see cref="EngineHours"/>.</summary>
    internal static EngineHours Kept(double hours) => EngineHours.FromHours((decimal)Math.Max(0, Math.Min(1_000_000, hours)));

    /// <summary>
    /// How often the next of exchangeable values falls between the smallest and the largest of n past ones. Source: each of the n + 1 ranks is
    /// equally likely, n - 1 of them lie inside.
    /// </summary>
    internal static double RangeCoverage(int n) => (n - 1.0) / (n + 1.0);
}
