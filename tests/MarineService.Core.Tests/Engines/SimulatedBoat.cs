using MarineService.Core.Engines;
using NodaTime;

namespace MarineService.Core.Tests.Engines;

/// <summary>A boat whose use is known day by day, and the readings that its owner happens to take.</summary>
/// <remarks>
/// Hours of a usual year are lognormal about 80 h (sigma 0.35 between boats); each year differs from it by a lognormal factor (sigma 0.20),
/// without trend. A season runs from a day of 10 to 29 April to one of 5 to 29 October. On each of its days the boat goes out with
/// probability 0.45 on weekends and 0.08 on other days, times a weight of the month (0.35 April, 0.7, 1, 1.2 July, 1.1, 0.8, 0.35 October);
/// an outing's hours are the sum of two exponentials, and all outings of a year are scaled to its hours. The meter is read before the first
/// season, within the first 30 days of each, every 3 to 9 weeks after that, and on each season's last day; to a tenth of an hour.
/// </remarks>
internal sealed class SimulatedBoat
{
    private static readonly double[] Weight = [0, 0, 0, 0, 0.35, 0.7, 1, 1.2, 1.1, 0.8, 0.35, 0, 0];
    private readonly List<(LocalDate Date, double Hours)> _course = [];

    internal SimulatedBoat(Random random, int seasons)
    {
        const int first = 2019;
        double usual = Math.Exp(Math.Log(80) + (0.35 * Normal(random)));
        Dictionary<LocalDate, double> run = [];
        HashSet<LocalDate> read = [];
        LocalDate start = default;
        for (int year = first; year < first + seasons + 4; year++)
        {
            LocalDate opens = new LocalDate(year, 4, 10).PlusDays(random.Next(20));
            LocalDate closes = new LocalDate(year, 10, 5).PlusDays(random.Next(25));
            Season(random, opens, closes, usual * Math.Exp(0.2 * Normal(random)), run);
            if (year == first)
            {
                start = opens.PlusDays(-1);
                read.Add(start);
            }

            if (year < first + seasons)
            {
                for (LocalDate day = opens.PlusDays(random.Next(30)); day < closes; day = day.PlusDays(21 + random.Next(43)))
                {
                    read.Add(day);
                }

                read.Add(closes);
                Last = closes;
            }
        }

        double hours = 100;
        for (LocalDate day = start; day < new LocalDate(first + seasons + 4, 1, 1); day = day.PlusDays(1))
        {
            hours += day > start && run.TryGetValue(day, out double some) ? some : 0;
            _course.Add((day, hours));
            if (read.Contains(day))
            {
                Readings.Add(MeterReading.Of(day, EngineHours.FromHours(Math.Round((decimal)hours, 1))));
            }
        }
    }

    internal List<MeterReading> Readings { get; } = [];

    internal LocalDate Last { get; }

    /// <summary>The day on which so many more hours than on the last reading were truly run.</summary>
    internal LocalDate Reached(double more)
    {
        double target = _course.Find(day => day.Date == Last).Hours + more;
        return _course.Find(day => day.Hours >= target).Date;
    }

    private static void Season(Random random, LocalDate opens, LocalDate closes, double hours, Dictionary<LocalDate, double> run)
    {
        List<(LocalDate Date, double Hours)> outings = [];
        for (LocalDate day = opens; day <= closes; day = day.PlusDays(1))
        {
            double often = day.DayOfWeek is IsoDayOfWeek.Saturday or IsoDayOfWeek.Sunday ? 0.45 : 0.08;
            if (random.NextDouble() < often * Weight[day.Month])
            {
                outings.Add((day, -Math.Log(1 - random.NextDouble()) - Math.Log(1 - random.NextDouble())));
            }
        }

        double all = outings.Sum(outing => outing.Hours);
        foreach ((LocalDate date, double some) in outings)
        {
            run[date] = some / all * hours;
        }
    }

    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
